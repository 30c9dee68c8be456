/** Lines of our own invention, each with what a person would take from it, marked by hand. */
import { describe, expect, it } from 'vitest';
import { readLine } from './read-line.ts';
import type { Lexicon, LineConditions, ReadLine } from './read-line-parts.ts';

const state = (id: string, name = id) => ({ id, name });
/** A Wednesday. */
const today = '2026-05-06';
const lexicon: Lexicon = {
  today,
  zones: {
    foredeck: { name: 'Foredeck', words: ['fore deck', 'forehatch'] },
    bow: { name: 'Bow and anchor well', words: ['anchor well', 'bow', 'stem'] },
    mast: { name: 'Mast', words: ['masthead', 'spreader'] },
    sides: { name: 'Side decks', words: ['side deck', 'shroud'] },
    case: { name: 'Board case', words: ['board', 'case'] },
    cabin: { name: 'Cabin', words: ['below', 'berth', 'bilge'] },
    cockpit: { name: 'Cockpit', words: ['coaming', 'tiller', 'sole'] },
    transom: { name: 'Transom', words: ['stern'] },
    trailer: { name: 'Trailer', words: ['wheel', 'axle'] },
  },
  fittings: {
    plate: { name: 'Starboard shroud plate', zone: 'sides' },
    shackle: { name: 'Anchor shackle', zone: 'bow' },
    wire: { name: 'Board lifting wire', zone: 'case' },
    pump: { name: 'Bilge pump', zone: 'cabin' },
  },
  setUps: {
    mast: { name: 'Mast', states: [state('up'), state('down')] },
    cover: { name: 'Cover', states: [state('on'), state('off')] },
    board: { name: 'Board', states: [state('housed'), state('lowered')] },
    boat: { name: 'Boat', states: [state('trailer', 'on the trailer'), state('propped'), state('afloat')] },
  },
  outings: {
    whit: { title: 'Whit sail to the outer bar', date: '2026-05-23' },
    islands: { title: 'Three nights round the islands', date: '2026-07-11' },
    old: { title: 'Easter sail', date: '2026-04-05' },
  },
};

interface Marked {
  readonly title: string;
  readonly zone?: string;
  readonly fitting?: string;
  readonly minutes?: number | readonly [number, number, number];
  readonly hands?: number;
  readonly notAlone?: true;
  readonly setUps?: Readonly<Record<string, string>>;
  readonly conditions?: LineConditions;
  readonly consequence?: string;
  readonly due?: string;
  readonly outing?: string;
  readonly temporary?: true;
}

/** What was read, in the form it is marked in. */
function taken(read: ReadLine): Marked {
  const { minutes, setUps, conditions } = read;
  const length = minutes?.value;
  return {
    title: read.title,
    ...(read.zone ? { zone: read.zone.value } : {}),
    ...(read.fitting ? { fitting: read.fitting.value } : {}),
    ...(length ? { minutes: length.low === null ? length.likely : [length.low, length.likely, length.high ?? 0] } : {}),
    ...(read.hands ? { hands: read.hands.value } : {}),
    ...(read.notAlone ? { notAlone: true } : {}),
    ...(setUps.length > 0 ? { setUps: Object.fromEntries(setUps.map(({ value }) => [value.setUp, value.state])) } : {}),
    ...(conditions.length > 0 ? { conditions: Object.assign({}, ...conditions.map(({ value }) => value)) } : {}),
    ...(read.consequence ? { consequence: read.consequence.value } : {}),
    ...(read.due ? { due: read.due.value } : {}),
    ...(read.outing ? { outing: read.outing.value } : {}),
    ...(read.temporary ? { temporary: true } : {}),
  };
}

const marked: readonly (readonly [string, Marked])[] = [
  // the trade book's own example
  [
    'starboard shroud plate weeps, take off and rebed, mast down, 90 min, worsens',
    {
      title: 'Starboard shroud plate weeps, take off and rebed',
      zone: 'sides',
      fitting: 'plate',
      minutes: 90,
      setUps: { mast: 'down' },
      consequence: 'worsens',
    },
  ],
  // places
  ['cleat on the foredeck is loose', { title: 'Cleat on the foredeck is loose', zone: 'foredeck' }],
  ['foredeck, cleat loose', { title: 'Cleat loose', zone: 'foredeck' }],
  ['Cockpit: sole soft by the drain', { title: 'Sole soft by the drain', zone: 'cockpit' }],
  ['side deck spongy', { title: 'Side deck spongy', zone: 'sides' }],
  ['side decks spongy', { title: 'Side decks spongy', zone: 'sides' }],
  ['stbd shroud plate weeps', { title: 'Stbd shroud plate weeps', zone: 'sides', fitting: 'plate' }],
  ['grease the anchor shackle', { title: 'Grease the anchor shackle', zone: 'bow', fitting: 'shackle' }],
  ['anchor well, shackle rusty', { title: 'Shackle rusty', zone: 'bow' }],
  [
    'wire for lifting the board is frayed',
    { title: 'Wire for lifting the board is frayed', zone: 'case', fitting: 'wire' },
  ],
  ['cabin', { title: 'Cabin', zone: 'cabin' }],
  ['sew the mainsail batten pocket', { title: 'Sew the mainsail batten pocket' }],
  ['paint the boathouse door', { title: 'Paint the boathouse door' }],
  // minutes
  ['grease the winch, 20 minutes', { title: 'Grease the winch', minutes: 20 }],
  ['grease the winch 20 min', { title: 'Grease the winch', minutes: 20 }],
  ['grease the winch, about half an hour', { title: 'Grease the winch', minutes: 30 }],
  ['grease the winch takes an hour and a half', { title: 'Grease the winch', minutes: 90 }],
  ['grease the winch, 1 h 30', { title: 'Grease the winch', minutes: 90 }],
  ['grease the winch, 1h30', { title: 'Grease the winch', minutes: 90 }],
  ['grease the winch, 1.5 hours', { title: 'Grease the winch', minutes: 90 }],
  ['grease the winch, 1,5 h', { title: 'Grease the winch', minutes: 90 }],
  ['grease the winch, one and a half hours', { title: 'Grease the winch', minutes: 90 }],
  ['grease the winch, an hour', { title: 'Grease the winch', minutes: 60 }],
  ['grease the winch, two hours and a quarter', { title: 'Grease the winch', minutes: 135 }],
  ['grease the winch, three quarters of an hour', { title: 'Grease the winch', minutes: 45 }],
  ['grease the winch, quarter of an hour', { title: 'Grease the winch', minutes: 15 }],
  ['grease the winch, ninety minutes', { title: 'Grease the winch', minutes: 90 }],
  ['grease the winch, a hundred and twenty minutes', { title: 'Grease the winch', minutes: 120 }],
  ['grease the winch, 40 to 60 minutes', { title: 'Grease the winch', minutes: [40, 50, 60] }],
  ['grease the winch, 1-2 hours', { title: 'Grease the winch', minutes: [60, 90, 120] }],
  ['grease the winch, 1 hour 20 minutes', { title: 'Grease the winch', minutes: 80 }],
  // a wait is not work
  ['leave the glue 24 h to cure', { title: 'Leave the glue 24 h to cure' }],
  ['fill the dings, 30 min, cures 12 h', { title: 'Fill the dings, cures 12 h', minutes: 30 }],
  ['soak the rope for 2 hours', { title: 'Soak the rope for 2 hours' }],
  // hands
  ['hang the outboard, two hands', { title: 'Hang the outboard', hands: 2 }],
  ['hang the outboard with a hand', { title: 'Hang the outboard', hands: 2 }],
  ['hang the outboard, needs a second pair of hands', { title: 'Hang the outboard', hands: 2 }],
  ['hang the outboard, needs help', { title: 'Hang the outboard', hands: 2 }],
  ['turn the boat over, 4 people', { title: 'Turn the boat over', hands: 4 }],
  ['go up to the sheave, not alone', { title: 'Go up to the sheave', notAlone: true }],
  ["lift the board out, don't do it alone", { title: 'Lift the board out', zone: 'case', notAlone: true }],
  ['whip the sheet ends, single-handed', { title: 'Whip the sheet ends', hands: 1 }],
  ['hand rail loose', { title: 'Hand rail loose' }],
  // set-ups
  ['new sheave, mast down', { title: 'New sheave', setUps: { mast: 'down' } }],
  ['new sheave with the mast down', { title: 'New sheave', setUps: { mast: 'down' } }],
  ['check the lowers, mast up, cover off', { title: 'Check the lowers', setUps: { mast: 'up', cover: 'off' } }],
  ['take the mast down and oil the foot', { title: 'Take the mast down and oil the foot', zone: 'mast' }],
  ['look at the pin, centreboard down', { title: 'Look at the pin', setUps: { board: 'lowered' } }],
  [
    'look at the pin, board lowered, propped',
    { title: 'Look at the pin', setUps: { board: 'lowered', boat: 'propped' } },
  ],
  ['bleed the brakes, on the trailer', { title: 'Bleed the brakes', zone: 'trailer', setUps: { boat: 'trailer' } }],
  ['trim the ballast once afloat', { title: 'Trim the ballast', setUps: { boat: 'afloat' } }],
  ['mend the cover', { title: 'Mend the cover' }],
  // weather
  ['glass the corner, dry, from 12 °C', { title: 'Glass the corner', conditions: { dry: true, air_min_C: 12 } }],
  ['glass the corner in the dry', { title: 'Glass the corner', conditions: { dry: true } }],
  ['glass the corner, at least 15 degrees', { title: 'Glass the corner', conditions: { air_min_C: 15 } }],
  [
    'glass the corner, 10 C or more, below 80 % humidity',
    { title: 'Glass the corner', conditions: { air_min_C: 10, humidity_max_pct: 80 } },
  ],
  ['measure the roach, under 10 knots', { title: 'Measure the roach', conditions: { wind_max_kn: 10 } }],
  ['measure the roach, wind below 8', { title: 'Measure the roach', conditions: { wind_max_kn: 8 } }],
  [
    'measure the roach, 12 kn or less, in daylight',
    { title: 'Measure the roach', conditions: { wind_max_kn: 12, daylight: true } },
  ],
  ['dry the locker', { title: 'Dry the locker' }],
  ['polish, up to 25 °C', { title: 'Polish', conditions: { air_max_C: 25 } }],
  ['no frost: not below -2 °C', { title: 'No frost', conditions: { air_min_C: -2 } }],
  // consequence
  ['no fuse at the battery, danger', { title: 'No fuse at the battery', zone: 'cabin', consequence: 'danger' }],
  ['ladder rung unsafe', { title: 'Ladder rung unsafe', consequence: 'danger' }],
  ['boom end cap, could hurt someone', { title: 'Boom end cap', consequence: 'danger' }],
  ['stern light out, illegal', { title: 'Stern light out', zone: 'transom', consequence: 'unlawful' }],
  ["halyard jams, can't sail without it", { title: 'Halyard jams', consequence: 'stops-sailing' }],
  ['halyard jams, stops sailing', { title: 'Halyard jams', consequence: 'stops-sailing' }],
  ['crack in the gelcoat, gets worse', { title: 'Crack in the gelcoat', consequence: 'worsens' }],
  ['new cushions, nice to have', { title: 'New cushions', consequence: 'comfort' }],
  ['new cushions for comfort', { title: 'New cushions', consequence: 'comfort' }],
  // dates
  ['oil the wood today', { title: 'Oil the wood', due: '2026-05-06' }],
  ['oil the wood, tomorrow', { title: 'Oil the wood', due: '2026-05-07' }],
  ['oil the wood by Saturday', { title: 'Oil the wood', due: '2026-05-09' }],
  ['oil the wood by Wednesday', { title: 'Oil the wood', due: '2026-05-13' }],
  ['oil the wood before Saturday', { title: 'Oil the wood', due: '2026-05-08' }],
  ['oil the wood by next Friday', { title: 'Oil the wood', due: '2026-05-15' }],
  ['oil the wood by 12 June', { title: 'Oil the wood', due: '2026-06-12' }],
  ['oil the wood by June 12th', { title: 'Oil the wood', due: '2026-06-12' }],
  ['oil the wood by 2 May', { title: 'Oil the wood', due: '2027-05-02' }],
  ['oil the wood by the 3rd', { title: 'Oil the wood', due: '2026-06-03' }],
  ['oil the wood, due 2026-06-12', { title: 'Oil the wood', due: '2026-06-12' }],
  ['oil the wood in two weeks', { title: 'Oil the wood', due: '2026-05-20' }],
  ['oil the wood by the end of the month', { title: 'Oil the wood', due: '2026-05-31' }],
  ['oil the wood by 31 June', { title: 'Oil the wood by 31 June' }],
  // outings
  ['splice the warps for the Whit sail', { title: 'Splice the warps', outing: 'whit' }],
  ['splice the warps before the outer bar', { title: 'Splice the warps', outing: 'whit' }],
  ['splice the warps for the islands', { title: 'Splice the warps', outing: 'islands' }],
  ['splice the warps for the Easter sail', { title: 'Splice the warps for the Easter sail' }],
  ['splice the warps for the sail', { title: 'Splice the warps for the sail' }],
  ['new lens for the compass', { title: 'New lens for the compass' }],
  // temporary
  ['lash the boom for now', { title: 'Lash the boom', temporary: true }],
  ['temporary tape on the forehatch', { title: 'Tape on the forehatch', zone: 'foredeck', temporary: true }],
  ['jury rig: rope strop on the rudder', { title: 'Rope strop on the rudder', zone: 'transom', temporary: true }],
  // run on, as dictated
  [
    'starboard shroud plate weeps take off and rebed mast down ninety minutes worsens',
    {
      title: 'Starboard shroud plate weeps take off and rebed',
      zone: 'sides',
      fitting: 'plate',
      minutes: 90,
      setUps: { mast: 'down' },
      consequence: 'worsens',
    },
  ],
  [
    'Bilge pump wire chafed, renew it, forty-five minutes, needs dry, with a hand, before the Whit sail, unlawful.',
    {
      title: 'Bilge pump wire chafed, renew it',
      zone: 'cabin',
      fitting: 'pump',
      minutes: 45,
      hands: 2,
      conditions: { dry: true },
      consequence: 'unlawful',
      outing: 'whit',
    },
  ],
  [
    'transom; rebed the ladder — 1 hour 20 minutes; cover off; from 5 degrees; by Friday; gets worse if left',
    {
      title: 'Rebed the ladder',
      zone: 'transom',
      minutes: 80,
      setUps: { cover: 'off' },
      conditions: { air_min_C: 5 },
      consequence: 'worsens',
      due: '2026-05-08',
    },
  ],
  // nothing but what was understood
  ['90 min, mast down', { title: '', minutes: 90, setUps: { mast: 'down' } }],
  ['', { title: '' }],
];

describe('reading a line of plain talk', () => {
  it.each(marked)('%s', (line, expected) => {
    expect(taken(readLine(line, lexicon))).toEqual(expected);
  });

  it('has enough lines to mean something', () => {
    expect(marked.length).toBeGreaterThanOrEqual(60);
  });

  it('gives the very words each part was read from', () => {
    for (const [line] of marked) {
      const read = readLine(line, lexicon);
      const parts = [
        read.zone,
        read.fitting,
        read.minutes,
        read.hands,
        read.notAlone,
        read.consequence,
        read.due,
        read.outing,
        read.temporary,
        ...read.setUps,
        ...read.conditions,
      ].filter((part) => part !== null);
      for (const part of parts) {
        expect(line.slice(part.from, part.to)).toBe(part.words);
        expect(part.words.trim()).not.toBe('');
      }
      // words taken out of the title were each read once
      const taken = parts.filter((part) => !part.inTitle);
      for (const [at, part] of taken.entries())
        for (const other of taken.slice(at + 1))
          expect(
            part.to <= other.from || other.to <= part.from || (part.from === other.from && part.to === other.to),
            `${part.words} | ${other.words}`,
          ).toBe(true);
    }
  });

  it('loses no word: every word of the line stands in the title or in a part that was understood', () => {
    const joints = new Set(
      'and with for by in on needs need the then its it is a but about takes take so this that'.split(' '),
    );
    for (const [line] of marked) {
      const read = readLine(line, lexicon);
      const kept = [
        read.title,
        ...[read.zone, read.fitting, read.minutes, read.hands, read.notAlone, read.consequence, read.due, read.outing]
          .concat([read.temporary, ...read.setUps, ...read.conditions] as never)
          .map((part) => part?.words ?? ''),
      ]
        .join(' ')
        .toLowerCase();
      for (const word of line.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [])
        if (!joints.has(word)) expect(kept, `${word} of '${line}'`).toContain(word);
    }
  });

  it('reads any line at all without fault, and the same line to the same end', () => {
    const words = marked.flatMap(([line]) => line.split(' '));
    let seed = 7;
    const next = (most: number) => {
      seed = (seed * 48271) % 2147483647;
      return seed % most;
    };
    for (let n = 0; n < 300; n++) {
      const line = Array.from({ length: 1 + next(14) }, () => words[next(words.length)]).join(
        next(3) === 0 ? ', ' : ' ',
      );
      expect(readLine(line, lexicon)).toEqual(readLine(line, lexicon));
    }
  });

  it('refuses more than a line', () => {
    expect(() => readLine('x'.repeat(2001), lexicon)).toThrow(/2,000/);
  });

  it('takes names with signs in them for what they are', () => {
    const odd: Lexicon = { ...lexicon, zones: { z: { name: 'Cockpit (port)', words: ['a+b', '***'] } } };
    expect(readLine('sole wet in cockpit port', odd).zone?.value).toBe('z');
    expect(readLine('***', odd).zone).toBe(null);
  });
});
