import { describe, expect, it } from 'vitest';
import { writeBoatFile } from '#boat-book';
import { demoBook } from '../../../examples/demo-book.ts';
import { main } from './main.ts';

function run(args: readonly string[]) {
  const lines: string[] = [];
  const code = main(args, {
    out: (line) => lines.push(line),
    readFile: () => writeBoatFile({ book: demoBook('2026-05-08' as never) }),
    writeNewFile: () => {},
    now: () => Date.parse('2026-05-08T09:00:00Z'),
    elapsed: () => 0,
    timeZone: 'UTC',
  });
  return { code, text: lines.join('\n') };
}

describe('fettle dues', () => {
  it('says what falls due, the first first, and why when asked', () => {
    const { code, text } = run(['dues', 'demo.fettle', '--working']);
    expect(code).toBe(0);
    expect(text).toMatch(/past +Extinguisher in the cabin.*Fell due on 22 April, 16 days ago/);
    expect(text).toMatch(/soon +Cylinders and firing heads.*Good until 24 May, in 16 days/);
    expect(text).toMatch(/Falls due 5 days before ‘Two nights at the outer bar’/);
    expect(text).toMatch(/After 8 tows: 7 tows since 20 October 2025/);
    expect(text).toMatch(/Usual: 12 months \(custom; common practice\)/);
    expect(text.indexOf('Extinguisher')).toBeLessThan(text.indexOf('Trailer tyres'));
  });

  it('goes by the day it is told, and refuses what is none', () => {
    expect(run(['dues', 'demo.fettle', '--today', '2027-06-01']).text).toMatch(/past +Grease the wheel bearings/);
    expect(run(['dues', 'demo.fettle', '--today', 'soon'])).toMatchObject({
      code: 2,
      text: expect.stringContaining("got 'soon'"),
    });
  });
});
