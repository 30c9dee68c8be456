/** The answer in whole sentences. Screens, prints and the command line use the same ones. */
import type { FitAnswer, LeastWork, Mend } from '#fit-to-go';
import { lengthInWords } from '../when-in-words.ts';

const counted = (count: number, one: string, many = `${one}s`) => `${count} ${count === 1 ? one : many}`;

/**
 * The answer itself, never a bare yes.
 *
 * @param looking  what is still being looked at, such as `her gear`; empty: nothing. Only that she is not fit is sure before then
 */
export function fitInWords({ verdict, stops, conditions, notLooked }: FitAnswer, looking: readonly string[]): string {
  if (verdict === 'not fit')
    return `Not fit to go: ${counted(stops.length, 'thing')} ${stops.length === 1 ? 'stands' : 'stand'} against it.`;
  if (looking.length > 0)
    return conditions.length === 0
      ? 'Being looked at: nothing is known against it so far.'
      : `Being looked at: ${counted(conditions.length, 'condition')} so far.`;
  return verdict === 'fit with conditions'
    ? `Fit with ${counted(conditions.length, 'condition')}, as far as it was looked at.`
    : `Nothing known against it; ${counted(notLooked.length, 'thing')} not looked at.`;
}

/** What the least work comes to, and what she is then: 'With these 3, about 2 h 10 of work, she is fit with 1 condition.' */
export function leastWorkInWords({ work, minutes, notKnown, conditions }: LeastWork): string {
  const known = work.length - notKnown;
  const takes =
    known === 0
      ? ''
      : `, about ${lengthInWords(minutes)} of work${notKnown === 0 ? '' : ` and what ${notKnown === 1 ? 'one of them takes' : `${notKnown} of them take`} besides`},`;
  const then =
    conditions.length === 0
      ? 'nothing is known against it'
      : `she is fit with ${counted(conditions.length, 'condition')}`;
  return `With ${work.length === 1 ? 'this' : `these ${work.length}`}${takes} ${then}.`;
}

/** How many of them are planned to be over before it begins: 'The plan has 2 of these 3 over in time.' */
export function plannedOfInWords(work: readonly Mend[]): string {
  const inTime = work.filter((mend) => mend.inTime?.kind === 'in time').length;
  if (work.length === 1)
    return inTime === 1 ? 'The plan has it over in time.' : 'It is not planned to be over in time.';
  if (inTime === 0) return `None of these ${work.length} is planned to be over in time.`;
  return `The plan has ${inTime === work.length ? 'all' : inTime} of these ${work.length} over in time.`;
}

/** What stands beside a piece of work: what it waits for, when it is planned, and how much it mends. */
export function mendNotes({ waits, inTime, mends, leaves }: Mend): readonly string[] {
  return [
    ...(waits === '' ? [] : [waits]),
    ...(inTime === null ? [] : [inTime.words]),
    ...(mends.length > 1 ? [`It mends ${mends.length} of these.`] : []),
    ...(leaves === 'condition' ? ['It leaves a condition.'] : []),
  ];
}
