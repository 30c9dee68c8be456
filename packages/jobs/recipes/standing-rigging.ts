/** Standing rigging: what holds the mast up. Minutes are common practice. */
import {
  always,
  bedding,
  care,
  coverOff,
  cures,
  each,
  followUp,
  inDays,
  mast,
  nextOuting,
  number,
  onTrailer,
  plugs,
  proof,
  recipesOf,
  size,
  step,
  store,
  tube,
} from './writing.ts';

export const standingRigging = recipesOf({
  'rebed-shroud-plate': {
    title: 'Rebed a shroud plate',
    group: 'standing rigging',
    words: ['shroud plate', 'chainplate', 'weeps', 'rebed', 'leaks at the shroud'],
    when: 'Rust weeps from its bolts, water stands below it after rain, or the deck rings dull round it.',
    consequence: 'danger',
    zones: ['side deck', 'shroud'],
    asks: [
      number('bolts', 'bolts through the deck', 1, 12),
      size('bolt', 'thickness of a bolt', 'mm', 4, 16),
      size('deck', 'thickness of the deck, core and all', 'mm', 4, 60),
      size('length', 'length of the plate', 'mm', 20, 400),
      size('width', 'width of the plate', 'mm', 15, 200),
    ],
    steps: [
      step('Slack the shroud away, undo the nuts below and lift the plate', [20, 35, 70], {
        setUps: [mast('down'), coverOff],
        tools: ['socket set'],
        cautions: [care.strands],
      }),
      step('Drill each hole half as wide again, and hook wet core back 10 mm all round', [25, 40, 75], {
        needs: { dry: true },
        setUps: [coverOff],
        tools: ['cordless drill'],
        dusty: true,
        cautions: [care.drill],
      }),
      step('Fill the holes with epoxy thickened stiff, tape across the bottom', [20, 30, 50], {
        needs: { dry: true, air_min_C: 10 },
        setUps: [coverOff],
        stores: [
          store('Epoxy, fast hardener', 'epoxy hardener', plugs('bolts', 'bolt', 'deck'), { holds: 500, word: 'kit' }),
          store('Filler powder for epoxy', 'filler', plugs('bolts', 'bolt', 'deck'), { holds: 1000, word: 'pot' }),
        ],
        waits: [cures('Plugs harden', 'epoxy-fast', { needs: { dry: true } })],
        cautions: [care.resin],
      }),
      step('Drill the plugs to clearance size and countersink the rim of each hole', [15, 25, 45], {
        needs: { dry: true },
        setUps: [coverOff],
        tools: ['cordless drill'],
        dusty: true,
        cautions: [care.drill, care.blush],
      }),
      step('Bed the plate on polyurethane, a ring round each bolt, backing plate under the nuts', [25, 40, 70], {
        needs: { dry: true, air_min_C: 5 },
        setUps: [mast('down'), coverOff],
        tools: ['sealant gun', 'socket set'],
        stores: [
          store('Polyurethane sealant', 'polyurethane sealant', bedding('length', 'width', 2, 1), tube),
          store('Bolts and nuts for the shroud plate, A4', 'bolts plate', each('bolts'), null, 'bolt'),
        ],
        waits: [
          cures('Sealant cures through before the mast loads it', 'polyurethane-sealant', { setUps: [mast('down')] }),
        ],
        cautions: [
          'Treat polyurethane as permanent: the plate will not come off again without damage. Hold the bolt and turn the nut.',
        ],
      }),
    ],
    proof: proof(
      'load',
      'Sling a person’s weight off the halyard on that side and look for any lift of the plate',
      [10, 15, 25],
      {
        setUps: [mast('up')],
        cautions: ['Stand clear of the wire while it is loaded, and look up: no power line near the mast.'],
      },
    ),
    followUps: [
      followUp(
        'Look at the rebedded plate again',
        [5, 10, 15],
        'After the first hard sail the nuts may take another eighth of a turn.',
        nextOuting(60),
        'worsens',
      ),
    ],
    writeDown: ['what it was bedded with', 'size and length of the bolts', 'how far the core was wet'],
  },
  'replace-shroud': {
    title: 'Replace a shroud or stay',
    group: 'standing rigging',
    words: ['shroud', 'forestay', 'stay', 'broken strand', 'new wire', 'meat hook'],
    when: 'One strand is broken, a swage is cracked, or the wire is past ten years.',
    consequence: 'danger',
    zones: ['mast', 'side deck'],
    asks: [size('wire', 'length of the wire, pin to pin', 'm', 1, 15), number('ends', 'ends with a fitting', 1, 2)],
    steps: [
      step(
        'Lay the old stay out on the ground beside the new wire under the same pull, and mark pin to pin',
        [15, 25, 40],
        {
          setUps: [mast('down')],
          tools: ['tape measure'],
          cautions: [care.strands],
          stores: [store('1 × 19 stainless wire, grade 316', '1 19 wire', each('wire', 1, 0.3, 'm'))],
        },
      ),
      step('Cut the new wire square, tape the cut, and press or fit its terminals', [30, 50, 90], {
        tools: ['wire cutter', 'hand swager'],
        stores: [store('Terminals to suit wire and pin', 'terminals wire', each('ends'))],
        cautions: ['Cut wire springs: hold both sides of the cut, goggles and leather gloves.'],
      }),
      step('Hang it at the tang with a new clevis pin and toggle, split pin opened 20 degrees', [10, 20, 30], {
        setUps: [mast('down')],
        stores: [store('Split pins to suit', 'split pins suit', each('ends', 1, 2))],
      }),
      step('Screw the rigging screw to the old length, half its thread still in hand', [10, 15, 25], {
        setUps: [mast('up'), onTrailer],
        cautions: [care.aloft],
      }),
    ],
    proof: proof(
      'load',
      'Sail her hard on both tacks, then look for a gap at the swage and a slack lee side',
      [20, 30, 45],
      {
        setUps: [mast('up')],
        cautions: ['Nobody under or beside the mast when it is first loaded.'],
      },
    ),
    followUps: [
      followUp(
        'Take up the new wire’s stretch',
        [10, 15, 30],
        'New wire beds down in its first hard sails and hangs slack.',
        nextOuting(60),
        'worsens',
      ),
    ],
    writeDown: ['wire, its thickness and make-up', 'pin to pin length', 'who pressed the ends, and when'],
  },
  'rig-look-over': {
    title: 'Look over the standing rigging',
    group: 'standing rigging',
    words: ['rigging check', 'look over the rig', 'check shrouds', 'swages', 'yearly rig'],
    when: 'Every 12 months, and at each rigging of a boat that is trailed.',
    consequence: 'danger',
    zones: ['mast'],
    asks: [number('pins', 'split pins and rings in the rig', 1, 60)],
    steps: [
      step('Draw a cotton rag down every wire: it catches on a broken strand', [10, 20, 35], {
        setUps: [mast('down')],
        cautions: [care.strands],
      }),
      step('Clean each swage and look through a lens for a crack along it or a banana bend', [15, 25, 45], {
        needs: { daylight: true },
        setUps: [mast('down')],
        tools: ['lens'],
      }),
      step('Put dye on the doubtful swages, wipe, dust, and look for a red line', [10, 15, 30], {
        setUps: [mast('down')],
        stores: [store('Penetrant dye and developer', 'dye', always(1, 'set', 'a set does any small rig'))],
        waits: [
          {
            title: 'Dye soaks into the cracks',
            law: { kind: 'set time', minutes: 15, because: '10 to 20 min is common practice; the can says' },
            needs: { dry: true },
            setUps: [],
            still: [],
            wet: false,
          },
        ],
        cautions: [care.solvent],
      }),
      step('Renew split pins and rings, tape their ends, and turn every clevis pin to see its wear', [15, 25, 40], {
        setUps: [mast('down')],
        stores: [
          store('Split pins and rings, assorted', 'split pins assorted', each('pins', 1, 6)),
          store('Rigging tape', 'tape', always(1, 'roll', 'one roll covers a small rig')),
        ],
      }),
    ],
    proof: proof(
      'photograph',
      'Photograph every terminal with its number beside it, to lay next year’s beside',
      [10, 15, 25],
      {
        setUps: [mast('down')],
      },
    ),
    followUps: [
      followUp(
        'Replace what was marked',
        [60, 120, 240],
        'One broken strand is one too many: change that wire before she sails.',
        inDays(0, 14),
        'danger',
      ),
    ],
    writeDown: ['age of the wire', 'every mark found and where', 'pins that are worn, with their thickness'],
  },
  'tune-rig': {
    title: 'Set the rig tension',
    group: 'standing rigging',
    words: ['rig tension', 'slack shrouds', 'tune', 'mast leans', 'rigging screws'],
    when: 'The lee shrouds swing in a breeze, the mast hooks to one side, or wires are new.',
    consequence: 'worsens',
    zones: ['side deck', 'mast'],
    asks: [number('screws', 'rigging screws', 2, 12)],
    steps: [
      step('Hoist a tape to the masthead and bring both chainplates to one reading', [10, 20, 35], {
        needs: { wind_max_kn: 8 },
        setUps: [mast('up')],
        tools: ['tape measure'],
        cautions: [care.aloft],
      }),
      step('Take the screws up by half turns side to side, and read the gauge after each round', [15, 25, 45], {
        needs: { wind_max_kn: 8 },
        setUps: [mast('up')],
        tools: ['rig tension gauge'],
        cautions: [
          'A rigging screw holds hundreds of kilos: keep fingers out of its body and your face off the wire’s line. The mast must stay upright throughout.',
        ],
      }),
      step('Pin and tape the screws so that nothing can walk back', [10, 15, 25], {
        setUps: [mast('up')],
        stores: [store('Split pins for rigging screws', 'split pins rigging', each('screws', 2))],
        cautions: [care.aloft],
      }),
    ],
    proof: proof(
      'measure',
      'Close-hauled in 12 knots, sight up the groove: straight athwart, lee side just soft',
      [15, 20, 30],
      {
        needs: { wind_max_kn: 15 },
        setUps: [mast('up')],
        cautions: ['Sight it from the cockpit; nobody climbs to look, and no head near the boom under the mast.'],
      },
    ),
    followUps: [],
    writeDown: ['gauge reading of every wire', 'threads showing at each screw', 'wind and temperature that day'],
  },
  'mast-step-bolts': {
    title: 'Check and rebed the mast step',
    group: 'standing rigging',
    words: ['mast step', 'tabernacle', 'mast foot', 'hinge pin', 'compression'],
    when: 'The deck dips round it, its bolts are loose, or rust runs from under it.',
    consequence: 'danger',
    zones: ['mast', 'foredeck'],
    asks: [
      number('bolts', 'bolts in the step', 2, 12),
      size('length', 'length of its foot', 'mm', 60, 400),
      size('width', 'width of its foot', 'mm', 60, 300),
    ],
    steps: [
      step('Lay a straight edge across the deck at the step and measure the dip with the mast off it', [5, 10, 20], {
        setUps: [mast('down'), coverOff],
        tools: ['straight edge'],
      }),
      step('Unship the step, scrape old bedding off both faces, and prod the wood below', [20, 35, 60], {
        needs: { dry: true },
        setUps: [mast('down'), coverOff],
        tools: ['socket set', 'scraper'],
      }),
      step('Bed it in hybrid sealant with the bolts finger tight, squeeze-out left standing', [20, 30, 50], {
        needs: { dry: true, air_min_C: 5 },
        setUps: [mast('down'), coverOff],
        tools: ['sealant gun'],
        stores: [
          store('Hybrid sealant', 'hybrid sealant', bedding('length', 'width', 2, 1), tube),
          store('Bolts for the mast step, A4', 'bolts step', each('bolts')),
        ],
        waits: [cures('Gasket forms under the step', 'hybrid-sealant', { setUps: [mast('down')] })],
      }),
      step('Pull the bolts home on the cured gasket and trim what stands out', [10, 15, 25], {
        setUps: [mast('down'), coverOff],
        tools: ['socket set', 'knife'],
      }),
    ],
    proof: proof(
      'measure',
      'With the rig at sailing tension, measure the dip again: no deeper than a millimetre more',
      [5, 10, 15],
      {
        setUps: [mast('up')],
        tools: ['straight edge'],
        cautions: [care.aloft],
      },
    ),
    followUps: [
      followUp(
        'Look at the post below the mast step',
        [10, 20, 30],
        'A dip that comes back is the post or its foot giving way.',
        nextOuting(60),
        'stops-sailing',
      ),
    ],
    writeDown: ['dip before and after', 'state of the wood below', 'bedding and bolt size'],
  },
});
