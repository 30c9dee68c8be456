/** Board, case, rudder and steering. Minutes are common practice. */
import {
  boardLowered,
  care,
  cures,
  each,
  followUp,
  hollows,
  inDays,
  lasts,
  number,
  plugs,
  proof,
  propped,
  recipesOf,
  size,
  step,
  store,
  tube,
  wetOut,
} from './writing.ts';

export const boardAndRudder = recipesOf({
  'board-wire': {
    title: 'Renew the board lifting wire',
    group: 'board and case',
    words: ['board wire', 'lifting wire', 'centreboard wire', 'pennant', 'frayed wire'],
    when: 'A strand is broken at the thimble or sheave, or the wire is three to six years old.',
    consequence: 'danger',
    zones: ['board case', 'centreboard'],
    asks: [
      size('wire', 'length of the wire, winch to board', 'm', 0.5, 8),
      number('ends', 'ends with a pressed eye', 1, 2),
    ],
    steps: [
      step('Take the board’s weight on a strop round it, and cast the old wire off winch and board', [15, 30, 50], {
        setUps: [propped, boardLowered],
        cautions: [care.props, care.board, care.strands],
      }),
      step('Press the eye on the bench: two ferrules, thimble, a loop that fits the board’s pin', [15, 25, 40], {
        tools: ['hand swager', 'wire cutter'],
        stores: [
          store('7 × 19 lifting wire, grade 316, thickness as the old', 'lifting wire', each('wire', 1, 0.5, 'm')),
          store('Ferrules and thimbles for the wire', 'ferrules thimbles', each('ends', 2)),
        ],
        cautions: ['Bits of cut wire go into feet and bilges: sweep up with a magnet and a cloth.'],
      }),
      step('Lead it over a sheave that turns freely, make it fast to drum and board, moused', [20, 30, 60], {
        setUps: [propped, boardLowered],
        stores: [store('Seizing wire', 'seizing wire', each('ends', 0.3, 0, 'm'))],
        cautions: [care.props, care.board],
      }),
    ],
    proof: proof(
      'hoist',
      'Wind the board fully up and down twice by the winch, strop slack but still on, then hold it half way for five minutes',
      [10, 15, 30],
      {
        setUps: [propped, boardLowered],
        cautions: [care.board, care.props, 'The handle kicks back when the pawl lets go: stand beside it.'],
      },
    ),
    followUps: [
      followUp(
        'Look at the lifting wire’s thimble',
        [5, 5, 10],
        'Wear starts where the wire bends: look each six months.',
        inDays(150, 190),
        'stops-sailing',
      ),
    ],
    writeDown: ['wire, thickness and length', 'hand force to lift before and after', 'state of the sheave'],
  },
  'board-pivot': {
    title: 'Draw the board’s pivot pin and measure it',
    group: 'board and case',
    words: ['pivot pin', 'board knocks', 'case leaks at the pin', 'pivot bolt'],
    when: 'The board knocks at anchor, the case weeps at the pin, or it was last drawn two to four years ago.',
    consequence: 'stops-sailing',
    zones: ['board case'],
    asks: [size('pin', 'thickness of the pin', 'mm', 8, 40), number('washers', 'sealing washers on the pin', 1, 6)],
    steps: [
      step(
        'Wedge the board in its slot so that the pin is free of weight, then drift the pin out through the case',
        [20, 40, 90],
        {
          setUps: [propped],
          tools: ['drift', 'hammer'],
          cautions: [
            care.props,
            'Nobody’s arm in the slot: with the pin out only the wedges and blocks hold the board.',
          ],
        },
      ),
      step('Calliper pin and bush in three places; half a millimetre of wear asks for new ones', [10, 15, 25], {
        tools: ['calliper'],
      }),
      step('Bush the worn hole: coat it with thickened epoxy round a waxed pin', [15, 30, 50], {
        needs: { air_min_C: 10 },
        stores: [
          store('Epoxy, fast hardener', 'epoxy hardener', plugs('washers', 'pin', 10), { holds: 500, word: 'kit' }),
        ],
        waits: [cures('Bush hardens round the waxed pin', 'epoxy-fast')],
        cautions: [care.resin],
      }),
      step('Drive the greased pin home with new washers, sealant under each head', [15, 25, 45], {
        setUps: [propped],
        tools: ['sealant gun', 'socket set'],
        stores: [
          store('Sealing washers for the pivot', 'washers pivot', each('washers')),
          store('Polysulphide sealant', 'polysulphide', each('washers', 5, 10, 'ml'), tube),
        ],
        waits: [
          cures('Sealant at the pin heads cures before water', 'polysulphide-sealant', {
            law: { kind: 'product', product: 'polysulphide-sealant', depth_mm: 3 },
          }),
        ],
        cautions: [care.props, 'Polysulphide softens acrylic, polycarbonate, ABS and PVC: keep it off them.'],
      }),
    ],
    proof: proof(
      'soak',
      'Plug the slot from below, fill the case with a bucket of water and wipe the pin heads dry: none comes in an hour',
      [10, 15, 25],
      {
        setUps: [propped],
        features: ['water'],
        waits: [lasts('Water stands in the case', 60, 'an hour tells a weep from a spill; common practice')],
        cautions: [care.props],
      },
    ),
    followUps: [],
    writeDown: ['pin and bush diameters', 'washers, size and stuff', 'sealant'],
  },
  'slot-gasket': {
    title: 'Glue new slot gaskets under the case',
    group: 'board and case',
    words: ['slot gasket', 'case gasket', 'slot rubber', 'gurgles in the case'],
    when: 'The case gurgles and spouts under way, or the strips hang loose.',
    consequence: 'comfort',
    zones: ['board case', 'bottom'],
    asks: [size('slot', 'length of the slot', 'm', 0.2, 3)],
    steps: [
      step('Pull the old strips, dig hardened glue from the rebate and scour it bright', [25, 45, 80], {
        setUps: [propped],
        dusty: true,
        cautions: [care.props, care.dust],
      }),
      step('Brush contact adhesive on strips and rebate, two coats', [15, 25, 40], {
        setUps: [propped],
        needs: { dry: true, air_min_C: 10 },
        stores: [
          store('Contact adhesive', 'contact adhesive', each('slot', 0.1, 0.05, 'l'), { holds: 0.25, word: 'tin' }),
        ],
        waits: [
          lasts('Adhesive goes touch dry on both faces', 15, '10 to 20 min on the tins; common practice', {
            needs: { dry: true },
          }),
        ],
        cautions: [care.props, care.solvent],
      }),
      step('Lay each gasket edge to edge along the centreline, roll it hard, screw the end stops', [20, 30, 50], {
        setUps: [propped],
        stores: [
          store('Slot gasket, laminated sailcloth or rubber', 'gasket', each('slot', 2, 0.2, 'm')),
          store('End stop screws, A4', 'screws stop', each('slot', 4, 2)),
        ],
        window: { greatest_min: 40, past: { kind: 'forbidden' } },
        waits: [
          lasts('Bond comes to strength before she is towed', 1440, 'a day is common practice for contact adhesive'),
        ],
        cautions: [care.props, 'Contact adhesive grabs once and for all: a paper slip between until it lies right.'],
      }),
    ],
    proof: proof(
      'run',
      'Lower and raise the board through the gaskets six times: lips part and close, none folds in',
      [10, 10, 20],
      {
        setUps: [propped, boardLowered],
        cautions: [care.props, care.board],
      },
    ),
    followUps: [],
    writeDown: ['gasket stuff and width', 'adhesive'],
  },
  'board-edge': {
    title: 'Fill and fair a chipped board',
    group: 'board and case',
    words: ['board edge', 'chipped board', 'fair the centreboard', 'rough board'],
    when: 'The leading edge is bruised to the cloth, or the board hums and sticks in its case.',
    consequence: 'worsens',
    zones: ['board case', 'trestles'],
    asks: [
      number('chips', 'chips to fill', 1, 20),
      size('wide', 'width of the worst', 'mm', 5, 200),
      size('deep', 'depth of the worst', 'mm', 1, 40),
    ],
    steps: [
      step('Grind back bruised laminate to sound stuff, edges scarfed twelve to one', [20, 35, 60], {
        tools: ['sander and vacuum'],
        features: ['mains'],
        dusty: true,
        cautions: [care.dust, care.mains],
      }),
      step('Fill the bruises proud with epoxy and microballoons, a film over to shape the nose', [20, 30, 50], {
        needs: { dry: true, air_min_C: 10 },
        stores: [
          store('Epoxy, fast hardener', 'epoxy hardener', hollows('chips', 'wide', 'deep'), {
            holds: 500,
            word: 'kit',
          }),
          store('Fairing powder for epoxy', 'fairing powder', hollows('chips', 'wide', 'deep')),
        ],
        waits: [cures('Fairing gets hard enough to sand', 'epoxy-fast', { needs: { dry: true } })],
        cautions: [care.resin],
      }),
      step('Longboard it to a template taken off the good side, then wet it to look for hollows', [30, 50, 90], {
        dusty: true,
        tools: ['sanding board'],
        cautions: [care.dust, care.blush],
      }),
      step('Seal with two-pot primer right round the nose', [15, 25, 40], {
        needs: { dry: true, air_min_C: 10, humidity_max_pct: 85, dewMargin_min_C: 3 },
        wet: true,
        stores: [store('Epoxy primer', 'epoxy primer', each('chips', 0.02, 0.1, 'l'), { holds: 0.75, word: 'tin' })],
        waits: [cures('Primer dries', 'epoxy-primer', { wet: true, needs: { dry: true } })],
        cautions: [care.resin, care.solvent],
      }),
    ],
    proof: proof(
      'measure',
      'Slide the template down both faces by torchlight: no gap passes a playing card',
      [10, 10, 20],
    ),
    followUps: [],
    writeDown: ['thickness of board and slot', 'filler and primer'],
  },
  'rudder-pintles': {
    title: 'Take the play out of pintles and gudgeons',
    group: 'rudder and steering',
    words: ['pintle', 'gudgeon', 'rudder play', 'rudder knocks', 'wobbly rudder'],
    when: 'Yearly; the blade’s tip moves a finger’s width with the tiller held, or it knocks at anchor.',
    consequence: 'danger',
    zones: ['transom', 'trestles'],
    asks: [number('pairs', 'pairs of pintle and gudgeon', 1, 4)],
    steps: [
      step('Hold the tiller, rock the blade, and mark which pair clacks', [5, 10, 15]),
      step('Unship it, calliper pins and holes, and tap the bolts for one that rings loose', [10, 20, 35], {
        tools: ['calliper'],
      }),
      step('Ream the slack holes true and press in acetal bushes', [20, 40, 75], {
        tools: ['cordless drill', 'reamer'],
        stores: [store('Acetal bushes for the pins', 'acetal bushes', each('pairs', 2))],
        dusty: true,
        cautions: [care.drill],
      }),
      step('Bed the loose gudgeon bolts in hybrid sealant, a plate behind the transom', [20, 35, 60], {
        needs: { dry: true, air_min_C: 5 },
        tools: ['sealant gun', 'socket set'],
        stores: [
          store('Hybrid sealant', 'hybrid sealant', each('pairs', 15, 0, 'ml'), tube),
          store('Gudgeon bolts, A4', 'gudgeon bolts', each('pairs', 4)),
        ],
        waits: [cures('Bedding behind the gudgeons cures', 'hybrid-sealant')],
      }),
    ],
    proof: proof(
      'pull',
      'Rock the blade again with the tiller held: less than two millimetres at the tip, and the lock stops it lifting off',
      [5, 5, 10],
    ),
    followUps: [],
    writeDown: ['pin and bush diameters', 'play at the tip before and after', 'bolts and bedding'],
  },
  'rudder-blade': {
    title: 'Glass a split rudder blade',
    group: 'rudder and steering',
    words: ['rudder split', 'blade cracked', 'rudder delaminated', 'rudder full of water'],
    when: 'A crack runs along its edge, water drips from it ashore, or it rings hollow.',
    consequence: 'danger',
    zones: ['trestles', 'rudder'],
    asks: [
      size('area', 'area to glass, both faces', 'm²', 0.05, 2),
      size('crack', 'length of the crack', 'm', 0.05, 2),
    ],
    steps: [
      step('Open the crack to a vee, drill drains at the tip and hang it to weep', [20, 35, 60], {
        tools: ['cordless drill'],
        dusty: true,
        cautions: [care.drill],
        waits: [
          lasts(
            'Core drains and dries',
            4320,
            'three days hanging in a dry shed is little; common practice. A meter should read under 16 %',
            { needs: { dry: true } },
          ),
        ],
      }),
      step('Pack the vee with fibre-thickened epoxy and clamp the blade flat between boards', [20, 30, 50], {
        needs: { dry: true, air_min_C: 10 },
        tools: ['clamps'],
        stores: [
          store('Epoxy, fast hardener', 'epoxy hardener', wetOut('area', 200, 3, 1), { holds: 0.5, word: 'kit' }),
          store('Chopped fibre for epoxy', 'chopped fibre', each('crack', 0.05, 0.05, 'kg')),
        ],
        waits: [cures('Clamped joint sets', 'epoxy-fast')],
        cautions: [care.resin],
      }),
      step(
        'Glass the faces with three layers of 200 g cloth, each lapping the last by 20 mm, wetted clear',
        [40, 70, 110],
        {
          needs: { dry: true, air_min_C: 12 },
          stores: [
            store('Woven glass cloth, 200 g/m²', 'glass cloth', each('area', 3, 0.2, 'm²')),
            store('Peel ply', 'peel ply', each('area', 1, 0.1, 'm²')),
          ],
          waits: [cures('Laminate cures under peel ply', 'epoxy-fast', { needs: { dry: true } })],
          cautions: [care.resin],
        },
      ),
      step('Strip the peel ply, fair the laps and feel for edges with shut eyes', [30, 45, 80], {
        dusty: true,
        tools: ['sanding board'],
        cautions: [care.dust, care.blush],
      }),
    ],
    proof: proof(
      'load',
      'Chock it across two trestles at head and tip and stand on the middle: it springs back with no creak',
      [5, 10, 15],
      {
        cautions: ['Trestles low and a hand on the bench: if it breaks you fall a hand’s breadth, not a metre.'],
      },
    ),
    followUps: [
      followUp(
        'Tap the blade over for hollow places',
        [10, 10, 15],
        'Water left in the core freezes and splits the skin again.',
        inDays(30, 120),
        'worsens',
      ),
    ],
    writeDown: ['layers and cloth', 'moisture of the core before it was closed'],
  },
  'tiller-head': {
    title: 'Glue and bolt a loose tiller head',
    group: 'rudder and steering',
    words: ['tiller loose', 'tiller head', 'rudder stock cheeks', 'tiller bolt'],
    when: 'The tiller lifts before the blade turns, or its wood is black round the bolt.',
    consequence: 'danger',
    zones: ['cockpit', 'tiller'],
    asks: [
      size('bolt', 'thickness of the bolt', 'mm', 5, 14),
      size('deep', 'depth of wood it goes through', 'mm', 15, 120),
      number('bolts', 'bolts', 1, 4),
    ],
    steps: [
      step('Knock the bolt out, plane off black wood and dry what is left', [15, 25, 40], {
        tools: ['plane'],
        waits: [
          lasts('Wood dries', 2880, 'two days under a roof; wood for glue wants 8 to 16 % of water', {
            needs: { dry: true },
          }),
        ],
      }),
      step('Wet the hole out with thin epoxy, then fill the oval with stiff mix round a waxed bolt', [15, 25, 40], {
        needs: { air_min_C: 10 },
        stores: [
          store('Epoxy, fast hardener', 'epoxy hardener', plugs('bolts', 'bolt', 'deep'), { holds: 500, word: 'kit' }),
        ],
        waits: [cures('Bolt hole sets round wax', 'epoxy-fast')],
        cautions: [care.resin],
      }),
      step('Twist the waxed bolt out, fit tube washers and a new locknut, snug not crushing', [10, 15, 25], {
        tools: ['socket set'],
        stores: [store('Tiller bolt with locknut and broad washers, A4', 'tiller bolt', each('bolts'), null, 'bolt')],
      }),
    ],
    proof: proof(
      'load',
      'Lash the blade and heave on the tiller’s end both ways and upward: the cheeks neither open nor creak',
      [5, 5, 10],
    ),
    followUps: [
      followUp(
        'Varnish the bare wood at the tiller head',
        [20, 30, 45],
        'Bare end grain drinks, and the black comes back.',
        inDays(0, 30),
        'worsens',
      ),
    ],
    writeDown: ['bolt size', 'how far the rot went'],
  },
});
