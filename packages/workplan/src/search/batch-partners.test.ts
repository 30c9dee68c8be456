import { expect, it } from 'vitest';
import { aStep, fairHour, hoursBut, problemWith, theDay } from '../rules/smallest-plan.ts';
import { violations } from '../violations.ts';
import { BatchPartners } from './batch-partners.ts';
import { compile } from './compiled.ts';
import { Dice } from './dice.ts';
import { Placing } from './placing.ts';
import { UnitPlacing } from './unit-placing.ts';
import { writtenPlan } from './written-plan.ts';

/** 67 minutes of work in which the last seven are dry, and a mix that takes ten minutes and lives thirty. */
function lastMinutesDry(partnerMixes: boolean) {
  const rain = { ...fairHour, rain: true };
  const outside = aStep('outside', { job: 'outside', minutes: 15, needs: { dry: true }, mix: 'epoxy' });
  const below = aStep('below', { job: 'below', minutes: 15, mix: partnerMixes ? 'epoxy' : null });
  return problemWith([outside, below], {
    days: [{ ...theDay, to: 667 }],
    hours: hoursBut({ 10: rain }),
    mixes: [{ id: 'epoxy', name: 'epoxy', mixing_min: 10, potLife_min: 30 }],
  });
}

function placed(partnerMixes: boolean, seed: number) {
  const problem = lastMinutesDry(partnerMixes);
  const compiled = compile(problem);
  const placing = new Placing(compiled);
  const units = new UnitPlacing(compiled, placing);
  const partners = new BatchPartners(compiled, [0, 1], new Dice(seed), placing, units);
  expect(units.place(0, 0, Number.POSITIVE_INFINITY), 'by itself').toBe(false);
  const partner = partners.place(0, () => false);
  return { partner, plan: writtenPlan(placing.taken), problem };
}

it('a step too long for the dry minutes left goes in where another mixes for it, not too soon before', () => {
  for (let seed = 1; seed <= 20; seed++) {
    const { partner, plan, problem } = placed(true, seed);
    expect(partner).toBe(1);
    expect(violations(plan, problem)).toEqual([]);
    const start = Object.fromEntries(plan.steps.map(({ step, start: at }) => [step, at]));
    // five minutes of work without the mixing: of 660 to 667
    expect(start.outside).toBeGreaterThanOrEqual(660);
    // mixed ten minutes after it begins, and used up thirty later
    expect(start.below! + 10 + 30).toBeGreaterThanOrEqual(start.outside! + 5);
  }
});

it('there is no partner where nothing else mixes the same', () => {
  expect(placed(false, 1)).toMatchObject({ partner: -1, plan: { steps: [] } });
});
