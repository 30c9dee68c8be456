import type { Asked, Figure } from '#working';
import { figureSaid, sourceInWords } from './circuits-in-words.ts';
import type { WorkingTold } from './circuits-told.ts';
import { sentence } from './when-in-words.ts';

/** How an answer came about, in titled lines: what was taken, the formulas with their figures, sources and limits. */
export function answerTold({ answer, assumed }: Extract<Asked, { kind: 'answered' }>): readonly WorkingTold[] {
  const parts: readonly WorkingTold[] = [
    {
      title: 'Taken, because nothing was said',
      lines: assumed.map(({ shown, because }) => `${sentence(shown)}: ${because}.`),
    },
    {
      title: 'How it is worked out',
      lines: answer.working.map(
        (line) => `${sentence(line.meaning)}: ${line.symbol} = ${line.formula} = ${figureWithBand(line)}.`,
      ),
    },
    { title: 'Not covered', lines: answer.limits },
    { title: 'From', lines: [...new Set(answer.sources.map((source) => sentence(sourceInWords(source))))] },
  ];
  return parts.filter(({ lines }) => lines.length > 0);
}

/** `1420 N`, `17.5 (15 to 20) %`: as finely as it can be read. */
function figureWithBand({ value, low, high, unit }: Figure): string {
  if (typeof value === 'string') return value;
  const band = low === undefined || high === undefined ? '' : ` (${figureSaid(low)} to ${figureSaid(high)})`;
  return `${figureSaid(value)}${band}${unit === '' ? '' : `\u00a0${unit}`}`;
}
