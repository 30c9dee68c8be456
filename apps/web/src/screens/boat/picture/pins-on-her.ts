/** What stands on the boat's picture, and where: work, jury rigs, dues, load paths, circuits, fittings, zones. */
import type { Book, Id, Spot } from '#boat-book';
import { type BoatSizes, type PlaceOnBoat, type Point, placesIn, type Stance, type View } from '#picture';
import {
  circuitsTold,
  duesOfBook,
  dueWhen,
  type LoadPathTold,
  loadPathsTold,
  seenFirst,
  standingRigs,
} from '#reckoning';
import type { Meaning } from '../../../parts/mark.tsx';
import { openJobs } from '../../../reading/open-work.ts';
import { address } from '../../../shell/route.ts';
import { runOfPath } from './path-run.ts';

export const layers = ['jobs', 'jury rigs', 'dues', 'load paths', 'circuits', 'fittings', 'zones'] as const;
export type Layer = (typeof layers)[number];

/** One thing on her: what it is, and where a tap of it leads. */
export interface ThingOnHer {
  readonly key: string;
  /** null: it is only there, nothing is to be done with it */
  readonly meaning: Meaning | null;
  readonly title: string;
  readonly href: string;
}

/** All that stands at one place of hers. */
export interface PinOnHer {
  readonly key: string;
  readonly place: PlaceOnBoat;
  /** the fitting or zone whose place it is */
  readonly of: { readonly kind: 'fitting' | 'zone'; readonly id: Id; readonly name: string };
  readonly things: readonly ThingOnHer[];
  /** of the gravest of its things */
  readonly meaning: Meaning | null;
}

/** A line on her: where loads run, where current goes. */
export interface RunOnHer extends ThingOnHer {
  readonly layer: 'load paths' | 'circuits';
  readonly from: Point;
  readonly to: Point;
}

const gravest: readonly (Meaning | null)[] = [
  'danger',
  'unlawful',
  'stops-sailing',
  'jury rig',
  'worsens',
  'wait',
  'comfort',
  'go',
  null,
];
/** The graver of two meanings; null weighs nothing. */
export const graver = (a: Meaning | null, b: Meaning | null) => (gravest.indexOf(a) <= gravest.indexOf(b) ? a : b);

/** Where a fitting is: where it was placed, else where its zone is. */
function placeOfFitting(book: Book, id: Id): { readonly of: PinOnHer['of']; readonly place: Spot } | null {
  const fitting = book.fittings[id];
  if (!fitting) return null;
  if (fitting.spot) return { of: { kind: 'fitting', id, name: fitting.name }, place: fitting.spot };
  return placeOfZone(book, fitting.zone);
}

function placeOfZone(book: Book, id: Id): { readonly of: PinOnHer['of']; readonly place: Spot } | null {
  const zone = book.zones[id];
  return zone ? { of: { kind: 'zone', id, name: zone.name }, place: zone } : null;
}

/** Where a thing of a fitting or a zone is on her; null: neither has a place. */
export function placeOnHer(
  book: Book,
  fitting: Id | null,
  zone: Id | null,
): { readonly of: PinOnHer['of']; readonly place: Spot } | null {
  return (fitting === null ? null : placeOfFitting(book, fitting)) ?? (zone === null ? null : placeOfZone(book, zone));
}

/** The pins of the layers that are shown, each with all that stands at its place; and what has no place at all. */
export function pinsOnHer(
  book: Book,
  today: string,
  shown: ReadonlySet<Layer>,
): { readonly pins: readonly PinOnHer[]; readonly nowhere: readonly ThingOnHer[] } {
  const pins = new Map<string, { of: PinOnHer['of']; place: Spot; things: ThingOnHer[] }>();
  const nowhere: ThingOnHer[] = [];
  const put = (at: { readonly of: PinOnHer['of']; readonly place: Spot } | null, thing: ThingOnHer | null) => {
    if (at === null) {
      if (thing) nowhere.push(thing);
      return;
    }
    const key = `${at.of.kind} ${at.of.id}`;
    const pin = pins.get(key) ?? { ...at, things: [] };
    if (thing) pin.things.push(thing);
    pins.set(key, pin);
  };
  const placeOf = (fitting: Id | null, zone: Id | null) => placeOnHer(book, fitting, zone);

  if (shown.has('jury rigs'))
    for (const trust of standingRigs(book, today)) {
      const job = trust.rig.job === null ? undefined : book.jobs[trust.rig.job];
      put(placeOf(job?.fitting ?? null, trust.rig.zone ?? job?.zone ?? null), {
        key: `rig ${trust.id}`,
        meaning: seenFirst(trust) ? 'danger' : 'jury rig',
        title: `${trust.rig.title}: jury rig`,
        href: trust.rig.zone === null ? address('work') : address('boat', 'zone', trust.rig.zone),
      });
    }
  if (shown.has('jobs'))
    for (const { id, job } of openJobs(book))
      put(placeOf(job.fitting, job.zone), {
        key: `job ${id}`,
        meaning: job.consequence,
        title: job.title,
        href: address('work', 'job', id),
      });
  if (shown.has('dues'))
    for (const due of duesOfBook(book, today)) {
      if (due.stage !== 'past' && due.stage !== 'soon') continue;
      put(placeOf(due.due.fitting, due.due.zone), {
        key: `due ${due.id}`,
        meaning: due.stage === 'past' ? due.due.consequence : 'wait',
        title: `${due.due.title}. ${dueWhen(due, today)}`,
        href: address('go', 'dues', due.id),
      });
    }
  if (shown.has('fittings'))
    for (const [id, fitting] of Object.entries(book.fittings))
      if (fitting.spot)
        put(placeOfFitting(book, id), {
          key: `fitting ${id}`,
          meaning: null,
          title: fitting.name,
          href: address('boat', 'log', 'fitting', id),
        });
  if (shown.has('zones'))
    for (const id of Object.keys(book.zones)) if (!pins.has(`zone ${id}`)) put(placeOfZone(book, id), null);

  return {
    pins: [...pins].map(([key, pin]) => ({
      key,
      ...pin,
      meaning: pin.things.reduce<Meaning | null>((worst, { meaning }) => graver(worst, meaning), null),
    })),
    nowhere,
  };
}

const pathMeaning: Readonly<Record<LoadPathTold['verdict'], Meaning | null>> = {
  'does not hold': 'danger',
  unknown: 'worsens',
  holds: 'go',
  'no load': null,
};

/** Load paths and circuits as lines on her, in the metres of the drawing. Rigging is drawn only where the mast stands. */
export function runsOnHer(
  book: Book,
  today: string,
  shown: ReadonlySet<Layer>,
  { sizes, view, stance }: { readonly sizes: BoatSizes; readonly view: View; readonly stance: Stance },
): readonly RunOnHer[] {
  const placed = placesIn(sizes, view, stance);
  const runs: RunOnHer[] = [];
  if (shown.has('load paths'))
    for (const told of loadPathsTold(book, today)) {
      const record = book.loadPaths[told.id];
      if (!record) continue;
      const rigged = record.use === 'standing-rigging' || record.use === 'running-rigging';
      if (rigged && !stance.mastUp) continue;
      const [from, to] = runOfPath(book.boat, book.zones, record);
      const across = record.zone === null ? undefined : book.zones[record.zone]?.across;
      const flat = ({ x }: Point, side: number): Point => ({ x, y: (-side * sizes.beam_m) / 2 });
      runs.push({
        key: `path ${told.id}`,
        layer: 'load paths',
        meaning: pathMeaning[told.verdict],
        title: `${told.name}: ${told.verdict}`,
        href: address('boat', 'loads', 'path', told.id),
        from: view === 'plan' ? flat(from, 0) : from,
        to: view === 'plan' ? flat(to, across ?? 0) : to,
      });
    }
  if (shown.has('circuits'))
    for (const { id, circuits } of circuitsTold(book).batteries) {
      const source = book.batteries[id]?.zone;
      const start = source ? placeOfZone(book, source) : null;
      for (const told of circuits) {
        const zone = told.place.kind === 'circuit' ? book.circuits[told.place.id]?.zone : null;
        const end = zone ? placeOfZone(book, zone) : null;
        if (!start || !end) continue;
        runs.push({
          key: `circuit ${told.place.kind} ${told.place.id}`,
          layer: 'circuits',
          meaning: told.drawn.marks.some((mark) => mark === 'no fuse' || mark === 'fuse too far') ? 'danger' : null,
          title: `${told.name}: circuit${told.drawn.marks.includes('no fuse') ? ', no fuse' : ''}`,
          href: address('boat', 'circuits'),
          from: placed(start.place),
          to: placed(end.place),
        });
      }
    }
  return runs;
}
