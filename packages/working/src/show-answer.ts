import { showNumber } from '#units';
import type { Figure } from './answer.ts';
import type { Asked } from './question.ts';

/** A figure's value with its band and unit, in few enough digits to read: `39.8884 °`, `12.6 (12.4 to 12.8) V`. */
export function figureInWords(figure: Figure): string {
  if (typeof figure.value === 'string') return figure.value;
  const unit = figure.unit === '' ? '' : `\u00a0${figure.unit}`;
  const band =
    figure.low !== undefined && figure.high !== undefined
      ? ` (${inDigits(figure.low)} to ${inDigits(figure.high)})`
      : '';
  const words = figure.inWords === undefined ? '' : `, that is ${figure.inWords}`;
  return `${inDigits(figure.value)}${band}${unit}${words}`;
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
    answer.working.map((line) => `${line.symbol} = ${line.formula} = ${figureInWords(line)}  (${line.meaning})`),
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

/** Enough digits to check a figure by hand, no more than nine in all. */
function inDigits(value: number): string {
  if (value === 0) return '0';
  const size = Math.floor(Math.log10(Math.abs(value))) + 1;
  const decimals = Math.max(0, Math.min(10, size > 4 ? 9 - size : 6 - size + (size < 0 ? 2 : 0)));
  return trimmed(showNumber(value, Math.min(decimals, 10)));
}

const trimmed = (text: string) => (text.includes('.') ? text.replace(/\.?0+$/, '') : text);
