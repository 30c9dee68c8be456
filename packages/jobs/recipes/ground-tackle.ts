/** Ground tackle: what holds her to the bottom or the quay. Minutes are common practice. */
import {
  always,
  care,
  coverOff,
  each,
  followUp,
  inDays,
  lasts,
  nextOuting,
  number,
  proof,
  recipesOf,
  size,
  step,
  store,
} from './writing.ts';

export const groundTackle = recipesOf({
  'anchor-shackle': {
    title: 'Change and mouse the anchor shackle',
    group: 'ground tackle',
    words: ['anchor shackle', 'mouse', 'seizing wire', 'pin not moused'],
    when: 'Its pin is not moused, or it is worn by 8 % of its thickness.',
    consequence: 'danger',
    zones: ['bow', 'anchor well'],
    asks: [number('shackles', 'shackles between anchor and rode', 1, 4)],
    steps: [
      step('Break out the old pin; try the new one through the chain’s end link and the anchor’s eye', [5, 15, 40], {
        tools: ['pliers', 'hammer'],
        stores: [
          store('Galvanised shackle, its pin as thick as the end link takes', 'shackle galvanised', each('shackles')),
        ],
        cautions: [
          'A seized pin flies when it lets go: goggles, and the anchor lashed so that it cannot drop on a foot.',
        ],
      }),
      step(
        'Grease the thread, screw home, back a quarter turn so the eye lines up, and mouse with four turns of wire',
        [5, 10, 20],
        {
          stores: [store('Seizing wire, soft stainless', 'seizing wire', each('shackles', 0.4, 0, 'm'))],
          cautions: ['Tuck the tails under: wire ends open hands in the dark, so leather gloves when hauling.'],
        },
      ),
    ],
    proof: proof(
      'pull',
      'Make the rode fast ashore and take a tackle’s strain through the new shackle: nothing turns',
      [5, 10, 15],
      {
        cautions: ['Nobody in line with a loaded rode: stretched rope comes back like a whip.'],
      },
    ),
    followUps: [],
    writeDown: ['thickness of shackle and pin', 'metal of the mousing', 'day it was moused'],
  },
  'range-the-rode': {
    title: 'Range the rode and measure it',
    group: 'ground tackle',
    words: ['anchor chain', 'rode', 'chain wear', 'end for end', 'rusty chain'],
    when: 'Every 12 months, and after a night that snatched.',
    consequence: 'danger',
    zones: ['anchor well', 'bow'],
    asks: [size('chain', 'length of chain', 'm', 1, 60), size('rope', 'length of rope', 'm', 0, 100)],
    steps: [
      step('Flake chain and rope up and down the drive, anchor end nearest the bow', [10, 15, 30], {
        setUps: [coverOff],
        cautions: ['Lift chain by bights, back straight: thirty metres of it weighs as much as you do.'],
      }),
      step('Calliper the thinnest link every two metres: scrap the chain at 8 to 10 % off its diameter', [15, 25, 45], {
        tools: ['calliper'],
      }),
      step('Open the lay of the rope by hand along its whole length and look for chafe and grit inside', [10, 15, 30]),
      step('Turn the rode end for end and paint fresh length marks', [20, 30, 60], {
        needs: { dry: true },
        stores: [
          store('Marking paint for chain', 'marking paint', each('chain', 0.01, 0, 'l')),
          store('Whipping twine', 'twine', each('rope', 0.05, 2, 'm')),
        ],
        waits: [
          lasts('Length marks dry', 60, 'an hour to handling is common practice for marking paint', {
            needs: { dry: true },
          }),
        ],
        cautions: [care.solvent],
      }),
    ],
    proof: proof('measure', 'Write the thinnest link found against its new diameter, and the percent gone', [5, 5, 10]),
    followUps: [
      followUp(
        'Have the chain galvanised again',
        [15, 30, 60],
        'Brown links outnumber grey ones: three to seven years is usual.',
        inDays(0, 365),
        'worsens',
      ),
    ],
    writeDown: ['thinnest link and where', 'which end is now outboard', 'length of chain and rope'],
  },
  'splice-rode': {
    title: 'Splice a new eye and thimble in the anchor rope',
    group: 'ground tackle',
    words: ['splice', 'thimble', 'anchor rope', 'eye splice', 'chafed at the thimble'],
    when: 'A strand is cut at the thimble, the thimble is loose, or the old splice draws.',
    consequence: 'danger',
    zones: ['bow', 'anchor well'],
    asks: [size('rope', 'thickness of the rope', 'mm', 6, 20)],
    steps: [
      step('Cut out the chafed end, whip the rope fifteen diameters back and unlay three strands', [5, 10, 20], {
        tools: ['knife'],
        stores: [store('Whipping twine', 'twine', always(2, 'm', 'two whippings take two metres'))],
        cautions: ['Cut away from the hand that holds the rope; melted ends drip and stick to skin.'],
      }),
      step('Draw the eye snug round its thimble and tuck five rounds against the lay, each pulled down', [25, 40, 75], {
        tools: ['fid'],
        stores: [
          store(
            'Thimble, galvanised, gauge to suit the rope',
            'thimble galvanised',
            always(1, '', 'one an eye'),
            null,
            'rope',
          ),
        ],
      }),
      step('Taper the last two rounds by halves, roll it underfoot and whip the throat', [10, 15, 25], {
        stores: [store('Twine for the throat', 'twine', each('rope', 0.1, 0, 'm'))],
      }),
    ],
    proof: proof(
      'pull',
      'Haul the splice bar-tight between two strong points for ten minutes: no tuck may creep',
      [10, 15, 20],
      {
        cautions: ['Stand beside a stretched rope, never astride or in line: it stores enough to break a leg.'],
      },
    ),
    followUps: [
      followUp(
        'Measure the splice after the first night at anchor',
        [5, 5, 10],
        'New tucks settle; one that keeps settling was tucked too few times.',
        nextOuting(60),
        'danger',
      ),
    ],
    writeDown: ['rope and its thickness', 'number of tucks', 'metres cut off, so that the length marks are right'],
  },
  'mooring-cleat-plate': {
    title: 'Put a backing plate under a mooring cleat',
    group: 'ground tackle',
    words: ['mooring cleat', 'backing plate', 'cleat moves', 'washers pulled in'],
    when: 'The cleat rocks when pulled sideways, or small washers have sunk into the deck below it.',
    consequence: 'worsens',
    zones: ['foredeck', 'bow'],
    asks: [number('bolts', 'bolts in the cleat', 2, 6), size('length', 'length of the cleat’s foot', 'mm', 40, 300)],
    steps: [
      step(
        'Cut a plate twice the cleat’s foot each way, from 4 mm aluminium or 12 mm ply, corners rounded',
        [15, 30, 60],
        {
          tools: ['saw'],
          stores: [store('Plate for backing', 'backing plate', always(1, '', 'one under a cleat'))],
          dusty: true,
          cautions: [care.dust],
        },
      ),
      step('Offer it up below, drill through from above, and squeeze butyl round each countersunk hole', [20, 30, 60], {
        setUps: [coverOff],
        needs: { dry: true },
        tools: ['cordless drill'],
        stores: [
          store('Butyl tape', 'butyl', each('length', 4, 200, 'mm'), { holds: 9000, word: 'roll' }),
          store('Longer bolts, washers and nuts, A4', 'longer bolts', each('bolts')),
        ],
        dusty: true,
        waits: [
          lasts(
            'Butyl creeps out under the bolts’ pull',
            60,
            'it squeezes for weeks, most of it in the first hour; common practice',
          ),
        ],
        cautions: [care.drill, 'Butyl not below water, nor where solvent or fuel drips.'],
      }),
      step('Nip the nuts up again and pare off what the butyl has squeezed out', [5, 10, 15], {
        tools: ['socket set'],
      }),
    ],
    proof: proof(
      'pull',
      'Swing your whole weight sideways on a line from the cleat: no movement between foot and deck',
      [5, 5, 10],
      {
        cautions: ['Sit on deck to pull, braced: a line that parts or slips throws you over the side.'],
      },
    ),
    followUps: [
      followUp(
        'Nip up the cleat once more',
        [5, 5, 10],
        'Butyl goes on creeping for some weeks.',
        inDays(14, 30),
        'worsens',
      ),
    ],
    writeDown: ['plate, its size and metal', 'bolt lengths', 'bedding'],
  },
});
