/** Measured runs put to the estimate, and what came of it. */
import { type Band, type BatteryHistory, restCharge, restVolts } from '#battery';
import { markdownTable } from '../markdown-table.ts';
import { dischargeOf, type MeasuredCurve, type MeasuredRun, measuredFiles } from './measured-run.ts';
import { runChoice } from './run-choices.ts';

/** What the estimate says is still to come, from a history down to the cut-off at the current that flows. [Ah] */
export type StillToCome = (history: BatteryHistory, seed: number, amps: number) => Band;

/** What came of one run. */
export interface RunJudged {
  readonly file: string;
  readonly chemistry: MeasuredRun['chemistry'];
  readonly nominal_Ah: number;
  readonly inSeries: number;
  readonly amps: number;
  readonly given_Ah: number;
  readonly to_V: number;
  readonly choices: number;
  /** choices whose band holds the truth; of them, those whose band is no wider than asked */
  readonly inside: number;
  readonly insideNarrow: number;
  /** half the width of the bands, of the nominal capacity: mean and widest. [%] */
  readonly halfWidth_pct: number;
  readonly widest_pct: number;
  /** likely less measured, mean and mean size, of the nominal capacity. [%] */
  readonly off_pct: number;
  readonly offSize_pct: number;
}

/** How a measured rest curve lies in the band of the printed tables. */
export interface CurveJudged {
  readonly file: string;
  readonly chemistry: MeasuredCurve['chemistry'];
  readonly points: number;
  /** points from 3 to 98 % whose volts lie in the band, and whose charge lies in the band read from their volts */
  readonly voltsInside: number;
  readonly chargeInside: number;
  readonly judged: number;
  /** half the width of the charge read back at 30 to 90 %, mean. [%] */
  readonly flatHalfWidth_pct: number;
}

export interface FolderJudged {
  readonly runs: readonly RunJudged[];
  readonly curves: readonly CurveJudged[];
  /** files that give no run to the cut-off, or are not read, with the reason */
  readonly left: readonly { readonly file: string; readonly because: string }[];
}

/** Everything in a folder, `choices` seeded choices of readings for each run. */
export function judgeFolder(folder: string, choices: number, ask: StillToCome): FolderJudged {
  const runs: RunJudged[] = [];
  const curves: CurveJudged[] = [];
  const left: { file: string; because: string }[] = [];
  for (const each of measuredFiles(folder)) {
    if (each.kind === 'skipped') left.push(each);
    else if (each.kind === 'rest curve') curves.push(judgeCurve(each));
    else {
      const judged = judgeRun(each, choices, ask);
      if ('because' in judged) left.push(judged);
      else runs.push(judged);
    }
  }
  return { runs, curves, left };
}

/** One run; or why there is nothing to judge in it. */
export function judgeRun(
  run: MeasuredRun,
  choices: number,
  ask: StillToCome,
): RunJudged | { readonly file: string; readonly because: string } {
  const discharge = dischargeOf(run);
  if ('none' in discharge) return { file: run.file, because: discharge.none };
  let inside = 0;
  let insideNarrow = 0;
  let width = 0;
  let widest = 0;
  let off = 0;
  let offSize = 0;
  for (let seed = 1; seed <= choices; seed++) {
    const { history, stillToCome_Ah, amps } = runChoice(run, discharge, seed);
    const { low, likely, high } = ask(history, seed, amps);
    const halfWidth = (high - low) / 2;
    if (low <= stillToCome_Ah && stillToCome_Ah <= high) {
      inside++;
      if (halfWidth <= (asked.halfWidth_pct / 100) * run.nominal_Ah) insideNarrow++;
    }
    width += halfWidth;
    widest = Math.max(widest, halfWidth);
    off += likely - stillToCome_Ah;
    offSize += Math.abs(likely - stillToCome_Ah);
  }
  const ofNominal_pct = (sum: number) => (100 * sum) / run.nominal_Ah;
  return {
    file: run.file,
    chemistry: run.chemistry,
    nominal_Ah: run.nominal_Ah,
    inSeries: run.inSeries,
    amps: discharge.amps,
    given_Ah: discharge.out_Ah.at(-1)!,
    to_V: discharge.to_V,
    choices,
    inside,
    insideNarrow,
    halfWidth_pct: ofNominal_pct(width / choices),
    widest_pct: ofNominal_pct(widest),
    off_pct: ofNominal_pct(off / choices),
    offSize_pct: ofNominal_pct(offSize / choices),
  };
}

function judgeCurve({ file, chemistry, charge_pct, volts }: MeasuredCurve): CurveJudged {
  let judged = 0;
  let voltsInside = 0;
  let chargeInside = 0;
  let flat = 0;
  let flatWidth = 0;
  for (let i = 0; i < charge_pct.length; i++) {
    const pct = charge_pct[i]!;
    if (pct < 3 || pct > 98) continue;
    judged++;
    const band = restVolts(chemistry, pct, 25);
    if (band.low <= volts[i]! && volts[i]! <= band.high) voltsInside++;
    const back = restCharge(chemistry, volts[i]!, 25);
    if (back.low <= pct && pct <= back.high) chargeInside++;
    if (pct >= 30 && pct <= 90) {
      flat++;
      flatWidth += (back.high - back.low) / 2;
    }
  }
  return {
    file,
    chemistry,
    points: charge_pct.length,
    judged,
    voltsInside,
    chargeInside,
    flatHalfWidth_pct: flatWidth / Math.max(1, flat),
  };
}

const whole = (share: number, of: number) => `${share} of ${of}`;
const one = (value: number) => value.toFixed(1);

/** What was asked of the estimate before it was made: the band holds the truth in 85 of 100, and is no wider than a fifth. */
export const asked = { inside_pct: 85, halfWidth_pct: 20 } as const;

/**
 * Whether a run is as asked: in enough choices the band holds the truth and is no wider than that. The width is asked of lead
 * only: on LiFePO4 the flat part tells little, and the band says so.
 */
export const runHolds = ({ chemistry, choices, inside, insideNarrow }: RunJudged): boolean =>
  100 * (chemistry === 'lifepo4' ? inside : insideNarrow) >= asked.inside_pct * choices;

/** The folder's table. */
export function folderInLines({ runs, curves, left }: FolderJudged): string[] {
  const lines: string[] = [];
  if (runs.length > 0)
    lines.push(
      ...markdownTable(
        [
          { head: 'run' },
          { head: 'size, Ah', right: true },
          { head: 'current, A', right: true },
          { head: 'gave, Ah', right: true },
          { head: 'down to', right: true },
          { head: 'truth in the band', right: true },
          { head: 'and it no wider than a fifth', right: true },
          { head: 'half width, % of size', right: true },
          { head: 'widest', right: true },
          { head: 'likely is off by, %', right: true },
          { head: 'on the whole', right: true },
          { head: '' },
        ],
        runs.map((run) => [
          `${run.file}${run.inSeries > 1 ? ` × ${run.inSeries} in series` : ''}`,
          String(run.nominal_Ah),
          run.amps.toFixed(2),
          run.given_Ah.toFixed(2),
          `${run.to_V.toFixed(1)} V`,
          whole(run.inside, run.choices),
          whole(run.insideNarrow, run.choices),
          one(run.halfWidth_pct),
          one(run.widest_pct),
          one(run.offSize_pct),
          one(run.off_pct),
          runHolds(run) ? 'as asked' : 'not as asked',
        ]),
      ),
      '',
    );
  if (curves.length > 0)
    lines.push(
      ...markdownTable(
        [
          { head: 'rest curve' },
          { head: 'points from 3 to 98 %', right: true },
          { head: 'volts in the tables’ band', right: true },
          { head: 'charge in the band read back', right: true },
          { head: 'its half width from 30 to 90 %', right: true },
        ],
        curves.map((curve) => [
          curve.file,
          String(curve.judged),
          whole(curve.voltsInside, curve.judged),
          whole(curve.chargeInside, curve.judged),
          `${one(curve.flatHalfWidth_pct)} %`,
        ]),
      ),
      '',
    );
  if (left.length > 0) lines.push(...left.map(({ file, because }) => `- ${file}: ${because}`), '');
  return lines;
}
