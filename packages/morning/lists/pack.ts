/** What goes aboard, and what is known, before the boat is moved. */
import { care, comfort, danger, line, stops, unlawful, usual, worsens } from './writing.ts';

export const pack = [
  line('forecast', 'Forecast read for the whole outing, and the hour to turn back by agreed', stops('No forecast'), {
    of: ['by water'],
  }),
  line('tide', 'Tide at the ramp: water enough to launch, and to come back to', stops('No water at the ramp'), {
    of: ['by water'],
  }),
  line(
    'leave-word',
    'Word left ashore: where, who, when back, and whom to call if nothing is heard',
    danger('Leave word ashore'),
    {
      of: ['by water'],
      after: [usual('forecast', 'When she is back, and where she goes, hangs on the forecast.')],
    },
  ),
  line(
    'lifejackets',
    'A lifejacket for each: cylinder screwed home, firing head in date, crutch strap on',
    danger('Make the lifejackets good', 'lifejacket'),
    {
      of: ['by water'],
    },
  ),
  line(
    'lifejacket-on',
    'Your own lifejacket laid on top, to be put on before the ramp',
    danger('Find the lifejacket'),
    {
      of: ['by water', 'alone'],
      cautions: ['Alone, nobody turns back for you: clipped or jacketed from the ramp on.'],
      after: [usual('lifejackets', 'The one that is worn is one that was looked at.')],
    },
  ),
  line(
    'call-for-help',
    'Radio or telephone charged, in a dry bag, and tried',
    danger('Make the radio or telephone good'),
    {
      of: ['by water'],
    },
  ),
  line('flares', 'Flares or light signals aboard, dates read', unlawful('Renew the flares', 'flares'), {
    of: ['by water'],
  }),
  line(
    'ladder',
    'A way back aboard that one in the water can reach and let down alone',
    danger('Fit a way back aboard'),
    {
      of: ['by water'],
    },
  ),
  line(
    'extinguisher',
    'Extinguisher in reach of the companionway, gauge in the green',
    danger('Renew the extinguisher'),
    {},
  ),
  line(
    'first-aid',
    'First-aid kit, water, hat, and food for longer than planned',
    comfort('Fill up the first-aid kit'),
    {
      of: ['by water'],
    },
  ),
  line(
    'anchor',
    'Anchor ready to let go, shackle moused, the rode’s inboard end made fast',
    danger('Make the anchor and rode good'),
    {
      of: ['by water', 'anchor'],
      names: 'rode',
    },
  ),
  line(
    'battery',
    'Battery read rested, before the sun is on the panel, and written down',
    worsens('Find out what is wrong with the battery'),
    {
      of: ['battery'],
      names: 'battery',
      cautions: ['A reading under load or on charge says little: all off first.'],
    },
  ),
  line('bail', 'Bucket with a line on it, and the pump worked dry for a stroke', danger('Make the pump good'), {
    of: ['by water'],
  }),
  line(
    'lights-tried',
    'Navigation and anchor lights tried, a torch with fresh cells besides',
    unlawful('Make the lights good'),
    {
      of: ['by water', 'lights'],
      names: 'lights',
      after: [usual('battery', 'A lamp that was on spoils the rested reading.')],
    },
  ),
  line(
    'fuel',
    'Fuel for there, back, and a third over; tank vent and line looked at',
    stops('Make the fuel line good'),
    {
      of: ['by water', 'outboard'],
      cautions: [care.petrol],
    },
  ),
  line('engine-tools', 'Spare kill-cord, plug, plug spanner and starting cord', worsens('Get the engine spares'), {
    of: ['by water', 'outboard'],
  }),
  line('drain-plugs-aboard', 'Drain plugs in the bag that goes to the ramp', danger('Find the drain plugs'), {
    of: ['by water', 'drain'],
    names: 'drain',
  }),
  line(
    'knife',
    'Knife, pliers, tape, cord, spare rings and a shackle in reach of the cockpit',
    worsens('Fill up the ditty bag'),
    {
      of: ['by water'],
    },
  ),
  line('sails', 'Sails, sheets, battens, reefing lines, tiller and rudder pins aboard', stops('Find what is missing'), {
    of: ['by water'],
  }),
  line('raising-gear', 'Gear the mast goes up with, all of it', stops('Find the raising gear'), {
    of: ['by water', 'mast', 'raising gear'],
    names: 'raising gear',
  }),
  line('night', 'For each night: bedding dry, stove and fuel, lamp, water', comfort('Get what the night wants'), {
    of: ['nights'],
    names: 'nights',
  }),
  line('gas-off', 'Gas off at the bottle, stove tried before she leaves', danger('Make the gas good'), {
    of: ['gas'],
    cautions: [care.gas],
  }),
  line('papers', 'Papers of boat, trailer and driver', unlawful('Find the papers')),
  line(
    'loose',
    'Heavy gear low, in its place, and not to shift on the road',
    worsens('Stow the gear so that it holds'),
    {
      after: [
        usual('sails', 'What is still to come aboard shifts what was stowed.'),
        usual('anchor', 'What is still to come aboard shifts what was stowed.'),
        usual('night', 'What is still to come aboard shifts what was stowed.'),
        usual('raising-gear', 'What is still to come aboard shifts what was stowed.'),
      ],
    },
  ),
] as const;
