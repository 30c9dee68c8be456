/** Work below, on the electrics and the trailer. */
import { type DemoDates, type DemoJob, job, one, step } from './writing.ts';

const negativeFirst = 'Negative off first and on last; no spanner across the terminals, rings and watch off.';

export const belowJobs = ({ day }: DemoDates): DemoJob[] => [
  job(
    'battery-fuse',
    'Fit a fuse at the battery',
    {
      why: 'The main lead has no fuse: a chafed wire could set her on fire.',
      zone: 'cabin',
      fitting: 'battery',
      consequence: 'danger',
      opened: day(-12),
      said: 'no fuse at the battery, fit one, danger',
    },
    [
      step('Mount the fuse holder', 25, { tools: [one('drill')] }),
      step('Cut it into the positive lead', 30, {
        tools: [one('crimper')],
        stores: ['fuse', 'terminals'],
        cautions: [negativeFirst],
      }),
      step('Load it and feel for warmth', 10, { tools: [one('meter')] }),
    ],
  ),
  job(
    'battery-leads',
    'Clean and re-end the battery leads',
    {
      why: 'Green at the terminals, and the volts drop when the pump runs.',
      zone: 'cabin',
      fitting: 'battery',
      consequence: 'worsens',
      opened: day(-160),
      said: 'battery leads green',
    },
    [
      step('Take the leads off and clean them', 20, {
        cautions: [negativeFirst, 'Lead batteries give off gas that burns: hatch open, no spark.'],
      }),
      step('Crimp new ends and grease them', 30, {
        tools: [one('crimper')],
        stores: ['terminals'],
        cautions: [negativeFirst],
      }),
    ],
  ),
  job(
    'stern-light',
    'Mend the stern light',
    {
      why: 'Dark since the last night sail: not lawful after sunset.',
      zone: 'transom',
      consequence: 'unlawful',
      opened: day(-28),
      outing: 'outer-bar',
      said: 'stern light out',
    },
    [
      step('Follow its circuit with the meter', 20, { zone: 'cabin', tools: [one('meter')] }),
      step('Make the bad joint new', 30, {
        needs: { dry: true },
        tools: [one('crimper')],
        stores: ['terminals'],
        cautions: ['Switch the circuit off at the battery.'],
      }),
    ],
  ),
  job(
    'wheel-bearings',
    'Grease the trailer bearings',
    {
      why: 'Due by date, and the left hub ran warm: a seized wheel comes off on the road.',
      zone: 'trailer',
      consequence: 'stops-sailing',
      opened: day(-40),
      due: day(20),
      said: 'left hub warm, grease both bearings before the tow',
      fromDue: 'due-bearings',
      recipe: 'wheel-bearings',
    },
    [
      step('Left wheel: off, clean, grease', 35, {
        keeper: false,
        needs: { dry: true },
        setUps: [{ setUp: 'boat', states: ['trailer'] }],
        tools: [one('jack'), one('sockets')],
        stores: ['grease', 'split-pins'],
        cautions: ['Other wheel chocked, axle on a stand: never under it on the jack alone.'],
      }),
      step('Right wheel: off, clean, grease', 35, {
        keeper: false,
        needs: { dry: true },
        setUps: [{ setUp: 'boat', states: ['trailer'] }],
        tools: [one('jack'), one('sockets')],
        stores: ['grease', 'split-pins'],
        cautions: ['Other wheel chocked, axle on a stand: never under it on the jack alone.'],
      }),
      step('Spin both and torque the nuts', 15, {
        keeper: false,
        setUps: [{ setUp: 'boat', states: ['trailer'] }],
        tools: [one('sockets')],
      }),
    ],
  ),
  job(
    'berth-lining',
    'Line the quarter berth',
    {
      why: 'Bare glass sweats on the bedding.',
      zone: 'cabin',
      consequence: 'comfort',
      opened: day(-240),
      said: 'line the quarter berth',
    },
    [
      step('Cut the lining to a pattern', 80, { stores: ['lining'] }),
      step('Glue it up', 90, {
        cautions: ['Contact glue: hatches open, no flame, a mask for organic vapour.'],
      }),
      step('Trim and edge it', 60, {}),
    ],
  ),
];
