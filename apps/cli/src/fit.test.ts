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

describe('fettle fit', () => {
  it('says whether she is fit, what stands against it, what would make her fit and what was not looked at', () => {
    const { code, text } = run(['fit', 'demo.fettle']);
    expect(code).toBe(0);
    expect(text).toMatch(
      /^Two nights at the outer bar, Friday 29 May 09:00\n {2}Not fit to go: \d+ things stand against it/,
    );
    expect(text).toMatch(/Renew the board lifting wire\n {6}Left as it is, it is a danger to people\. \(2026-/);
    expect(text).toMatch(
      /What would make her fit, least work first:\n {4}With these \d+, about \d+ h.* of work.*, she is fit with \d+ conditions/,
    );
    expect(text).toMatch(/Not looked at:\n {4}what nobody has put in the book/);
    // the demo boat has no plan kept yet
    expect(text).toContain('how likely its jobs are done in time: no plan is kept in this book');
  });

  it('refuses an outing there is not, naming those there are', () => {
    expect(run(['fit', 'demo.fettle', '--outing', 'moon'])).toMatchObject({
      code: 1,
      text: expect.stringContaining('there is Two nights at the outer bar'),
    });
    expect(run(['fit', 'demo.fettle', '--now', 'soon'])).toMatchObject({ code: 2 });
  });
});
