import { describe, expect, it } from 'vitest';
import { type Book, writeBoatFile } from '#boat-book';
import { demoBook } from '../../../examples/demo-book.ts';
import { main } from './main.ts';

const today = '2026-11-25';

function run(args: readonly string[], book: Book = demoBook(today as never)) {
  const lines: string[] = [];
  const code = main(args, {
    out: (line) => lines.push(line),
    readFile: () => writeBoatFile({ book }),
    writeNewFile: () => {},
    now: () => Date.parse(`${today}T06:30:00Z`),
    elapsed: () => 0,
    timeZone: 'UTC',
  });
  return { code, text: lines.join('\n') };
}

describe('fettle trailer', () => {
  it('says what presses on the ball, against the lowest limit, with what was found', () => {
    const { code, text } = run(['trailer', 'demo.fettle']);
    expect(code).toBe(0);
    expect(text).toContain('The ball carries 48 kg (46.7 to 49.3), 5.9 % of 820 kg; it may carry the tow bar’s 50 kg');
    expect(text).toMatch(/to see to: Spare tyre, not on the road: 7\.\d years old/);
    expect(text).toContain('Backward, when the car pulls away: 2870 N are asked for; the lashings hold 3080 N.');
    expect(text).not.toContain('Moments about the axle, over');
    expect(run(['trailer', 'demo.fettle', '--working']).text).toContain(
      'The battery: 6 kg, 0.55 m behind the axle: −0.8 ± 0.1 kg.',
    );
  });

  it('says what to move where the ball load is over, and that a book has none', () => {
    const demo = demoBook(today as never);
    const [id, record] = Object.entries(demo.trailers)[0]!;
    const over = { ...demo, trailers: { [id]: { ...record, barBall_kg: 47 } } };
    const { text } = run(['trailer', 'demo.fettle'], over);
    expect(text).toMatch(/NOT ALLOWED: The ball carries 48 kg/);
    expect(text).toMatch(/What to move\n {2}Move the [a-z ]+ 0\.\d+ m aft: the ball then carries/);
    expect(run(['trailer', 'demo.fettle'], { ...demo, trailers: {}, carried: {} }).text).toContain(
      'There is no trailer in this book.',
    );
  });

  it('refuses a day that there is not, with what would be right', () => {
    const { code, text } = run(['trailer', 'demo.fettle', '--today', '2026-02-30']);
    expect(code).toBe(2);
    expect(text).toContain("--today takes a day such as 2026-05-09, got '2026-02-30'");
  });
});
