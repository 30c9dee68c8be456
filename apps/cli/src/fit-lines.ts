import type { Outing } from '#boat-book';
import type { Finding } from '#fit-to-go';
import { dayInWords, fitInWords, leastWorkInWords, mendNotes, type OutingFit, plannedOfInWords } from '#reckoning';

/** The answer for an outing, as it is printed. @param working  each reason with its day, too */
export function fitLines(outing: Outing, { answer, ifPlanKept }: OutingFit, working: boolean): readonly string[] {
  const { stops, conditions, sound, notLooked, toMakeFit, least } = answer;
  const told = (title: string, findings: readonly Finding[], reasons: boolean) =>
    findings.length === 0
      ? []
      : [
          `  ${title}:`,
          ...findings.flatMap(({ words, because }) => [
            `    ${words}`,
            ...(reasons ? because : because.slice(0, 1)).map(
              (reason) => `      ${reason.words}${reason.from === null ? '' : ` (${reason.from.slice(0, 10)})`}`,
            ),
          ]),
        ];
  return [
    `${outing.title}, ${dayInWords(outing.date)} ${outing.from}`,
    `  ${fitInWords(answer, [])}${ifPlanKept === null ? '' : ` If the plan is kept: ${fitInWords(ifPlanKept, [])}`}`,
    ...told('She is not fit while these stand', stops, working),
    ...told('She may go only so', conditions, working),
    ...(toMakeFit.length === 0
      ? []
      : [
          '  What would make her fit, least work first:',
          ...(least === null ? [] : [`    ${leastWorkInWords(least)} ${plannedOfInWords(least.work)}`]),
          ...toMakeFit.map(
            (mend) =>
              `    ${least !== null && !least.work.includes(mend) ? 'or: ' : ''}${[mend.words, ...mendNotes(mend)].join(' ')}`,
          ),
        ]),
    ...(working
      ? told('Looked at, nothing against it', sound, true)
      : sound.length === 0
        ? []
        : [`  Looked at, nothing against it: ${sound.length}`]),
    '  Not looked at:',
    ...notLooked.map(({ words, because }) => `    ${words}: ${because}`),
    '',
  ];
}
