/** Sails and covers. Minutes are common practice. */
import {
  care,
  coverOn,
  cures,
  each,
  followUp,
  inDays,
  lasts,
  number,
  proof,
  recipesOf,
  size,
  step,
  store,
} from './writing.ts';

export const sailsAndCovers = recipesOf({
  'sail-seam': {
    title: 'Restitch a sail’s seam',
    group: 'sails and covers',
    words: ['seam', 'stitching gone', 'sail torn', 'restitch', 'leech'],
    when: 'A thumbnail lifts the thread, or light shows along a seam.',
    consequence: 'stops-sailing',
    zones: ['cabin', 'cockpit'],
    asks: [size('seam', 'length of seam to sew', 'm', 0.1, 20)],
    steps: [
      step('Peg the sail flat indoors, salt sponged off and dry, panels matched by their old holes', [15, 20, 35], {
        waits: [
          lasts('Sponged cloth dries', 120, 'two hours under a roof is common practice; tape sticks to dry cloth only'),
        ],
      }),
      step('Stick the lap with seam tape so that it cannot creep', [10, 15, 25], {
        stores: [store('Double-sided seam tape', 'seam tape', each('seam', 1, 0.2, 'm'))],
      }),
      step('Zigzag by hand through the old holes, twelve stitches to the hand, both edges of the lap', [20, 50, 120], {
        tools: ['palm and needle'],
        stores: [store('Waxed polyester thread', 'thread', each('seam', 8, 1, 'm'))],
        cautions: ['Push with the palm, never the thumb: needle points break off in hands.'],
      }),
    ],
    proof: proof(
      'pull',
      'Put a knee each side and heave the seam apart: no hole grows and no stitch shows daylight',
      [5, 5, 10],
    ),
    followUps: [
      followUp(
        'Look over the rest of the seams by thumbnail',
        [20, 30, 45],
        'Sun rots all thread of a sail alike; the first seam is seldom the last.',
        inDays(0, 60),
        'worsens',
      ),
    ],
    writeDown: ['which seam, and its length', 'thread used'],
  },
  'wash-sails': {
    title: 'Wash and dry the sails',
    group: 'sails and covers',
    words: ['wash sails', 'mildew', 'salty sail', 'black spots'],
    when: 'Every 12 months before lay-up, or at the first grey spots.',
    consequence: 'worsens',
    zones: ['cockpit', 'cabin'],
    asks: [size('area', 'area of all the sails', 'm²', 1, 60)],
    steps: [
      step('Hose both faces on a clean lawn, dab mildew with mild soap and a soft brush, no scrubbing', [30, 50, 80], {
        features: ['water'],
        tools: ['hose'],
        stores: [store('Mild soap for sails', 'mild soap', each('area', 10, 50, 'ml'))],
        cautions: ['Wet sailcloth is slick as ice underfoot: off it in boots. No bleach on nylon or aramid.'],
      }),
      step('Drape them loose out of the wind until both faces and the batten pockets are bone dry', [15, 20, 35], {
        needs: { dry: true, wind_max_kn: 8 },
        waits: [
          lasts(
            'Cloth and pockets dry',
            180,
            'three hours of a drying day is common practice; flogging dry ages cloth',
            { needs: { dry: true } },
          ),
        ],
      }),
      step('Roll down the luff or flake along new folds, battens out, dry bag', [15, 25, 40]),
    ],
    proof: proof('look', 'Smell and feel inside the corner patches next day: no damp, no musk', [5, 5, 10]),
    followUps: [],
    writeDown: ['stains and chafe seen', 'where each sail is kept for the winter'],
  },
  'cover-reproof': {
    title: 'Patch and reproof the boat cover',
    group: 'sails and covers',
    words: ['cover leaks', 'patch the cover', 'reproof', 'boom tent'],
    when: 'Water stops beading on it, or daylight shows where it chafes.',
    consequence: 'worsens',
    zones: ['cockpit', 'cabin'],
    asks: [size('area', 'area of the cover', 'm²', 2, 60), size('patch', 'length round all patches', 'm', 0.1, 20)],
    steps: [
      step('Scrub the cover with water only and let it dry stretched over the boat', [25, 40, 60], {
        features: ['water'],
        setUps: [coverOn],
        waits: [
          lasts('Canvas dries through', 600, 'a dry day is common practice: proofing runs off damp canvas', {
            needs: { dry: true },
          }),
        ],
      }),
      step('Sew patches with round corners over the worn places, then pad what wore them', [30, 60, 120], {
        tools: ['palm and needle'],
        stores: [
          store('Canvas of the cover’s weight', 'canvas', each('patch', 0.2, 0.2, 'm²')),
          store('Heavy polyester thread', 'thread', each('patch', 6, 2, 'm')),
        ],
      }),
      step('Brush waterproofing on in one direction, seams twice, until it is evenly dark', [30, 50, 80], {
        needs: { dry: true, wind_max_kn: 12 },
        setUps: [coverOn],
        stores: [
          store('Canvas waterproofing', 'waterproofing', each('area', 0.2, 0, 'l'), { holds: 2.5, word: 'can' }),
        ],
        waits: [
          lasts('Proofing dries into the canvas', 1440, 'a day is common practice; the can says', {
            needs: { dry: true },
          }),
        ],
        cautions: [care.solvent],
      }),
    ],
    proof: proof(
      'hose',
      'Pour a bucket over each patch and look up from inside: beads on top, no dark print below',
      [10, 10, 15],
      {
        features: ['water'],
        setUps: [coverOn],
      },
    ),
    followUps: [],
    writeDown: ['what wore it, and the padding', 'proofing used'],
  },
  'sail-patch': {
    title: 'Glue a chafe patch on a sail',
    group: 'sails and covers',
    words: ['chafe patch', 'spreader patch', 'hole in the sail', 'reef point torn'],
    when: 'A spreader, shroud or batten end has worn the cloth thin, or there is a hole a thumb goes through.',
    consequence: 'worsens',
    zones: ['cabin', 'cockpit'],
    asks: [size('length', 'length of the patch', 'm', 0.05, 1), size('width', 'width of the patch', 'm', 0.05, 1)],
    steps: [
      step('Cut two patches with rounded corners a hand’s breadth past the wear, warp along warp', [10, 15, 25], {
        stores: [store('Adhesive sailcloth', 'sailcloth', each('length', 2, 0.1, 'm'))],
        cautions: ['A hot knife cuts and seals, and burns: board under the cloth, hand behind the blade.'],
      }),
      step(
        'Degrease with alcohol, let it flash off, and burnish the patches on from the middle out, one each face',
        [10, 20, 30],
        {
          needs: { air_min_C: 12 },
          stores: [store('Isopropyl alcohol', 'alcohol', each('width', 0.1, 0.05, 'l'))],
          waits: [
            lasts('Adhesive bites before it is folded', 1440, 'a day is common practice for pressure-sensitive cloth'),
          ],
          cautions: ['Alcohol flashes: no flame, windows open.'],
        },
      ),
      step('Sew round the edge and once across the middle', [15, 30, 50], {
        tools: ['palm and needle'],
        stores: [store('Sail thread', 'thread', each('width', 10, 1, 'm'))],
      }),
    ],
    proof: proof(
      'pull',
      'Hold the repair against the sun and stretch it on the bias: no bubble, no slipping of the cloths',
      [5, 5, 10],
    ),
    followUps: [
      followUp(
        'Pad what wore through the sail',
        [10, 20, 30],
        'A patch over a sharp spreader end lasts one season.',
        inDays(0, 60),
        'worsens',
      ),
    ],
    writeDown: ['where on the sail', 'what it was rubbing on'],
  },
  'sprayhood-seams': {
    title: 'Seal the stitching of a sprayhood',
    group: 'sails and covers',
    words: ['sprayhood', 'dodger', 'drips through the stitching', 'hood leaks'],
    when: 'Drips run along its seams in a shower though the cloth beads.',
    consequence: 'comfort',
    zones: ['cockpit'],
    asks: [size('seams', 'length of its seams', 'm', 1, 40)],
    steps: [
      step('Wipe old wax off the seams with a damp cloth, let them air on their hoops', [10, 15, 25], {
        waits: [lasts('Seams air', 90, 'an hour and a half of dry air is common practice', { needs: { dry: true } })],
      }),
      step('Run seam sealer along the outside of every row with a small brush, two thin passes', [20, 35, 60], {
        needs: { dry: true, air_min_C: 8 },
        stores: [store('Seam sealer', 'seam sealer', each('seams', 4, 0, 'ml'), { holds: 60, word: 'bottle' })],
        waits: [
          cures('Sealer skins right through', 'hybrid-sealant', {
            law: { kind: 'product', product: 'hybrid-sealant', depth_mm: 1 },
            needs: { dry: true },
          }),
        ],
        cautions: ['Off the clear windows: many sealers craze them for good.'],
      }),
    ],
    proof: proof(
      'hose',
      'Let the garden hose rain on the hood for ten minutes with dry paper below each seam',
      [10, 15, 20],
      { features: ['water'], tools: ['hose'] },
    ),
    followUps: [],
    writeDown: ['sealer used', 'seams that still wept'],
  },
  'sacrificial-strip': {
    title: 'Renew the sacrificial strip of a furled sail',
    group: 'sails and covers',
    words: ['sacrificial strip', 'furling genoa', 'uv strip', 'leech strip'],
    when: 'The strip cracks when folded, or its stitching rubs away to powder.',
    consequence: 'worsens',
    zones: ['cockpit', 'foredeck'],
    asks: [size('leech', 'length of leech and foot', 'm', 2, 25)],
    steps: [
      step('Unpick the old strip, keeping it whole for a pattern, and brush the thread out', [40, 75, 120], {
        tools: ['seam ripper'],
        cautions: ['Rip away from yourself and from the sail: one slip makes a longer job.'],
      }),
      step('Baste the new strip down with tape, eased round the curve so the leech does not hook', [30, 45, 75], {
        stores: [
          store('Sun-proof acrylic strip, 300 mm wide', 'acrylic strip', each('leech', 1, 0.5, 'm')),
          store('Basting tape', 'basting tape', each('leech', 2, 0.5, 'm')),
        ],
      }),
      step('Machine two rows of zigzag along both edges with sun-proof thread', [60, 100, 180], {
        notAlone: true,
        features: ['mains'],
        tools: ['sewing machine'],
        stores: [store('Sun-proof thread', 'sun-proof thread', each('leech', 14, 10, 'm'))],
        cautions: [care.mains, 'One feeds and one carries the weight: a dragged sail bends needles, and they fly.'],
      }),
    ],
    proof: proof(
      'hoist',
      'Hoist and furl it in the drive on a still morning: the strip lies outermost with no sail showing',
      [15, 20, 30],
      {
        needs: { wind_max_kn: 6 },
        setUps: [{ setUp: 'mast', state: 'up' }],
        cautions: ['Sheet ends held: a flogging clew under the mast breaks glasses and teeth.'],
      },
    ),
    followUps: [],
    writeDown: ['cloth and thread', 'which way it furls'],
  },
  'whip-rope-ends': {
    title: 'Whip and heat-seal rope ends',
    group: 'sails and covers',
    words: ['rope ends', 'frayed end', 'whipping', 'cow’s tail'],
    when: 'An end has fluffed out, or will not go through its block.',
    consequence: 'comfort',
    zones: ['cockpit'],
    asks: [number('ends', 'ends to whip', 1, 60)],
    steps: [
      step('Cut each end square through a band of tape and fuse the core to the cover', [5, 15, 25], {
        tools: ['hot knife'],
        cautions: ['Molten nylon sticks and burns to the bone: never shape it with bare fingers.'],
      }),
      step('Put a sailmaker’s whipping on, a rope’s thickness long, two turns through the lay', [10, 30, 60], {
        tools: ['palm and needle'],
        stores: [store('Whipping twine', 'twine', each('ends', 0.8, 0, 'm'))],
      }),
    ],
    proof: proof('pull', 'Roll each end hard between the palms and pluck at the twine: nothing moves', [5, 5, 10]),
    followUps: [],
    writeDown: ['ropes done', 'length lost from each'],
  },
});
