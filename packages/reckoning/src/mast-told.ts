import type { MastRecord } from '#boat-book';
import {
  type MastRaising,
  mastRaising,
  type RaisingPoint,
  rigQuestions,
  type ShroudPoint,
  shroudSlack,
  type Vang,
  type VangForces,
  vangForces,
} from '#loads';
import { showNumber } from '#units';
import { type Asked, ask, type Fault, figureOf } from '#working';
import { answerTold } from './answer-told.ts';
import type { WorkingTold } from './circuits-told.ts';

/** A figure of the rig in words, with how it came about. */
export interface RigPartTold {
  readonly lines: readonly string[];
  readonly working: readonly WorkingTold[];
  readonly cautions: readonly string[];
}

/** A shroud slack by no more than this is called taut enough to hold. [mm] */
const assumedHeld_mm = 20;

/** What raising the mast takes, or why it cannot be raised so. */
export type RaisingTold =
  | { readonly kind: 'refused'; readonly faults: readonly Fault[] }
  | ({
      readonly kind: 'told';
      readonly raising: MastRaising;
      readonly points: readonly RaisingPoint[];
      readonly hardest: RaisingPoint;
    } & RigPartTold);

type Answered = Extract<Asked, { kind: 'answered' }>;
const put = (id: string, fields: Readonly<Record<string, string | number>>): Asked =>
  ask(rigQuestions().find((each) => each.id === id)!, fields);
const figure = ({ answer }: Answered, symbol: string): number => {
  const value = figureOf(answer, symbol)?.value;
  return typeof value === 'number' ? value : Number.NaN;
};
const partTold = (asked: Answered, lines: readonly string[]): RigPartTold => ({
  lines,
  working: answerTold(asked),
  cautions: asked.answer.cautions,
});
const newtons = (value: number) => `${showNumber(10 * Math.round(value / 10), 0)}\u00a0N`;
const deg = (value: number) => `${showNumber(value, 0)}°`;

/** The mast on its way up: every place of it, the worst, the tackle needed. */
export function raisingTold(mast: MastRecord): RaisingTold {
  const { led } = mast;
  const asked = put('loads.mast-raising', {
    mass: mast.mass_kg,
    'mass-at': mast.massAt_m,
    'line-at': mast.lineAt_m,
    by: led?.by ?? 'none',
    ...(led === null
      ? {}
      : { pole: led.length_m, 'heel-ahead': led.heelAhead_m, 'heel-up': led.heelUp_m, lean: led.lean_deg }),
    ...(led !== null && led.spread_m !== null ? { spread: led.spread_m } : {}),
    'bow-ahead': mast.bowAhead_m,
    'bow-up': mast.bowUp_m,
    from: mast.from_deg,
    to: mast.to_deg,
  });
  if (asked.kind === 'refused') return { kind: 'refused', faults: asked.faults };
  const raising = raisingOf(mast);
  const travel = mastRaising(raising);
  if (travel.kind !== 'travel')
    return { kind: 'refused', faults: [{ where: travel.at, wrong: travel.wrong, right: travel.right }] };
  const hardest = travel.points.reduce((most, point) => (point.tackle_N > most.tackle_N ? point : most));
  const parts = figure(asked, 'tackle');
  const lifts = figure(asked, 'lifts');
  return {
    kind: 'told',
    raising,
    points: travel.points,
    hardest,
    ...partTold(usedOf(asked, led), [
      `The pull is hardest with the mast at ${deg(hardest.mast_deg)}: ${newtons(hardest.tackle_N)} ${led === null ? 'in the line to the bow' : 'in the tackle'}.`,
      Number.isNaN(parts)
        ? 'No tackle of eight parts brings that within 200 N at the hand: use a winch, a longer pole, or a second hand.'
        : parts === 1
          ? `One person alone can haul that without a tackle: ${newtons(figure(asked, 'F'))} at the hand.`
          : `A tackle of ${parts} parts brings that to ${newtons(figure(asked, 'F'))} at the hand, with ${showNumber(figure(asked, 'cord'), 1)} m of cord to pull; holding it there takes ${newtons(figure(asked, 'F holding'))}, so make it fast at every pause.`,
      `Forestay or halyard bear ${newtons(figure(asked, 'S'))} at most, the hinge ${newtons(figure(asked, 'P'))}${led === null ? '' : `, ${led.by === 'pole' ? 'the pole' : 'a leg of the A-frame'} ${newtons(figure(asked, 'C'))}`}.`,
      ...(Number.isNaN(lifts)
        ? []
        : [
            `From ${deg(lifts)} on the pole is pulled, no longer pressed: its heel must be pinned, or it lifts off with a jerk.`,
          ]),
    ]),
  };
}

/** An answer without what was taken for sizes that such a lead does not have. */
function usedOf(asked: Answered, led: MastRecord['led']): Answered {
  const unused =
    led === null ? ['pole', 'heel-ahead', 'heel-up', 'lean', 'spread'] : led.by === 'pole' ? ['spread'] : [];
  return { ...asked, assumed: asked.assumed.filter(({ field }) => !unused.includes(field)) };
}

/** The shrouds over the way of the mast. */
export interface SidewaysTold extends RigPartTold {
  /** from here on they hold it sideways; null: they do nowhere before it is upright. Mast above level */
  readonly holdFrom_deg: number | null;
  readonly points: readonly ShroudPoint[];
}

/** The shrouds on the way, and what a lean asks of a line to one side; null: nothing is said of the shrouds. */
export function sidewaysTold(mast: MastRecord): SidewaysTold | null {
  const { shrouds } = mast;
  if (shrouds === null) return null;
  const asked = put('loads.mast-sideways', {
    mass: mast.mass_kg,
    'mass-at': mast.massAt_m,
    'shroud-at': shrouds.at_m,
    'chainplate-ahead': shrouds.ahead_m,
    'chainplate-up': shrouds.up_m,
    out: shrouds.out_m,
    from: mast.from_deg,
  });
  if (asked.kind === 'refused') return null;
  const [slack, short, side] = [figure(asked, 'slack'), figure(asked, 'short'), figure(asked, 'side line')];
  const points = shroudSlack(
    {
      mass_kg: mast.mass_kg,
      massAt_m: mast.massAt_m,
      shroudAt_m: shrouds.at_m,
      chainplate: { ahead_m: shrouds.ahead_m, up_m: shrouds.up_m },
      out_m: shrouds.out_m,
      heel_deg: 0,
    },
    mast.from_deg,
  );
  const lastLoose = points.findLastIndex(({ slack_m }) => 1000 * slack_m > assumedHeld_mm);
  const holdFrom_deg = points[lastLoose + 1]?.mast_deg ?? null;
  return {
    points,
    holdFrom_deg,
    ...partTold(asked, [
      slack > assumedHeld_mm
        ? `Set up with the mast upright, the shrouds hang slack by up to ${showNumber(slack, 0)} mm on the way, at ${deg(figure(asked, 'at'))}: they do not hold it sideways before ${holdFrom_deg === null ? 'it is upright' : deg(holdFrom_deg)}.`
        : 'The shrouds hold it sideways all the way: their chainplates are abreast of the hinge.',
      ...(short > 5
        ? [`They would be ${showNumber(short, 0)} mm too short on the way: ease them by that before it starts.`]
        : []),
      `On a boat that leans 5° a line to one side, at the shrouds’ height and made fast abreast of the hinge, bears ${newtons(side)}.`,
    ]),
  };
}

/** What the vang bears, for its ends where they are and moved; null: nothing is said of it. */
export function vangTold(
  mast: MastRecord,
):
  | (RigPartTold & { readonly vang: Vang; readonly forces: VangForces })
  | { readonly kind: 'refused'; readonly faults: readonly Fault[] }
  | null {
  const { vang } = mast;
  if (vang === null) return null;
  const asked = put('loads.vang', {
    lift: vang.lift_N,
    'lift-at': vang.liftAt_m,
    along: vang.along_m,
    below: vang.below_m,
    aft: vang.aft_m,
  });
  if (asked.kind === 'refused') return { kind: 'refused', faults: asked.faults };
  const of = { boomAlong_m: vang.along_m, below_m: vang.below_m, aft_m: vang.aft_m };
  const [boom, below] = [figure(asked, 'boom less'), figure(asked, 'mast less')];
  return {
    vang: of,
    forces: vangForces(of, vang.lift_N, vang.liftAt_m, 0),
    ...partTold(asked, [
      `The vang bears ${newtons(figure(asked, 'T'))} and thrusts the boom on its gooseneck with ${newtons(figure(asked, 'thrust'))}.`,
      `Its end 100 mm further out along the boom: ${newtons(figure(asked, 'T boom'))} (${showNumber(boom, 0)} %), thrust ${newtons(figure(asked, 'thrust boom'))}.`,
      `Its end 100 mm lower on the mast: ${newtons(figure(asked, 'T mast'))} (${showNumber(below, 0)} %), thrust ${newtons(figure(asked, 'thrust mast'))}.`,
    ]),
  };
}

function raisingOf(mast: MastRecord): MastRaising {
  const { led } = mast;
  return {
    mass_kg: mast.mass_kg,
    massAt_m: mast.massAt_m,
    lineAt_m: mast.lineAt_m,
    pole:
      led === null
        ? { kind: 'none' }
        : {
            kind: led.by,
            length_m: led.length_m,
            heel: { ahead_m: led.heelAhead_m, up_m: led.heelUp_m },
            lean_deg: led.lean_deg,
            // a pole has one heel
            spread_m: led.spread_m ?? 0,
          },
    bow: { ahead_m: mast.bowAhead_m, up_m: mast.bowUp_m },
    from_deg: mast.from_deg,
    to_deg: mast.to_deg,
  };
}
