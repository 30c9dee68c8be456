/** What comes round on the demo boat: rules, dates printed on her safety gear, and a year of use. All invented. */
import { type Book, contentId, type DueMeasure, type DueRecord, type UseRecord } from '#boat-book';
import type { DemoDates } from './writing.ts';

const due = (part: Partial<DueRecord> & Pick<DueRecord, 'title' | 'consequence'>): DueRecord => ({
  zone: null,
  fitting: null,
  printed: null,
  every: null,
  season: null,
  uses: [],
  condition: null,
  usual: null,
  recipe: null,
  source: 'custom of the trade',
  lastDone: null,
  note: '',
  ...part,
});
const months = (count: number) => ({ count, unit: 'months' as const });
const years = (count: number) => ({ count, unit: 'years' as const });

export function demoDues({ day }: DemoDates): Book['dues'] {
  return {
    'due-flares': due({
      title: 'Hand flares and smokes',
      consequence: 'unlawful',
      zone: 'cabin',
      printed: day(190),
      usual: 'flares',
      recipe: 'flares',
      source: 'the date on the flares',
    }),
    'due-beacon': due({
      title: 'Battery of the personal beacon',
      consequence: 'danger',
      zone: 'cabin',
      printed: day(940),
      usual: 'beacon-battery',
      source: 'the date on its label',
    }),
    'due-cylinders': due({
      title: 'Cylinders and firing heads of the lifejackets',
      consequence: 'danger',
      zone: 'cabin',
      printed: day(16),
      usual: 'lifejacket-firing-head',
      recipe: 'lifejacket',
      source: 'the date on the firing heads',
    }),
    'due-lifejackets': due({
      title: 'Inflate and look over the lifejackets',
      consequence: 'danger',
      zone: 'cabin',
      every: months(12),
      usual: 'lifejacket-inflate',
      recipe: 'lifejacket',
      lastDone: day(-139),
    }),
    'due-extinguisher': due({
      title: 'Extinguisher in the cabin: gauge, seal and weight',
      consequence: 'danger',
      zone: 'cabin',
      every: months(1),
      usual: 'extinguisher-look',
      recipe: 'extinguisher',
      lastDone: day(-47),
    }),
    'due-first-aid': due({
      title: 'First-aid kit: what is in it',
      consequence: 'comfort',
      zone: 'cabin',
      every: months(12),
      usual: 'first-aid',
      recipe: 'first-aid',
      lastDone: day(-310),
    }),
    'due-bearings': due({
      title: 'Grease the wheel bearings',
      consequence: 'danger',
      zone: 'trailer',
      every: months(12),
      uses: [{ use: 'tow', count: 8 }],
      usual: 'wheel-bearings',
      recipe: 'wheel-bearings',
      source: 'custom of the trade; the tows are the keeper’s own rule, for a salt ramp',
      lastDone: day(-200),
    }),
    'due-tyres': due({
      title: 'Trailer tyres',
      consequence: 'danger',
      zone: 'trailer',
      every: years(5),
      condition: { measure: 'tread', unit: 'mm', limit: 2, way: 'falls', within: 0.2 },
      usual: 'trailer-tyres',
      recipe: 'trailer-tyres',
      source: 'week and year on the tyre walls',
      lastDone: day(-1240),
    }),
    'due-winch-strap': due({
      title: 'Winch strap of the trailer',
      consequence: 'danger',
      zone: 'trailer',
      every: years(2),
      uses: [{ use: 'launch', count: 30 }],
      usual: 'winch-strap',
      recipe: 'winch-strap',
      lastDone: day(-420),
    }),
    'due-rig': due({
      title: 'Look all over the standing rigging',
      consequence: 'danger',
      zone: 'mast',
      every: months(12),
      condition: { measure: 'broken strands', unit: '', limit: 1, way: 'rises', within: 0 },
      usual: 'rig-look',
      recipe: 'rig-look-over',
      lastDone: day(-190),
    }),
    'due-board-wire': due({
      title: 'Lifting wire of the board',
      consequence: 'stops-sailing',
      zone: 'board-case',
      fitting: 'wire-board',
      every: years(3),
      uses: [{ use: 'sail', count: 60 }],
      usual: 'board-wire',
      recipe: 'board-wire',
      lastDone: day(-760),
    }),
    'due-anchor-shackle': due({
      title: 'Anchor shackle: mousing and wear',
      consequence: 'danger',
      zone: 'bow',
      fitting: 'anchor-shackle',
      every: months(12),
      uses: [{ use: 'night', count: 20 }],
      usual: 'anchor-shackle',
      recipe: 'anchor-shackle',
      lastDone: day(-230),
    }),
    'due-outboard': due({
      title: 'Yearly service of the outboard',
      consequence: 'worsens',
      zone: 'transom',
      every: months(12),
      uses: [{ use: 'engine-hours', count: 100 }],
      usual: 'outboard',
      recipe: 'engine-service',
      source: 'handbook of the engine',
      lastDone: day(-322),
    }),
    'due-zinc': due({
      title: 'Zinc on the outboard’s leg',
      consequence: 'worsens',
      zone: 'transom',
      condition: { measure: 'zinc left', unit: '%', limit: 50, way: 'falls', within: 5 },
      usual: 'anode',
      source: 'custom: renewed when half is gone',
      lastDone: day(-322),
    }),
    'due-varnish': due({
      title: 'Maintenance coats on the brightwork',
      consequence: 'worsens',
      zone: 'cockpit',
      season: '04-15',
      usual: 'varnish',
      recipe: 'varnish-maintenance',
      lastDone: day(-340),
    }),
    'due-window-seals': due({
      title: 'Window seals',
      consequence: 'worsens',
      zone: 'cabin',
      every: years(8),
      usual: 'window-seals',
      recipe: 'window-seal',
    }),
  };
}

/** Days before today, and what: a season on a trailer. */
const kept: readonly (readonly [number, UseRecord['use'], number])[] = [
  ...[-352, -341, -333, -301, -288, -262, -241, -213, -188, -151, -120, -96, -61, -13].map(
    (n) => [n, 'sail', 1] as const,
  ),
  ...[-352, -333, -188, -166, -151, -120, -96, -61, -13].map((n) => [n, 'tow', 1] as const),
  ...[-352, -333, -188, -151, -120, -96, -61, -13].map((n) => [n, 'launch', 1] as const),
  ...(
    [
      [-341, 2],
      [-262, 1],
      [-241, 3],
      [-13, 1],
    ] as const
  ).map(([n, nights]) => [n, 'night', nights] as const),
  ...(
    [
      [-341, 4.5],
      [-262, 3],
      [-188, 2.5],
      [-96, 4],
      [-13, 2],
    ] as const
  ).map(([n, hours]) => [n, 'engine-hours', hours] as const),
];

export function demoUses({ day }: DemoDates): Book['uses'] {
  const uses = [...kept]
    .sort(([a], [b]) => a - b)
    .map(
      ([n, use, count], i): UseRecord => ({
        use,
        on: day(n),
        count,
        entered: `${day(n)}T19:00:00Z`,
        note: '',
        order: i + 1,
      }),
    );
  return Object.fromEntries(uses.map((use) => [contentId(use), use]));
}

export function demoDueMeasures({ day }: DemoDates): Book['dueMeasures'] {
  const measures = (
    [
      [-1240, 'due-tyres', 7.5],
      [-300, 'due-tyres', 5.6],
      [-13, 'due-tyres', 5.1],
      [-322, 'due-zinc', 100],
      [-61, 'due-zinc', 70],
      [-190, 'due-rig', 0],
    ] as const
  )
    .toSorted(([a], [b]) => a - b)
    .map(
      ([n, of, value], i): DueMeasure => ({
        due: of,
        on: day(n),
        value,
        entered: `${day(n)}T18:00:00Z`,
        note: '',
        order: i + 1,
      }),
    );
  return Object.fromEntries(measures.map((measure) => [contentId(measure), measure]));
}
