/** What wire and tackle a board of another mass needs, and the job of fitting them. */
import type { BoardHoistRecord, OperationFields } from '#boat-book';
import { type HoistThatDoes, hoistFigures, hoistThatDoes, type WholeHoist } from '#loads';
import { figureSaid } from './circuits-in-words.ts';
import { cannotSaid, forceSaid, inHand, lineSaid, placeSaid, sentenceOf, tackleSaid } from './hoist-in-words.ts';
import { massOf_kg, wholeHoist, withMass } from './hoist-of-book.ts';
import { shortOf, verdictOf } from './hoist-told.ts';
import { stepTaking, type ThingTaken, type ThingToGet } from './thing-to-get.ts';

/** What a board of another mass asks as she is rove, and what would do; on the trailer, where it weighs most. */
export type HoistNeedsTold =
  | {
      readonly kind: 'found';
      /** as she is rove now, in air and afloat */
      readonly asIs: readonly string[];
      readonly asIsDoes: boolean;
      /** what does it, in sentences */
      readonly needs: readonly string[];
      readonly record: BoardHoistRecord;
      /** what is not on her now */
      readonly toGet: readonly ThingToGet[];
    }
  | { readonly kind: 'none'; readonly asIs: readonly string[]; readonly why: string };

export function hoistNeedsTold(record: BoardHoistRecord, mass_kg: number): HoistNeedsTold {
  const heavier = withMass(record, mass_kg);
  const asIs = (['air', 'sea'] as const).map((where) => {
    const figures = hoistFigures(wholeHoist(heavier, where));
    const place = where === 'air' ? 'On the trailer' : 'Afloat';
    if (figures.kind !== 'figures') return `${place}: ${cannotSaid(figures).wrong}`;
    return `${place}: ${verdictOf(figures, inHand(record.winch), shortOf(figures))}`;
  });
  const inAir = hoistFigures(wholeHoist(heavier, 'air'));
  const found = hoistThatDoes(wholeHoist(heavier, 'air'));
  if (found.kind !== 'does') return { kind: 'none', asIs, why: whyNone(found) };
  const does = recordOf(heavier, found.hoist);
  const { hand, handLimit_N, wire, cord, travel } = found.figures;
  return {
    kind: 'found',
    asIs,
    asIsDoes: inAir.kind === 'figures' && shortOf(inAir).length === 0,
    needs: [
      `${sentenceOf(lineSaid(does.wire))} It bears ${wire.times === null ? 'it' : `${figureSaid(Number(wire.times.toFixed(1)))} times the ${forceSaid(wire.most_N)} that come on it`}.`,
      ...(does.tackles.length === 0 ? [] : does.tackles.map((tackle) => sentenceOf(tackleSaid(tackle)))),
      ...(does.cord && cord
        ? [
            `${sentenceOf(lineSaid(does.cord))} It bears ${cord.times === null ? 'it' : `${figureSaid(Number(cord.times.toFixed(1)))} times what comes on it`}.`,
          ]
        : []),
      `On the ${inHand(record.winch)} then ${forceSaid(hand.hoisting.force_N)} at the hardest, ${placeSaid(hand.hoisting)}, of ${forceSaid(handLimit_N)}; ${figureSaid(Number(travel.toPull.line_m.toFixed(1)))} m to pull.`,
    ],
    record: does,
    toGet: toGetFor(record, does, travel.toPull.line_m),
  };
}

function whyNone(found: Exclude<HoistThatDoes, { readonly kind: 'does' }>): string {
  if (found.kind !== 'none does') {
    const { wrong, right } = cannotSaid(found);
    return `${wrong} ${right}`;
  }
  return {
    wire: 'No wire of our tables bears it over these sheaves: bigger sheaves, another kind of wire, or a rigger.',
    cord: 'No cord of our tables bears it: a rigger decides.',
    hand: 'Not with six parts either: a winch of more gear, a second tackle, or a second person.',
  }[found.short];
}

function recordOf(record: BoardHoistRecord, { wire, tackles, cord }: WholeHoist): BoardHoistRecord {
  return { ...record, wire: { ...record.wire, size_mm: wire.size_mm }, tackles, cord };
}

/** Spare beyond what is pulled: to make it off, to hold, and turns that stay on a drum. Our judgement. [m] */
const spare_m = 1;

function toGetFor(before: BoardHoistRecord, after: BoardHoistRecord, line_m: number): ThingToGet[] {
  const changed = after.wire.size_mm !== before.wire.size_mm;
  const note = 'For the board’s hoist. Measure the old one before you cut.';
  return [
    ...(changed
      ? [{ name: lineSaid(after.wire), amount: null, unit: 'm', note: `As long as the old one. ${note}` } as const]
      : []),
    ...(after.cord && after.cord.size_mm !== before.cord?.size_mm
      ? [{ name: lineSaid(after.cord), amount: Math.ceil((line_m + spare_m) * 2) / 2, unit: 'm', note } as const]
      : []),
    ...after.tackles
      .filter((tackle, n) => JSON.stringify(tackle) !== JSON.stringify(before.tackles[n]))
      .map((tackle) => ({
        name: `Blocks for ${tackleSaid(tackle)}`,
        amount: 1,
        unit: 'set' as const,
        note: after.cord ? `Sheaves for ${figureSaid(after.cord.size_mm)} mm cord, 8 times as wide or more.` : '',
      })),
  ];
}

/** The job of fitting what a board needs. Its minutes are our guess, for the keeper to change. */
export function hoistJob(
  record: BoardHoistRecord,
  needs: Extract<HoistNeedsTold, { readonly kind: 'found' }>,
  taken: readonly ThingTaken[],
): OperationFields<'addJob'> {
  return {
    title: `Fit wire and tackle for a board of ${figureSaid(Number(massOf_kg(needs.record.plate).toFixed(1)))} kg`,
    why: `${needs.asIs[0] ?? ''} ${needs.needs.join(' ')}`,
    consequence: needs.asIsDoes ? 'comfort' : 'danger',
    zone: record.zone,
    steps: [
      {
        title: 'Hold the board up by a strop and a pin, then unreeve',
        minutes: { low: 15, likely: 30, high: 60 },
        hands: 1,
        cautions: ['Nobody under the board, no hand in the case, until strop and pin both hold it.'],
      },
      {
        title: 'Reeve wire and tackle, make off the ends',
        minutes: { low: 30, likely: 60, high: 120 },
        hands: 1,
        ...stepTaking(taken),
        cautions: ['Wire ends cut hands: gloves, and tape where you cut.'],
      },
      {
        title: 'Hoist and lower it all the way, and weigh the pull where it is hardest',
        minutes: { low: 10, likely: 15, high: 30 },
        hands: 1,
        cautions: ['Strop left slack under it on the first hoist. Nobody in line with the wire.'],
      },
    ],
  };
}
