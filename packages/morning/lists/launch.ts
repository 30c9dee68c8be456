/** From beside the ramp to lying afloat. */
import { always, care, danger, line, stops, usual, worsens } from './writing.ts';

const plugs = 'She fills from the ramp on: the plugs are in before she is wet.';

export const launch = [
  line('lifejacket', 'Lifejacket on, kill-cord round the wrist', danger('Find the lifejacket')),
  line('drain-plugs', 'Drain plugs in, screwed home, felt by hand', danger('Make the drain plugs good'), {
    names: 'drain',
  }),
  line('cocks', 'Cocks, hatches and ports shut; inspection covers on', danger('Make what does not shut good')),
  line('board-held', 'Board up and held by its pin or pawl, not by a hand', danger('Make the board’s hold good'), {
    of: ['board'],
    names: 'board',
    cautions: [care.board],
  }),
  line('rudder-up', 'Rudder blade up', worsens('Make the rudder blade stay up'), { of: ['rudder'] }),
  line('engine-up', 'Outboard tilted up, fuel vent open, tank on', stops('Make the outboard good'), {
    of: ['outboard'],
    cautions: [care.petrol],
  }),
  line('straps-off', 'Straps off; winch strap and second chain stay on', worsens('Make the straps’ ratchets good'), {
    cautions: ['Not on the slope: she can slide off the trailer with nothing but the winch to hold her.'],
  }),
  line(
    'lights-off',
    'Trailer plug out, light board off if it does not like water',
    worsens('Make the trailer lights good', 'trailer-lights'),
  ),
  line('lines-on', 'Bow line and stern line on and led outside everything, fenders out', stops('Find the warps')),
  line('lines-overhead', 'Look up once more: ramp, trees, lines, cranes', danger('Find another ramp'), {
    of: ['mast'],
    cautions: [care.lines],
  }),
  line('ramp', 'Ramp walked: depth at the end, weed, a drop, wind and stream across it', stops('Find another ramp')),
  line(
    'back-down',
    'Backed down until the stern lifts; handbrake on, in gear, wheels chocked',
    danger('Make the handbrake hold'),
    {
      cautions: [care.behind],
      after: [
        always('drain-plugs', plugs),
        always('cocks', plugs),
        always('lifejacket', 'From the ramp’s edge on you can fall in.'),
        always('lines-overhead', 'A mast that touches a line kills: it is looked for before she moves.'),
        always('board-held', 'A board that drops on the ramp takes fingers and case with it.'),
        usual('straps-off', 'On the slope they are hard to get at.'),
        usual('lights-off', 'Wet contacts blow bulbs and rust.'),
        usual('lines-on', 'Once she floats she is held by nothing else.'),
        usual('ramp', 'What lies under the water is found on foot, not with a wheel.'),
        usual('rudder-up', 'The blade hits the ramp first.'),
        usual('engine-up', 'The skeg hits the ramp first.'),
      ],
    },
  ),
  line('look-in', 'Wait, still on the winch: water inside? Plugs, case, cocks looked at', danger('Find the leak'), {
    cautions: ['While she still rests on the trailer she can be drawn out again.'],
    after: [always('back-down', 'It shows only when she is in the water.')],
  }),
  line('winch-off', 'Second chain off, then winch strap off the bow eye, pawl tended', worsens('Make the winch good'), {
    cautions: [care.winch],
    after: [
      always('look-in', 'Let go she cannot be drawn out again, if she leaks.'),
      always('lines-on', 'Once the winch is off the lines are all that holds her.'),
    ],
  }),
  line('afloat', 'Off the trailer and made fast, clear of the ramp', stops('Launch her'), {
    after: [always('winch-off', 'The winch still holds her.')],
  }),
  line('car-away', 'Car and trailer parked, rinsed if it was salt, chocked', worsens('Rinse the trailer'), {
    after: [usual('afloat', 'She floats off first.')],
  }),
  line('board-down', 'Board down when there is water under it, slowly, wire not kinked', stops('Make the board good'), {
    of: ['board'],
    names: 'board',
    cautions: ['A handle let go spins and breaks bones: lower on the brake or the tackle, hand clear of it.'],
    after: [always('afloat', 'On the trailer it has nowhere to go.')],
  }),
  line('rudder-down', 'Rudder down and held down, helm tried', stops('Make the rudder good'), {
    of: ['rudder'],
    after: [always('afloat', 'On the ramp it breaks.')],
  }),
  line(
    'engine-runs',
    'Outboard down and running, water from the tell-tale, ahead and astern tried while still made fast',
    stops('Make the outboard good'),
    {
      of: ['outboard'],
      cautions: [care.running],
      after: [always('afloat', 'Its cooling water comes from outside.')],
    },
  ),
  line('bilge-again', 'Bilge looked into again after ten minutes', danger('Find the leak'), {
    after: [always('afloat', 'A slow leak shows only then.')],
  }),
] as const;
