/** From the drive to the ramp, or home again. */
import { always, care, danger, line, unlawful, usual, worsens } from './writing.ts';

const held = 'What holds her to the trailer is there before she moves.';

export const tow = [
  line('board-rests', 'Board resting on the trailer, its wire slack', danger('Make a rest for the board'), {
    of: ['board'],
    names: 'board',
    cautions: [care.board, 'The wire carries her board over every bump, if it is left to hang.'],
  }),
  line(
    'mast-lashed',
    'Mast down in its crutches and lashed at both ends and the middle, stays tied in',
    danger('Make the mast’s crutches good'),
    {
      of: ['mast'],
    },
  ),
  line(
    'mast-end',
    'What sticks out behind marked, and lit after dark, as the law asks',
    unlawful('Mark the mast’s end'),
    {
      of: ['mast'],
      after: [usual('mast-lashed', 'How far it sticks out is seen when it lies where it will lie.')],
    },
  ),
  line('rudder-off', 'Rudder off and stowed, tiller lashed or off', worsens('Make the rudder’s stowage good'), {
    of: ['rudder'],
  }),
  line(
    'engine-locked',
    'Outboard locked up on its bracket, not on its tilt catch, and tightened; fuel shut',
    danger('Make the engine bracket good', 'clamp-bracket'),
    {
      of: ['outboard'],
    },
  ),
  line(
    'winch-strap',
    'Winch strap or wire on the bow eye, pawl in, handle off or tied',
    danger('Renew the winch strap', 'winch-strap'),
    {
      cautions: [care.winch],
    },
  ),
  line(
    'bow-chain',
    'Second chain or line from the bow eye to the trailer, short enough to hold if the winch lets go',
    danger('Fit the second chain at the bow'),
    {
      cautions: ['The winch line is no lashing: the bow post and this hold her when you brake.'],
      after: [usual('winch-strap', 'She is drawn up to the bow post first, or the chain comes up slack.')],
    },
  ),
  line(
    'straps',
    'Straps over her and down at the stern, dry webbing, ratchets locked, tails tied',
    danger('Renew the straps'),
    {
      after: [usual('bow-chain', 'She is drawn up to the bow post first, or the straps come up slack.')],
    },
  ),
  line('loose-on-deck', 'Nothing loose on deck or in the cockpit; hatches shut', worsens('Make the hatches shut'), {}),
  line('cover-tied', 'Cover tied down hard, or off', worsens('Make the cover good'), {
    of: ['cover'],
    after: [usual('loose-on-deck', 'Under the cover nothing is seen any more.')],
  }),
  line(
    'tyres',
    'Tyres: pressure cold, walls, tread; spare wheel and what turns its nuts',
    danger('Renew the trailer tyres', 'trailer-tyres'),
  ),
  line('wheel-nuts', 'Wheel nuts tight', danger('Tighten the wheel nuts')),
  line(
    'bearings',
    'Each wheel rocked top and bottom: no knock. Grease where it belongs',
    danger('Clean and grease the wheel bearings', 'wheel-bearings'),
  ),
  line(
    'ball-load',
    'Coupling lowered on the ball, and the load on it felt or weighed',
    danger('Put the ball load right'),
    {
      names: 'ball load',
      cautions: [
        'Back straight, or a jockey wheel: she weighs more at the hitch than it looks. Fingers clear of ball and coupling.',
      ],
      after: [
        usual('engine-locked', 'What is moved aboard moves the load on the ball.'),
        usual('loose-on-deck', 'What is moved aboard moves the load on the ball.'),
      ],
    },
  ),
  line(
    'coupling',
    'Coupling shut and locked: wind the jockey wheel down till the car lifts, then up and clamped',
    danger('Make the coupling good'),
    {
      after: [always('ball-load', 'It locks on the ball only when it is down on it.')],
    },
  ),
  line(
    'safety-chain',
    'Safety chains crossed under the coupling, or the breakaway cable on its own point',
    danger('Renew the safety chains'),
    {
      cautions: ['Never the second one on the ball itself: if the ball goes, both are gone.'],
      after: [usual('coupling', 'Their slack is set with the coupling where it stays.')],
    },
  ),
  line(
    'lights',
    'Plug in; tail, brake, indicators and number lamp tried with somebody, or in a shop window',
    unlawful('Make the trailer lights good', 'trailer-lights'),
    {
      after: [usual('coupling', 'The cable is led when car and trailer stand as they will go.')],
    },
  ),
  line('plate', 'Number plate and marker boards on', unlawful('Put the number plate on')),
  line('chocks', 'Chocks out, trailer handbrake off', worsens('Make the trailer’s handbrake good'), {
    cautions: [care.behind],
    after: [
      always('coupling', 'Until she is hitched the chocks are all that holds her.'),
      always('safety-chain', 'Until she is hitched the chocks are all that holds her.'),
    ],
  }),
  line(
    'brakes',
    'Brakes tried within the first hundred metres',
    danger('Adjust the trailer brakes and breakaway', 'trailer-brakes'),
    {
      of: ['trailer brakes'],
      after: [always('chocks', 'They are tried on the move.')],
    },
  ),
  line(
    'first-stop',
    'After the first few kilometres: hubs by hand, straps tight again, lights once more',
    worsens('Look at what came loose'),
    {
      cautions: ['A hub too hot to hold is a bearing on its way out: go no further on it.'],
      after: [
        always('chocks', 'It is looked at on the road.'),
        always('straps', held),
        always('bow-chain', held),
        always('winch-strap', held),
        always('mast-lashed', 'The mast is held before she moves.'),
        always('board-rests', 'The board rests before she moves.'),
        always('lights', 'No wheel turns on the road without lights.'),
        always('tyres', 'Tyres are looked at cold, before she moves.'),
        always('wheel-nuts', 'Wheel nuts are looked at before she moves.'),
        usual('brakes', 'They are tried within the first hundred metres.'),
      ],
    },
  ),
  line(
    'cooled',
    'At the ramp: hubs left to cool before they go into the water',
    worsens('Clean and grease the wheel bearings', 'wheel-bearings'),
    {
      of: ['by water'],
      cautions: ['A hot hub draws water in past its seal as it cools.'],
      after: [always('first-stop', 'It is what waits at the end of the road.')],
    },
  ),
] as const;
