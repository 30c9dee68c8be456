/** The answers of the constraint model, as stored beside this file, and which problems they are to. */
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import type { Problem, Rule } from '#workplan';
import type { Steadiest } from './best-plan.ts';
import type { ModelWorth } from './model.ts';
import type { SeededOptions } from './varied-problem.ts';

/** The proved best of one problem of `seededProblem`; of how steady and soon it can be, where that was settled too. */
export interface StoredAnswer extends ModelWorth, Partial<Steadiest> {
  readonly seed: number;
  readonly options: SeededOptions;
  /** first 12 hex digits of the SHA-256 of the problem's JSON: a changed generator makes an answer void */
  readonly problem: string;
}

export interface StoredAnswers {
  readonly solver: string;
  readonly madeBy: string;
  readonly answers: readonly StoredAnswer[];
}

/** A problem on which the best plan is another one when a rule is left out. */
export interface RuleKill extends ModelWorth {
  readonly seed: number;
  readonly options: SeededOptions;
  readonly problem: string;
  /** the proved best without the rule */
  readonly without: ModelWorth;
}

export interface RuleKills {
  readonly solver: string;
  readonly madeBy: string;
  readonly kills: Readonly<Partial<Record<Rule, readonly RuleKill[]>>>;
}

export const digestOf = (problem: Problem): string =>
  createHash('sha256').update(JSON.stringify(problem)).digest('hex').slice(0, 12);

const answersFile = new URL('./stored-answers.json', import.meta.url);
const killsFile = new URL('./rule-kill.json', import.meta.url);

export const readAnswers = (): StoredAnswers | null => readIfThere<StoredAnswers>(answersFile);
export const readKills = (): RuleKills | null => readIfThere<RuleKills>(killsFile);

function readIfThere<T>(file: URL): T | null {
  return existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as T) : null;
}

/** One answer a line, so that a change shows as the lines it changes. */
export function writeAnswers({ answers, ...head }: StoredAnswers): void {
  writeFileSync(answersFile, `${headText(head)}"answers": [\n${answers.map(lineText).join(',\n')}\n]\n}\n`);
}

export function writeKills({ kills, ...head }: RuleKills): void {
  const rules = Object.entries(kills).map(
    ([rule, rows]) => `${JSON.stringify(rule)}: [\n${rows.map(lineText).join(',\n')}\n]`,
  );
  writeFileSync(killsFile, `${headText(head)}"kills": {\n${rules.join(',\n')}\n}\n}\n`);
}

const headText = (head: object) => `{\n${JSON.stringify(head).slice(1, -1)},\n`;
const lineText = (row: unknown) => JSON.stringify(row);
