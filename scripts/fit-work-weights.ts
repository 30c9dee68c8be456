/**
 * Fits the weights by which a topic of talk is taken for work (`packages/jobs/src/work-weights.ts`) to the marked pages of
 * `packages/jobs/corpus`, and tries them on each hand's pages in turn when fitted to all others'. Logistic, ridge, plain descent
 * from nought: the same pages give the same weights. `npx tsx scripts/fit-work-weights.ts [--write]`
 */
import { writeFileSync } from 'node:fs';
import { boat } from '../packages/jobs/corpus/boat.ts';
import type { MarkedPage } from '../packages/jobs/corpus/marked.ts';
import { pagesByAnother } from '../packages/jobs/corpus/open/by-another-hand.ts';
import { fifthPages } from '../packages/jobs/corpus/open/fifth-pages.ts';
import { fourthPages } from '../packages/jobs/corpus/open/fourth-pages.ts';
import { morePages } from '../packages/jobs/corpus/open/more-pages.ts';
import { pages as openPages } from '../packages/jobs/corpus/open/pages.ts';
import { sixthPages } from '../packages/jobs/corpus/open/sixth-pages.ts';
import { thirdPages } from '../packages/jobs/corpus/open/third-pages.ts';
import { pages as asidePages } from '../packages/jobs/corpus/set-aside/pages.ts';
import { pages as secondPages } from '../packages/jobs/corpus/set-aside-2/pages.ts';
import { pages as thirdAside } from '../packages/jobs/corpus/set-aside-3/pages.ts';
import { pages as fourthAside } from '../packages/jobs/corpus/set-aside-4/pages.ts';
import { mayBeWork } from '../packages/jobs/src/gather-work.ts';
import { heardLine } from '../packages/jobs/src/heard-line.ts';
import { clausesOf } from '../packages/jobs/src/walk-clauses.ts';
import { habitOf, signsOf } from '../packages/jobs/src/work-likely.ts';

const hands: Readonly<Record<string, readonly MarkedPage[]>> = {
  first: [...openPages, ...morePages, ...thirdPages, ...asidePages],
  another: [...pagesByAnother, ...secondPages],
  fourth: fourthPages,
  fifth: fifthPages,
  'set-aside-3': thirdAside,
  'set-aside-4': fourthAside,
  sixth: sixthPages,
};

interface Case {
  readonly hand: string;
  readonly page: string;
  readonly signs: Readonly<Record<string, number>>;
  /** the mark that it meets; -1: none */
  readonly mark: number;
  readonly from: number;
}

/** All that may be work, with the mark that each meets. */
function casesOf(hand: string, { name, page, marks }: MarkedPage): Case[] {
  const heard = heardLine(page, boat);
  const may = mayBeWork(clausesOf(heard.text), boat).filter(({ evidence }) => evidence !== null);
  const habit = habitOf(may);
  return may.map(({ evidence, clauses }) => {
    const mark = marks.findIndex(
      ({ kind, at }) =>
        kind === 'job' &&
        clauses.some(
          ({ from, to }) =>
            heard.places[from]! < page.indexOf(at) + at.length && page.indexOf(at) < heard.places[to - 1]! + 1,
        ),
    );
    return { hand, page: name, signs: signsOf(evidence!, habit), mark, from: clauses[0]!.from };
  });
}

/** Ridge logistic by plain descent. */
function fitted(cases: readonly Case[]): Record<string, number> {
  const names = Object.keys(cases[0]!.signs);
  const weight = new Float64Array(names.length);
  // the first hand wrote a third of all: no hand counts for more than a hundred
  const most = 100;
  const told = (hand: string) => cases.filter((each) => each.hand === hand).length;
  const share = new Map(Object.keys(hands).map((hand) => [hand, Math.min(1, most / Math.max(1, told(hand)))]));
  const rows = cases.map(({ hand, signs, mark }) => ({
    x: names.map((name) => signs[name]!),
    y: mark >= 0 ? 1 : 0,
    counts: share.get(hand)!,
  }));
  const ridge = 2;
  for (let round = 0; round < 3000; round++) {
    const slope = new Float64Array(names.length);
    for (const { x, y, counts } of rows) {
      let sum = 0;
      for (let at = 0; at < x.length; at++) sum += x[at]! * weight[at]!;
      const off = 1 / (1 + Math.exp(-sum)) - y;
      for (let at = 0; at < x.length; at++) slope[at]! += counts * off * x[at]!;
    }
    for (let at = 0; at < weight.length; at++)
      weight[at]! -=
        (0.5 / Math.sqrt(rows.length)) * 0.2 * (slope[at]! + (names[at] === 'always' ? 0 : ridge * weight[at]!));
  }
  return Object.fromEntries(names.map((name, at) => [name, Math.round(weight[at]! * 100) / 100]));
}

/** Found and false among the cases at a threshold; each mark is met once. */
function tried(cases: readonly Case[], weights: Readonly<Record<string, number>> | null, least: number) {
  const met = new Set<string>();
  let wrong = 0;
  for (const { page, hand, signs, mark } of cases) {
    const sum = weights ? Object.entries(signs).reduce((all, [name, value]) => all + value * weights[name]!, 0) : 0;
    const taken = weights ? 1 / (1 + Math.exp(-sum)) >= least : signs.unknown === 0 && signs.dismissed === 0;
    if (!taken) continue;
    const key = `${hand} ${page} ${mark}`;
    if (mark < 0 || met.has(key)) wrong++;
    else met.add(key);
  }
  return { found: met.size, wrong };
}

const all = Object.entries(hands).flatMap(([hand, pages]) => pages.flatMap((page) => casesOf(hand, page)));
const sums: Record<string, { found: number; wrong: number }> = {};
for (const hand of Object.keys(hands)) {
  const own = all.filter((each) => each.hand === hand);
  const weights = fitted(all.filter((each) => each.hand !== hand));
  const row = [
    ['rules', tried(own, null, 0)] as const,
    ...[0.4, 0.5, 0.55, 0.6, 0.65, 0.7].map((least) => [String(least), tried(own, weights, least)] as const),
  ];
  for (const [name, { found, wrong }] of row) {
    sums[name] ??= { found: 0, wrong: 0 };
    sums[name].found += found;
    sums[name].wrong += wrong;
  }
  console.log(
    hand.padEnd(12),
    own.length,
    row.map(([name, { found, wrong }]) => `${name}: ${found}/${wrong}`).join('  '),
  );
}
console.log('all', sums);
const weights = fitted(all);
console.log(weights);
if (process.argv.includes('--write'))
  writeFileSync(
    'packages/jobs/src/work-weights.ts',
    `/**\n * What each sign is worth, as log odds. Fitted by \`npx tsx scripts/fit-work-weights.ts --write\` to ${all.length} stretches of the marked\n * talk in \`corpus/\`; how well they do on pages by a hand left out stands in its README.\n */\nexport const weights: Readonly<Record<string, number>> = {\n${Object.entries(
      weights,
    )
      .map(([name, value]) => `  ${name}: ${value},`)
      .join('\n')}\n};\n`,
  );
