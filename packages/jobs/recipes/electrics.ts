/** Electrics at 12 V. Minutes are common practice. Shore power and its wiring are for licensed people. */
import {
  always,
  care,
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

export const electrics = recipesOf({
  'battery-terminals': {
    title: 'Clean and grease the battery terminals',
    group: 'electrics',
    words: ['battery terminals', 'green terminal', 'loose terminal', 'white powder on the battery'],
    when: 'Every 12 months, or when a lamp dims as a second one is switched on.',
    consequence: 'worsens',
    zones: ['cabin', 'battery'],
    asks: [number('posts', 'posts', 2, 8)],
    steps: [
      step('Take the leads off the battery, negative first, and bag their ends apart', [5, 10, 15], {
        tools: ['spanners'],
        cautions: [care.dead, care.hydrogen],
      }),
      step('Brush posts and clamps bright; wash a lead battery’s lid with soda water, caps on', [10, 15, 25], {
        stores: [store('Baking soda', 'baking soda', each('posts', 10, 0, 'g'))],
        cautions: ['Acid: goggles, gloves, water to hand; soda never inside a cell.'],
      }),
      step('Clamp up positive first, then smear petroleum jelly over the made joint, none between', [5, 10, 20], {
        tools: ['spanners'],
        stores: [store('Petroleum jelly', 'jelly', each('posts', 2, 0, 'g'))],
        cautions: [care.dead],
      }),
    ],
    proof: proof('measure', 'With a known load on, read from post to clamp on each: under 20 mV', [5, 10, 15], {
      tools: ['meter'],
      cautions: ['Probes only: a spanner or ring that bridges the posts burns to the bone.'],
    }),
    followUps: [],
    writeDown: ['millivolts at each post', 'rested volts that day'],
  },
  'battery-replace': {
    title: 'Change the battery',
    group: 'electrics',
    words: ['new battery', 'battery dead', 'will not hold charge', 'replace battery'],
    when: 'A load test gives under half of what its label says, or it is past three to seven years and sags.',
    consequence: 'stops-sailing',
    zones: ['cabin', 'battery'],
    asks: [number('batteries', 'batteries', 1, 4)],
    steps: [
      step(
        'Check the new battery’s size, posts and kind against box, leads and charger before the old one is touched',
        [10, 15, 25],
        {
          stores: [store('New battery, kind and size as the box and charger take', 'new battery', each('batteries'))],
          cautions: [
            'Lithium wants its own charge settings and is not charged below 0 °C. A spanner across either’s posts welds itself there.',
          ],
        },
      ),
      step('Panel covered, isolator off, lift the old battery out by its strap', [10, 20, 35], {
        cautions: [
          care.dead,
          'Twenty kilos at arm’s length: two hands on the strap, one foot in. Keep it upright, acid runs.',
        ],
      }),
      step('Strap the new one so that it cannot move in a knockdown, leads on, posts covered', [10, 20, 30], {
        stores: [store('Battery strap or clamp', 'battery strap', each('batteries'))],
        cautions: [care.dead],
      }),
      step('Charge it full before its first use', [5, 10, 15], {
        waits: [lasts('First full charge', 720, 'overnight on a small charger is common practice')],
        cautions: [care.hydrogen],
      }),
    ],
    proof: proof(
      'measure',
      'After a night’s rest, loads off and panel dark, read its volts; heel the box by hand: nothing shifts',
      [5, 10, 15],
      {
        tools: ['meter'],
        waits: [lasts('Battery rests', 480, 'a night’s rest is common practice before a rested reading')],
      },
    ),
    followUps: [
      followUp(
        'Load-test the new battery',
        [15, 20, 30],
        'The first test is what later ones are held against.',
        inDays(1, 30),
        'comfort',
      ),
    ],
    writeDown: ['kind, ampere-hours and date code', 'rested volts', 'charger settings'],
  },
  'remake-joint': {
    title: 'Remake a corroded joint',
    group: 'electrics',
    words: ['corroded joint', 'green wire', 'flickers', 'bad connection', 'crimp'],
    when: 'A light flickers when its cable is moved, or the copper is black a finger’s length back.',
    consequence: 'stops-sailing',
    zones: ['cabin', 'cockpit'],
    asks: [number('joints', 'joints to remake', 1, 20)],
    steps: [
      step('Isolate the circuit, cut back until the copper is bright, and stagger the two cuts', [10, 15, 30], {
        tools: ['side cutters'],
        cautions: ['Circuit off at its switch and its fuse drawn, tagged: someone else may not know.'],
      }),
      step('Crimp with the tool that fits, tug each end, heat the sleeve till glue shows', [10, 20, 35], {
        tools: ['crimping pliers', 'hot air gun'],
        stores: [store('Sealed crimp joints, tinned', 'crimp', each('joints', 1, 2))],
        cautions: ['Hot air off the laminate and away from fuel and gas lines.'],
      }),
      step('Clip the run every 450 mm with a drip loop below the joint', [5, 15, 25], {
        stores: [store('Cable clips', 'cable clips', each('joints', 2, 2))],
      }),
    ],
    proof: proof(
      'continuity',
      'Wiggle the joint with the meter on ohms, then with the lamp on read volts lost across it: under 0.1 V',
      [5, 10, 15],
      { tools: ['meter'] },
    ),
    followUps: [],
    writeDown: ['where the joint is', 'volts lost', 'wire size'],
  },
  'masthead-light': {
    title: 'Run a new masthead cable and light',
    group: 'electrics',
    words: ['masthead light', 'anchor light', 'mast cable', 'nav light dead', 'tricolour'],
    when: 'No light with a good bulb and volts at the deck plug.',
    consequence: 'unlawful',
    zones: ['mast'],
    asks: [size('cable', 'length of the cable', 'm', 3, 20)],
    steps: [
      step('Draw the dead cable out with a mouse line behind it, mast on trestles', [15, 30, 60], {
        setUps: [mast('down')],
      }),
      step('Pull the new twin in, sleeve it at the exit and leave a hand’s length at both ends', [15, 25, 45], {
        setUps: [mast('down')],
        stores: [store('Tinned twin cable, size by its volt drop', 'twin cable', each('cable', 1, 0.6, 'm'))],
      }),
      step('Join the lamp with sealed crimps, tails looped down, gasket greased', [15, 25, 40], {
        setUps: [mast('down')],
        tools: ['crimping pliers'],
        stores: [
          store('Masthead light of lawful range', 'masthead light', always(1, '', 'one at the masthead')),
          store('Sealed crimp joints', 'crimp', always(4, '', 'two at the lamp, two at the plug')),
        ],
      }),
    ],
    proof: proof(
      'continuity',
      'Light it off the battery before the mast goes up, shake the cable at both ends, read volts at the lamp',
      [5, 10, 15],
      {
        setUps: [mast('down')],
        tools: ['meter'],
        cautions: ['Clip the lead away from the posts: a slipped spanner or clip sparks.'],
      },
    ),
    followUps: [
      followUp(
        'Look at the masthead light at dusk from the shore',
        [10, 15, 20],
        'Sectors and range can only be seen from where others see them.',
        nextOuting(30),
        'unlawful',
      ),
    ],
    writeDown: ['cable size and length', 'lamp and its watts', 'volts at the lamp'],
  },
  'bilge-pump': {
    title: 'Wire a bilge pump with its float switch',
    group: 'electrics',
    words: ['bilge pump', 'float switch', 'pump does not run', 'strum box'],
    when: 'It does not start when the float is lifted, or she lies afloat without one.',
    consequence: 'danger',
    zones: ['cabin', 'bottom'],
    asks: [
      size('wire', 'length of wire from battery to pump', 'm', 0.5, 12),
      size('hose', 'length of hose to the outlet', 'm', 0.5, 8),
    ],
    steps: [
      step(
        'Screw the strum where the last water stands, hose rising without a dip to well above the waterline',
        [25, 45, 80],
        {
          stores: [
            store('Smooth-bore hose to the pump’s tail', 'hose smooth', each('hose', 1, 0.2, 'm')),
            store('Hose clips, stainless', 'hose clips', always(2, '', 'one an end')),
          ],
        },
      ),
      step(
        'Lead its wire from the fuse at the battery to switch and float, joints above the highest bilge water',
        [25, 45, 80],
        {
          tools: ['crimping pliers'],
          stores: [
            store('Tinned twin cable, size by its volt drop', 'twin cable', each('wire', 1, 0.4, 'm')),
            store(
              'Fuse and holder for the pump, ampere as its label',
              'fuse pump',
              always(1, '', 'one at the battery end'),
            ),
          ],
          cautions: [care.dead],
        },
      ),
      step('Tie the float clear of hoses and label the three-way switch', [10, 15, 25]),
    ],
    proof: proof(
      'run',
      'Pour two buckets in: it starts by itself, clears them, stops, and no water siphons back',
      [10, 15, 20],
      { features: ['water'] },
    ),
    followUps: [
      followUp(
        'Clear the strum box',
        [5, 10, 15],
        'Run the pump and clear its strum each month.',
        inDays(25, 35),
        'worsens',
      ),
    ],
    writeDown: ['pump, amperes and fuse', 'seconds to clear two buckets'],
  },
  'fit-panel': {
    title: 'Fit a solar panel and regulator',
    group: 'electrics',
    words: ['solar panel', 'regulator', 'panel does not charge'],
    when: 'Nights aboard drain more than the days put back.',
    consequence: 'comfort',
    zones: ['cabin', 'cockpit'],
    asks: [size('lead', 'length of lead, panel to regulator', 'm', 0.5, 10), number('feet', 'mounting feet', 2, 8)],
    steps: [
      step('Set the panel where neither boom nor mast shades it, feet bedded and bolted or lashed', [30, 50, 90], {
        needs: { dry: true, air_min_C: 5 },
        stores: [
          store('Panel feet and bolts', 'panel feet', each('feet')),
          store('Hybrid sealant', 'hybrid sealant', each('feet', 8, 0, 'ml'), { holds: 290, word: 'tube' }),
        ],
        waits: [
          {
            title: 'Sealant under the panel’s feet cures',
            law: { kind: 'product', product: 'hybrid-sealant' },
            needs: {},
            setUps: [],
            still: [],
            wet: false,
          },
        ],
      }),
      step('Wire battery to regulator first, through a fuse at the battery; let it find its volts', [15, 25, 40], {
        stores: [store('Fuse and holder for the panel', 'fuse panel', always(1, '', 'one at the battery end'))],
        cautions: [care.dead],
      }),
      step('Lay the panel face down, gland its lead through the deck, plug it in last', [20, 35, 60], {
        stores: [
          store('Panel lead, twin, for sun and weather', 'panel lead', each('lead', 1, 0.4, 'm')),
          store('Deck gland', 'gland', always(1, '', 'one through the deck')),
        ],
        cautions: ['A panel in light is live and cannot be switched off: face down or covered until the last plug.'],
      }),
    ],
    proof: proof(
      'measure',
      'At noon in sun read amperes into the battery, and again with the panel covered: none back at night',
      [10, 15, 20],
      {
        needs: { daylight: true },
        tools: ['meter'],
        cautions: ['Amperes are read in series, through a fuse: meter leads across the posts spark and burn.'],
      },
    ),
    followUps: [
      followUp(
        'Wipe the panel and look at its gland',
        [5, 5, 10],
        'Each month: salt and gulls cost more than cloud.',
        inDays(25, 35),
        'comfort',
      ),
    ],
    writeDown: ['panel watts, tilt and heading', 'amperes read and the sky', 'wire size and fuse'],
  },
});
