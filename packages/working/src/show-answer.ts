import { showNumber } from '#units';
import type { Figure } from './answer.ts';
import type { Asked } from './question.ts';

/** A figure's value with its band and unit: `39.8884 °`, `12.6 (12.4 to 12.8) V`. @param figures how many, whole, ≥ 3 */
export function figureInWords(figure: Figure, figures = 6): string {
  if (typeof figure.value === 'string') return figure.value;
  const unit = figure.unit === '' ? '' : `\u00a0${figure.unit}`;
  const band =
    figure.low !== undefined && figure.high !== undefined
      ? ` (${inDigits(figure.low, figures)} to ${inDigits(figure.high, figures)})`
      : '';
  const number = `${inDigits(figure.value, figures)}${band}${unit}`;
  return figure.inWords === undefined ? number : `${figure.inWords} (${number})`;
}

/** An answered question as lines of plain text, the result first. */
export function answerInLines(asked: Extract<Asked, { kind: 'answered' }>): string[] {
  const { answer } = asked;
  const lines: string[] = [];
  if (answer.kind === 'truth') lines.push(`${answer.statement}: ${answer.because}`);
  lines.push(...answer.results.map((figure) => `${figure.symbol}  ${figureInWords(figure)}  (${figure.meaning})`));
  section(
    lines,
    'Taken, because nothing was given',
    asked.assumed.map((each) => `${each.field} ${each.shown}: ${each.because}`),
  );
  section(
    lines,
    'Working',
    answer.working.map((line) => `${line.symbol} = ${line.formula} = ${figureInWords(line, 9)}  (${line.meaning})`),
  );
  section(
    lines,
    'From',
    answer.sources.map((source) => `${source.title} (${source.seen})`),
  );
  section(lines, 'Not covered', answer.limits);
  section(lines, 'Take care', answer.cautions);
  return lines;
}

function section(lines: string[], title: string, each: readonly string[]): void {
  if (each.length > 0) lines.push('', title, ...each.map((line) => `  ${line}`));
}

/** So many figures, and six decimals for a number too long for them (a day count). Zeros at the end are left out. */
function inDigits(value: number, figures: number): string {
  if (value === 0) return '0';
  const whole = Math.floor(Math.log10(Math.abs(value))) + 1;
  return trimmed(showNumber(value, whole >= figures - 2 ? 6 : Math.min(12, figures - whole)));
}

const trimmed = (text: string) => (text.includes('.') ? text.replace(/\.?0+$/, '') : text);
