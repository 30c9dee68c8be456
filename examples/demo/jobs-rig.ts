/** Work on mast, rigging and ground tackle. */
import { cureLawOf } from '#materials';
import { coverOff, type DemoDates, type DemoJob, job, mast, one, step, wait } from './writing.ts';

const sandingDust = 'Sanding dust: mask and goggles.';
const epoxyCare = 'Gloves and goggles: skin that takes to epoxy never leaves it. Do not leave a full pot standing.';

export const rigJobs = ({ day }: DemoDates): DemoJob[] => [
  job(
    'shroud-plate',
    'Rebed the starboard shroud plate',
    {
      why: 'Water gets in round the bolts and into the core. If the plate pulls, the mast goes over the side.',
      zone: 'side-deck',
      fitting: 'plate-starboard',
      consequence: 'danger',
      opened: day(-70),
      outing: 'outer-bar',
      said: 'starboard shroud plate weeps, take it off and rebed, mast down, danger',
    },
    [
      step('Take the shroud plate off', 30, { setUps: [mast('down'), coverOff], tools: [one('sockets')] }),
      step('Drill out and dig back the core', 35, {
        setUps: [coverOff],
        needs: { dry: true },
        tools: [one('drill')],
        dusty: true,
        cautions: [sandingDust],
      }),
      step('Fill the holes with thick epoxy', 30, {
        setUps: [coverOff],
        needs: { dry: true, air_min_C: 10 },
        stores: ['epoxy-kit', 'filler'],
        takes: [{ store: 'epoxy-kit', amount: 50, unit: 'g' }],
        mix: 'epoxy',
        cautions: [epoxyCare],
        waits: [wait('plug-cure', 'Plugs harden', cureLawOf('epoxy-fast').law, { needs: { dry: true } })],
      }),
      step('Drill through the plugs', 25, {
        setUps: [coverOff],
        needs: { dry: true },
        tools: [one('drill')],
        dusty: true,
        cautions: [sandingDust],
      }),
      step('Bed the plate and pull it up', 40, {
        setUps: [mast('down'), coverOff],
        needs: { dry: true, air_min_C: 5 },
        tools: [one('seal-gun'), one('sockets')],
        stores: ['sealant', 'bolts-m8'],
        takes: [
          { store: 'sealant', amount: 14, unit: 'ml' },
          { store: 'bolts-m8', amount: 4, unit: '' },
        ],
        waits: [
          wait('plate-seal', 'Sealant cures through', cureLawOf('polyurethane-sealant').law, {
            setUps: [mast('down')],
          }),
        ],
      }),
      step('Load the plate and hose it', 20, {
        setUps: [mast('up'), coverOff],
        features: ['water'],
        tools: [one('hose')],
        cautions: ['Stand clear of the line of the shroud while it is loaded.'],
      }),
    ],
  ),
  job(
    'masthead-sheave',
    'Renew the masthead sheave',
    {
      why: 'The main halyard has cut into the cheek and jams.',
      zone: 'mast',
      fitting: 'sheave-masthead',
      consequence: 'stops-sailing',
      opened: day(-35),
      outing: 'outer-bar',
      said: 'main halyard jams at the masthead, new sheave, mast down',
    },
    [
      step('Drive the old sheave pin out', 20, {
        setUps: [mast('down'), coverOff],
        cautions: ['Goggles: a brittle pin can splinter.'],
      }),
      step('Fit the new sheave and pin', 20, { setUps: [mast('down'), coverOff], stores: ['sheave'] }),
      step('Reeve the main halyard', 15, { setUps: [mast('down'), coverOff], keeper: false }),
      step('Hoist the main to prove it', 15, {
        setUps: [mast('up'), coverOff],
        needs: { dry: true, wind_max_kn: 10 },
        cautions: ['Sheet free and bow to the wind on the trailer; wheels chocked.'],
      }),
    ],
  ),
  job(
    'masthead-light',
    'Rewire the masthead light',
    {
      why: 'No light at anchor or under the motor at night.',
      zone: 'mast',
      fitting: 'light-masthead',
      consequence: 'unlawful',
      opened: day(-120),
      outing: 'outer-bar',
      said: 'masthead light dead, new cable in the mast',
    },
    [
      step('Pull the new cable in on the old', 35, { setUps: [mast('down'), coverOff], stores: ['mast-cable'] }),
      step('Crimp, seal and fit the light', 30, {
        setUps: [mast('down'), coverOff],
        needs: { dry: true },
        tools: [one('crimper')],
        stores: ['terminals'],
        cautions: ['Hot air for the sleeves: not near the epoxy or the paint.'],
      }),
      step('Light it from the deck plug', 10, { setUps: [mast('up')], tools: [one('meter')] }),
    ],
  ),
  job(
    'rig-tune',
    'Set the rig up and lock it',
    {
      why: 'The plate has been off and the screws are only hand tight.',
      zone: 'side-deck',
      consequence: 'stops-sailing',
      opened: day(-20),
      outing: 'outer-bar',
      afterJobs: ['shroud-plate'],
      said: 'set the rig up again after the plate',
    },
    [
      step('Set rake and shroud tension', 35, {
        setUps: [mast('up'), coverOff],
        needs: { wind_max_kn: 10 },
        tools: [one('gauge')],
        cautions: ['A loaded screw let go springs: turn it, do not lever it.'],
      }),
      step('Pin and mouse the screws', 15, { setUps: [mast('up'), coverOff], stores: ['seizing-wire'] }),
    ],
  ),
  job(
    'reef-line',
    'Reeve a new reefing line',
    {
      why: 'The old one is too short to reef without going forward.',
      zone: 'mast',
      consequence: 'worsens',
      opened: day(-200),
      said: 'longer reefing line',
    },
    [
      step('Measure its run with the mast up', 10, { setUps: [mast('up'), coverOff] }),
      step('Cut, whip and reeve it', 30, {
        stores: ['reef-cord'],
        takes: [{ store: 'reef-cord', amount: 9, unit: 'm' }],
        setUps: [coverOff],
        cautions: ['Hot knife: air through, and off the deck.'],
      }),
      step('Try the reef under sail', 25, {
        setUps: [mast('up'), coverOff],
        needs: { dry: true, wind_max_kn: 10 },
      }),
    ],
  ),
  job(
    'anchor-rode',
    'Make the anchor rode good',
    {
      why: 'Shackle thin and not moused, thimble cracked: she could drag off the mooring ground at night.',
      zone: 'bow',
      fitting: 'anchor-shackle',
      consequence: 'stops-sailing',
      opened: day(-15),
      outing: 'outer-bar',
      said: 'anchor shackle and thimble worn, renew before the outing',
    },
    [
      step('Flake it out and look at each link', 25, {
        keeper: false,
        setUps: [coverOff],
        cautions: ['Gloves. Lift with the legs: chain and anchor weigh 17 kg.'],
      }),
      step('Splice in a new thimble', 45, { stores: ['thimble'], zone: 'cabin' }),
      step('Fit the new shackle and mouse it', 20, {
        setUps: [coverOff],
        stores: ['anchor-shackle-new', 'seizing-wire'],
      }),
      step('Mark the rode every 5 m', 25, {
        keeper: false,
        setUps: [coverOff],
        needs: { dry: true },
        wet: true,
        waits: [
          wait(
            'marks-dry',
            'Marks dry',
            { kind: 'set time', minutes: 60, from: 'the tin' },
            { needs: { dry: true }, wet: true },
          ),
        ],
      }),
    ],
  ),
];
