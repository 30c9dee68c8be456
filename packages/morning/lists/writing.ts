/** Short forms to write the lists in. The words are our own, what they ask is common practice where nothing else is said. */
import type { ComesAfter, LineFailing, MorningLine } from '../src/morning-line.ts';

type Parts = Partial<Pick<MorningLine, 'of' | 'names' | 'cautions' | 'after' | 'from'>>;

export function line(id: string, text: string, fails: LineFailing, parts: Parts = {}): MorningLine {
  return { id, text, of: [], names: null, cautions: [], from: 'common practice', after: [], ...parts, fails };
}

/** What is left to be done, and the recipe of the house that does it. */
function failing(consequence: LineFailing['consequence']) {
  return (title: string, recipe?: string): LineFailing => ({
    title,
    consequence,
    ...(recipe !== undefined && { recipe }),
  });
}
export const danger = failing('danger');
export const unlawful = failing('unlawful');
export const stops = failing('stops-sailing');
export const worsens = failing('worsens');
export const comfort = failing('comfort');

/** Turned round it hurts somebody or sinks her. */
export const always = (before: string, because: string): ComesAfter => ({ line: before, because, holds: 'always' });
/** Turned round it costs time or gear; a keeper may have a reason. */
export const usual = (before: string, because: string): ComesAfter => ({ line: before, because, holds: 'usual' });

export const care = {
  lines:
    'Nothing is worth a try under a power line: a mast conducts, and high voltage jumps. Where your network says nothing else, stay 5 m off.',
  underMast:
    'Never stand, or let anybody stand, under a mast that is going up or down, or beside it where it could fall.',
  winch:
    'Hand and sleeve clear of the winch: a handle that is let go breaks a wrist. Nobody in line with the wire or strap.',
  behind: 'Nobody behind her or between boat and car while either can roll.',
  board: 'No hand or foot under the board while it can fall.',
  running: 'Kill-cord on before it is started; hands, hair and cord clear of the propeller.',
  petrol: 'Petrol outdoors, engine cold, no flame; its vapour lies in the bilge.',
  gas: 'Gas is heavier than air and lies in the bilge: bottle off at the bottle.',
} as const;
