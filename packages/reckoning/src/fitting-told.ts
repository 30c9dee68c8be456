/** A fitting under a pull: whether its bolts or screws hold it, what gives first, and what another choice would do. */
import type { Id, OperationFields } from '#boat-book';
import { fasteningQuestions, type PathUse, patternCounts, screwNames } from '#loads';
import { type Answer, type Asked, ask, type Fault, figureOf } from '#working';
import { answerTold } from './answer-told.ts';
import { figureSaid } from './circuits-in-words.ts';
import type { WorkingTold } from './circuits-told.ts';
import { stepTaking, type ThingTaken, type ThingToGet } from './thing-to-get.ts';

/** A fitting as it is asked about. */
export interface FittingAsked {
  readonly name: string;
  /** word of the question for what it holds in */
  readonly base: string;
  readonly by: 'bolt' | 'machine-screw' | 'wood-screw' | 'coach-screw';
  readonly size_mm: number;
  readonly thickness_mm: number;
  readonly washer: 'plain' | 'large';
  /** 0: none. [mm] */
  readonly pad_mm: number;
  readonly pull_N: number;
  /** from straight out, 0, to along the surface, 90. [°] */
  readonly angle_deg: number;
  readonly height_mm: number;
  readonly rows_mm: number;
  readonly count: number;
  readonly use: PathUse;
}

/** Another choice, and what would then be used of what it may bear. */
export interface FittingChange {
  readonly what: string;
  readonly used_pct: number;
  readonly holds: boolean;
}

export type FittingTold =
  | { readonly kind: 'refused'; readonly faults: readonly Fault[] }
  | {
      readonly kind: 'told';
      readonly holds: boolean;
      readonly verdict: string;
      /** what gives first, in the words of the question */
      readonly gives: string;
      readonly lines: readonly string[];
      readonly changes: readonly FittingChange[];
      /** least from one to the next and to an edge. [mm] */
      readonly between_mm: number;
      readonly edge_mm: number;
      readonly working: readonly WorkingTold[];
      readonly cautions: readonly string[];
    };

/** What is told of a fitting; or everything that does not go together. */
export function fittingTold(asked: FittingAsked): FittingTold {
  const answered = put(asked);
  if (answered.kind === 'refused') return { kind: 'refused', faults: answered.faults };
  const { answer } = answered;
  const used_pct = numberOf(answer, 'used');
  const holds = used_pct <= 100;
  const least = figureOf(answer, 'n')?.value;
  const gives = String(figureOf(answer, 'gives')?.value);
  const [between_mm, edge_mm] = [numberOf(answer, 'between'), numberOf(answer, 'edge')];
  return {
    kind: 'told',
    holds,
    verdict: holds
      ? `${fasteningsInWords(asked)} hold it: ${figureSaid(used_pct)} % of what the hardest pulled one may bear.`
      : `${fasteningsInWords(asked)} do not hold it: the hardest pulled one would bear ${figureSaid(used_pct)} % of what it may.`,
    gives,
    lines: [
      `What gives first: ${gives}.`,
      ...(holds
        ? []
        : [typeof least === 'number' ? `${least} of them would hold.` : 'Not even twelve of this size would hold.']),
      `All together may bear ${figureSaid(numberOf(answer, 'pull'))} kN pulled so; ${figureSaid(asked.pull_N / 1000)} kN is asked.`,
      `The hardest pulled one bears ${figureSaid(numberOf(answer, 'out'))} N straight out and ${figureSaid(numberOf(answer, 'along'))} N along the surface.`,
      `They stand ${figureSaid(between_mm)} mm or more from each other and ${figureSaid(edge_mm)} mm or more from an edge, middle to middle.`,
    ],
    changes: changes(asked),
    between_mm,
    edge_mm,
    working: answerTold(answered),
    cautions: answer.cautions,
  };
}

/** `Four M6 bolts`, `6 wood screws of 5 mm`. */
export function fasteningsInWords({ by, size_mm, count }: Pick<FittingAsked, 'by' | 'size_mm' | 'count'>): string {
  const size = figureSaid(size_mm);
  switch (by) {
    case 'bolt':
      return `${count} M${size} bolts`;
    case 'machine-screw':
      return `${count} M${size} machine screws`;
    case 'wood-screw':
      return `${count} screws of ${size} mm`;
    case 'coach-screw':
      return `${count} coach screws of ${size} mm`;
  }
}

/** Bolts or screws of a size, without how many: `M6 bolts`, `5 mm wood screws`. */
function fasteningKind({ by, size_mm }: Pick<FittingAsked, 'by' | 'size_mm'>): string {
  const size = figureSaid(size_mm);
  if (by === 'bolt') return `M${size} bolts`;
  if (by === 'machine-screw') return `M${size} machine screws`;
  return by === 'wood-screw' ? `${size} mm wood screws` : `${size} mm coach screws`;
}

/** What the job of fastening asks to get. */
export function fittingToGet(asked: FittingAsked): ThingToGet {
  const { name, by, count, washer, pad_mm, thickness_mm } = asked;
  const washers = by === 'bolt' ? ` with nuts and ${washer === 'large' ? 'large washers' : 'washers'}` : '';
  return {
    name: `${fasteningKind(asked)}${washers}, A4-70`,
    amount: count,
    unit: '',
    note: `For ${name}: through ${figureSaid(thickness_mm)} mm${pad_mm > 0 ? `, with a pad of ${figureSaid(pad_mm)} mm` : ''}, and the fitting. Measure again before you buy the length.`,
  };
}

/**
 * The job of fastening it so. Its minutes are our guess, for the keeper to change.
 *
 * @param taken  the bolts or screws as they are taken out of the stores
 */
export function fittingJob(asked: FittingAsked, zone: Id | null, taken: ThingTaken): OperationFields<'addJob'> {
  const told = fittingTold(asked);
  const cautions = told.kind === 'told' ? told.cautions.slice(0, 3) : [];
  return {
    title: `Fasten ${asked.name}`,
    why: told.kind === 'told' ? told.verdict : '',
    consequence: 'worsens',
    zone,
    steps: [
      {
        title: `Drill for ${fasteningsInWords(asked)}, dry fit`,
        minutes: { low: 20, likely: 40, high: 90 },
        hands: 1,
        ...stepTaking([taken]),
        cautions,
      },
      {
        title: 'Bed it and draw it up',
        minutes: { low: 20, likely: 40, high: 80 },
        // one holds the head, one turns the nut
        hands: asked.by === 'bolt' ? 2 : 1,
        cautions: ['Nip it up in the sealant, and turn the rest when that has cured.'],
      },
    ],
  };
}

const put = (asked: FittingAsked): Asked =>
  ask(patternQuestion(), {
    pull: asked.pull_N,
    angle: asked.angle_deg,
    height: asked.height_mm,
    rows: asked.rows_mm,
    count: String(asked.count),
    base: asked.base,
    by: asked.by,
    size: asked.size_mm,
    thickness: asked.thickness_mm,
    washer: asked.washer,
    pad: asked.pad_mm,
    use: asked.use,
  });

function patternQuestion() {
  const found = fasteningQuestions().find(({ id }) => id === 'loads.bolt-pattern');
  if (!found) throw new RangeError('there is no question loads.bolt-pattern');
  return found;
}

/** One thing changed at a time: what stays the same stands as it was asked. Choices that do not go together are left out. */
function changes(asked: FittingAsked): readonly FittingChange[] {
  const sizes = screwNames.map((name) => Number(name.slice(1)));
  const threaded = asked.by === 'bolt' || asked.by === 'machine-screw';
  const bigger = threaded ? sizes.find((size) => size > asked.size_mm) : asked.size_mm + 1;
  const smaller = threaded ? sizes.findLast((size) => size < asked.size_mm) : asked.size_mm - 1;
  const more = patternCounts.find((count) => count > asked.count);
  const tried: readonly (readonly [string, Partial<FittingAsked>])[] = [
    ...(bigger === undefined
      ? []
      : [[threaded ? `M${bigger}` : `${figureSaid(bigger)} mm`, { size_mm: bigger }] as const]),
    ...(smaller === undefined
      ? []
      : [[threaded ? `M${smaller}` : `${figureSaid(smaller)} mm`, { size_mm: smaller }] as const]),
    ...(more === undefined ? [] : [[`${more} instead of ${asked.count}`, { count: more }] as const]),
    ...(asked.by === 'bolt' && asked.washer === 'plain' ? [['large washers', { washer: 'large' }] as const] : []),
    ...(asked.by === 'bolt'
      ? [[`a stiff pad ${figureSaid(asked.pad_mm + 10)} mm thick`, { pad_mm: asked.pad_mm + 10 }] as const]
      : []),
    ['rows half as far apart again', { rows_mm: 1.5 * asked.rows_mm }],
  ];
  return tried.flatMap(([what, change]) => {
    const answered = put({ ...asked, ...change });
    if (answered.kind === 'refused') return [];
    const used_pct = numberOf(answered.answer, 'used');
    return [{ what, used_pct, holds: used_pct <= 100 }];
  });
}

/** A figure of the answer that is a number. @throws RangeError where it has none */
function numberOf(answer: Answer, symbol: string): number {
  const value = figureOf(answer, symbol)?.value;
  if (typeof value !== 'number') throw new RangeError(`the answer has no number ${symbol}`);
  return value;
}
