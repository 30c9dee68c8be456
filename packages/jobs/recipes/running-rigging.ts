/** Running rigging: what hauls and holds the sails. Minutes are common practice. */
import {
  always,
  care,
  cures,
  each,
  followUp,
  inDays,
  lasts,
  mast,
  nextOuting,
  number,
  proof,
  recipesOf,
  size,
  step,
  store,
} from './writing.ts';

export const runningRigging = recipesOf({
  'reeve-halyard': {
    title: 'Reeve a new halyard',
    group: 'running rigging',
    words: ['halyard', 'new halyard', 'chafed halyard', 'reeve'],
    when: 'The cover is furred or the core shows where it runs over the sheave or through the jammer.',
    consequence: 'stops-sailing',
    zones: ['mast'],
    asks: [size('length', 'length of the old halyard', 'm', 5, 40)],
    steps: [
      step(
        'Butt new rope to old with three stitches through both and a tight sleeve of tape, no thicker than the rope',
        [5, 15, 25],
        {
          stores: [
            store('Low-stretch braid, thickness as the old', 'braid thickness', each('length', 1, 1, 'm')),
            store('Waxed twine', 'twine', always(1, 'm', 'three stitches')),
          ],
        },
      ),
      step('Haul the pair through slowly from the tail, a second line bent on in case the join lets go', [5, 15, 40], {
        cautions: [care.aloft],
      }),
      step('Sew or splice the shackle eye, longer than the old so that the nip falls on fresh rope', [20, 35, 60], {
        tools: ['palm and needle'],
      }),
    ],
    proof: proof(
      'hoist',
      'Hoist the sail to its mark and winch it bar-taut for five minutes: the eye neither slips nor turns',
      [5, 10, 15],
      {
        needs: { wind_max_kn: 12 },
        setUps: [mast('up')],
        cautions: ['Take the handle out of the winch before you let go of it: it kicks back. Nobody under the mast.'],
      },
    ),
    followUps: [],
    writeDown: ['rope, thickness and length', 'day it was reeved', 'where the old one was worn'],
  },
  'masthead-sheave': {
    title: 'Change a masthead sheave',
    group: 'running rigging',
    words: ['sheave', 'masthead sheave', 'halyard jams', 'squeaks'],
    when: 'The halyard drags, wears a flat, or jumps between sheave and cheek.',
    consequence: 'stops-sailing',
    zones: ['mast', 'masthead'],
    asks: [number('sheaves', 'sheaves to change', 1, 4)],
    steps: [
      step('Tie messengers on every halyard at that box, then drift the sheave pin out', [15, 25, 45], {
        setUps: [mast('down')],
        tools: ['drift', 'hammer'],
        cautions: ['Count washers as they fall: lay the parts on a cloth in the order they came.'],
      }),
      step('Measure pin, bore, groove and cheek gap; more than half a millimetre of slop is worn out', [5, 10, 20], {
        tools: ['calliper'],
        stores: [store('Sheave with pin, as the old', 'sheave', each('sheaves'))],
      }),
      step('Grease the pin sparingly, refit with its keeper, and pass the halyards over', [10, 20, 35], {
        setUps: [mast('down')],
      }),
    ],
    proof: proof(
      'hoist',
      'Hang ten kilos on the halyard by hand at the mast foot: it runs both ways without a squeal',
      [5, 10, 15],
      {
        setUps: [mast('down')],
        cautions: ['The mast lashed on its crutches before anything is hung from it.'],
      },
    ),
    followUps: [],
    writeDown: ['sheave diameter, width and bore', 'pin diameter', 'rope it was made for'],
  },
  'wash-ropes': {
    title: 'Wash the sheets and halyards',
    group: 'running rigging',
    words: ['wash ropes', 'stiff sheets', 'green ropes', 'salty'],
    when: 'Every 12 months, or when a sheet is stiff, green or gritty.',
    consequence: 'comfort',
    zones: ['cockpit', 'mast'],
    asks: [size('length', 'length of rope to wash, all told', 'm', 5, 300)],
    steps: [
      step(
        'Draw the ropes, leaving a thin messenger in each place, and soak them in warm water in a tub',
        [15, 25, 40],
        {
          features: ['water'],
          stores: [store('Messenger line, 3 mm', 'messenger', each('length', 1, 2, 'm'))],
          waits: [lasts('Salt soaks out in fresh water', 720, 'overnight with one change of water is common practice')],
        },
      ),
      step('Slosh them in mild soap inside a pillowcase; rinse till the water runs clear', [15, 25, 40], {
        features: ['water'],
        stores: [store('Mild liquid soap', 'mild soap', each('length', 2, 0, 'ml'))],
      }),
      step('Hang the coils in shade with air through, and look along each while it dries', [10, 15, 30], {
        waits: [lasts('Coils dry in shade', 2880, 'two days in moving air is common practice; never by a heater')],
        cautions: ['No tumble drier and no bleach: heat and chlorine take the strength that looks do not show.'],
      }),
    ],
    proof: proof(
      'look',
      'Bend each rope tight round a finger over its whole run: it bends evenly and no core shows',
      [10, 15, 25],
    ),
    followUps: [
      followUp(
        'Turn the worn sheets end for end',
        [10, 15, 20],
        'Chafe then falls on rope that has seen none.',
        inDays(0, 60),
        'worsens',
      ),
    ],
    writeDown: ['ropes that are past it', 'lengths and thicknesses, while they are out'],
  },
  'strip-winch': {
    title: 'Strip and grease a winch',
    group: 'running rigging',
    words: ['winch', 'pawls', 'winch slips', 'stiff winch'],
    when: 'Every 12 months, or when a pawl sticks, the click is dull or the drum slips back.',
    consequence: 'danger',
    zones: ['cockpit', 'mast'],
    asks: [number('winches', 'winches of this kind', 1, 6), number('pawls', 'pawls in each', 2, 8)],
    steps: [
      step('Box in the winch with a cardboard collar, lift the drum and photograph each layer', [5, 10, 20], {
        cautions: ['Pawl springs jump: the collar catches them, and goggles.'],
      }),
      step('Scrub gears, pawls and bearings in a jar of white spirit and wipe them dry', [20, 30, 50], {
        stores: [store('White spirit', 'white spirit', each('winches', 0.25, 0, 'l'))],
        cautions: [care.solvent],
      }),
      step('Oil the pawls, grease gears and bearings thinly, renew tired springs, close it up', [20, 30, 45], {
        stores: [
          store('Pawl springs for this winch', 'pawl springs', each('pawls', 1, 2)),
          store('Winch grease and light oil', 'winch grease', each('winches', 15, 0, 'ml')),
        ],
        cautions: ['Never grease on a pawl: it sticks open, and the handle spins back with the load behind it.'],
      }),
    ],
    proof: proof(
      'load',
      'Load it with a tackle, take the handle out, and slap the drum: every pawl holds alone',
      [5, 10, 15],
      {
        cautions: ['Keep face and wrists out of the handle’s circle while it is loaded.'],
      },
    ),
    followUps: [],
    writeDown: ['springs and parts renewed', 'grease used'],
  },
  'rinse-blocks': {
    title: 'Rinse and free the blocks',
    group: 'running rigging',
    words: ['blocks', 'block seized', 'sheave grinds', 'mainsheet block'],
    when: 'Every 6 months, or when a block grinds, squeals or does not turn under load.',
    consequence: 'worsens',
    zones: ['cockpit', 'mast'],
    asks: [number('blocks', 'blocks aboard', 1, 40)],
    steps: [
      step('Flush every block with hot fresh water while spinning it, swivels and cam jaws too', [15, 25, 40], {
        features: ['water'],
        tools: ['hose'],
        waits: [lasts('Blocks drip dry', 120, 'two hours in air is common practice')],
      }),
      step('Press sideways on each sheave, note the slack ones, and give the rest dry lubricant', [10, 20, 30], {
        stores: [
          store('Dry lubricant spray', 'dry lubricant', each('blocks', 5, 0, 'ml'), { holds: 250, word: 'can' }),
        ],
        cautions: ['Spray outdoors and away from flame; never grease or oil in ball blocks: it holds grit.'],
      }),
    ],
    proof: proof(
      'pull',
      'Run a light line through each under hand load: a free block coasts on when you stop',
      [5, 10, 15],
    ),
    followUps: [],
    writeDown: ['blocks that must be changed, with sheave diameter and rope'],
  },
  'swage-eye': {
    title: 'Press an eye in a control wire',
    group: 'running rigging',
    words: ['control wire', 'swage', 'ferrule', 'wire eye', 'kicker wire'],
    when: 'The wire has a broken strand at its thimble, or a ferrule has cracked.',
    consequence: 'stops-sailing',
    zones: ['mast', 'cockpit'],
    asks: [
      size('wire', 'length of the wire, eye to eye', 'm', 0.2, 10),
      size('thick', 'thickness of the wire', 'mm', 2, 5),
    ],
    steps: [
      step('Cut control wire with an allowance of thirty diameters an eye, ends taped before the cut', [5, 10, 15], {
        tools: ['wire cutter'],
        stores: [store('7 × 19 wire, grade 316', '7 19 wire', each('wire', 1, 0.4, 'm'), null, 'thick')],
        cautions: [care.strands],
      }),
      step(
        'Slide two ferrules on, form the eye on its thimble, leave a diameter between them, press in the tool’s order',
        [10, 20, 35],
        {
          tools: ['hand swager'],
          stores: [
            store(
              'Copper ferrules and thimbles to the wire',
              'copper ferrules',
              always(4, '', 'two an eye, an eye at each end'),
              null,
              'thick',
            ),
          ],
          cautions: ['Gauge each pressed ferrule: an over-pressed one cuts strands inside. Fingers out of the jaws.'],
        },
      ),
      step('Shrink sleeve over the tail so that no strand is proud', [5, 10, 15], {
        cautions: ['Hot air gun: away from the sails, and let it cool before it is laid down.'],
      }),
    ],
    proof: proof(
      'load',
      'Ink a line across ferrule and wire, load it to a quarter of its breaking load, look for slip',
      [10, 15, 25],
      {
        cautions: [
          'Loaded wire that slips lashes, and its strands cut: leather gloves, stand aside of its line, a blanket over it.',
        ],
      },
    ),
    followUps: [
      followUp(
        'Look at the paint line on the ferrule',
        [5, 5, 5],
        'A line that has parted tells of slip before it fails.',
        nextOuting(60),
        'stops-sailing',
      ),
    ],
    writeDown: ['wire and ferrule sizes', 'width of the pressed ferrule', 'proof load'],
  },
  'mast-fitting-screws': {
    title: 'Lock the screws of a mast fitting',
    group: 'running rigging',
    words: ['mast cleat', 'loose screw', 'gooseneck screws', 'corroded screw in the mast'],
    when: 'A fitting on the mast rattles, or a stainless screw stands in white powder.',
    consequence: 'worsens',
    zones: ['mast'],
    asks: [number('screws', 'screws or rivets in the fitting', 1, 16)],
    steps: [
      step('Warm and shock the seized screws with an impact driver, and back them out', [10, 25, 60], {
        setUps: [mast('down')],
        tools: ['impact driver'],
        cautions: ['Goggles: bits and screw heads shatter.'],
      }),
      step('Scrub the white oxide to bright metal and lay a thin plastic film between fitting and spar', [10, 15, 25], {
        setUps: [mast('down')],
        stores: [store('Insulating film or tape', 'insulating', each('screws', 20, 50, 'mm'))],
      }),
      step('Set each screw with barrier paste on its shank and threadlocker at its tip', [10, 15, 25], {
        setUps: [mast('down')],
        needs: { air_min_C: 5 },
        stores: [
          store('Screws or rivets, A4', 'screws rivets', each('screws', 1, 2)),
          store('Threadlocker, medium', 'threadlocker', each('screws', 0.2, 0, 'ml'), { holds: 10, word: 'bottle' }),
        ],
        waits: [cures('Threadlocker takes before the fitting is loaded', 'threadlocker')],
        cautions: ['Threadlocker cracks acrylic and polycarbonate: none on windows or clear jammers.'],
      }),
    ],
    proof: proof(
      'pull',
      'Lever at the fitting with a wooden handle in four directions: no rattle, no fresh shine at its edge',
      [5, 5, 10],
      {
        setUps: [mast('down')],
      },
    ),
    followUps: [],
    writeDown: ['screw size and metal', 'what insulates it from the spar'],
  },
});
