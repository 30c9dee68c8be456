/** Safety gear. Minutes are common practice; the date printed on the thing is stronger than any rule here. */
import { always, each, followUp, inDays, lasts, number, proof, recipesOf, size, step, store } from './writing.ts';

export const safetyGear = recipesOf({
  lifejacket: {
    title: 'Inflate and look over the lifejackets',
    group: 'safety gear',
    words: ['lifejacket', 'life vest', 'rearm', 'bladder', 'firing head'],
    when: 'Bladder blown up each 12 months; the cylinder felt every month; a printed date on head or bobbin wins.',
    consequence: 'danger',
    zones: ['cabin', 'cockpit'],
    asks: [number('jackets', 'inflating lifejackets', 1, 10)],
    steps: [
      step(
        'Unscrew each cylinder, look for rust and a pierced cap, weigh it against the grams stamped on it',
        [10, 15, 30],
        {
          tools: ['kitchen scales'],
          cautions: [
            'A full cylinder driven off by its pressure flies: never puncture one, and keep it from your face.',
          ],
        },
      ),
      step('Pump the bladders firm by hand and leave them a day and a night', [10, 20, 35], {
        tools: ['hand pump'],
        waits: [lasts('Bladders stand blown up', 1440, '24 h, by hand pump, never by breath: damp rots them')],
        cautions: ['Not with the cylinder: it chills and strains the seams, and then must be renewed.'],
      }),
      step('Read dates on firing heads, bobbins and lights; renew what is past', [5, 10, 20], {
        stores: [store('Re-arming kit for these heads', 'arming', each('jackets'))],
      }),
      step('Squeeze the air out, repack by the picture inside, cylinder hand tight', [15, 25, 45], {
        cautions: [
          'Cylinder hand tight and no tool: its seal cuts, and then it leaks its pressure in a month. Keep a hand off the toggle.',
        ],
      }),
    ],
    proof: proof(
      'photograph',
      'Photograph every head’s green tell-tale, date and the crotch strap, one picture a jacket',
      [5, 10, 15],
    ),
    followUps: [
      followUp(
        'Feel the lifejacket cylinders tight',
        [5, 5, 10],
        'Every month: they back off by themselves.',
        inDays(28, 35),
        'danger',
      ),
    ],
    writeDown: ['grams stamped and weighed', 'dates of heads, bobbins and lights', 'whose jacket'],
  },
  extinguisher: {
    title: 'Look over the fire extinguishers',
    group: 'safety gear',
    words: ['fire extinguisher', 'fire blanket', 'gauge in the red'],
    when: 'Every month for gauge, seal, hose and weight; a throw-away one leaves by 31 December of its twelfth year.',
    consequence: 'unlawful',
    zones: ['cabin', 'cockpit'],
    asks: [number('count', 'extinguishers aboard', 1, 6)],
    steps: [
      step('Check gauge green, pin and seal whole, nozzle free of wasps, hose uncracked', [5, 5, 10]),
      step('Weigh each against its label, turn a powder one over and thump its foot to loosen the cake', [5, 10, 15], {
        tools: ['kitchen scales'],
        cautions: [
          'Finger off the lever with the pin in: powder in a cabin blinds, and the cylinder is under pressure.',
        ],
      }),
      step('Read the year on its foot, and hang a new one in the old clip within reach of a way out', [5, 15, 25], {
        stores: [store('Extinguisher, powder or foam, class as the law asks', 'extinguisher', each('count', 0.5, 0))],
      }),
    ],
    proof: proof(
      'run',
      'From the bunk in the dark lay a hand on each in five seconds, and name how its pin comes out',
      [5, 5, 5],
    ),
    followUps: [],
    writeDown: ['year of making and weight', 'day looked at, on its tag'],
  },
  flares: {
    title: 'Replace flares that are out of date',
    group: 'safety gear',
    words: ['flares', 'distress signals', 'smoke', 'pyrotechnics'],
    when: 'The printed date is past: 42 months from making at most by one country’s rule, 3 to 4 years by others.',
    consequence: 'unlawful',
    zones: ['cabin'],
    asks: [number('flares', 'flares and smokes the law asks of her', 1, 12)],
    steps: [
      step('Lay every flare out by date and kind on a blanket away from the galley', [5, 10, 15], {
        cautions: ['Old flares fire by themselves: never strike, open or throw one about, and no flame near.'],
      }),
      step(
        'Buy the missing kinds dated past the season after next, and take the old to whoever takes them where you live',
        [30, 60, 120],
        {
          stores: [store('Hand flares and smokes, approved', 'flares', each('flares', 0.5, 0))],
          cautions: [
            'Never to the bin and never fired off for practice: they burn at a thousand degrees, and a call for help is a call.',
          ],
        },
      ),
      step('Pack the new in the dry bottle, gloves and card of instructions on top', [5, 5, 10], {
        stores: [
          store('Leather gloves for hand flares', 'leather gloves', always(1, 'pair', 'one pair lies with them')),
        ],
      }),
    ],
    proof: proof(
      'look',
      'Read aloud from the card how each kind is lit, and stow the bottle where the helmsman reaches',
      [5, 5, 10],
    ),
    followUps: [],
    writeDown: ['kinds, number and printed dates', 'where the old went'],
  },
  'harness-lines': {
    title: 'Look over harnesses, tethers and jackstays',
    group: 'safety gear',
    words: ['harness', 'tether', 'jackstay', 'lifeline webbing'],
    when: 'Every 12 months, after a fall, and at about ten years.',
    consequence: 'danger',
    zones: ['cockpit', 'side deck'],
    asks: [size('jackstay', 'length of the jackstays', 'm', 2, 20), number('tethers', 'tethers', 1, 8)],
    steps: [
      step(
        'Fold the webbing tight over a finger along its whole run, both faces: fur, glaze and stiff places',
        [10, 20, 30],
      ),
      step('Pull out the hidden overload stitching where there is some: a strand broken there ends it', [5, 10, 15]),
      step('Snap every hook fifty times wet, and draw on its gate sideways', [5, 10, 20], {
        stores: [store('Tethers with double-action hooks', 'tether', each('tethers', 0.5, 0))],
      }),
      step(
        'Lash new jackstay webbing at one end through its eye with six turns of cord, so that it can be cut',
        [15, 25, 40],
        {
          stores: [
            store('Jackstay webbing with sewn eyes', 'jackstay', each('jackstay', 1, 0, 'm')),
            store('4 mm cord for lashings', 'cord lashings', each('tethers', 2, 0, 'm')),
          ],
        },
      ),
    ],
    proof: proof(
      'load',
      'Clip on and throw your weight outward from low in the cockpit, sitting, both sides',
      [5, 10, 15],
      { cautions: ['Ashore and sitting over the cockpit sole: if a hook lets go you land on your seat.'] },
    ),
    followUps: [],
    writeDown: ['year of each tether', 'what was condemned'],
  },
  'boarding-ladder': {
    title: 'Make the way back aboard sure',
    group: 'safety gear',
    words: ['boarding ladder', 'man overboard', 'swim ladder', 'reach from the water'],
    when: 'The ladder cannot be let down from the water, or its bolts move.',
    consequence: 'danger',
    zones: ['transom'],
    asks: [number('bolts', 'bolts in the ladder', 2, 8), size('line', 'length of the pull line', 'm', 0.3, 3)],
    steps: [
      step('Swing on the ladder’s lowest rung ashore, and look which bolt works', [5, 10, 15], {
        setUps: [{ setUp: 'boat', state: 'on the trailer' }],
        cautions: ['Wheels chocked, hitched on: your weight at the stern tips a trailer.'],
      }),
      step('Rebolt it through backing with neutral sealant under each foot', [20, 40, 70], {
        needs: { dry: true, air_min_C: 5 },
        tools: ['sealant gun', 'socket set'],
        stores: [
          store('Ladder bolts, A4, with broad washers', 'ladder bolts', each('bolts')),
          store('Hybrid sealant', 'hybrid sealant', each('bolts', 6, 0, 'ml'), { holds: 290, word: 'tube' }),
        ],
        waits: [
          {
            title: 'Sealant under the ladder’s feet cures',
            law: { kind: 'product', product: 'hybrid-sealant' },
            needs: {},
            setUps: [],
            still: [],
            wet: false,
          },
        ],
      }),
      step('Tie a floating line from the folded ladder to where a swimmer’s hand finds it', [5, 10, 15], {
        stores: [store('Floating line, bright', 'floating line', each('line', 1, 0.3, 'm'))],
      }),
    ],
    proof: proof(
      'run',
      'On a warm day in shoulder-deep water, jacket on, let it down and climb out alone',
      [10, 15, 20],
      { notAlone: true, cautions: ['A second person ashore with a line, engine off and its key out.'] },
    ),
    followUps: [],
    writeDown: ['rungs below the water', 'seconds it took'],
  },
});
