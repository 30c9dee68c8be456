/** Through-hulls, drains and leaks. Minutes are common practice. */
import {
  always,
  bead,
  bedding,
  care,
  coverOff,
  cures,
  each,
  followUp,
  hollows,
  inDays,
  lasts,
  nextOuting,
  number,
  proof,
  propped,
  recipesOf,
  size,
  step,
  store,
  tube,
} from './writing.ts';

export const throughHulls = recipesOf({
  seacock: {
    title: 'Free and grease a seacock',
    group: 'through-hulls, drains and leaks',
    words: ['seacock', 'ball valve', 'stiff valve', 'skin fitting'],
    when: 'It is worked every month; when it stiffens, weeps at its stem or shows pink metal, open it up.',
    consequence: 'danger',
    zones: ['cabin', 'bottom'],
    asks: [number('valves', 'seacocks', 1, 8), number('clips', 'hose clips on them', 2, 32)],
    steps: [
      step(
        'Ashore, work each handle through its whole swing and scratch the body: yellow is sound, pink has lost its zinc',
        [10, 20, 35],
        {
          cautions: ['Never first afloat: a stem that shears lets the sea in. Softwood plug tied beside each valve.'],
        },
      ),
      step(
        'Draw the hose, brush the bore with grease from both sides, and swing it till it moves by two fingers',
        [15, 30, 60],
        {
          tools: ['screwdriver'],
          stores: [store('Waterproof grease', 'waterproof grease', each('valves', 10, 0, 'ml'))],
        },
      ),
      step('Refit hoses with two new all-stainless clips each, screws opposite', [10, 20, 35], {
        stores: [store('Hose clips, stainless throughout', 'hose clips', each('clips', 1, 2))],
      }),
    ],
    proof: proof(
      'hose',
      'Fill each line from a funnel with the valve shut, then open: no drop past the shut ball, none at the clips',
      [10, 15, 20],
      { features: ['water'] },
    ),
    followUps: [
      followUp(
        'Look at the seacocks in the first hour afloat',
        [5, 10, 10],
        'A weep shows only with the sea’s weight on it.',
        nextOuting(60),
        'danger',
      ),
    ],
    writeDown: ['metal of each, as far as it is known', 'clip and hose sizes', 'year of the hoses'],
  },
  'drain-ring': {
    title: 'Rebed a transom drain',
    group: 'through-hulls, drains and leaks',
    words: ['drain', 'transom drain', 'bung', 'drain plug leaks', 'self-bailer'],
    when: 'The bilge is wet after a day afloat with a dry cockpit, or the ring turns under a thumb.',
    consequence: 'worsens',
    zones: ['transom'],
    asks: [size('ring', 'width of the ring', 'mm', 20, 120), number('screws', 'its screws', 2, 8)],
    steps: [
      step('Ease the ring off with a thin knife and scrape back silicone until water no longer beads', [15, 25, 50], {
        needs: { dry: true },
        cautions: [
          'Silicone left behind refuses every sealant and paint after it: scrape, then spirit, then abrade.',
          care.solvent,
        ],
      }),
      step('Coat the raw edge of ply or core with three wet-on-tacky coats of epoxy', [20, 30, 45], {
        needs: { dry: true, air_min_C: 10 },
        stores: [
          store('Epoxy, fast hardener', 'epoxy hardener', each('screws', 5, 20, 'ml'), { holds: 500, word: 'kit' }),
        ],
        waits: [cures('Sealed edge hardens', 'epoxy-fast', { needs: { dry: true } })],
        cautions: [care.resin],
      }),
      step(
        'Bed the ring below the waterline in polyurethane, screws dipped, edge wiped with a wet finger',
        [10, 20, 35],
        {
          needs: { dry: true, air_min_C: 5 },
          tools: ['sealant gun'],
          stores: [
            store('Polyurethane sealant', 'polyurethane sealant', bedding('ring', 'ring', 2, 1), tube),
            store('Drain ring screws, A4', 'screws ring', each('screws')),
          ],
          waits: [cures('Bedding cures before she floats', 'polyurethane-sealant', { needs: { dry: true } })],
          cautions: ['Look what the ring is made of: polyurethane eats ABS and polycarbonate.'],
        },
      ),
    ],
    proof: proof(
      'soak',
      'With the bung in, pour a hand’s depth into the well: outside stays dry for twenty minutes',
      [5, 10, 15],
      { features: ['water'], waits: [lasts('Water stands at the drain', 20, 'twenty minutes; common practice')] },
    ),
    followUps: [],
    writeDown: ['sealant under it', 'screw size', 'state of the edge'],
  },
  'through-hull': {
    title: 'Replace a through-hull fitting',
    group: 'through-hulls, drains and leaks',
    words: ['through-hull', 'skin fitting', 'broken outlet', 'sun-rotted outlet'],
    when: 'Its flange is cracked or chalky, it is plain brass of unknown age, or it turns in the hull.',
    consequence: 'danger',
    zones: ['bottom', 'topsides', 'transom'],
    asks: [number('fittings', 'fittings alike', 1, 6), size('flange', 'width of the flange', 'mm', 20, 120)],
    steps: [
      step('Hold the inside nut, split the old flange off and push the tube inboard', [20, 40, 80], {
        setUps: [propped],
        tools: ['pipe wrench'],
        cautions: [care.props, 'Shards of old plastic and brass: goggles.'],
      }),
      step('Scarf the hole’s rim, paint the laminate with epoxy, and try the new fitting dry', [15, 25, 45], {
        setUps: [propped],
        needs: { dry: true, air_min_C: 10 },
        stores: [
          store('Epoxy, fast hardener', 'epoxy hardener', hollows('fittings', 'flange', 3), {
            holds: 500,
            word: 'kit',
          }),
          store('Through-hull with nut, to the hose', 'through-hull', each('fittings')),
        ],
        waits: [cures('Painted rim hardens', 'epoxy-fast', { needs: { dry: true } })],
        cautions: [care.props, care.resin],
      }),
      step(
        'Bed the flange from outside and run its nut up inside until sealant shows all round, hose on tails up',
        [15, 25, 40],
        {
          notAlone: true,
          setUps: [propped],
          needs: { dry: true, air_min_C: 5 },
          tools: ['sealant gun', 'pipe wrench'],
          stores: [
            store('Polysulphide or hybrid sealant', 'polysulphide', bedding('flange', 'flange', 3, 'fittings'), tube),
          ],
          waits: [cures('Ring under the flange cures', 'polysulphide-sealant')],
          cautions: [care.props, 'Polysulphide only under metal or nylon: it cracks PVC, ABS and clear plastics.'],
        },
      ),
    ],
    proof: proof(
      'look',
      'First hour afloat: a dry tissue round the inside nut every ten minutes, her trailer still on the ramp',
      [15, 20, 30],
      { cautions: ['A plug of softwood and a bucket within reach, and the ramp clear to haul her out.'] },
    ),
    followUps: [],
    writeDown: ['fitting, stuff and size', 'sealant', 'year'],
  },
  'trace-leak': {
    title: 'Trace a deck leak',
    group: 'through-hulls, drains and leaks',
    words: ['leak', 'wet bunk', 'drip', 'water below', 'where does it come in'],
    when: 'Something below is wet after rain and nobody knows from where.',
    consequence: 'worsens',
    zones: ['cabin', 'foredeck'],
    asks: [number('suspects', 'fittings and joints above the wet', 1, 30)],
    steps: [
      step('Empty and dry the wet place, dust it with talc, lay tissue along every beam', [15, 25, 40], {
        stores: [store('Talc and tissue', 'talc', always(1, 'pack', 'one pack does'))],
      }),
      step(
        'Mask each joint off with tape and, from the lowest up, uncover and hose one for five minutes',
        [30, 60, 120],
        {
          notAlone: true,
          features: ['water'],
          setUps: [coverOff],
          tools: ['hose'],
          stores: [store('Masking tape for wet', 'masking tape', each('suspects', 0.5, 0, 'm'))],
          cautions: [
            'Hose it gently: a jet gets in where no rain would. Covers and electrics below out of the way first.',
          ],
        },
      ),
      step(
        'Close the hatches, put the cabin under a little pressure with a blower, and sponge soapy water over the suspects',
        [20, 35, 60],
        {
          features: ['mains'],
          tools: ['blower'],
          cautions: [care.mains],
          stores: [store('Washing-up liquid', 'washing-up', each('suspects', 5, 0, 'ml'))],
        },
      ),
    ],
    proof: proof(
      'photograph',
      'Photograph the bubble and the track in the talc with a finger pointing at each',
      [5, 5, 10],
    ),
    followUps: [
      followUp(
        'Rebed what leaked',
        [60, 90, 180],
        'Sealant smeared on the outside hides a leak and holds the water in.',
        inDays(0, 30),
        'worsens',
      ),
    ],
    writeDown: ['where it came in and where it came out', 'joints proved sound'],
  },
  'window-seal': {
    title: 'Reseal a cabin window',
    group: 'through-hulls, drains and leaks',
    words: ['window leaks', 'portlight', 'crazed window', 'window seal', 'gasket'],
    when: 'A tear of water stands at its lower corner, or the seal is hard: eight to fifteen years is usual.',
    consequence: 'worsens',
    zones: ['cabin', 'side deck'],
    asks: [size('round', 'length round the window', 'm', 0.4, 6), number('windows', 'windows alike', 1, 8)],
    steps: [
      step('Cut round the pane with a wire, lift it out whole and trace it on card', [25, 45, 80], {
        setUps: [coverOff],
        tools: ['knife'],
        cautions: ['A pane that cracks splinters toward the hands: gloves, tape across it.'],
      }),
      step('Polish aperture and pane rim free of old sealant with alcohol, never acetone', [20, 35, 60], {
        cautions: ['Acetone crazes acrylic and polycarbonate at once; its vapour burns.', care.solvent],
        stores: [store('Isopropyl alcohol', 'alcohol', each('windows', 0.1, 0, 'l'))],
      }),
      step('Set it on spacers in neutral silicone, gap three millimetres all round, clamped lightly', [25, 40, 60], {
        needs: { dry: true, air_min_C: 5 },
        setUps: [coverOff],
        tools: ['sealant gun'],
        stores: [
          store('Neutral-cure silicone sealant', 'silicone', bead('round', 'round', 8), tube),
          store('Foam spacer tape', 'spacer tape', each('round', 1, 0.2, 'm')),
        ],
        waits: [cures('Silicone cures round the pane', 'silicone-sealant', { needs: { dry: true } })],
        cautions: [
          'Not polyurethane on polycarbonate nor polysulphide on either: they craze it. Keep silicone off what will be painted.',
        ],
      }),
      step('Draw the clamps and wedges and fill where they stood', [5, 10, 20], {
        needs: { dry: true },
        tools: ['sealant gun'],
        waits: [cures('Last gaps cure', 'silicone-sealant')],
      }),
    ],
    proof: proof(
      'hose',
      'Rain the hose on the coachroof above the window for a quarter hour, tissue all along its lower edge',
      [15, 15, 20],
      { features: ['water'], tools: ['hose'] },
    ),
    followUps: [],
    writeDown: ['pane stuff and thickness', 'sealant, and what it was primed with', 'card pattern kept where'],
  },
  'hatch-seal': {
    title: 'Renew a hatch seal',
    group: 'through-hulls, drains and leaks',
    words: ['hatch seal', 'forehatch', 'hatch leaks', 'rubber strip'],
    when: 'A strip of paper shut in the hatch pulls out without drag.',
    consequence: 'comfort',
    zones: ['foredeck'],
    asks: [size('round', 'length round the hatch', 'm', 0.5, 5)],
    steps: [
      step('Pull the perished seal and pare its groove clean to the plastic', [15, 25, 45], { tools: ['scraper'] }),
      step(
        'Lay the seal uncut for an hour, joint at the hinge side, then cut it a finger long and press it in without stretching',
        [10, 20, 30],
        {
          needs: { dry: true, air_min_C: 10 },
          stores: [store('Hatch seal, section as the old', 'hatch seal', each('round', 1, 0.1, 'm'))],
        },
      ),
      step('Glue the butt with a dot of cyanoacrylate and close the hatch on baking paper', [5, 10, 15], {
        stores: [store('Cyanoacrylate glue', 'cyanoacrylate', always(1, 'tube', 'a drop is used'))],
        waits: [lasts('Seal takes the shape of its seat', 720, 'a night shut is common practice')],
        cautions: ['It glues skin and eyelids: goggles, and soak fingers off in warm water, never pull.'],
      }),
    ],
    proof: proof('pull', 'Shut strips of paper in all round: each drags alike when it is drawn', [5, 5, 10]),
    followUps: [],
    writeDown: ['section and length of the seal', 'where it was had'],
  },
});
