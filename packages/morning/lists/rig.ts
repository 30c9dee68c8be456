/** The mast up and the boat made ready on her trailer, before she goes to the water. */
import { always, care, danger, line, stops, usual, worsens } from './writing.ts';

const wiresFirst = 'A mast that touches a line kills: it is looked for before anything goes up.';
const standing = 'It is fast while the mast still lies, or there is nothing to hold it as it rises.';
const carries = 'Until the forestay is pinned the raising gear is all that holds the mast.';

export const rig = [
  line(
    'lines-overhead',
    'Look up, all round, and along the whole way to the water: no power line in reach of mast or stays',
    danger('Find another place to raise the mast'),
    {
      of: ['mast'],
      cautions: [care.lines],
      from: 'two network operators’ advice to sailors, read: the larger of their distances',
    },
  ),
  line(
    'level',
    'On level ground, clear of the ramp; brake on, wheels chocked, still hitched',
    danger('Find a level place'),
    {},
  ),
  line('wind', 'Wind light enough for the mast, and not on the beam', stops('Wait for less wind'), {
    of: ['mast'],
    names: 'wind limit',
  }),
  line('cover-off', 'Cover off, dry, and stowed', worsens('Make the cover good'), { of: ['cover'] }),
  line(
    'terminals',
    'Every stay, terminal, pin and ring looked at over its length: strands, cracks, rust',
    danger('Look all over the standing rigging', 'rig-look-over'),
    {
      of: ['mast'],
      cautions: ['Broken strands cut to the bone: gloves, and never run a hand along wire.'],
    },
  ),
  line('masthead-light', 'Masthead light lit once, while it can be reached', stops('Make the masthead light good'), {
    of: ['mast', 'masthead light'],
    names: 'masthead',
  }),
  line('halyards', 'Halyards rove, run free, both ends tied; sheaves turn', stops('Clear the halyards'), {
    of: ['mast'],
  }),
  line('heel', 'Mast heel in its step or on its pin, pin secured', danger('Make the mast step good'), {
    of: ['mast'],
    cautions: [care.underMast],
    after: [usual('halyards', 'A halyard is led round while the mast lies in the crutches.')],
  }),
  line(
    'shrouds',
    'Shrouds and backstay on, not twisted, rings in, slack enough to let it rise',
    danger('Make the shrouds good'),
    {
      of: ['mast'],
      names: 'stays',
      after: [
        always('heel', 'The shrouds steady a mast only when its heel is held.'),
        always('terminals', 'What is bad is found while it can be changed on the ground.'),
      ],
    },
  ),
  line(
    'raising-gear',
    'Raising gear on: pole or frame stayed sideways, tackle rove, its end made fast',
    danger('Make the raising gear good'),
    {
      of: ['mast', 'raising gear'],
      names: 'raising gear',
      cautions: ['A pole that is not stayed sideways falls over, and takes the mast with it.'],
      after: [always('heel', 'The gear pulls the mast off its crutches: its heel is held first.')],
    },
  ),
  line(
    'clear',
    'Nobody beside or under it; look up once more; no stay hooked under a fitting',
    danger('Clear the place round her'),
    {
      of: ['mast'],
      cautions: [care.underMast, care.lines],
      after: [always('lines-overhead', wiresFirst)],
    },
  ),
  line('mast-up', 'Mast up, slowly, a look at every shroud on the way', danger('Raise the mast'), {
    of: ['mast'],
    cautions: [care.underMast, care.winch],
    after: [
      always('lines-overhead', wiresFirst),
      always('clear', wiresFirst),
      always('heel', standing),
      always('shrouds', standing),
      always('raising-gear', standing),
      always('terminals', 'What is bad is found while it can be changed on the ground.'),
      always('level', 'On a slope the mast goes over sideways.'),
      always('wind', 'A mast half way up in a gust is held by nobody.'),
      usual('halyards', 'What is tangled aloft is out of reach once it is up.'),
      usual('masthead-light', 'Once it is up the lamp is out of reach.'),
    ],
  }),
  line('forestay', 'Forestay pinned, ring in, seen from both sides', danger('Make the forestay good'), {
    of: ['mast'],
    after: [always('mast-up', 'It reaches its fitting only when the mast stands.')],
  }),
  line('raising-gear-off', 'Raising gear off and stowed', worsens('Stow the raising gear'), {
    of: ['mast', 'raising gear'],
    cautions: [carries],
    after: [always('forestay', carries)],
  }),
  line(
    'tension',
    'Shrouds set up as they were written down, mast straight, screws moused or pinned',
    danger('Set up and mouse the rigging screws'),
    {
      of: ['mast'],
      names: 'stays',
      after: [always('forestay', 'The shrouds are set up against the forestay.')],
    },
  ),
  line('boom', 'Boom on, sheet and vang on, topping lift holding it up', danger('Make the boom’s gear good'), {
    of: ['mast'],
    after: [always('forestay', 'The boom pulls aft on a mast that only the raising gear holds.')],
  }),
  line('sails-on', 'Sails bent on, reef lines rove, tied down', stops('Make the sails good'), {
    of: ['mast'],
    cautions: ['Sails stay tied down until she is head to wind and clear: on the trailer they blow her over.'],
    after: [usual('boom', 'The mainsail is bent to the boom.')],
  }),
  line(
    'rudder',
    'Rudder hung, kept from lifting off, blade up; tiller moves from side to side',
    stops('Make the rudder good'),
    {
      of: ['rudder'],
    },
  ),
  line(
    'engine-tried',
    'Outboard clamped and its safety line on; fuel line on, cooling water where it is run',
    stops('Make the outboard good'),
    {
      of: ['outboard'],
      cautions: [care.running],
    },
  ),
  line('anchor-ready', 'Anchor at the bow, ready to let go, tied until then', danger('Make the anchor and rode good'), {
    of: ['anchor'],
    names: 'rode',
  }),
  line('warps', 'Bow and stern line, fenders, a boathook in reach', stops('Find the warps')),
  line(
    'way-to-ramp',
    'The way to the water walked: lines, trees, bridges, with the mast up',
    danger('Find another way to the water'),
    {
      of: ['mast'],
      cautions: [care.lines],
      after: [usual('mast-up', 'It is looked at with the mast’s real height beside you.')],
    },
  ),
] as const;
