import { leastSheave } from '../../tables/endings.read-2026-11.ts';
import { type BoardLine, isWire, lineSizes_mm } from './board-line.ts';
import { bearings, type Reeving, rove } from './tackle.ts';
import { type CannotHoist, type HoistFigures, hoistFigures, type WholeHoist } from './whole-hoist.ts';

/** One thing that could be otherwise. */
export type HoistChange =
  | { readonly kind: 'wire' | 'cord'; readonly from_mm: number; readonly to_mm: number }
  | { readonly kind: 'better sheaves' }
  | { readonly kind: 'bigger leads'; readonly to_mm: number }
  | { readonly kind: 'parts'; readonly from: number; readonly to: number }
  | { readonly kind: 'second tackle'; readonly parts: number }
  | { readonly kind: 'longer crank'; readonly to_mm: number };

/** A change with the hoist as it would be, and what it would ask. */
export interface ChangedHoist {
  readonly change: HoistChange;
  readonly hoist: WholeHoist;
  readonly figures: HoistFigures;
}

/** A tackle with so many parts at its moving block, pulled from the standing one; the fewest sheaves that do it. */
export function reevingOf(parts: number): Reeving {
  const movingSheaves = Math.floor(parts / 2);
  return parts % 2 === 0
    ? { movingSheaves, fixedSheaves: movingSheaves, endAt: 'fixed' }
    : { movingSheaves, fixedSheaves: movingSheaves + 1, endAt: 'moving' };
}

/**
 * What each single change would do to a hoist: wire and cord a size up and down, sheaves that run better or are bigger, a
 * part more and a part less, a second tackle on the fall, a longer crank. What could not be hoisted is left out.
 */
export function hoistChanges(hoist: WholeHoist): readonly ChangedHoist[] {
  return [...lineChanges(hoist), ...sheaveChanges(hoist), ...purchaseChanges(hoist)].flatMap(([change, changed]) => {
    const figures = hoistFigures(changed);
    return figures.kind === 'figures' ? [{ change, hoist: changed, figures }] : [];
  });
}

type Made = readonly [HoistChange, WholeHoist];

function lineChanges(hoist: WholeHoist): Made[] {
  const { wire, cord } = hoist;
  return [
    ...beside(wire.of, wire.size_mm).map(
      (to_mm): Made => [
        { kind: 'wire', from_mm: wire.size_mm, to_mm },
        { ...hoist, wire: { ...wire, size_mm: to_mm } },
      ],
    ),
    ...(cord === null ? [] : beside(cord.of, cord.size_mm)).map(
      (to_mm): Made => [
        { kind: 'cord', from_mm: cord!.size_mm, to_mm },
        { ...hoist, cord: { ...cord!, size_mm: to_mm } },
      ],
    ),
  ];
}

/** The sizes next below and above in the tables. [mm] */
function beside(of: BoardLine, size_mm: number): readonly number[] {
  const sizes = lineSizes_mm(of);
  const [below, above] = [sizes.findLast((each) => each < size_mm - 0.05), sizes.find((each) => each > size_mm + 0.05)];
  return [below, above].filter((each) => each !== undefined);
}

function sheaveChanges(hoist: WholeHoist): Made[] {
  const { leads, tackles, wire } = hoist;
  const made: Made[] = [];
  const turned = leads.count > 0 ? [leads.bearing] : [];
  if (
    [...turned, ...tackles.map(({ bearing }) => bearing)].some(
      (bearing) => bearings[bearing].factor > bearings.ball.factor,
    )
  )
    made.push([
      { kind: 'better sheaves' },
      {
        ...hoist,
        leads: { ...leads, bearing: 'ball' },
        tackles: tackles.map((tackle) => ({ ...tackle, bearing: 'ball' })),
      },
    ]);
  const least_mm = (isWire(wire.of) ? leastSheave.wire : leastSheave.rope) * wire.size_mm;
  if (leads.count > 0 && leads.sheave_mm !== null && leads.sheave_mm < least_mm - 1e-9)
    made.push([
      { kind: 'bigger leads', to_mm: least_mm },
      { ...hoist, leads: { ...leads, sheave_mm: least_mm } },
    ]);
  return made;
}

/** Longest crank that is offered. Our judgement. [mm] */
const longCrank_mm = 250;
/** Most parts that are offered in one tackle: beyond it another on the fall does more. Our judgement. */
const mostParts = 6;

function purchaseChanges(hoist: WholeHoist): Made[] {
  const { tackles, winch } = hoist;
  const made: Made[] = [];
  const last = tackles.at(-1);
  const way = last && rove(last);
  if (last && way?.kind === 'rove')
    for (const to of [way.parts - 1, way.parts + 1])
      if (to >= 2 && to <= mostParts)
        made.push([
          { kind: 'parts', from: way.parts, to },
          { ...hoist, tackles: [...tackles.slice(0, -1), { ...reevingOf(to), bearing: last.bearing }] },
        ]);
  if (!last) made.push([{ kind: 'parts', from: 1, to: 2 }, withParts(hoist, 2)]);
  if (last && tackles.length < 3)
    made.push([
      { kind: 'second tackle', parts: 2 },
      { ...hoist, tackles: [...tackles, { ...reevingOf(2), bearing: last.bearing }] },
    ]);
  if (winch && winch.handle_mm < longCrank_mm - 1e-9)
    made.push([
      { kind: 'longer crank', to_mm: longCrank_mm },
      { ...hoist, winch: { ...winch, handle_mm: longCrank_mm } },
    ]);
  return made;
}

/** A hoist with which a board can be hoisted, or what stands in the way. */
export type HoistThatDoes =
  | { readonly kind: 'does'; readonly hoist: WholeHoist; readonly figures: HoistFigures }
  | { readonly kind: 'none does'; readonly short: 'wire' | 'hand' | 'cord' }
  | CannotHoist;

/**
 * What has to be changed for a hoist to do, and no more: wire and cord of their kinds, from the size they are up to the
 * first that bears it with the factor for hoisting, and parts of the last tackle, from those it has up to the fewest with
 * which the hand is asked no more than its limit; sheaves and winch as they are. Sizes that tables do not have are not
 * looked at.
 */
export function hoistThatDoes(hoist: WholeHoist): HoistThatDoes {
  const first = hoistFigures(hoist);
  if (first.kind !== 'figures') return first;
  // wire that is wound on the drum itself changes what the hand feels, so wire and parts are settled together
  const way = hoist.tackles.length > 0 ? rove(hoist.tackles.at(-1)!) : null;
  const now = way?.kind === 'rove' ? way.parts : 1;
  for (let parts = now; parts <= Math.max(now, mostParts); parts++) {
    const rigged = parts === now ? hoist : withParts(hoist, parts);
    const sized = withLines(rigged);
    if (sized.kind === 'none does') {
      if (sized.short === 'wire') return sized;
      continue;
    }
    if (sized.figures.hand.hoisting.force_N <= sized.figures.handLimit_N) return sized;
  }
  return { kind: 'none does', short: 'hand' };
}

/** The last tackle with so many parts; one is put on where there is none. */
function withParts(hoist: WholeHoist, parts: number): WholeHoist {
  const { tackles, leads } = hoist;
  const bearing = tackles.at(-1)?.bearing ?? leads.bearing;
  const before = tackles.slice(0, -1);
  return { ...hoist, tackles: [...before, { ...reevingOf(parts), bearing }], cord: hoist.cord ?? newCord(hoist) };
}
/** Rove where there was no tackle: what a hand grips, or what a drum takes. Our judgement. */
export const newCord = ({ winch }: { readonly winch: object | null }) =>
  ({ of: 'polyester-braid', size_mm: winch === null ? 8 : 6, ending: 'bowline' }) as const;

function withLines(hoist: WholeHoist): Extract<HoistThatDoes, { readonly kind: 'does' | 'none does' }> {
  let now = hoist;
  const least = (which: 'wire' | 'cord', size_mm: number) =>
    which === 'wire' ? size_mm : Math.max(size_mm, leastCord_mm[hoist.winch ? 'wound' : 'pulled']);
  for (const which of ['wire', 'cord'] as const) {
    const line = now[which];
    if (line === null) continue;
    const smallest = lineSizes_mm(line.of)
      .filter((size_mm) => size_mm >= least(which, line.size_mm) - 0.05)
      .map((size_mm): WholeHoist => ({ ...now, [which]: { ...line, size_mm } }))
      .find((tried) => {
        const figures = hoistFigures(tried);
        return figures.kind === 'figures' && figures[which]?.holds === true;
      });
    if (smallest === undefined) return { kind: 'none does', short: which };
    now = smallest;
  }
  const figures = hoistFigures(now);
  return figures.kind === 'figures' ? { kind: 'does', hoist: now, figures } : { kind: 'none does', short: 'hand' };
}
/** Thinner than this no cord is offered: what a hand pulls cuts in, what is wound bites into its own turns. Our judgement. */
const leastCord_mm = { pulled: 8, wound: 5 } as const;
