import { describe, expect, it } from 'vitest';
import { writeBoatFile } from '#boat-book';
import { powerTold } from '#reckoning';
import { demoBook } from '../../../examples/demo-book.ts';
import { main } from './main.ts';
import { circuitLines } from './power-lines.ts';

function run(args: readonly string[], book = demoBook('2026-11-25' as never)) {
  const lines: string[] = [];
  const code = main(args, {
    out: (line) => lines.push(line),
    readFile: () => writeBoatFile({ book }),
    writeNewFile: () => {},
    now: () => Date.parse('2026-11-25T06:30:00Z'),
    elapsed: () => 0,
    timeZone: 'UTC',
  });
  return { code, text: lines.join('\n') };
}

describe('fettle power', () => {
  it('says how full the battery is, why, how the nights go, what draws and what would help', () => {
    const { code, text } = run(['power', 'demo.fettle']);
    expect(code).toBe(0);
    expect(text).toMatch(/About \d+ % full: (\d+ to )?\d+ % in 9 of 10|Full, as far as the readings tell/);
    expect(text).toMatch(/Last read rested today 05:00: 12\.74 V/);
    expect(text).toMatch(/Lasts the night in (over )?\d+ of 100/);
    expect(text).toMatch(/The floor of 50 % reads 1[12]\.\d\d V rested/);
    expect(text).toMatch(/Anchor light: \d\.\d Ah a day/);
    expect(text).toMatch(/Two nights at the outer bar: both nights in /);
    expect(text).toMatch(/What would help/);
    expect(text).toMatch(/hydrogen/);
    expect(text).toMatch(/Circuits\n {2}7 circuits looked at/);
  });

  it('prints the circuits with wire, fuse and drop, a fault with what would be right, and the working when asked', () => {
    const book = demoBook('2026-11-25' as never);
    const text = circuitLines(book, false).join('\n');
    expect(text).toMatch(/7 circuits looked at: 1 fault that can burn/);
    expect(text).toMatch(
      /Bilge pump: 3 A, 36 W; 3 min a day; 1\.5 mm² \(16 AWG\), 8 m there and back; fuse 5 A, 200 mm from the battery/,
    );
    // 200 mm: ISO 10133:2000 8.1
    expect(text).toMatch(/CAN BURN: The fuse is 650 mm from the battery.*\n *Right would be: within 200 mm/);
    expect(text).not.toMatch(/I·R·L/);
    expect(circuitLines(book, true).join('\n')).toMatch(/Volts lost: E = I·R·L\/1000 = 0\.342 V/);
  });

  it('has a working for every figure told, with where it comes from or how sure it is', () => {
    const book = demoBook('2026-11-25' as never);
    const outboard = { name: 'Outboard', battery: 'house', kind: 'outboard', amps: 6, volts_max: 14.4 } as const;
    const low = { ...Object.values(book.readings).at(-1)!, at: '2026-11-25T06:00:00.000Z', volts: 12.2 };
    const told = powerTold(
      { ...book, chargers: { outboard }, readings: { low }, loadTests: {} },
      'house',
      Date.parse('2026-11-25T06:30:00Z'),
      3,
    )!;
    const lines = [...told.full, ...told.parts.flatMap((part) => part.lines)];
    const figures = new Set(
      lines.flatMap((line) =>
        typeof line === 'string' ? [] : line.flatMap((part) => (typeof part === 'string' ? [] : [part.of])),
      ),
    );
    expect([...figures].sort()).toEqual(
      expect.arrayContaining(['capacity', 'chance', 'charge', 'charger', 'draw', 'sun']),
    );
    for (const of of figures) {
      const working = told.working.find((each) => each.of === of);
      const kinds = working?.rows.map(({ kind }) => kind) ?? [];
      expect([of, kinds.includes('goes in') && kinds.includes('how') && /margin|from/.test(kinds.join())]).toEqual([
        of,
        true,
      ]);
    }
    expect(run(['power', 'demo.fettle', '--working']).text).toMatch(/Goes in: .*\n.*How: /);
  });

  it('does not pass over a last reading that the rest speaks against', () => {
    const book = demoBook('2026-11-25' as never);
    const [battery] = Object.keys(book.batteries);
    const low = {
      battery: battery!,
      at: '2026-11-25T06:20:00.000Z',
      volts: 12.05,
      current_A: null,
      air_C: 14,
      circumstance: 'rested',
      on: [],
      panelDark: true,
      by: 'hand',
    } as const;
    const { text } = run(['power', 'demo.fettle'], { ...book, readings: { ...book.readings, low } });
    expect(text).toMatch(
      /The last reading, 12\.05 V, does not go with the rest\. If it is right, and rested, it means/,
    );
    expect(text).toMatch(/Left out: 12\.05 V of today/);
  });

  it('says so where there is no battery, no reading, or a count of nights that is none', () => {
    const book = demoBook('2026-11-25' as never);
    const bare = { ...book, batteries: {}, panels: {}, chargers: {}, circuits: {}, readings: {}, loadTests: {} };
    expect(run(['power', 'demo.fettle'], { ...bare, nightsAhead: {} }).text).toMatch(/no battery in this book/);
    expect(run(['power', 'demo.fettle'], { ...book, readings: {}, loadTests: {} }).text).toMatch(
      /Read the volts before/,
    );
    expect(run(['power', 'demo.fettle', '--nights', 'ten'])).toMatchObject({ code: 2 });
  });
});
