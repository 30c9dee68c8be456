import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Book, MorningLineRecord, MorningTick, Outing } from '#boat-book';
import { usualQuestions } from '#dues';
import { recipes } from '#jobs';
import { houseLines, type MorningListName } from '#morning';
import { smallBook } from '../testing/small-book.ts';
import { carried, trailer } from '../testing/small-trailer.ts';
import { lineFailed, lineMove, listDone, tickOf } from './change-morning.ts';
import { listsOf, morningList } from './morning-list.ts';

const today = '2026-06-05';
const outing: Outing = {
  title: 'To the bar',
  date: '2026-06-06',
  from: '09:00',
  nights: 0,
  place: '',
  wind_kn: 14,
  gust_kn: 20,
  crew: 1,
};
const book = (parts: Partial<Book> = {}) => smallBook({ outings: { o: outing }, ...parts });
const told = (list: MorningListName, parts: Partial<Book> = {}) => morningList(book(parts), 'o', list, today);
const ids = (list: MorningListName, parts: Partial<Book> = {}) => told(list, parts).items.map(({ id }) => id);
const fitting = (name: string) => ({ name, zone: 'deck', size: '', beddedWith: '', note: '' });
const line = (parts: Partial<MorningLineRecord> & Pick<MorningLineRecord, 'list'>): MorningLineRecord => ({
  outing: null,
  of: null,
  text: null,
  out: null,
  place: null,
  setAside: [],
  ...parts,
});
const changes = (list: MorningListName, lines: readonly ({ of: string } & Partial<MorningLineRecord>)[]) =>
  Object.fromEntries(lines.map((change, i) => [`c${i}`, line({ list, ...change })]));

const boat = { outing: null, here: 'o' };

describe('a morning list', () => {
  it('asks for what the boat has, and says what it did not ask for', () => {
    expect(ids('launch')).not.toContain('engine-up');
    expect(told('launch').lacking).toContain('outboard');
    const fittings = { e: fitting('Outboard, 4 hp') };
    expect(ids('launch', { fittings })).toContain('engine-up');
    expect(told('launch', { fittings }).lacking).not.toContain('outboard');
    // a keel boat is asked nothing of a board
    const keel = { boat: { ...smallBook().boat, board: 'keel' as const } };
    expect(ids('recover', keel)).not.toContain('board-up');
    expect(ids('recover')).toContain('board-up');
  });

  it('has by road only what the road asks', () => {
    expect(listsOf(outing)).toEqual(['pack', 'tow', 'rig', 'launch', 'recover']);
    expect(listsOf({ ...outing, way: 'road' })).toEqual(['pack', 'tow']);
    const road = { outings: { o: { ...outing, way: 'road' as const } } };
    expect(ids('pack', road)).not.toContain('lifejackets');
    expect(ids('pack', road)).toContain('papers');
  });

  it('names what is hers, with the wind she was said to bear beside what is expected', () => {
    const parts: Partial<Book> = {
      setUps: {
        mast: {
          name: 'Mast',
          states: [],
          now: 'down',
          changes: [
            { from: 'down', to: 'up', minutes: 40, hands: 1, needs: { wind_max_kn: 10 }, setUps: [], cautions: [] },
          ],
        },
      },
    };
    const wind = told('rig', parts).items.find(({ id }) => id === 'wind');
    expect(wind?.about).toBe('to 10 knots, as you set it for the mast; 14 knots expected, gusts 20');
  });

  it('looks at a jury rig before it is asked to hold, with what it is trusted for', () => {
    const juryRigs: Book['juryRigs'] = {
      r: {
        title: 'Lashing beside the shroud',
        job: null,
        zone: null,
        reason: '',
        made: '2026-05-01',
        trustedUntil: '2026-06-05',
        wind_max_kn: 14,
        sails_max: 0,
        notOnRoad: true,
        state: 'standing',
      },
    };
    const afloat = told('launch', { juryRigs }).items;
    const at = afloat.findIndex(({ id }) => id === 'rig.r');
    expect(at).toBeGreaterThan(0);
    expect(at).toBeLessThan(afloat.findIndex(({ id }) => id === 'back-down'));
    expect(afloat[at]?.cautions).toEqual([
      'It is not to be sailed with.',
      'Its trust ends before the outing does.',
      'More than its 14 knots is expected.',
    ]);
    expect(told('tow', { juryRigs }).items.find(({ id }) => id === 'rig.r')?.cautions[0]).toMatch(/not for the road/);
    expect(ids('tow', { juryRigs: { r: { ...juryRigs.r!, state: 'removed' } } })).not.toContain('rig.r');
  });

  it('looks at what falls due by then: the trailer’s before she is towed, the rest as she is packed', () => {
    const due = {
      ...{ fitting: null, printed: null, season: null, uses: [], condition: null, usual: null, recipe: null },
      ...{ consequence: 'danger' as const, source: 'the label', note: '' },
    };
    const months = { count: 12, unit: 'months' as const };
    const parts: Partial<Book> = {
      zones: { trailer: { name: 'Trailer', words: [], room: 1, inside: false, near: [], along: 0, up: 0 } },
      dues: {
        bearings: { ...due, title: 'Grease the bearings', zone: 'trailer', every: months, lastDone: '2025-06-06' },
        jackets: { ...due, title: 'Look over the lifejackets', zone: null, every: months, lastDone: '2025-06-06' },
        later: { ...due, title: 'Flares', zone: null, every: months, lastDone: '2025-06-08' },
      },
    };
    expect(ids('tow', parts).filter((id) => id.startsWith('due.'))).toEqual(['due.bearings']);
    expect(ids('pack', parts).filter((id) => id.startsWith('due.'))).toEqual(['due.jackets']);
    const failed = lineFailed(
      book(parts),
      'o',
      told('tow', parts),
      told('tow', parts).items.find(({ id }) => id === 'due.bearings')!,
      null,
      { today, who: '' },
    );
    expect(failed.job).toMatchObject({ fromDue: 'bearings', zone: 'trailer', outing: 'o', consequence: 'danger' });
  });
});

it('keeps the mast as far from power lines as the network operators ask, where nothing else is known', () => {
  const answer = usualQuestions()
    .find(({ id }) => id === 'dues.overhead-lines')!
    .answer({ rule: 'largest' });
  const far = answer.kind === 'found' ? answer.results.find(({ symbol }) => symbol === 'd')?.value : undefined;
  expect(told('rig').items.find(({ id }) => id === 'lines-overhead')?.cautions[0]).toContain(`stay ${far} m off`);
});

describe('what a keeper changes', () => {
  it('holds for every outing, and over that for this one', () => {
    const morningLines = {
      ...changes('pack', [
        { of: 'papers', out: true },
        { of: 'sails', text: 'The tan sails' },
      ]),
      own: line({ list: 'pack', text: 'The good teapot' }),
      here: line({ list: 'pack', outing: 'o', of: 'papers', out: false }),
      there: line({ list: 'pack', outing: 'another', of: 'own', out: true }),
    };
    const { items, out } = told('pack', { morningLines });
    expect(items.map(({ id }) => id)).toContain('papers');
    expect(items.find(({ id }) => id === 'sails')).toMatchObject({ text: 'The tan sails', reworded: true });
    expect(items.at(-1)).toMatchObject({ id: 'own', text: 'The good teapot', own: true, reworded: false });
    expect(out).toEqual([]);
  });

  it('is kept when her fittings come and go', () => {
    const with4hp = { fittings: { e: fitting('Outboard, 4 hp') } };
    const first = told('launch', with4hp);
    const move = lineMove(first, 'engine-up', -2, boat);
    if (move.kind !== 'moved') throw new Error('nothing stands against it');
    const morningLines = changes('launch', move.lines);
    const order = ids('launch', { ...with4hp, morningLines });
    expect(order.indexOf('engine-up')).toBe(first.items.findIndex(({ id }) => id === 'engine-up') - 2);
    // sold, and another bought: the line goes and comes back to where the keeper had it, the others as they were
    const without = order.filter((id) => !['engine-up', 'engine-runs'].includes(id));
    expect(ids('launch', { morningLines })).toEqual(without);
    expect(ids('launch', { ...with4hp, morningLines })).toEqual(order);
  });

  it('is refused where it would hurt, and says which and why', () => {
    const { items } = told('launch');
    const at = (id: string) => items.findIndex((item) => item.id === id);
    const move = lineMove(told('launch'), 'drain-plugs', at('back-down') - at('drain-plugs'), boat);
    expect(move).toMatchObject({ kind: 'against', lines: null });
    expect(move.kind === 'against' && move.rules).toContainEqual({
      words:
        '‘Drain plugs in, screwed home, felt by hand’ comes before ‘Backed down until the stern lifts; handbrake on, in gear, wheels chocked’',
      because: 'She fills from the ramp on: the plugs are in before she is wet.',
      always: true,
    });
  });

  it('goes against a usual rule only with the reason told', () => {
    const { items } = told('launch');
    const by = items.findIndex(({ id }) => id === 'back-down') - items.findIndex(({ id }) => id === 'straps-off');
    const move = lineMove(told('launch'), 'straps-off', by, boat);
    if (move.kind !== 'against' || move.lines === null) throw new Error('it may be set aside');
    const morningLines = changes('launch', move.lines('A steep ramp: the straps stay on to the edge'));
    const after = told('launch', { morningLines });
    const order = after.items.map(({ id }) => id);
    expect(order.indexOf('straps-off')).toBe(order.indexOf('back-down') + 1);
    expect(after.setAside).toMatchObject([
      { because: 'On the slope they are hard to get at.', reason: 'A steep ramp: the straps stay on to the edge' },
    ]);
    // and moved back, it is no exception any more
    const back = lineMove(after, 'straps-off', -1, boat);
    const again = told('launch', { morningLines: changes('launch', back.kind === 'moved' ? back.lines : []) });
    expect(again.setAside).toEqual([]);
    expect(again.items.map(({ id }) => id)).not.toEqual(order);
    // what always holds is not set aside by a record either
    const forced = changes('launch', [
      { of: 'drain-plugs', place: 9999, setAside: [{ before: 'drain-plugs', after: 'back-down', reason: 'because' }] },
    ]);
    const still = ids('launch', { morningLines: forced });
    expect(still.indexOf('drain-plugs')).toBeLessThan(still.indexOf('back-down'));
  });

  it('stands as it was asked, after any run of moves, and no rule that was not set aside is broken', () => {
    const lists = ['pack', 'tow', 'rig', 'launch', 'recover'] as const;
    const moves = fc.array(fc.tuple(fc.nat(), fc.integer({ min: -6, max: 6 }), fc.boolean()), { maxLength: 6 });
    fc.assert(
      fc.property(fc.constantFrom(...lists), moves, (list, wanted) => {
        let morningLines: Book['morningLines'] = {};
        for (const [which, by, against] of wanted) {
          const before = told(list, { morningLines });
          const from = which % before.items.length;
          const to = from + by;
          if (by === 0 || to < 0 || to >= before.items.length) continue;
          const { id } = before.items[from]!;
          const move = lineMove(before, id, by, boat);
          const lines = move.kind === 'moved' ? move.lines : against ? move.lines?.('so I wanted it') : undefined;
          if (!lines) continue;
          morningLines = {
            ...morningLines,
            ...Object.fromEntries(
              lines.map((change) => {
                const { of, ...fields } = change;
                return [of, { ...(morningLines[of] ?? line({ list, of })), ...fields }];
              }),
            ),
          };
          const after = told(list, { morningLines });
          expect(after.items[to]?.id).toBe(id);
          const order = after.items.map((item) => item.id);
          for (const rule of after.rules) expect(order.indexOf(rule.before)).toBeLessThan(order.indexOf(rule.after));
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('ticks', () => {
  const tick = (parts: Partial<MorningTick>): MorningTick => ({
    ...{ outing: 'o', list: 'launch', round: 1, line: 'cocks', text: 'Cocks shut', came: 'good', job: null, who: '' },
    at: '2026-06-06T06:10:00Z',
    ...parts,
  });
  const morningTicks = {
    a: tick({ order: 1 }),
    b: tick({ line: 'drain-plugs', came: 'failed', job: 'j', at: '2026-06-06T06:12:00Z', order: 2 }),
  };

  it('stand by their lines, and a list that was done begins again', () => {
    const { items, round } = told('launch', { morningTicks });
    expect(round).toBe(1);
    expect(items.find(({ id }) => id === 'cocks')?.tick).toMatchObject({ id: 'a', came: 'good' });
    expect(items.find(({ id }) => id === 'drain-plugs')?.tick).toMatchObject({ came: 'failed', job: 'j' });
    const done = tick({ line: null, came: 'list done', at: '2026-06-06T06:40:00Z', order: 3 });
    const again = told('launch', { morningTicks: { ...morningTicks, done } });
    expect(again).toMatchObject({ round: 2, lastDone: '2026-06-06T06:40:00Z' });
    expect(again.items.every((item) => item.tick === null)).toBe(true);
  });

  it('go into the log with their times, what was not right and what was left', () => {
    const { text } = listDone(book(), 'o', told('launch', { morningTicks }), {
      timeZone: 'Europe/London',
      who: 'Ilka',
    });
    expect(text).toMatch(/^Launch: To the bar, Saturday 6 June\. Ticked: 07:10 Cocks, hatches/);
    expect(text).toMatch(/Not right: 07:12 Drain plugs in/);
    expect(text).toMatch(/Left: Lifejacket on/);
  });

  it('make of a line that fails a job needed for the outing, and a jury rig trusted no further than it', () => {
    const item = told('launch').items.find(({ id }) => id === 'drain-plugs')!;
    const asked = lineFailed(book(), 'o', told('launch'), item, 'a cork', { today, who: '' });
    expect(asked).toMatchObject({
      ...tickOf('o', told('launch'), item, ''),
      job: { title: 'Make the drain plugs good', consequence: 'danger', outing: 'o' },
      // a bung where a danger is left: 7 days and 10 knots by what is usual, but the outing ends before
      juryRig: { title: 'a cork', made: today, trustedUntil: '2026-06-06', wind_max_kn: 10, notOnRoad: true },
    });
  });

  it('make a job that a plan can lay: by its recipe where one fits, else with one plain step', () => {
    const failed = (list: MorningListName, line: string) => {
      const item = told(list).items.find(({ id }) => id === line)!;
      return lineFailed(book(), 'o', told(list), item, null, { today, who: '' });
    };
    const plain = failed('launch', 'drain-plugs');
    expect(plain.job.steps).toMatchObject([{ title: 'Make the drain plugs good', hands: 1 }]);
    expect(plain.job.note).toContain('a guess');
    const byRecipe = failed('tow', 'bearings');
    expect(byRecipe.job).toMatchObject({
      title: 'Clean and grease the wheel bearings',
      consequence: 'danger',
      outing: 'o',
      recipe: 'wheel-bearings',
    });
    expect(byRecipe.job.steps!.length).toBeGreaterThan(3);
    // what the recipe names and the book does not have comes with it
    expect(byRecipe.tools.map(({ name }) => name)).toContain('axle stand');
    const brought = new Set(byRecipe.tools.map(({ id }) => id));
    const asked = byRecipe.job.steps!.flatMap(({ tools = [] }) => tools.map(({ tool }) => tool));
    expect(asked.length).toBeGreaterThan(0);
    expect(asked.filter((id) => !brought.has(id))).toEqual([]);
  });

  it('have a recipe of the house wherever they name one', () => {
    const named = Object.values(houseLines).flatMap((lines) => lines.flatMap(({ fails }) => fails.recipe ?? []));
    expect(named.length).toBeGreaterThan(8);
    expect(named.filter((id) => !Object.hasOwn(recipes, id))).toEqual([]);
  });
});

describe('the ball load before she is towed', () => {
  // 42 kg by hand (testing/small-trailer.ts); the hull's place, 100 mm off, is 500 · 0.1 / 4 = 12.5 kg of it
  it('is told from the trailer with its band beside the limit, and said where it may be over', () => {
    const line = told('tow', { trailers: { road: trailer }, carried }).items.find(({ id }) => id === 'ball-load')!;
    expect(line.about).toMatch(/^The ball carries 42 kg \(29\.5 to 54\.5\), .* it may carry the tow bar’s 50 kg/);
    expect(line.cautions.at(-1)).toContain('may carry more than it may: weigh it');
    const firm = { ...carried, hull: { ...carried.hull, give_m: 0.01 } };
    const sure = told('tow', { trailers: { road: trailer }, carried: firm }).items.find(
      ({ id }) => id === 'ball-load',
    )!;
    expect(sure.cautions).toHaveLength(1);
    expect(told('tow').items.find(({ id }) => id === 'ball-load')!.about).toBe('');
  });
});
