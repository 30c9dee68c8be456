import { execFileSync, spawnSync } from 'node:child_process';
import { tmpdir } from 'node:os';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { type Book, readBoatFile, writeBoatFile } from '#boat-book';
import type { Outcome } from '#workplan';
import { demoBook } from '../../../examples/demo-book.ts';
import { main } from './main.ts';
import type { Surroundings } from './surroundings.ts';

// Wednesday 6 May 2026, 08:00 at the demo's place (UTC+12 in winter)
const now = '2026-05-05T20:00:00Z';
const today = '2026-05-06' as Parameters<typeof demoBook>[0];

/** A command in this process, over files that are only in memory. */
function run(args: readonly string[], files: Record<string, Uint8Array> = {}) {
  const lines: string[] = [];
  const refuse = (code: string): never => {
    throw Object.assign(new Error(code), { code });
  };
  const surroundings: Surroundings = {
    out: (line) => lines.push(line),
    readFile: (path) => files[path] ?? refuse('ENOENT'),
    writeNewFile: (path, bytes) => {
      if (files[path]) refuse('EEXIST');
      files[path] = bytes;
    },
    now: () => Date.parse(now),
    elapsed: () => performance.now(),
    timeZone: 'Pacific/Auckland',
  };
  const code = main(args, surroundings);
  return { code, text: lines.join('\n'), lines, files };
}

const demo = demoBook(today);
const file = (book: unknown) => ({ 'a.fettle': writeBoatFile({ book: book as Book }) });
const bare = (book: unknown) => ({ 'book.json': new TextEncoder().encode(JSON.stringify(book)) });

describe('fettle', () => {
  it('says how it is called, and what it does not know', () => {
    expect(run(['--help']).code).toBe(0);
    for (const command of ['plan', 'check', 'ask', 'demo'])
      expect(run(['--help']).text).toContain(`fettle ${command} `);
    expect(run([]).code).toBe(2);
    expect(run(['sail'])).toMatchObject({ code: 2, text: expect.stringContaining("no command 'sail'") });
    expect(run(['toString']).code).toBe(2);
    expect(run(['plan', '--help'])).toMatchObject({ code: 0, text: expect.stringContaining('--seconds') });
    expect(run(['ask', '--list']).code).toBe(0);
  });

  it('runs from any folder as a program of its own', () => {
    const program = fileURLToPath(new URL('../bin/fettle.mjs', import.meta.url));
    const text = execFileSync(process.execPath, [program, '--help'], { cwd: tmpdir(), encoding: 'utf8' });
    expect(text).toContain('fettle plan FILE');
    const refused = spawnSync(process.execPath, [program, 'plan', 'no-such-boat.fettle'], {
      cwd: tmpdir(),
      encoding: 'utf8',
    });
    expect(refused.status).toBe(1);
    expect(refused.stdout).toContain('There is no file or folder no-such-boat.fettle.');
  }, 300_000);
});

describe('fettle demo', () => {
  it('writes a boat file that the gate takes, dated from today at the place', () => {
    const { code, text, files } = run(['demo', 'out.fettle']);
    expect(code).toBe(0);
    expect(text).toContain('dated from 2026-05-06');
    const read = readBoatFile(files['out.fettle']!);
    expect(read).toMatchObject({ kind: 'book', notes: [] });
    expect(read.kind === 'book' && read.book).toEqual(demo);
  });

  it('leaves a file that is there as it is', () => {
    const there = new Uint8Array([1, 2, 3]);
    const { code, text, files } = run(['demo', 'out.fettle'], { 'out.fettle': there });
    expect(code).toBe(1);
    expect(text).toContain('is there already, and is left as it is');
    expect(files['out.fettle']).toBe(there);
  });

  it('refuses other names and days that are none', () => {
    expect(run(['demo', 'out.zip'])).toMatchObject({ code: 2, text: expect.stringContaining('ends in .fettle') });
    expect(run(['demo', 'out.fettle', '--day', '2026-02-30']).text).toContain("got '2026-02-30'");
    expect(run(['demo']).text).toContain('OUT.fettle is missing');
  });
});

describe('fettle check', () => {
  it('finds nothing wrong with the demo, as a boat file or as its book alone', () => {
    for (const [path, files] of [
      ['a.fettle', file(demo)],
      ['book.json', bare(demo)],
    ] as const) {
      const { code, text } = run(['check', path, '--now', now], files);
      expect(text).toContain('nothing wrong. 19 jobs, 58 steps, 3 job days looked at.');
      expect(text).toContain('have no weather entered');
      expect(text).toContain("job 'Renew the forehatch seal': Forehatch seal, 1.9 m: not in stores, and not on order.");
      expect(code).toBe(0);
    }
  });

  it('names a ring of steps, a step longer than any day, and a date that cannot be met', () => {
    const steps = { ...demo.steps };
    const ring = (before: string) => [
      { step: before, wait: null, least_min: 0, greatest_min: null, past: { kind: 'forbidden' as const } },
    ];
    steps['drain-ring-1'] = { ...steps['drain-ring-1']!, follows: ring('drain-ring-2') };
    const ringed = run(['check', 'a.fettle', '--now', now], file({ ...demo, steps }));
    expect(ringed.code).toBe(1);
    expect(ringed.text).toMatch(/round in a ring/);
    expect(ringed.text).toContain('Take the drain ring off');

    const long = {
      ...demo.steps,
      'battery-fuse-1': { ...demo.steps['battery-fuse-1']!, minutes: { low: 900, likely: 900, high: 900 } },
    };
    const longer = run(['check', 'a.fettle', '--now', now], file({ ...demo, steps: long }));
    expect(longer.code).toBe(1);
    expect(longer.text).toMatch(/Mount the fuse holder.*900 minutes/);

    const jobs = { ...demo.jobs, 'stern-light': { ...demo.jobs['stern-light']!, due: today } };
    const late = run(['check', 'a.fettle', '--now', now], file({ ...demo, jobs }));
    expect(late.code).toBe(1);
    expect(late.text).toMatch(/Mend the stern light.*2026-05-06/);
  });

  it('says what is wrong in the form of a book, and where', () => {
    const zones = { ...demo.zones, bow: { ...demo.zones.bow, room: 0 } };
    const { code, text } = run(['check', 'book.json'], bare({ ...demo, zones }));
    expect(code).toBe(1);
    expect(text).toContain('book.json cannot be taken as a boat book.');
    expect(text).toMatch(/bow.*room/);
  });

  it.each([
    ['nothing', new Uint8Array()],
    ['no book', new TextEncoder().encode('{"format":"other"}')],
    ['half a file', writeBoatFile({ book: demo }).slice(0, 900)],
    ['not JSON', new TextEncoder().encode('{ book')],
  ])('refuses %s in words', (_, bytes) => {
    const { code, lines } = run(['check', 'x.fettle'], { 'x.fettle': bytes });
    expect(code).toBe(1);
    expect(lines[0]).toBe('x.fettle cannot be taken as a boat book.');
    expect(lines.length).toBeGreaterThan(1);
  });
});

describe('fettle plan', () => {
  it('prints a day for each job day, with reasons, cautions and what is left out', () => {
    const { code, text } = run(['plan', 'a.fettle', '--now', now, '--seconds', '3'], file(demo));
    expect(code).toBe(0);
    for (const label of ['Friday 8 May', 'Saturday 9 May', 'Friday 15 May'])
      expect(text).toContain(`${label}, 08:00–17:00`);
    expect(text).toMatch(/\d+ of 19 jobs in the plan/);
    expect(text).toContain('raise the mast');
    expect(text).toContain('Caution: Look up first: no power line');
    expect(text).toContain('Left out, and why:');
    expect(text).toContain('Get it by Friday 15 May, or say when it can be here.');
    // a cord to be ordered one day before, and each thing to get once
    expect(text).toMatch(/To get\. \w+ things to get/);
    expect(text).toMatch(
      /6 mm cord: 9 m, needed .* for 'Reeve a new reefing line'\n +not ordered, one day from ordering: order /,
    );
    expect(text).toContain('Carry down, in order of use:');
    expect(text).toMatch(/ {4}rigging box\n {6}\S.*: \d\d:\d\d, for '/);
  });

  it('gives the outcome as data', () => {
    const { code, text } = run(['plan', 'a.fettle', '--now', now, '--seconds=0.2', '--json'], file(demo));
    expect(code).toBe(0);
    const outcome: Outcome = JSON.parse(text);
    expect(outcome.plan.steps.length).toBeGreaterThan(20);
    expect(outcome.plan.leftOut).toContain('forehatch-seal');
    expect(outcome.effort.seed).toBe(1);
    // every job left out has its reason
    for (const job of outcome.plan.leftOut) expect(outcome.obstacles.some((each) => each.job === job)).toBe(true);
  });

  it('says when there is nothing to plan', () => {
    expect(run(['plan', 'a.fettle', '--now', now], file({ ...demo, jobDays: {} }))).toMatchObject({
      code: 0,
      text: expect.stringContaining('There is no job day ahead.'),
    });
    const { text } = run(['plan', 'a.fettle', '--now', now], file({ ...demo, jobDays: {} }));
    // the heaviest job first: its hours, and what to prepare
    expect(text).toMatch(
      /our assumption\), the heaviest first:\n {2}Rebed the starboard shroud plate\n {4}1 h 05 dry, from 10 °C: /,
    );
    expect(text).toMatch(/ {4}Prepare \d+ minutes .*: take the cover off/);
    expect(text).toContain('Forehatch seal, 1.9 m is not in stores, and not on order: say when it can be here.');
  });

  it.each([
    [['plan'], 2, 'FILE is missing'],
    [['plan', 'a', 'b'], 2, "'b' is one too many"],
    [['plan', 'a', '--seconds', 'soon'], 2, "from 0.1 to 600, got 'soon'"],
    [['plan', 'a', '--seconds', '0'], 2, "got '0'"],
    [['plan', 'a', '--seconds'], 2, '--seconds has no value after it'],
    [['plan', 'a', '--now', 'tomorrow'], 2, 'such as 2026-05-09T10:40:00Z'],
    [['plan', 'a', '--now', '2026-05-09T10:40'], 2, 'with its zone'],
    [['plan', 'a', '--fast'], 2, "no option '--fast'"],
    [['plan', 'a', '--json=yes'], 2, '--json takes no value'],
    [['plan', 'a.fettle'], 1, 'There is no file or folder a.fettle. Give the path'],
  ] as const)('refuses %j', (args, code, words) => {
    const told = run(args);
    expect(told.code).toBe(code);
    expect(told.text).toContain(words);
  });
});
