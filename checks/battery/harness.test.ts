import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { inside_pct, judgedOwners, ownersInMarkdown } from './calibration.ts';
import { folderInLines, judgeFolder, runHolds } from './measured-batteries.ts';
import { dischargeOf, type MeasuredRun, measuredFiles } from './measured-run.ts';
import { owner, situations } from './other-owner.ts';
import { readingsInChoice, runChoice } from './run-choices.ts';

const kept = fileURLToPath(new URL('./data', import.meta.url));
const runs = measuredFiles(kept).filter((each): each is MeasuredRun => each.kind === 'run');

describe('a choice of readings of a run', () => {
  it('takes six, all before half is given, and tells the lamp within a fifth', () => {
    for (const run of runs) {
      const discharge = dischargeOf(run);
      if ('none' in discharge) continue;
      for (let seed = 1; seed <= 30; seed++) {
        const { history, stillToCome_Ah, misstated } = runChoice(run, discharge, seed);
        expect(history.readings).toHaveLength(readingsInChoice);
        expect(stillToCome_Ah).toBeGreaterThanOrEqual(discharge.out_Ah.at(-1)! / 2);
        expect(Math.abs(misstated)).toBeLessThanOrEqual(0.2);
        for (const { at } of history.readings) {
          expect(at).toBeGreaterThanOrEqual(history.from);
          expect(at).toBeLessThanOrEqual(history.to);
        }
        // the lamp as told holds the lamp as it is
        for (const { low_A, high_A, likely_A } of history.flows) {
          const true_A = likely_A * (1 + misstated);
          expect(low_A).toBeLessThanOrEqual(true_A + 1e-9);
          expect(high_A).toBeGreaterThanOrEqual(true_A - 1e-9);
        }
      }
    }
  });
});

describe('the judging of runs', () => {
  it('passes a band as wide as allowed round the truth, and fails one beside it or wider', () => {
    const truth = new Map<string, number>();
    for (const run of runs) {
      const discharge = dischargeOf(run);
      if ('none' in discharge) continue;
      for (let seed = 1; seed <= 20; seed++) {
        const { history, stillToCome_Ah } = runChoice(run, discharge, seed);
        truth.set(`${JSON.stringify(history.readings)}`, stillToCome_Ah);
      }
    }
    const judged = (half: number, off: number) =>
      judgeFolder(kept, 20, (history) => {
        const likely = truth.get(JSON.stringify(history.readings))! + off * history.battery.nominal_Ah;
        const width = half * history.battery.nominal_Ah;
        return { low: likely - width, likely, high: likely + width };
      });
    const right = judged(0.19, 0);
    expect(right.runs).toHaveLength(5);
    expect(right.runs.every(runHolds)).toBe(true);
    expect(right.runs.every(({ inside, offSize_pct }) => inside === 20 && offSize_pct < 1e-9)).toBe(true);
    expect(judged(0.05, 0.1).runs.some(runHolds)).toBe(false);
    expect(
      judged(0.25, 0)
        .runs.filter(runHolds)
        .map(({ chemistry }) => chemistry),
    ).toEqual(['lifepo4', 'lifepo4']);
    // right on the whole, but every third band wider than asked: 13 or 14 of 20
    let asks = 0;
    const uneven = judgeFolder(kept, 20, (history) => {
      const likely = truth.get(JSON.stringify(history.readings))!;
      const width = (++asks % 3 === 0 ? 0.25 : 0.1) * history.battery.nominal_Ah;
      return { low: likely - width, likely, high: likely + width };
    });
    expect(uneven.runs.filter(runHolds).map(({ chemistry }) => chemistry)).toEqual(['lifepo4', 'lifepo4']);
    expect(right.left.map(({ file }) => file)).toContain('lfp_bank_12V_500Ah_80A-step.csv');
    expect(folderInLines(right).join('\n')).toContain('20 of 20');
  });
});

describe('owners of the other battery', () => {
  const some = Array.from({ length: 60 }, (_, i) => owner(i + 1));

  it('come in every situation, the same for the same seed', () => {
    expect(new Set(some.map(({ situation }) => situation))).toEqual(new Set(situations));
    expect(owner(7)).toEqual(owner(7));
  });

  it('have a truth that can be and tell a history in order', () => {
    for (const { history, truth } of some) {
      expect(truth.capacity_Ah).toBeGreaterThan(0.3 * history.battery.nominal_Ah);
      expect(truth.soc_pct).toBeGreaterThanOrEqual(0);
      expect(truth.soc_pct).toBeLessThan(105);
      const times = history.readings.map(({ at }) => at);
      expect(times).toEqual([...times].sort((a, b) => a - b));
      for (const { from, to, low_A, likely_A, high_A } of history.flows) {
        expect(to).toBeGreaterThan(from);
        expect(to).toBeLessThanOrEqual(history.to);
        expect(low_A).toBeLessThanOrEqual(likely_A);
        expect(likely_A).toBeLessThanOrEqual(high_A);
      }
      for (const { volts } of history.readings) {
        expect(volts).toBeGreaterThan(9);
        expect(volts).toBeLessThan(15);
      }
    }
  });

  it('are all inside a band of everything and none in a band of nothing', () => {
    const band = (low: number, high: number) => ({ low, likely: (low + high) / 2, high });
    const with_ = (each: ReturnType<typeof band>) =>
      judgedOwners(1, 12, () => ({ soc_pct: each, left_Ah: each, capacity_Ah: each }));
    expect(inside_pct(with_(band(-10, 1e6)), 'soc_pct')).toBe(100);
    expect(inside_pct(with_(band(-2, -1)), 'left_Ah')).toBe(0);
    expect(ownersInMarkdown(with_(band(-10, 1e6))).join('\n')).toContain('100.0');
  });
});
