/**
 * How much of plain talk is understood, on lines and pages of our own invention (README.md beside). The talk was
 * marked before the reader was tried on it, and no mark comes from the reader; but who marked it also wrote it, so the
 * figures say what it can do, not how it does with any keeper's.
 */
import { describe, expect, it } from 'vitest';
import { readLine, readWalkRound } from '../src/index.ts';
import { boat } from './boat.ts';
import { examplesOf } from './examples-of.ts';
import { hands } from './hands.ts';
import { learn } from './learn.ts';
import { linesByAnother, pagesByAnother } from './open/by-another-hand.ts';
import { fifthPages } from './open/fifth-pages.ts';
import { fourthPages } from './open/fourth-pages.ts';
import { lines as openLines } from './open/lines.ts';
import { morePages } from './open/more-pages.ts';
import { pages as openPages } from './open/pages.ts';
import { sixthPages } from './open/sixth-pages.ts';
import { thirdPages } from './open/third-pages.ts';
import { scoreLines, scorePages } from './score.ts';
import { lines as asideLines } from './set-aside/lines.ts';
import { pages as asidePages } from './set-aside/pages.ts';
import { lines as secondLines } from './set-aside-2/lines.ts';
import { pages as secondPages } from './set-aside-2/pages.ts';
import { pages as thirdAside } from './set-aside-3/pages.ts';
import { pages as fourthAside } from './set-aside-4/pages.ts';
import { pages as fifthAside } from './set-aside-5/pages.ts';
import { pages as sixthAside } from './set-aside-6/pages.ts';

/**
 * The goal is 85 of 100 pieces of work found and at most 10 of 100 proposals false. All talk here but `set-aside-5` and
 * `set-aside-6` was learned from in the end; what was reached on each at first sight stands in README.md.
 */
const halves = [
  [
    'open',
    openLines,
    [...openPages, ...morePages, ...thirdPages, ...fourthPages, ...fifthPages],
    { found: 0.9, mostFalse: 0.04 },
  ],
  ['open, by another hand', linesByAnother, pagesByAnother, { found: 0.86, mostFalse: 0.08 }],
  ['once set aside', asideLines, asidePages, { found: 0.9, mostFalse: 0.02 }],
  ['once set aside, by another hand', secondLines, secondPages, { found: 0.95, mostFalse: 0.06 }],
  ['once set aside, four pages more', secondLines, thirdAside, { found: 0.9, mostFalse: 0.07 }],
  ['once set aside, six pages more', secondLines, fourthAside, { found: 0.86, mostFalse: 0.07 }],
  ['set aside, ten pages that nothing was learned from', secondLines, fifthAside, { found: 0.88, mostFalse: 0.1 }],
  ['set aside, twelve pages that nothing was learned from', secondLines, sixthAside, { found: 0.83, mostFalse: 0.1 }],
  ['open, by a stranger', secondLines, sixthPages, { found: 0.9, mostFalse: 0.08 }],
] as const;

describe.each(halves)('talk marked by hand, %s', (_half, lines, pages, { found, mostFalse }) => {
  it('nine parts of ten of the lines are right', () => {
    const { right, of, wrong } = scoreLines(lines, (line) => readLine(line, boat));
    expect(right / of, wrong.join('\n')).toBeGreaterThanOrEqual(0.9);
  });

  it(`of the work on the pages ${100 * found} of 100 is found, and at most ${100 * mostFalse} of 100 proposals are false`, () => {
    const { work, falseWork, proposedWork } = scorePages(pages, (page) => readWalkRound(page, boat));
    expect(work.right / work.of, work.wrong.join('\n')).toBeGreaterThanOrEqual(found);
    expect(falseWork.length / proposedWork, falseWork.join('\n')).toBeLessThanOrEqual(mostFalse);
  });
});

describe('a hand that the judge did not learn from', () => {
  // the rules that come before it had not seen these pages either
  it('is understood well enough to be of use', () => {
    const others = Object.entries(hands).flatMap(([hand, pages]) => (hand === 'second-stranger' ? [] : pages));
    const { job, rig } = examplesOf(others);
    const judges = { job: learn(job, 0.1), rig: learn(rig, 0.3) };
    const { work, falseWork, proposedWork } = scorePages(hands['second-stranger']!, (page) =>
      readWalkRound(page, boat, judges),
    );
    expect(work.right / work.of, work.wrong.join('\n')).toBeGreaterThanOrEqual(0.78);
    expect(falseWork.length / proposedWork, falseWork.join('\n')).toBeLessThanOrEqual(0.16);
  });
});

describe('the marks', () => {
  it('stand each on its page once', () => {
    for (const { page, marks } of [...Object.values(hands).flat(), ...fifthAside, ...sixthAside])
      for (const { at } of marks) expect(page.split(at), at).toHaveLength(2);
  });

  it('are of at least 120 lines and 6 pages, half of them set aside', () => {
    expect(openLines.length + asideLines.length).toBeGreaterThanOrEqual(120);
    expect(asideLines.length).toBe(openLines.length);
    expect(openPages.length + asidePages.length).toBeGreaterThanOrEqual(6);
    expect(asidePages).toHaveLength(3);
  });
});
