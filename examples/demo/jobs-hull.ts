/** Work on hull, deck, rudder, board and paint. */
import { cureLawOf, recoatFigures } from '#materials';
import { boardLowered, coverOff, type DemoDates, type DemoJob, job, one, propped, step, wait } from './writing.ts';

const sandingDust = 'Sanding dust: mask and goggles.';
const epoxyCare = 'Gloves and goggles: skin that takes to epoxy never leaves it. Do not leave a full pot standing.';
const varnishCare =
  'The hardener holds isocyanates: brush only, air through, no flame. Lay rags out flat outdoors; in a heap they catch fire by themselves.';
const underHer = 'Stands on both sides before anyone reaches under her. No hand or foot under the board.';

const varnish = cureLawOf('varnish-two-pot').law;
const varnishReady_h = 'atReference_min' in varnish ? varnish.atReference_min / 60 : 0;
const varnishLatest_h = recoatFigures.find((row) => row.product === 'varnish-two-pot')?.latest_h ?? varnishReady_h;
/** From ready for the next coat to too hard for it. [min] */
const recoatWindow_min = Math.round((varnishLatest_h - varnishReady_h) * 60);

/** Coats go on in the dry, clear of the dew, and stand two hours before the cover may touch them. */
const coatNeeds = { dry: true, air_min_C: 12, humidity_max_pct: 80, dewMargin_min_C: 3, daylight: true } as const;
const coat = (n: string) => [
  wait(
    `${n}-touch-dry`,
    'Touch dry, cover off it',
    { kind: 'set time', minutes: 120, from: 'the tin' },
    { needs: { dry: true }, setUps: [coverOff], wet: true },
  ),
  wait(`${n}-ready`, 'Hardens', varnish, { needs: { dry: true } }),
];

export const hullJobs = ({ day }: DemoDates): DemoJob[] => [
  job(
    'board-wire',
    'Renew the board lifting wire',
    {
      why: 'Eleven strands are broken at the thimble. The board weighs 62 kg and would drop.',
      zone: 'board-case',
      fitting: 'wire-board',
      consequence: 'danger',
      opened: day(-25),
      outing: 'outer-bar',
      said: 'board wire has broken strands, renew it, board lowered, not alone',
    },
    [
      step('Strop the board, unreeve the wire', 20, {
        setUps: [propped, boardLowered],
        notAlone: true,
        cautions: [underHer],
      }),
      step('Make up the new wire', 35, {
        zone: 'cabin',
        tools: [one('swage-tool')],
        stores: ['board-wire-new'],
        follows: [],
        cautions: ['Goggles and gloves: wire ends spring and stab.'],
      }),
      step('Reeve it and shackle the board on', 30, {
        setUps: [propped, boardLowered],
        notAlone: true,
        cautions: [underHer],
        follows: [
          { step: 'board-wire-1', wait: null, least_min: 0, greatest_min: null, past: { kind: 'forbidden' } },
          { step: 'board-wire-2', wait: null, least_min: 0, greatest_min: null, past: { kind: 'forbidden' } },
        ],
      }),
      step('Hoist and lower it three times', 20, {
        hands: 2,
        setUps: [propped, boardLowered],
        notAlone: true,
        cautions: [underHer, 'Pawl in: a winch handle let go kicks back.'],
      }),
    ],
  ),
  job(
    'drain-ring',
    'Rebed the transom drain ring',
    {
      why: 'Under water afloat, and the sealant peels: she took 4 litres a day.',
      zone: 'transom',
      fitting: 'ring-drain',
      consequence: 'stops-sailing',
      opened: day(-45),
      outing: 'outer-bar',
      said: 'drain ring leaks, take off and rebed before she floats',
    },
    [
      step('Take the drain ring off', 15, { keeper: false }),
      step('Clean it back to bare glass', 20, {
        keeper: false,
        needs: { dry: true },
        dusty: true,
        cautions: [sandingDust],
      }),
      step('Bed the ring', 25, {
        needs: { dry: true, air_min_C: 5 },
        tools: [one('seal-gun')],
        stores: ['sealant'],
        takes: [{ store: 'sealant', amount: 20, unit: 'ml' }],
        waits: [wait('ring-seal', 'Sealant cures before she floats', cureLawOf('polyurethane-sealant').law)],
      }),
    ],
  ),
  job(
    'coaming-varnish',
    'Varnish the coamings',
    {
      why: 'Bare at the forward corners; the wood greys and swells.',
      zone: 'cockpit',
      consequence: 'worsens',
      opened: day(-150),
      said: 'coamings need two coats of varnish',
    },
    [
      step('Sand the coamings', 30, {
        setUps: [coverOff],
        keeper: false,
        needs: { dry: true },
        tools: [one('sander')],
        dusty: true,
        cautions: [sandingDust],
      }),
      step('Mask and wipe them down', 20, { keeper: false, setUps: [coverOff], needs: { dry: true } }),
      step('First coat', 25, {
        setUps: [coverOff],
        needs: coatNeeds,
        stores: ['varnish'],
        takes: [{ store: 'varnish', amount: 90, unit: 'ml' }],
        wet: true,
        cautions: [varnishCare],
        waits: coat('coat1'),
      }),
      step('Second coat', 25, {
        setUps: [coverOff],
        needs: coatNeeds,
        stores: ['varnish'],
        takes: [{ store: 'varnish', amount: 90, unit: 'ml' }],
        wet: true,
        cautions: [varnishCare],
        waits: coat('coat2'),
        follows: [
          {
            step: 'coaming-varnish-3',
            wait: 'coat1-ready',
            least_min: 0,
            greatest_min: recoatWindow_min,
            past: { kind: 'abrade', minutes: 25 },
          },
          {
            step: 'coaming-varnish-3',
            wait: 'coat1-touch-dry',
            least_min: 0,
            greatest_min: null,
            past: { kind: 'forbidden' },
          },
        ],
      }),
    ],
  ),
  job(
    'rudder-chips',
    'Fill the rudder blade',
    {
      why: 'Chipped to the cloth at the tip; water gets in and it splits.',
      zone: 'trestles',
      consequence: 'worsens',
      opened: day(-90),
      said: 'rudder tip chipped, fill and fair',
    },
    [
      step('Sand the chips back', 20, {
        needs: { dry: true },
        tools: [one('sander')],
        keeper: false,
        dusty: true,
        cautions: [sandingDust],
      }),
      step('Fill the chips', 25, {
        needs: { dry: true, air_min_C: 10 },
        stores: ['epoxy-kit', 'filler'],
        takes: [{ store: 'epoxy-kit', amount: 60, unit: 'g' }],
        mix: 'epoxy',
        cautions: [epoxyCare],
        waits: [wait('rudder-cure', 'Filler hardens', cureLawOf('epoxy-fast').law)],
      }),
      step('Sand it fair', 25, {
        needs: { dry: true },
        tools: [one('sander')],
        keeper: false,
        dusty: true,
        cautions: [sandingDust],
      }),
    ],
  ),
  job(
    'topside-chips',
    'Fill the chips in the topsides',
    {
      why: 'Three chips down to the glass by the port quarter.',
      zone: 'topsides',
      consequence: 'worsens',
      opened: day(-60),
      said: 'chips in the topsides, port quarter',
    },
    [
      step('Grind the chips clean', 20, {
        keeper: false,
        needs: { dry: true },
        tools: [one('drill')],
        dusty: true,
        cautions: [sandingDust],
      }),
      step('Fill them flush', 25, {
        needs: { dry: true, air_min_C: 10 },
        stores: ['epoxy-kit', 'filler'],
        takes: [{ store: 'epoxy-kit', amount: 40, unit: 'g' }],
        mix: 'epoxy',
        cautions: [epoxyCare],
        waits: [wait('topside-cure', 'Filler hardens', cureLawOf('epoxy-fast').law)],
      }),
      step('Sand and polish', 30, {
        needs: { dry: true },
        tools: [one('sander')],
        keeper: false,
        dusty: true,
        cautions: [sandingDust],
      }),
    ],
  ),
  job(
    'forehatch-seal',
    'Renew the forehatch seal',
    {
      why: 'Wets the berth in any sea; taped for now.',
      zone: 'foredeck',
      consequence: 'worsens',
      opened: day(-80),
      said: 'forehatch leaks, new seal',
    },
    [
      step('Peel the old seal and clean', 30, { setUps: [coverOff], cautions: ['Solvent: gloves, hatch open.'] }),
      step('Fit the new seal and hose it', 35, {
        setUps: [coverOff],
        needs: { dry: true },
        features: ['water'],
        tools: [one('hose')],
        stores: ['hatch-seal'],
      }),
    ],
  ),
  job(
    'window-gasket',
    'New gasket in the port window',
    {
      why: 'Weeps in driving rain.',
      zone: 'cabin',
      consequence: 'comfort',
      opened: day(-30),
      said: 'port window gasket',
    },
    [
      step('Take the window out', 40, { setUps: [coverOff], needs: { dry: true } }),
      step('Fit gasket and window', 60, { setUps: [coverOff], needs: { dry: true }, stores: ['window-gasket'] }),
    ],
  ),
  job(
    'foredeck-grip',
    'Grip paint on the foredeck',
    {
      why: 'Slippery where the anchor is worked.',
      zone: 'foredeck',
      consequence: 'worsens',
      opened: day(-10),
      said: 'foredeck slippery, grip paint',
    },
    [
      step('Sand and wash the foredeck', 40, {
        setUps: [coverOff],
        keeper: false,
        needs: { dry: true },
        tools: [one('sander')],
        dusty: true,
        cautions: [sandingDust],
      }),
      step('Lay it on, keeping a wet edge', 200, {
        setUps: [coverOff],
        needs: { dry: true, air_min_C: 16, wind_max_kn: 12 },
        stores: ['grip-paint'],
        wet: true,
        cautions: ['Solvent vapour: no flame, air through.'],
        waits: [
          wait(
            'grip-dry',
            'Dry to tread on',
            { kind: 'set time', minutes: 12 * 60, from: 'the tin' },
            { needs: { dry: true }, wet: true },
          ),
        ],
      }),
    ],
  ),
];
