import type { Source, WorkingLine } from '#working';
import { chainBreaking, chainWorking } from '../../tables/chain.read-2026-11.ts';
import { ropeBreaking, wetNylonShare } from '../../tables/fibre-rope.read-2026-11.ts';
import { liftingShackle, shackleRules, stainlessShackle } from '../../tables/shackle.read-2026-11.ts';
import { aircraftBreaking, wireBreaking } from '../../tables/wire-rope.read-2026-11.ts';
import { bendShare, lowestShare } from './ending.ts';
import { type Factor, factorOf, type Gear, type Use } from './factor.ts';
import { fastened } from './fastened.ts';
import type {
  BlockPart,
  FasteningsPart,
  LashingPart,
  Metal,
  PartOfPath,
  PartState,
  RopePart,
  WirePart,
} from './part.ts';
import { partInWords } from './part-in-words.ts';
import { cellsFor, type PrintedColumn, sizesIn, sourceOf } from './printed.ts';
import { ageOf, type Wear, wearOf } from './wear.ts';

/** A part of a load path with what is known of it. */
export type LoadPart = PartOfPath &
  PartState & {
    /** years it has been in use; null: not known */
    readonly years: number | null;
  };

/** What a part bears where it stands in its path. */
export type PartStrength =
  | {
      readonly kind: 'known';
      /** what it may work at */
      readonly working_N: number;
      /** null: only a working load is known */
      readonly breaking_N: number | null;
      /** what age, wear and its ending leave of new gear, 0 to 1 */
      readonly share: number;
      readonly working: readonly WorkingLine[];
      readonly sources: readonly Source[];
      /** how surely the figure is known: as its least sure source */
      readonly seen: Source['seen'];
    }
  /** it limits nothing by itself: a thimble bears with the eye it lies in */
  | { readonly kind: 'with its eye' }
  | { readonly kind: 'unknown'; readonly because: string; readonly right: string }
  | { readonly kind: 'replace'; readonly because: string; readonly whose: Source };

const unknown = (because: string, right: string): PartStrength => ({ kind: 'unknown', because, right });
const goByMark = 'the figure marked on it or in its maker’s sheet';

const gearOf = (part: PartOfPath): Gear => {
  switch (part.kind) {
    case 'rope':
    case 'lashing':
      return 'rope';
    case 'wire':
    case 'chain':
      return part.kind;
    case 'shackle':
      return part.make === 'lifting' ? 'lifting shackle' : 'fitting';
    default:
      return 'fitting';
  }
};

/** Breaking load of new gear, or a working load where a table prints nothing else. */
interface New {
  readonly force_N: number;
  readonly as: 'working load' | 'breaking load';
  readonly share: number;
  readonly working: readonly WorkingLine[];
  readonly sources: readonly Source[];
}

const asNew = (columns: readonly PrintedColumn[], size_mm: number, as: New['as'], what: string): New | PartStrength => {
  const lowest = cellsFor(columns, size_mm)[0];
  if (!lowest)
    return unknown(
      columns.length === 0
        ? `no table of ours has ${what}`
        : `no table of ours has ${what}: ${sizesIn(columns).join(', ')} mm are there, and nothing is interpolated`,
      goByMark,
    );
  const source = sourceOf(lowest);
  return {
    force_N: lowest.force_N,
    as,
    share: 1,
    working: [
      {
        symbol: as === 'working load' ? 'W new' : 'F new',
        meaning: `${as} of new ${what}, the lowest printed`,
        value: lowest.force_N / 1000,
        unit: 'kN',
        formula: source.title,
      },
    ],
    sources: [source],
  };
};

const share = (
  symbol: string,
  meaning: string,
  k: number,
  source: Source,
): Pick<New, 'share' | 'working' | 'sources'> => ({
  share: k,
  working: [{ symbol, meaning, value: 100 * k, unit: '%', formula: source.title }],
  sources: [source],
});

const taken = (from: New, by: Pick<New, 'share' | 'working' | 'sources'>): New => ({
  ...from,
  share: from.share * by.share,
  working: [...from.working, ...by.working],
  sources: [...from.sources, ...by.sources],
});

const wetNylon: Source = { title: 'seamanship notes: wet nylon 80 % of dry', seen: 'read second-hand' };
const legs: Source = {
  title: 'its legs share unevenly and its knot takes its part: half of all of them is counted',
  seen: 'our assumption',
};
const bends: Source = { title: 'wire-rope handbook table of bends, two copies agree', seen: 'read second-hand' };

function newOf(part: RopePart | LashingPart | WirePart): New | PartStrength {
  const what =
    part.kind === 'lashing' ? `${part.fibre.replaceAll('-', ' ')} rope, ${part.size_mm} mm` : partInWords(part);
  const columns =
    part.kind === 'wire'
      ? (part.make === '316' ? wireBreaking : aircraftBreaking)[part.laid]
      : ropeBreaking[part.fibre];
  const found = asNew(columns, part.size_mm, 'breaking load', what);
  if ('kind' in found || part.kind === 'wire' || part.fibre !== 'nylon') return found;
  return taken(found, share('k wet', 'wet nylon, of dry', wetNylonShare, wetNylon));
}

/** The blocks that a line runs over, beside it in the path. */
const blocksBeside = (parts: readonly LoadPart[], i: number): readonly BlockPart[] =>
  [parts[i - 1], parts[i + 1]].filter((each) => each?.kind === 'block');

/** What a wire keeps over the smallest sheave beside it. */
function bentOver(
  wire: WirePart,
  blocks: readonly BlockPart[],
): Pick<New, 'share' | 'working' | 'sources'> | PartStrength | null {
  if (blocks.length === 0) return null;
  const sheaves = blocks.map(({ sheave_mm }) => sheave_mm);
  if (sheaves.includes(null))
    return unknown('the sheave it runs over is not measured', 'the sheave, across the bottom of its groove');
  const ratio = Math.min(...sheaves.filter((each) => each !== null)) / wire.size_mm;
  const k = bendShare(ratio);
  return k === null
    ? unknown(
        `a sheave of ${ratio.toFixed(1)} times the wire is below every table`,
        'a sheave of 20 times the wire or more',
      )
    : share('k bend', `left over a sheave of ${ratio.toFixed(0)} times the wire`, k, bends);
}

/** Where the ropes and wires stand that an ending ends, passing over a thimble. */
export function linesAt(parts: readonly LoadPart[], i: number): readonly number[] {
  return [-1, 1].flatMap((way) => {
    const near = parts[i + way]?.kind === 'thimble' ? i + 2 * way : i + way;
    return parts[near]?.kind === 'rope' || parts[near]?.kind === 'wire' ? [near] : [];
  });
}

/** A state's years and signs taken from new gear; what is gone comes back as `replace`. */
function worn(part: LoadPart, from: New): New | PartStrength {
  const signs: readonly Wear[] = (part.signs ?? []).map((sign) => wearOf(part, sign));
  const age = ageOf(part, part.years);
  let now = from;
  for (const { share: k, because, whose } of age === null ? signs : [age, ...signs]) {
    if (k === null) return { kind: 'replace', because, whose };
    now = taken(now, share('k worn', because, k, whose));
  }
  return now;
}

function newAt(parts: readonly LoadPart[], i: number, use: Use): New | PartStrength {
  const part = parts[i]!;
  switch (part.kind) {
    case 'rope':
      return newOf(part);
    case 'wire': {
      const found = newOf(part);
      if ('kind' in found) return found;
      const bent = bentOver(part, blocksBeside(parts, i));
      return bent === null ? found : 'kind' in bent ? bent : taken(found, bent);
    }
    case 'lashing': {
      const found = newOf(part);
      if ('kind' in found) return found;
      const all = { ...found, force_N: found.force_N * 2 * part.passes };
      return taken(all, share('k legs', `of ${2 * part.passes} legs together`, 0.5, legs));
    }
    case 'chain': {
      if (part.grade === null)
        return unknown('chain without a mark', 'the grade stamped on it; on the road it is taken for grade 30');
      if (part.metal === 'stainless') return unknown('no table of ours has stainless chain', goByMark);
      const metric = part.grade === '30' || part.grade === '40';
      const found = metric
        ? asNew(chainBreaking[part.grade], part.size_mm, 'breaking load', partInWords(part))
        : asNew(chainWorking[part.grade], part.size_mm, 'working load', partInWords(part));
      const inches =
        part.grade === '30' ? asNew(chainWorking['30'], part.size_mm, 'working load', partInWords(part)) : found;
      return 'kind' in found ? inches : found;
    }
    case 'shackle':
      if (part.make === 'galvanised') return unknown('a galvanised shackle without a mark', goByMark);
      return part.make === 'lifting'
        ? asNew(liftingShackle, part.size_mm, 'working load', partInWords(part))
        : asNew(stainlessShackle, part.size_mm, 'breaking load', partInWords(part));
    case 'ending':
      return endingAt(parts, i, use);
    case 'pin':
      return pinBears(part.size_mm, part.metal);
    case 'rigging screw':
      return screwBears(part.thread_mm, part.metal);
    case 'fastenings':
      return fastenedBy(part, use);
    case 'block':
    case 'fitting':
    case 'winch':
      return unknown('nothing is marked on it', goByMark);
    case 'thimble':
      return { kind: 'with its eye' };
    case 'hand':
      return handHolds(part.how);
  }
}

/** Least tensile strength of bar, N/mm²: 316 as EN 10088-3 has it, mild steel as EN 10025 has it; recalled. */
const bar_N_mm2: Readonly<Partial<Record<Metal, number>>> = { stainless: 500, galvanised: 360 };
const ofBar: Source = {
  title: 'least tensile strength of bar, EN 10088-3 (316) and EN 10025 (mild steel)',
  seen: 'recalled',
};

const fromBar = (area_mm2: number, metal: Metal, how: string): New | PartStrength => {
  const strength = bar_N_mm2[metal];
  if (strength === undefined) return unknown(`no strength of ${metal} bar is known here`, goByMark);
  const force_N = area_mm2 * strength;
  return {
    force_N,
    as: 'breaking load',
    share: 1,
    working: [
      { symbol: 'F new', meaning: `breaking load, ${how}`, value: force_N / 1000, unit: 'kN', formula: ofBar.title },
    ],
    sources: [ofBar],
  };
};

/** A pin held at both ends is cut through twice; shear takes 0.6 of the tensile strength. Bending in loose holes is left out. */
const pinBears = (size_mm: number, metal: Metal) =>
  fromBar(2 * (Math.PI / 4) * size_mm ** 2 * 0.6, metal, '2·(π/4)·d²·0.6·R, cut at both ends');

/** Coarse pitches of metric threads, mm (ISO 261, recalled). */
const pitch_mm: Readonly<Record<number, number>> = { 4: 0.7, 5: 0.8, 6: 1, 8: 1.25, 10: 1.5, 12: 1.75, 14: 2, 16: 2 };

const screwBears = (thread_mm: number, metal: Metal): New | PartStrength => {
  const pitch = pitch_mm[thread_mm];
  if (pitch === undefined) return unknown(`no coarse thread of M${thread_mm} is known here`, goByMark);
  return fromBar(
    (Math.PI / 4) * (thread_mm - 0.9382 * pitch) ** 2,
    metal,
    'stress area of its thread, (π/4)·(d − 0.9382·p)²·R',
  );
};

/** Fastenings give in a way that may have a factor of its own: then it is a working load that is known. */
function fastenedBy(part: FasteningsPart, use: Use): New | PartStrength {
  const found = fastened(part, factorOf('fitting', use).factor);
  if (found.kind === 'unknown') return found;
  const { first, all_N, sources } = found;
  const own = first.ownFactor;
  const force_N = own === null ? all_N : all_N / own;
  return {
    force_N,
    as: own === null ? 'breaking load' : 'working load',
    share: 1,
    working: [
      {
        symbol: own === null ? 'F new' : 'W new',
        meaning: `${first.way}, all ${part.count} together${own === null ? '' : `, over ${own.toFixed(1)}`}`,
        value: force_N / 1000,
        unit: 'kN',
        formula: `${part.count}·(${first.formula})`,
      },
    ],
    sources,
  };
}

const hand: Source = {
  title: 'a person pulls 200 N on a fall and 120 N at a crank, again and again',
  seen: 'our assumption',
};
const handHolds = (how: 'pull' | 'crank'): New => {
  const force_N = how === 'pull' ? 200 : 120;
  return {
    force_N,
    as: 'working load',
    share: 1,
    working: [
      { symbol: 'W new', meaning: 'what a hand holds', value: force_N / 1000, unit: 'kN', formula: hand.title },
    ],
    sources: [hand],
  };
};

/** An ending bears its share of the line beside it, as worn as that line is. */
function endingAt(parts: readonly LoadPart[], i: number, use: Use): New | PartStrength {
  const part = parts[i]!;
  if (part.kind !== 'ending') throw new RangeError(`part ${i} is no ending but ${part.kind}`);
  const lines = linesAt(parts, i);
  if (lines.length === 0)
    return unknown('no rope or wire stands beside it', 'the rope or wire it ends, next to it in the path');
  let weakest: New | null = null;
  for (const line of lines) {
    const found = strengthBeforeFactor(parts, line, use);
    if ('kind' in found) return found.kind === 'replace' ? found : unknown('the line it ends is unknown', goByMark);
    if (found.as === 'working load')
      return unknown('of the line it ends only a working load is known', 'its breaking load');
    if (weakest === null || found.force_N * found.share < weakest.force_N * weakest.share) weakest = found;
  }
  const { share_pct, source, seen } = lowestShare(part.ending);
  return taken(weakest!, share('k end', `left at the ${partInWords(part)}`, share_pct / 100, { title: source, seen }));
}

function strengthBeforeFactor(parts: readonly LoadPart[], i: number, use: Use): New | PartStrength {
  const part = parts[i]!;
  // a terminal bears what is marked on it only in the line it was made for
  if (part.marked !== null && (part.kind !== 'ending' || linesAt(parts, i).length > 0)) {
    const { force_kN, as, by } = part.marked;
    const source: Source = { title: by.trim() === '' ? 'marked on it' : by, seen: 'read' };
    return worn(part, {
      force_N: force_kN * 1000,
      as,
      share: 1,
      working: [
        {
          symbol: as === 'working load' ? 'W new' : 'F new',
          meaning: `${as}, as marked`,
          value: force_kN,
          unit: 'kN',
          formula: source.title,
        },
      ],
      sources: [source],
    });
  }
  const found = newAt(parts, i, use);
  // what is broken is replaced, whatever it bore when it was new
  if ('kind' in found) {
    const gone = (part.signs ?? []).map((sign) => wearOf(part, sign)).find(({ share: k }) => k === null);
    return gone && found.kind !== 'replace' ? { kind: 'replace', because: gone.because, whose: gone.whose } : found;
  }
  return worn(part, found);
}

/** An ending works as far below breaking as the line it ends. */
function factorAt(parts: readonly LoadPart[], i: number, use: Use): Factor {
  const part = parts[i]!;
  if (part.kind !== 'ending') return factorOf(gearOf(part), use);
  const factors = linesAt(parts, i).map((line) => factorOf(gearOf(parts[line]!), use));
  return factors.reduce((most, each) => (each.factor > most.factor ? each : most), factors[0] ?? factorOf('rope', use));
}

const surest: readonly Source['seen'][] = [
  'read',
  'read second-hand',
  'our derivation',
  'common practice',
  'recalled',
  'our assumption',
];

/**
 * What a part bears where it stands: the strength of new gear, less what its ending, bend, age and wear take, over the
 * factor for what the path is for. A strength marked on the part wins over the tables.
 *
 * @param parts  the path, from what pulls to what holds
 * @param i      which part of it
 */
export function strengthAt(parts: readonly LoadPart[], i: number, use: Use): PartStrength {
  const part = parts[i];
  if (part === undefined) throw new RangeError(`there is no part ${i}: the path has ${parts.length}`);
  const found = strengthBeforeFactor(parts, i, use);
  if ('kind' in found) return found;
  const { force_N, as, share: left, working, sources } = found;
  const seen = surest[Math.max(...sources.map((each) => surest.indexOf(each.seen)))]!;
  if (as === 'working load') {
    const limit_N = force_N * left;
    const breaking_N = part.kind === 'shackle' && part.make === 'lifting' ? limit_N * shackleRules.designFactor : null;
    return { kind: 'known', working_N: limit_N, breaking_N, share: left, working, sources, seen };
  }
  const { factor, whose } = factorAt(parts, i, use);
  return {
    kind: 'known',
    working_N: (force_N * left) / factor,
    breaking_N: force_N * left,
    share: left,
    working: [
      ...working,
      { symbol: 'n', meaning: 'breaking over working load', value: factor, unit: '', formula: whose.title },
    ],
    sources: [...sources, whose],
    seen,
  };
}
