/** Holes, washers and torque of a screw at a glance, and holes through a cored deck. */
import { fasteningQuestions, type ScrewSize, screwNames, sizeCell } from '#loads';
import { type Answer, type Asked, ask, type Fault, figureOf } from '#working';
import { answerTold } from './answer-told.ts';
import { figureSaid } from './circuits-in-words.ts';
import type { WorkingTold } from './circuits-told.ts';

/** A figure of a table; one that is recalled is shown as such. */
export interface TableFigure {
  readonly said: string;
  readonly recalled: boolean;
}

/** A screw’s row: what is drilled for it, and how tight it may be. */
export interface ScrewTold {
  readonly size: ScrewSize;
  readonly through: TableFigure;
  readonly tapped: TableFigure;
  /** null: not printed for this size */
  readonly tappedStainless: TableFigure | null;
  readonly largeWasher: TableFigure;
  /** greased, metal on metal, class 70. [N·m] */
  readonly torque: TableFigure;
  readonly working: readonly WorkingTold[];
  readonly cautions: readonly string[];
}

/** A row for every screw there is. */
export function screwsTold(): readonly ScrewTold[] {
  return screwNames.map((size) => {
    const drill = answered('loads.drill', { size });
    const torque = answered('loads.bolt-torque', { size, through: 'metal' });
    const cell = (column: Parameters<typeof sizeCell>[0]): TableFigure | null => {
      const found = sizeCell(column, size);
      return found && { said: figureSaid(found.value), recalled: found.seen === 'recalled' };
    };
    return {
      size,
      through: cell('clearance medium') ?? missing,
      tapped: cell('tapping') ?? missing,
      tappedStainless: cell('tapping for stainless'),
      largeWasher: cell('washer large') ?? missing,
      torque: { said: figureSaid(numberOf(torque.answer, 'M')), recalled: true },
      working: [
        ...named('Holes', answerTold(drill)),
        ...named('Torque, metal on metal', answerTold(torque)),
        ...named('Torque, through laminate', answerTold(answered('loads.bolt-torque', { size, through: 'laminate' }))),
      ],
      cautions: [...new Set([...drill.answer.cautions, ...torque.answer.cautions])],
    };
  });
}

export interface FilledHolesAsked {
  readonly size: ScrewSize;
  readonly upper_mm: number;
  readonly core_mm: number;
  readonly holes: number;
}

export type FilledHolesTold =
  | { readonly kind: 'refused'; readonly faults: readonly Fault[] }
  | {
      readonly kind: 'told';
      readonly drill_mm: number;
      readonly again_mm: number;
      /** what is done, one after another */
      readonly steps: readonly string[];
      readonly working: readonly WorkingTold[];
      readonly cautions: readonly string[];
    };

/** Holes drilled too big through skin and core, filled and drilled again. */
export function filledHolesTold({ size, upper_mm, core_mm, holes }: FilledHolesAsked): FilledHolesTold {
  const told = put('loads.filled-hole', { size, upper: upper_mm, core: core_mm, holes });
  if (told.kind === 'refused') return { kind: 'refused', faults: told.faults };
  const { answer } = told;
  const [drill_mm, again_mm] = [numberOf(answer, 'D'), numberOf(answer, 'd')];
  return {
    kind: 'told',
    drill_mm,
    again_mm,
    steps: [
      `Drill ${holes === 1 ? 'the hole' : `all ${holes}`} ${figureSaid(drill_mm)} mm through the upper skin and the core; the lower skin stays whole.`,
      'Tape below. Wet the walls with unthickened epoxy, and let it draw in.',
      `Mix ${figureSaid(numberOf(answer, 'V'))} ml of thickened epoxy, losses counted, and fill from the bottom, without bubbles.`,
      `When it is hard, drill again, ${figureSaid(again_mm)} mm, through filling and lower skin.`,
      `Countersink a little for the sealant, and bed it. The plug bears ${figureSaid(numberOf(answer, 'F'))} kN under the head.`,
    ],
    working: answerTold(told),
    cautions: answer.cautions,
  };
}

const missing: TableFigure = { said: 'not known', recalled: false };
const named = (title: string, parts: readonly WorkingTold[]): readonly WorkingTold[] =>
  parts.map((part) => ({ ...part, title: `${title}: ${part.title.charAt(0).toLowerCase()}${part.title.slice(1)}` }));

function put(id: string, given: Readonly<Record<string, unknown>>): Asked {
  const question = fasteningQuestions().find((each) => each.id === id);
  if (!question) throw new RangeError(`there is no question ${id}`);
  return ask(question, given);
}

/** An answer to what is always right to ask. @throws RangeError when it is refused all the same */
function answered(id: string, given: Readonly<Record<string, unknown>>): Extract<Asked, { kind: 'answered' }> {
  const told = put(id, given);
  if (told.kind === 'refused') throw new RangeError(`${id} refused ${JSON.stringify(given)}`);
  return told;
}

/** A figure of the answer that is a number. @throws RangeError where it has none */
function numberOf(answer: Answer, symbol: string): number {
  const value = figureOf(answer, symbol)?.value;
  if (typeof value !== 'number') throw new RangeError(`the answer has no number ${symbol}`);
  return value;
}
