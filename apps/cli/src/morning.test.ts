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

describe('fettle morning', () => {
  it('tells the lists of the next outing in the order that works, with their cautions', () => {
    const { code, text } = run(['morning', 'demo.fettle']);
    expect(code).toBe(0);
    expect(text).toMatch(/^Two nights at the outer bar, 2026-05-29 09:00/);
    for (const list of ['Pack', 'Tow', 'Rig', 'Launch', 'Recover']) expect(text).toContain(`\n${list}\n  1  [ ] `);
    const at = (words: string) => text.indexOf(words);
    expect(at('Drain plugs in, screwed home')).toBeLessThan(at('Backed down until the stern lifts'));
    expect(text).toMatch(/Jury rig looked at, and it holds: Rope strop on the board/);
    expect(text).toMatch(/Take care: Nothing is worth a try under a power line/);
  });

  it('tells one list, and refuses one that there is not', () => {
    const { text } = run(['morning', 'demo.fettle', '--list', 'rig']);
    expect(text).toContain('\nRig\n');
    expect(text).not.toContain('\nPack\n');
    expect(run(['morning', 'demo.fettle', '--list', 'sail'])).toMatchObject({
      code: 2,
      text: expect.stringContaining("got 'sail'"),
    });
    expect(run(['morning', 'demo.fettle', '--today', '2027-01-01']).text).toMatch(/^No outing is ahead/);
  });
});
