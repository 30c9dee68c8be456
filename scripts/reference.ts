import { type Question, referenceRows } from '#working';

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
      '| field | what it is | takes | when not given |',
      '| --- | --- | --- | --- |',
    );
    for (const row of referenceRows(question))
      lines.push(`| \`--${row.field}\` | ${row.meaning} | ${row.takes} | ${row.assumed ?? 'refused'} |`);
    lines.push('');
  }
  return lines.join('\n');
}
