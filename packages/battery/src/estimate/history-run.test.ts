import { beforeEach, describe, expect, it } from 'vitest';
import type { BatteryHistory } from '../battery-history.ts';
import { type Batteries, emptyBatteries } from './batteries.ts';
import { Dice } from './dice.ts';
import { type Fitting, fittingOf } from './fitting.ts';
import { HistoryRun } from './history-run.ts';
import { fillDraw, priorOf, unlogged } from './priors.ts';
import { stretchesOf } from './stretches.ts';

const hour = 3_600_000;
const evening = Date.UTC(2026, 5, 12, 20);
const history: BatteryHistory = {
  battery: { chemistry: 'agm', nominal_Ah: 17, nominal_V: 12, age_years: 2 },
  from: evening,
  to: evening + 60 * hour,
  flows: [
    { from: evening, to: evening + 9 * hour, low_A: 0.3, likely_A: 0.4, high_A: 0.5, source: 'lamp' },
    { from: evening + 12 * hour, to: evening + 20 * hour, low_A: -1, likely_A: -0.6, high_A: -0.3, source: 'panel' },
  ],
  readings: Array.from({ length: 11 }, (_, n) => ({
    at: evening + 5 * n * hour,
    volts: 12.7 - 0.02 * n,
    meter: 'm',
    current_A: n === 4 ? 1 : null,
  })),
  temperatures: [],
};

describe('a battery run through a history', () => {
  let fitting: Fitting;
  let run: HistoryRun;
  let one: Batteries;
  let dice: Dice;

  beforeEach(() => {
    fitting = fittingOf(history, stretchesOf(history), priorOf(history.battery));
    run = new HistoryRun(fitting);
    one = emptyBatteries(fitting, 1);
    dice = new Dice(5);
  });

  /** As a battery drawn anew, to the end. */
  const drawn = () => {
    for (let d = 0; d < fitting.dimensions; d++) one.zs[d] = dice.normal();
    fillDraw(one.draws, 0, one.zs, 0, fitting.prior);
    run.currents(one, 0, 0);
    run.through(one, 0, 0, Number.NEGATIVE_INFINITY);
  };
  const shows = () => [...one.shown, ...one.error, ...one.courses.hand, one.ofReadings[0]];

  it('from where what flows differs comes to the same as from the start', () => {
    const begun: number[] = [];
    for (let n = 0; n < 200; n++) {
      drawn();
      for (const event of unlogged) {
        const was_h = one.draws[event.since][0]!;
        for (const place of event.places) one.zs[place] = 2 * dice.normal();
        event.fill(one.draws, 0, one.zs, 0, fitting.prior);
        const from = run.stretchAt(Math.min(was_h, one.draws[event.since][0]!));
        begun.push(from);
        run.currents(one, 0, from);
        run.through(one, 0, from, Number.NEGATIVE_INFINITY);
        const fromThere = shows();
        run.currents(one, 0, 0);
        run.through(one, 0, 0, Number.NEGATIVE_INFINITY);
        expect(fromThere).toEqual(shows());
      }
    }
    // some from the start, some on the way, some nothing
    expect(begun).toContain(0);
    expect(begun).toContain(fitting.stretches.count);
    expect(begun.filter((from) => from > 0 && from < fitting.stretches.count).length).toBeGreaterThan(20);
  });

  it('is given up only where its odds do come to less than was wanted', () => {
    let givenUp = 0;
    for (let n = 0; n < 500; n++) {
      drawn();
      const odds = one.ofReadings[0]!;
      expect(run.through(one, 0, 0, odds - 1e-9)).toBe(true);
      if (!run.through(one, 0, 0, odds + 20)) givenUp++;
    }
    expect(givenUp).toBeGreaterThan(400);
  });
});
