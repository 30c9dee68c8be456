/** Cabin, lay-up and fit-out. Minutes are common practice. Gas systems are for licensed people. */
import {
  always,
  care,
  coats,
  coverOff,
  coverOn,
  each,
  followUp,
  inDays,
  lasts,
  mast,
  number,
  onTrailer,
  proof,
  recipesOf,
  size,
  step,
  store,
} from './writing.ts';

export const cabinAndSeasons = recipesOf({
  headlining: {
    title: 'Glue sagging headlining back',
    group: 'cabin',
    words: ['headlining', 'lining', 'saggy ceiling', 'carpet lining'],
    when: 'It hangs in bellies, or its foam comes away as sticky crumbs.',
    consequence: 'comfort',
    zones: ['cabin'],
    asks: [size('area', 'area to line', 'm²', 0.2, 12)],
    steps: [
      step('Peel the old lining down, wire-brush crumbs of foam off the glass, vacuum', [40, 75, 130], {
        dusty: true,
        cautions: [care.dust, 'Overhead work drops it in your eyes: goggles, cap, sleeves.'],
      }),
      step('Cut the new from a paper pattern, two fingers over all round', [20, 40, 70], {
        stores: [store('Foam-backed lining', 'lining', each('area', 1.2, 0, 'm²'))],
      }),
      step('Spread high-temperature contact adhesive thinly on both, a panel at a time', [30, 50, 80], {
        needs: { air_min_C: 12 },
        stores: [
          store('High-temperature contact adhesive', 'contact adhesive', coats('area', 2, 5, 'contact-adhesive'), {
            holds: 1,
            word: 'tin',
          }),
        ],
        waits: [lasts('Both glued faces go dry to a knuckle', 15, 'a quarter hour on most tins; common practice')],
        cautions: [
          care.solvent,
          'In a cabin the vapour puts you to sleep: hatches open, a fan blowing in, someone outside who talks to you.',
        ],
      }),
      step('Smooth it on from the centreline outward, tuck the edges behind trims', [30, 50, 90], {
        notAlone: true,
        window: { greatest_min: 45, past: { kind: 'forbidden' } },
        cautions: ['It grips at a touch: one holds the far end clear.'],
      }),
    ],
    proof: proof(
      'look',
      'On the first hot afternoon press the bellies with a flat hand: nothing has let go',
      [5, 5, 5],
    ),
    followUps: [],
    writeDown: ['pattern kept where', 'adhesive and what heat it stands'],
  },
  'stove-check': {
    title: 'Try the cooking stove for leaks',
    group: 'cabin',
    words: ['stove', 'gas hose', 'smell of gas', 'camping stove', 'regulator'],
    when: 'Every 12 months; the hose goes at five years from the date on it; at any smell, at once.',
    consequence: 'danger',
    zones: ['cabin'],
    asks: [number('hoses', 'gas hoses', 1, 4)],
    steps: [
      step('Read the date on each gas hose and bend it: a crack or five years, and it goes', [5, 10, 15], {
        stores: [store('Gas hose with clips, date this year', 'gas hose', each('hoses'))],
        cautions: [
          'Changing fixed gas pipe is for licensed people. A hose on a portable stove: outdoors, cartridge off.',
        ],
      }),
      step('Taps shut, cylinder open, brush soapy water over every joint: one growing bubble is a leak', [10, 15, 25], {
        stores: [store('Leak spray or washing-up liquid', 'leak', each('hoses', 10, 0, 'ml'))],
        cautions: [
          'Never a flame. Gas lies low in the bilge: hatches open, air it by the bucket before any switch. A cylinder is under pressure.',
        ],
      }),
      step('Wipe burners out, try the flame cut-off by blowing the flame away', [10, 15, 20], {
        cautions: ['Fire blanket within reach, hatch open: a stove eats air and gives carbon monoxide.'],
      }),
    ],
    proof: proof(
      'soak',
      'Note the pressure gauge, shut the cylinder, come back in ten minutes: the needle has not moved',
      [5, 5, 10],
      {
        waits: [lasts('Closed gas line stands', 10, 'ten minutes; common practice')],
        cautions: [
          'If it has moved, cylinder ashore and a licensed fitter: no second try. Pressure stays in the line, no flame.',
        ],
      },
    ),
    followUps: [],
    writeDown: ['hose date', 'gauge before and after', 'carbon-monoxide alarm’s date'],
  },
  'cabin-mould': {
    title: 'Clear mould out of the cabin',
    group: 'cabin',
    words: ['mould', 'musty', 'damp cabin', 'smells below', 'condensation'],
    when: 'Black freckles on linings, or clothes come off her smelling.',
    consequence: 'comfort',
    zones: ['cabin'],
    asks: [size('area', 'area with mould', 'm²', 0.2, 20)],
    steps: [
      step('Carry cushions and everything soft out into the sun', [15, 25, 45], { needs: { dry: true } }),
      step('Mist mould with vinegar, leave, then wipe from the edges in, a clean cloth for each wipe', [25, 45, 80], {
        stores: [store('White vinegar', 'vinegar', each('area', 0.1, 0, 'l'))],
        waits: [lasts('Vinegar stands on the freckles', 60, 'an hour is common practice')],
        cautions: ['Spores: a mask and open hatches. Never vinegar with bleach: chlorine gas.'],
      }),
      step('Prop bunks and lockers open, clear the ventilators, and hang a vent low and one high', [15, 25, 40], {
        stores: [store('Louvre vents', 'vents', always(2, '', 'one low, one high'))],
      }),
    ],
    proof: proof(
      'measure',
      'Shut her up for three days with a dial inside: under 65 % of humidity in the morning',
      [5, 5, 10],
      { waits: [lasts('Cabin stands shut', 4320, 'three nights; common practice')], tools: ['hygrometer'] },
    ),
    followUps: [
      followUp(
        'Find where the damp comes from',
        [30, 45, 60],
        'Mould that is back within a month has water behind it.',
        inDays(21, 35),
        'worsens',
      ),
    ],
    writeDown: ['where it grew', 'morning humidity'],
  },
  'lay-up-engine': {
    title: 'Lay the outboard up for winter',
    group: 'lay-up and fit-out',
    words: ['winterise', 'lay up outboard', 'fogging', 'frost'],
    when: 'Before the first frost, or before it stands two months.',
    consequence: 'worsens',
    zones: ['transom', 'outboard'],
    asks: [size('fuel', 'fuel left aboard', 'l', 0, 60), number('cylinders', 'cylinders', 1, 4)],
    steps: [
      step('Flush it a quarter hour on fresh water at idle, fuel line off, till it dies dry', [20, 25, 35], {
        features: ['water'],
        cautions: [care.running, care.petrol],
      }),
      step('A spoon of oil in each plug hole, turned over by hand, plugs back loosely', [10, 15, 20], {
        stores: [store('Fogging or engine oil', 'fogging', each('cylinders', 10, 0, 'ml'))],
        cautions: ['Kill-clip out and plug leads earthed: an oiled engine can still fire.'],
      }),
      step('Stand it upright so that its passages drain, and carry tank and petrol off the boat', [10, 15, 30], {
        stores: [store('Fuel stabiliser', 'stabiliser', each('fuel', 2.5, 0, 'ml'))],
        waits: [lasts('Engine drains upright', 120, 'two hours; common practice: water left in it splits it in frost')],
        cautions: [care.petrol],
      }),
    ],
    proof: proof(
      'photograph',
      'Photograph it upright, hose dry, tank outside the house, with a tag: dry, oiled, day',
      [5, 5, 10],
      { cautions: ['Petrol vapour creeps along floors: the tank away from any flame, boiler or socket.'] },
    ),
    followUps: [
      followUp(
        'Change gear oil before it freezes',
        [20, 30, 45],
        'Water in the leg’s oil splits the case.',
        inDays(0, 21),
        'stops-sailing',
      ),
    ],
    writeDown: ['engine hours at lay-up', 'where tank and key are'],
  },
  'lay-up-boat': {
    title: 'Lay the boat up under her cover',
    group: 'lay-up and fit-out',
    words: ['lay up', 'winter cover', 'end of season', 'put her away'],
    when: 'The last sail of the year is over.',
    consequence: 'worsens',
    zones: ['cockpit', 'cabin'],
    asks: [size('length', 'length of cover ties, all told', 'm', 5, 60)],
    steps: [
      step('Empty lockers to a list: food, gas, water, flares and everything of cloth go home', [40, 60, 100], {
        cautions: [
          'Gas cylinders outdoors, valve capped: it lies low in a garage. Flares dry and locked, never near fire.',
        ],
      }),
      step('Drain tanks, pump and hoses, bungs out and tied to the tiller', [15, 25, 40], {}),
      step('Bow up a hand’s breadth so rain runs aft, weight off the tyres on stands', [20, 30, 50], {
        setUps: [onTrailer],
        features: ['level'],
        tools: ['trolley jack', 'axle stand'],
        cautions: [care.jack],
      }),
      step(
        'Ridge from bow to stern, cover over it with air at both ends, tied under the trailer and not to it with hooks',
        [30, 45, 80],
        {
          notAlone: true,
          setUps: [mast('down'), coverOn],
          needs: { wind_max_kn: 12 },
          stores: [store('Cord for cover ties', 'cord cover', each('length', 1, 5, 'm'))],
          cautions: ['A cover fills like a sail: one at each end, and let go rather than be carried off the deck.'],
        },
      ),
    ],
    proof: proof(
      'look',
      'After the first hard rain walk round: no pocket of water on the cover, drains dripping, dry below',
      [10, 10, 15],
    ),
    followUps: [
      followUp(
        'Charge the battery at home',
        [5, 5, 10],
        'Every 30 days for a flooded one, three to six months for a sealed.',
        inDays(25, 30),
        'worsens',
      ),
    ],
    writeDown: ['list of what is where', 'day and rested volts of the battery'],
  },
  'fit-out': {
    title: 'Fit out: first rigging of the year',
    group: 'lay-up and fit-out',
    words: ['fit out', 'start of season', 'commission', 'first launch', 'rig her'],
    when: 'A fortnight before the first sail, while there is time to get what is missing.',
    consequence: 'stops-sailing',
    zones: ['cockpit', 'mast'],
    asks: [number('pins', 'clevis pins with a split pin or ring', 2, 30)],
    steps: [
      step('Bungs in, hoses on, battery in and every lamp and pump switched once', [20, 35, 60], {
        setUps: [coverOff],
        cautions: [care.dead],
      }),
      step(
        'Lay shrouds and halyards out in order along the deck, turnbuckles opened to last year’s threads',
        [15, 25, 40],
        {
          setUps: [mast('down'), coverOff],
          stores: [store('Split pins and rings, assorted', 'split pins assorted', each('pins', 1, 6))],
          cautions: [care.strands],
        },
      ),
      step('Bend the sails on, run each sheet, and reef once in the drive', [30, 45, 80], {
        setUps: [mast('up'), coverOff],
        needs: { wind_max_kn: 8 },
        cautions: [
          'Look up: at least 5 m between mast and any power line, and on the whole path to the ramp. She can sail on her trailer: sheets free.',
        ],
      }),
      step('Stow anchor, jackets, flares, extinguisher, bucket and kit by the list, dates read', [20, 30, 45], {
        cautions: ['Any flare past its printed date ashore now, never fired for practice.'],
      }),
    ],
    proof: proof(
      'photograph',
      'Photograph her rigged from four sides with the list ticked on the thwart',
      [10, 10, 15],
      { setUps: [mast('up')], cautions: [care.aloft] },
    ),
    followUps: [],
    writeDown: ['what was missing', 'threads showing at each screw', 'minutes to rig'],
  },
  'first-aid': {
    title: 'Go through the first-aid kit',
    group: 'safety gear',
    words: ['first aid', 'plasters', 'medical kit'],
    when: 'Every 12 months, and after every use.',
    consequence: 'danger',
    zones: ['cabin'],
    asks: [number('crew', 'people she sails with', 1, 8)],
    steps: [
      step('Tip it out, bin what is stained, opened or past its date', [5, 10, 15]),
      step('Fill up for the crew: dressings, burn gel, seasick tablets, foil blanket, gloves', [10, 15, 25], {
        stores: [
          store('Wound dressings and tape', 'dressings', each('crew', 2, 2)),
          store('Foil blankets', 'foil blanket', each('crew')),
          store('Burn gel', 'burn gel', each('crew')),
        ],
        cautions: [
          'Other people’s medicines are for a doctor or pharmacist to choose: ask about each one’s allergies.',
        ],
      }),
      step('Waterproof it, a list and a marker inside the lid', [5, 10, 10]),
    ],
    proof: proof('run', 'With one hand and eyes shut find the pressure dressing within twenty seconds', [5, 5, 5]),
    followUps: [],
    writeDown: ['earliest date in the box', 'what was used up'],
  },
});
