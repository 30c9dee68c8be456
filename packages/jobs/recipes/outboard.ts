/** Outboard. Minutes are common practice; the maker's handbook wins. */
import {
  always,
  care,
  each,
  followUp,
  lasts,
  nextOuting,
  number,
  proof,
  recipesOf,
  size,
  step,
  store,
} from './writing.ts';

export const outboard = recipesOf({
  'gear-oil': {
    title: 'Change the outboard’s gear oil',
    group: 'outboard',
    words: ['gear oil', 'lower unit', 'milky oil', 'gearbox'],
    when: 'Every 12 months or 100 hours, before frost above all; milky oil is water, and wants seals.',
    consequence: 'worsens',
    zones: ['transom', 'outboard'],
    asks: [size('oil', 'gear oil it holds', 'l', 0.05, 1.5), number('washers', 'drain and vent screws', 1, 3)],
    steps: [
      step('Leg upright, drain screw out over a tray, then the vent, and look at what comes', [10, 20, 35], {
        tools: ['screwdriver'],
        cautions: [
          'Kill-cord off and plug leads off before a hand is near the propeller. Used oil to the collecting point.',
        ],
        waits: [lasts('Leg drains', 30, 'half an hour is common practice')],
      }),
      step(
        'Pump new oil in from below until it stands at the vent without bubbles, vent screw first, then drain',
        [10, 15, 25],
        {
          stores: [
            store('Outboard gear oil, grade as the handbook', 'gear oil', each('oil', 1.1, 0, 'l'), {
              holds: 0.25,
              word: 'tube',
            }),
            store('Sealing washers for the drain screws', 'washers drain', each('washers')),
          ],
        },
      ),
      step('Propeller off, grease its shaft, cut any fishing line from behind it, new split pin', [10, 20, 35], {
        tools: ['spanners'],
        stores: [store('Split pin for the propeller', 'split pin propeller', always(1, '', 'one holds the nut'))],
        cautions: ['Wedge the blade with wood: bare edges cut a hand that slips.'],
      }),
    ],
    proof: proof(
      'look',
      'Leave it standing on clean card overnight: no drop at either screw or at the shaft',
      [5, 5, 10],
      { waits: [lasts('Leg stands on card', 720, 'overnight; common practice')] },
    ),
    followUps: [],
    writeDown: ['colour of the old oil', 'filings on the screw’s magnet', 'engine hours'],
  },
  impeller: {
    title: 'Change the water-pump impeller',
    group: 'outboard',
    words: ['impeller', 'water pump', 'no tell-tale', 'overheats'],
    when: 'Every 12 to 24 months, or when the tell-tale runs thin or hot.',
    consequence: 'stops-sailing',
    zones: ['transom', 'outboard'],
    asks: [number('engines', 'engines', 1, 2)],
    steps: [
      step('Shift into the gear the handbook says, undo the leg’s bolts and ease it down square', [20, 35, 60], {
        tools: ['socket set'],
        notAlone: true,
        cautions: ['The leg drops when the shift rod lets go: one holds it. Plug leads off.'],
      }),
      step('Open the pump, count the vanes, and hunt any lost one up the water tube', [10, 20, 40], {
        tools: ['socket set'],
      }),
      step('Turn the new impeller in clockwise with soapy fingers, key seated, gaskets dry', [10, 20, 35], {
        stores: [store('Impeller kit for this engine', 'impeller', each('engines'))],
      }),
      step(
        'Spline greased, leg up square with the tube in its grommet, bolts in turn to the book’s torque',
        [20, 30, 50],
        {
          notAlone: true,
          tools: ['torque wrench'],
          cautions: ['Fingers out of the joint as it closes.'],
          stores: [store('Spline grease', 'spline grease', each('engines', 5, 0, 'g'))],
        },
      ),
    ],
    proof: proof(
      'run',
      'Run the engine in a tub, water above the plate: a pencil-thick jet within half a minute, body no more than hand-hot',
      [10, 15, 20],
      { features: ['water'], cautions: [care.running] },
    ),
    followUps: [],
    writeDown: ['vanes found or missing', 'engine hours', 'part number'],
  },
  'fuel-system': {
    title: 'Clean the outboard’s fuel system',
    group: 'outboard',
    words: ['carburettor', 'stale petrol', 'will not start', 'hunts', 'fuel filter'],
    when: 'It starts and dies, hunts at half throttle, or petrol has stood in it over 1 to 3 months.',
    consequence: 'stops-sailing',
    zones: ['transom', 'outboard'],
    asks: [size('tank', 'fuel in the tank', 'l', 0.5, 25), number('bowls', 'carburettor bowls', 1, 4)],
    steps: [
      step('Empty the tank into a can through a funnel with a filter, outdoors', [10, 15, 25], {
        cautions: [care.petrol, 'Earth the can to the ground, never fill it on a plastic floor or in a car boot.'],
      }),
      step('Renew the fuel filter and any hose that is hard or weeps at its clip', [10, 20, 35], {
        stores: [store('Inline fuel filter', 'fuel filter', always(1, '', 'one in the line'))],
        cautions: [care.petrol],
      }),
      step('Drop the bowls, blow each jet clear with carburettor cleaner, never a wire', [20, 40, 75], {
        tools: ['screwdriver'],
        stores: [store('Carburettor cleaner and bowl gaskets', 'carburettor', each('bowls'))],
        cautions: [care.petrol, 'Cleaner spits back out of jets: goggles, gloves.'],
      }),
      step('Fresh petrol with stabiliser, and bulb up to hard', [5, 10, 15], {
        stores: [store('Fuel stabiliser', 'stabiliser', each('tank', 2.5, 0, 'ml'))],
        cautions: [care.petrol],
      }),
    ],
    proof: proof(
      'run',
      'Start the engine cold in the tub and leave it idling five minutes: no hunting, no smell, hoses dry',
      [10, 15, 20],
      { features: ['water'], cautions: [care.running, care.petrol] },
    ),
    followUps: [],
    writeDown: ['what was in the bowls', 'day of the petrol'],
  },
  'engine-service': {
    title: 'Give the outboard its yearly service',
    group: 'outboard',
    words: ['outboard service', 'spark plugs', 'engine oil', 'anode', 'yearly service'],
    when: 'Every 12 months or 100 hours, whichever comes first.',
    consequence: 'stops-sailing',
    zones: ['transom', 'outboard'],
    asks: [number('plugs', 'spark plugs', 1, 4), size('oil', 'engine oil it holds', 'l', 0, 3)],
    steps: [
      step('Warm it through in fresh water, stop, and drain engine oil while it is thin', [15, 20, 30], {
        features: ['water'],
        cautions: [care.running, 'Hot oil scalds: gloves, the tray set first.'],
        waits: [lasts('Oil runs out', 20, 'twenty minutes is common practice')],
        stores: [
          store('Engine oil, grade as the handbook', 'engine oil', each('oil', 1, 0.1, 'l'), {
            holds: 1,
            word: 'bottle',
          }),
        ],
      }),
      step('Read the plugs for colour, gap new ones by the book, oil the threads lightly', [10, 15, 25], {
        tools: ['plug spanner'],
        stores: [store('Spark plugs by their number', 'spark plugs', each('plugs'))],
        cautions: ['Engine cold: a plug out of a hot head takes the thread with it.'],
      }),
      step('Change anodes that are half gone, scraped to bright metal beneath, never painted', [10, 20, 30], {
        stores: [store('Engine anode', 'anode', always(1, '', 'one on a small leg'))],
      }),
      step('Grease tilt, steering and clamp screws until clean grease shows', [10, 15, 25], {
        stores: [store('Waterproof grease', 'waterproof grease', each('plugs', 20, 20, 'g'))],
      }),
    ],
    proof: proof(
      'run',
      'Start the engine, pull the kill-cord: it dies at once; without the clip it will not start at all',
      [5, 10, 15],
      { features: ['water'], cautions: [care.running] },
    ),
    followUps: [],
    writeDown: ['engine hours', 'plug number and gap', 'anode left'],
  },
  'clamp-bracket': {
    title: 'Secure the outboard on its bracket',
    group: 'outboard',
    words: ['outboard bracket', 'clamps loose', 'outboard pad', 'safety lanyard'],
    when: 'It jumps in a chop, its pad is crushed, or its clamps back off under way.',
    consequence: 'danger',
    zones: ['transom'],
    asks: [number('bolts', 'bracket bolts', 2, 8), size('lanyard', 'length of lanyard', 'm', 0.5, 3)],
    steps: [
      step('Lift the outboard off by two, and look behind the transom at washers and wood', [10, 20, 35], {
        notAlone: true,
        cautions: ['Lift with bent knees, fuel tap and vent shut, a line on it first.'],
      }),
      step('Face the pad with new ply, and double the backing where washers have sunk', [25, 45, 80], {
        dusty: true,
        tools: ['saw'],
        stores: [
          store('Marine ply pad and backing', 'marine ply', always(1, '', 'one pad')),
          store('Bracket bolts, A4', 'bracket bolts', each('bolts')),
        ],
        cautions: [care.dust],
      }),
      step('Hang it, clamps hand tight with a locking bar through both, lanyard to a through-bolt', [10, 15, 25], {
        notAlone: true,
        stores: [store('Lanyard with hard eye', 'lanyard', each('lanyard', 1, 0.2, 'm'))],
        cautions: ['Until the clamps bite only the line and your arms hold it: stand beside, not below.'],
      }),
    ],
    proof: proof('load', 'Heave it up by the leg and twist at full tilt: bracket and transom move as one', [5, 5, 10]),
    followUps: [
      followUp(
        'Hand-tighten the outboard’s clamps after its first hour',
        [5, 5, 5],
        'New ply crushes a little and the clamps go slack.',
        nextOuting(30),
        'danger',
      ),
    ],
    writeDown: ['lanyard’s strong point', 'weight of the engine'],
  },
});
