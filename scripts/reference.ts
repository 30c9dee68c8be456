import { type Question, referenceRows } from '#working';
import { markdownTable } from '../checks/markdown-table.ts';

/** The written reference of all questions, in Markdown. */
export function reference(questions: readonly Question[]): string {
  const lines = [
    '# Questions',
    '',
    'Made by `npm run check -- --readme` from the fields of the questions themselves.',
    'Ask one with `fettle ask QUESTION --field value …`; every answer carries its working.',
    '',
  ];
  for (const question of questions) {
    lines.push(
      `## ${question.id}`,
      '',
      question.title,
      '',
      ...markdownTable(
        [{ head: 'field' }, { head: 'what it is' }, { head: 'takes' }, { head: 'when not given' }],
        referenceRows(question).map((row) => [`\`--${row.field}\``, row.meaning, row.takes, row.assumed ?? 'refused']),
      ),
      '',
    );
  }
  return lines.join('\n');
}
