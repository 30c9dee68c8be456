import { answerInLines, ask as askQuestion, type Question, referenceRows } from '#working';
import { questions } from '../questions.ts';

const usage = [
  'fettle ask QUESTION --field value … [--json]   answers a question, with its working',
  'fettle ask QUESTION --fields                   what the question must be given',
  'fettle ask --list                              the questions there are',
];

/**
 * `fettle ask`: answers a question of the trade from the command line.
 *
 * @param args  what stands after `ask`
 * @param out   takes one line of output at a time
 * @returns     exit code: 0 answered (a truth such as 'the sun stays up' too), 1 refused
 */
export function ask(args: readonly string[], out: (line: string) => void): number {
  const all = questions();
  const [id, ...rest] = args;
  if (id === '--list') {
    if (rest.length > 0) return refuse(out, `--list takes nothing after it, got '${rest.join(' ')}'`);
    for (const question of all) out(`${question.id.padEnd(32)} ${question.title}`);
    return 0;
  }
  if (id === undefined || id.startsWith('--')) return refuse(out, 'no question given');
  const question = all.find((each) => each.id === id);
  if (!question) return refuse(out, `there is no question '${id}'${nearest(id, all)}; see fettle ask --list`);
  if (rest.length === 1 && rest[0] === '--fields') {
    for (const line of fieldLines(question)) out(line);
    return 0;
  }
  const read = fieldsOf(rest);
  if ('wrong' in read) return refuse(out, read.wrong);
  const asked = askQuestion(question, read.fields);
  if (read.json) out(JSON.stringify({ question: id, ...asked }, null, 2));
  else if (asked.kind === 'answered') {
    out(question.title);
    for (const line of answerInLines(asked)) out(line);
  } else {
    out(`${id} cannot be answered:`);
    for (const fault of asked.faults) out(`  --${fault.where}: ${fault.wrong}; ${fault.right}`);
  }
  return asked.kind === 'answered' ? 0 : 1;
}

function refuse(out: (line: string) => void, wrong: string): number {
  out(wrong);
  for (const line of usage) out(`  ${line}`);
  return 1;
}

/** `--name value`, `--name=value` and `--json`; or what is wrong with the arguments. */
function fieldsOf(
  args: readonly string[],
): { readonly fields: Record<string, string>; readonly json: boolean } | { readonly wrong: string } {
  const fields: Record<string, string> = {};
  let json = false;
  for (let i = 0; i < args.length; i++) {
    const arg = args[i]!;
    if (arg === '--json') {
      json = true;
      continue;
    }
    const named = /^--([a-z][a-z0-9-]*)(?:=(.*))?$/s.exec(arg);
    if (!named) return { wrong: `'${arg}' is not a field: write --field value` };
    const name = named[1]!;
    const value = named[2] ?? args[++i];
    if (value === undefined || (named[2] === undefined && /^--[a-z]/.test(value)))
      return { wrong: `--${name} has no value after it` };
    if (name in fields) return { wrong: `--${name} is given twice` };
    fields[name] = value;
  }
  return { fields, json };
}

function fieldLines(question: Question): string[] {
  const rows = referenceRows(question);
  const width = Math.max(...rows.map((row) => row.field.length));
  return [
    question.title,
    ...rows.map(
      (row) =>
        `  --${row.field.padEnd(width)}  ${row.meaning}: ${row.takes}${row.assumed === null ? '' : `; not given, ${row.assumed}`}`,
    ),
  ];
}

function nearest(id: string, all: readonly Question[]): string {
  const last = id.split('.').at(-1)!;
  const near = all.filter((each) => last.length > 2 && each.id.includes(last)).map((each) => each.id);
  return near.length > 0 ? ` (is it ${near.join(' or ')}?)` : '';
}
