/** Out of the water, mast down, and ready for the road. */
import { always, care, danger, line, stops, usual, worsens } from './writing.ts';

const down = 'It is looked for before the mast is let go: it swings further than it stands.';
const carries = 'From the moment the forestay is off, the raising gear is all that holds the mast.';

export const recover = [
  line('lines-out', 'Bow and stern line ready, fenders out, sails down and tied', stops('Make the gear good')),
  line('board-up', 'Board up and held by its pin or pawl', danger('Make the board’s hold good'), {
    of: ['board'],
    names: 'board',
    cautions: [care.board, care.winch],
  }),
  line('rudder-up', 'Rudder blade up, or the rudder off', worsens('Make the rudder blade stay up'), { of: ['rudder'] }),
  line('engine-up', 'Outboard stopped, tilted and locked up; fuel shut', worsens('Make the outboard’s tilt good'), {
    of: ['outboard'],
    cautions: [care.running],
  }),
  line(
    'trailer-in',
    'Trailer backed in only as deep as she needs; handbrake on, in gear, chocked',
    danger('Make the handbrake hold'),
    {
      cautions: [care.behind],
    },
  ),
  line(
    'winch-on',
    'Strap on the bow eye, from above the roller, not twisted',
    danger('Renew the winch strap', 'winch-strap'),
    {
      after: [always('trailer-in', 'She is led to a trailer that stands still.')],
    },
  ),
  line('drawn-up', 'Drawn up to the bow post, keel on the rollers all along', stops('Make the rollers good'), {
    cautions: [care.winch],
    after: [
      always('winch-on', 'She is drawn up by the strap.'),
      always('board-up', 'A board that is down jams in the trailer and bends.'),
      usual('rudder-up', 'The blade hits the ramp.'),
      usual('engine-up', 'The skeg hits the ramp.'),
    ],
  }),
  line('second-chain', 'Second chain or line on the bow eye', danger('Fit the second chain at the bow'), {
    after: [always('drawn-up', 'It is short: it reaches when she is up to the post.')],
  }),
  line('out', 'Out of the water, and straight off the ramp to level ground', stops('Get her off the ramp'), {
    cautions: [care.behind],
    after: [
      always('second-chain', 'On the slope the winch alone is not trusted with her.'),
      always('drawn-up', 'She lies where she will lie before she leaves the water.'),
    ],
  }),
  line('drain-out', 'Drain plugs out, what runs out looked at: how much, salt, oil', worsens('Find the leak'), {
    names: 'drain',
    after: [always('out', 'In the water she fills by them.')],
  }),
  line('level', 'On level ground, brake on, wheels chocked, still hitched', danger('Find a level place')),
  line(
    'lines-overhead',
    'Look up and all round: no power line in reach while the mast comes down',
    danger('Find another place to lower the mast'),
    {
      of: ['mast'],
      cautions: [care.lines],
      from: 'two network operators’ advice to sailors, read: the larger of their distances',
    },
  ),
  line('sails-off', 'Sails, boom, vang and sheet off', worsens('Make the sails good'), { of: ['mast'] }),
  line('raising-gear', 'Raising gear on, stayed sideways, its weight taken', danger('Make the raising gear good'), {
    of: ['mast', 'raising gear'],
    names: 'raising gear',
  }),
  line('clear', 'Nobody where it comes down; crutch ready behind', danger('Clear the place round her'), {
    of: ['mast'],
    cautions: [care.underMast],
  }),
  line(
    'forestay-off',
    'Forestay off, the mast held by the raising gear or by two pairs of hands',
    danger('Lower the mast'),
    {
      of: ['mast'],
      cautions: [carries, 'Never alone by hand where it weighs more than you can hold at the worst angle.'],
      after: [
        always('raising-gear', carries),
        always('lines-overhead', down),
        always('clear', 'Nobody stands where it comes down.'),
        always('level', 'On a slope the mast goes over sideways.'),
        always('out', 'She stands still under a mast that moves.'),
        always('sails-off', 'A boom or sail under it catches, and turns it sideways.'),
      ],
    },
  ),
  line('mast-down', 'Mast down into its crutch, slowly, no stay caught', danger('Lower the mast'), {
    of: ['mast'],
    cautions: [care.underMast, care.winch],
    after: [always('forestay-off', 'The forestay holds it up.')],
  }),
  line(
    'heel-out',
    'Heel unpinned, mast carried forward, stays tied in, pins and rings back in their holes',
    worsens('Replace lost pins'),
    {
      of: ['mast'],
      after: [always('mast-down', 'The pin holds its heel until it lies.')],
    },
  ),
  line('board-rests', 'Board let down to rest on the trailer, its wire slack', danger('Make a rest for the board'), {
    of: ['board'],
    names: 'board',
    cautions: [care.board],
    after: [always('out', 'Under it is the trailer only once she lies on it.')],
  }),
  line('rinse', 'Trailer, hubs and brakes rinsed with fresh water; outboard flushed', worsens('Rinse the trailer'), {
    after: [usual('out', 'It is rinsed once it is dry.')],
  }),
  line('wet-gear', 'Wet sails, ropes and lifejackets out, to be dried at home', worsens('Dry the gear')),
  line('isolator', 'Battery: all off, isolator off', worsens('Find what draws'), { of: ['battery'], names: 'battery' }),
  line('word-back', 'Word given ashore that you are back', danger('Give word that you are back'), {}),
] as const;
