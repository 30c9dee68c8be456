/** A rode in an anchorage: what pulls, how it lies, what to veer, in sentences with their numbers. */
import type { AnchorageRecord, Boat, Book, LoadCaseRecord, LoadPathRecord, RodeRecord } from '#boat-book';
import {
  chainPiece,
  groundQuestions,
  type RodePiece,
  type RodePoint,
  rodeLines,
  rodeLying,
  ropePiece,
  ropeSizes,
  strengthQuestions,
  veered,
} from '#loads';
import { type Asked, ask, type Fault, figureOf } from '#working';
import { figureSaid, sentence } from './circuits-in-words.ts';
import {
  anchorFigure,
  type Bearer,
  bowFigure,
  circleFigure,
  degrees,
  fibreInWords,
  type GroundFigure,
  type GroundPlaces,
  holdsFigure,
  kN,
  loadFigure,
  numberOf,
  rodeLength_m,
  seaFigure,
  strengthFigures,
  underFigure,
  veerFigure,
} from './ground-figures.ts';
import type { ThingToGet } from './thing-to-get.ts';

/** A rode that lies, for a drawing to scale: metres from the anchor, up from the seabed. */
export interface GroundDrawing {
  /** of each piece, from the anchor up, at high water and at low */
  readonly high: readonly (readonly RodePoint[])[];
  readonly low: readonly (readonly RodePoint[])[];
  /** what each piece is, in the same order */
  readonly pieces: readonly { readonly kind: 'chain' | 'rope'; readonly words: string }[];
  readonly now_m: number;
  readonly high_m: number;
  readonly low_m: number;
  readonly bow_m: number;
  readonly angle_deg: number;
}

export interface GroundTold {
  readonly kind: 'told';
  /** whether it keeps within the angle and new rope and chain within their working loads; a rode that does not is a danger */
  readonly holds: boolean;
  readonly verdict: string;
  /** what is out. [m] */
  readonly out_m: number;
  readonly figures: readonly GroundFigure[];
  /** what else there is to say against it */
  readonly against: readonly string[];
  readonly drawing: GroundDrawing;
  /** from the anchor to her stern at low water: with this load, and with the rode drawn straight. [m] */
  readonly circle: { readonly lying_m: number; readonly taut_m: number };
  /** the pull in the rode at the bow, as a load case of its load path */
  readonly loadCase: Omit<LoadCaseRecord, 'id'>;
  /** the rope that would be long and strong enough; null: hers is, or none would be */
  readonly toGet: ThingToGet | null;
  readonly cautions: readonly string[];
}

export type GroundTelling = GroundTold | ({ readonly kind: 'cannot' } & Fault);

/** Of a sailing boat by her sizes: hull and cabin from ahead, the mast, and as much again as two hands for what is rigged. Our assumption. */
export function assumedWindage_m2({ beam_m, freeboard_m, cabin, mastHeight_m }: Boat): number {
  const hull_m2 = 0.9 * beam_m * (freeboard_m + (cabin ? 0.4 : 0));
  // a spar of 90 mm, and stays and halyards that are together as broad as 20 mm
  return Math.round(10 * (hull_m2 + mastHeight_m * (0.09 + 0.02))) / 10;
}

/**
 * A rode in an anchorage, told.
 *
 * @param out_m  what is out, from the anchor; null: as much as it takes, in whole metres, or all there is
 */
export function groundTold(
  { boat, loadPaths }: Pick<Book, 'boat' | 'loadPaths'>,
  rode: RodeRecord,
  anchorage: AnchorageRecord,
  out_m: number | null,
): GroundTelling {
  const asked = (id: string, given: Readonly<Record<string, string | number>>) =>
    ask([...groundQuestions(), ...strengthQuestions()].find((each) => each.id === id)!, given);
  const pull = asked('loads.bow-load', {
    wind: anchorage.wind_kn,
    length: boat.length_m,
    beam: boat.beam_m,
    windage: rode.windage_m2,
    current: anchorage.current_kn,
    draught: boat.draft_m,
    below: rode.below_m2,
  });
  if (pull.kind === 'refused') return { kind: 'cannot', ...pull.faults[0]! };
  const load_N = numberOf(pull.answer, 'F');
  const shared = {
    load: load_N,
    depth: anchorage.depth_m,
    rise: anchorage.rise_m,
    fall: anchorage.fall_m,
    bow: rode.bow_m,
    boat: boat.length_m,
    limit: rode.limit_deg,
  };
  const veer = asked('loads.rode-to-veer', { ...shared, ...gearOf(rode, rodeLength_m(rode)) });
  if (veer.kind === 'refused') return { kind: 'cannot', ...veer.faults[0]! };
  const all_m = rodeLength_m(rode);
  const takes_m = figureOf(veer.answer, 'L')?.value;
  const enough_m = typeof takes_m === 'number' ? Math.min(all_m, Math.ceil(takes_m - 1e-6)) : null;
  const is_m = Math.min(all_m, out_m ?? enough_m ?? all_m);
  const lying = asked('loads.rode', { ...shared, ...gearOf(rode, is_m) });
  if (lying.kind === 'refused') return { kind: 'cannot', ...lying.faults[0]! };
  const drawing = drawingOf(rode, anchorage, load_N, is_m);
  if (lying.answer.kind === 'truth' || drawing === null)
    return { kind: 'cannot', where: 'rope', wrong: floatsInWords, right: 'take rope that sinks, or more chain' };
  const answer = lying.answer;
  const angle_deg = numberOf(answer, 'α');
  const bearers = bearersOf(asked, rode, is_m);
  const atBow_N = numberOf(answer, 'T bow');
  const within = angle_deg <= rode.limit_deg + 1e-6;
  const wanted_m = figureOf(veer.answer, 'L wanted')?.value;
  const places = { boat, rode, anchorage, is_m, enough_m, within, angle_deg, bearers, atBow_N };
  return {
    kind: 'told',
    holds: within && bearers.every(({ working_N }) => atBow_N <= working_N),
    verdict: verdictOf(places, wanted_m),
    out_m: is_m,
    figures: [
      loadFigure(pull, load_N, boat),
      veerFigure(places, veer, wanted_m),
      anchorFigure(places, lying),
      bowFigure(places, lying),
      ...strengthFigures(places),
      holdsFigure(places, lying),
      seaFigure(lying),
      circleFigure(lying),
      underFigure(places),
    ],
    against: [...againstOf(places), ...disagreements(rode, loadPaths[rode.path ?? ''])],
    drawing,
    circle: { lying_m: numberOf(answer, 'R'), taut_m: numberOf(answer, 'R taut') },
    loadCase: {
      name: `At anchor in ${figureSaid(anchorage.wind_kn)} kn`,
      force_N: Math.round(atBow_N),
      wind_kn: anchorage.wind_kn,
      from: `worked out under Ground tackle: ${figureSaid(is_m)} m out in ${figureSaid(anchorage.depth_m)} m, ${figureSaid(anchorage.current_kn)} kn of current`,
    },
    toGet: ropeToGet(asked, shared, rode, atBow_N),
    cautions: [...new Set([...answer.cautions, ...pull.answer.cautions])],
  };
}

/** Chain without a mark is taken for the weakest sold. */
const unmarkedGrade = '30';

function bearersOf(
  asked: (id: string, given: Readonly<Record<string, string | number>>) => Asked,
  { chain, rope }: RodeRecord,
  out_m: number,
): readonly Bearer[] {
  const use = 'ground-tackle';
  const gear = [
    ...(rope === null || out_m <= (chain?.length_m ?? 0)
      ? []
      : [
          {
            what: `${rope.size_mm} mm ${fibreInWords[rope.fibre]}, new and wet`,
            answered: asked('loads.rope', { fibre: rope.fibre, size: rope.size_mm, use }),
          },
        ]),
    ...(chain === null
      ? []
      : [
          {
            what: `${chain.size_mm} mm chain, new, taken for grade ${unmarkedGrade}`,
            answered: asked('loads.chain', { grade: unmarkedGrade, size: chain.size_mm, use }),
          },
        ]),
  ];
  return gear.flatMap(({ what, answered }) =>
    answered.kind === 'answered' && answered.answer.kind === 'found'
      ? [{ what, working_N: 1000 * numberOf(answered.answer, 'W'), asked: answered }]
      : [],
  );
}

const floatsInWords = 'the rope floats up to the surface at so light a pull';

/** The fields of a rode with so much of it out, chain first. */
function gearOf({ chain, rope }: RodeRecord, out_m: number): Readonly<Record<string, string | number>> {
  const chain_m = Math.min(chain?.length_m ?? 0, out_m);
  const rope_m = Math.min(rope?.length_m ?? 0, Math.max(0, out_m - chain_m));
  return {
    chain: chain === null || chain_m === 0 ? 'none' : String(chain.size_mm),
    'chain-length': chain_m,
    rope: rope === null || rope_m === 0 ? 'none' : rope.fibre,
    ...(rope === null ? {} : { 'rope-size': String(rope.size_mm) }),
    'rope-length': rope_m,
  };
}

function drawingOf(rode: RodeRecord, anchorage: AnchorageRecord, load_N: number, out_m: number): GroundDrawing | null {
  const { chain, rope } = rode;
  const all: readonly { readonly piece: RodePiece; readonly kind: 'chain' | 'rope' }[] = [
    ...(chain === null ? [] : [{ piece: chainPiece(chain), kind: 'chain' as const }]),
    ...(rope === null ? [] : [{ piece: ropePiece(rope), kind: 'rope' as const }]),
  ];
  const out = veered(
    all.map(({ piece }) => piece),
    out_m,
  );
  const pieces = out.filter(({ length_m }) => length_m > 0);
  const now_m = anchorage.depth_m;
  const [high_m, low_m] = [now_m + anchorage.rise_m, now_m - anchorage.fall_m];
  const linesAt = (water_m: number) => {
    const lies = { pieces, load_N, height_m: water_m + rode.bow_m };
    const lying = rodeLying(lies);
    return lying.kind === 'lies' ? { lines: rodeLines(lies, lying, 24), angle_deg: lying.angle_deg } : null;
  };
  const [high, low] = [linesAt(high_m), linesAt(low_m)];
  if (high === null || low === null) return null;
  return {
    high: high.lines,
    low: low.lines,
    pieces: all.slice(0, pieces.length).map(({ kind }, n) => ({
      kind,
      words: `${figureSaid(pieces[n]!.length_m)} m ${kind}`,
    })),
    now_m,
    high_m,
    low_m,
    bow_m: rode.bow_m,
    angle_deg: high.angle_deg,
  };
}

function verdictOf(
  { rode, anchorage, is_m, enough_m, within, angle_deg, bearers, atBow_N }: GroundPlaces,
  wanted_m: unknown,
): string {
  const overload = bearers.find(({ working_N }) => atBow_N > working_N);
  const wind = `${figureSaid(anchorage.wind_kn)} kn`;
  const out = `${figureSaid(is_m)} m`;
  if (enough_m === null)
    return `All ${figureSaid(rodeLength_m(rode))} m is too little in ${wind}: the anchor is pulled ${degrees(angle_deg)} up, and ${degrees(rode.limit_deg)} is as much as you trust it with. ${
      typeof wanted_m === 'number' ? `It takes ${Math.ceil(wanted_m)} m.` : 'No length keeps it there.'
    }`;
  if (!within)
    return `${out} out is too little in ${wind}: the anchor is pulled ${degrees(angle_deg)} up. Veer ${enough_m} m.`;
  if (overload !== undefined)
    return `${out} out keeps within ${degrees(rode.limit_deg)} in ${wind}, but pulls ${kN(atBow_N)}, and ${overload.what}, may work at ${kN(overload.working_N)}.`;
  return is_m > enough_m
    ? `${out} out holds within ${degrees(rode.limit_deg)} in ${wind}; ${enough_m} m would.`
    : `Veer ${enough_m} m: that holds within ${degrees(rode.limit_deg)} in ${wind}.`;
}

function againstOf({ boat, rode, anchorage }: GroundPlaces): readonly string[] {
  const water_m = anchorage.depth_m - anchorage.fall_m;
  return [
    ...(water_m <= boat.draft_m
      ? [
          sentence(
            `At low water there is ${figureSaid(water_m)} m and she draws ${figureSaid(boat.draft_m)} m: she takes the ground`,
          ),
        ]
      : []),
    ...(rode.chain === null ? ['No chain at the anchor: rope chafes through on stones and shells.'] : []),
    ...(rode.rope?.fibre === 'polypropylene'
      ? ['Polypropylene floats: slack, it lies where a propeller cuts it.']
      : []),
  ];
}

/** Where its load path has chain or rope of another size or fibre: one of the two is not what lies in the locker. */
function disagreements({ chain, rope }: RodeRecord, path: LoadPathRecord | undefined): readonly string[] {
  const other = (here: string | null, there: readonly string[]) =>
    here !== null && there.length > 0 && !there.includes(here)
      ? [`Here it has ${here}, its load path ${there.join(' and ')}: measure, and change the one that is wrong.`]
      : [];
  const parts = path?.parts ?? [];
  return [
    ...other(
      chain && `${chain.size_mm} mm chain`,
      parts.flatMap((part) => (part.kind === 'chain' ? [`${part.size_mm} mm chain`] : [])),
    ),
    ...other(
      rope && `${rope.size_mm} mm ${fibreInWords[rope.fibre]}`,
      parts.flatMap((part) =>
        part.kind === 'rope'
          ? [
              `${part.size_mm} mm ${part.fibre === 'polyethylene-braid' ? 'braided polyethylene' : fibreInWords[part.fibre]}`,
            ]
          : [],
      ),
    ),
  ];
}

/** The thinnest rope of the same fibre, no thinner than hers, that may work at the pull, as long as it then takes; null: hers does, or none. */
function ropeToGet(
  asked: (id: string, given: Readonly<Record<string, string | number>>) => Asked,
  shared: Readonly<Record<string, number>>,
  rode: RodeRecord,
  atBow_N: number,
): ThingToGet | null {
  if (rode.rope === null) return null;
  const { rope } = rode;
  const chain_m = rode.chain?.length_m ?? 0;
  for (const size_mm of ropeSizes.filter((each) => each >= rope.size_mm)) {
    const borne = asked('loads.rope', { fibre: rope.fibre, size: size_mm, use: 'ground-tackle' });
    if (borne.kind === 'refused' || borne.answer.kind === 'truth') continue;
    if (1000 * numberOf(borne.answer, 'W') < atBow_N) continue;
    const asIf = { ...rode, rope: { ...rope, size_mm } };
    const veer = asked('loads.rode-to-veer', { ...shared, ...gearOf(asIf, rodeLength_m(rode)) });
    if (veer.kind === 'refused') return null;
    const takes_m = figureOf(veer.answer, 'L')?.value ?? figureOf(veer.answer, 'L wanted')?.value;
    if (typeof takes_m !== 'number') return null;
    const length_m = Math.max(rope.length_m, Math.ceil(takes_m - chain_m));
    if (size_mm === rope.size_mm && length_m <= rope.length_m) return null;
    return {
      name: `Rope, ${fibreInWords[rope.fibre]}, ${size_mm} mm`,
      amount: length_m,
      unit: 'm',
      note: `For ${rode.name}, ${figureSaid(length_m)} m in one length: hers is ${rope.size_mm} mm, ${figureSaid(rope.length_m)} m. A joint is one more part that gives.`,
    };
  }
  return null;
}
