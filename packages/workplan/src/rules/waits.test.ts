import { describe, expect, it } from 'vitest';
import type { PlanHour, Wait } from '../problem.ts';
import { aStep, aWait, broken, hoursBut, planWith, problemWith, theCover, theMast } from './smallest-plan.ts';

/** Step a of 10 minutes and a wait of 30 after it. */
function withWait(but: Partial<Wait>, hours: Record<number, Partial<PlanHour>> = {}) {
  const step = aStep('a', { waits: [aWait('w', but)] });
  return problemWith([step], { hours: hoursBut(hours), aspects: [theMast, theCover] });
}

describe('waits', () => {
  it('wait time: it lasts from the end of its step for its 30 minutes', () => {
    const problem = withWait({});
    const plan = planWith(problem, { a: 600 });
    expect(plan.waits).toEqual([{ step: 'a', wait: 'w', start: 610, finish: 640, tooCold: false }]);
    expect(broken(plan, problem)).toEqual([]);
    const but = (wait: object) => ({ ...plan, waits: [{ ...plan.waits[0]!, ...wait }] });
    expect(broken(but({ finish: 639 }), problem)).toEqual(['wait time']);
    expect(broken(but({ start: 611 }), problem)).toEqual(['wait time']);
    expect(broken(but({ tooCold: true }), problem)).toEqual(['wait time']);
    expect(broken({ ...plan, waits: [] }, problem)).toEqual(['wait time']);
    expect(broken({ ...plan, steps: [], leftOut: ['job'] }, problem)).toEqual(['wait time']);
  });

  it('wait time: a resin of 60 minutes at 20 °C is half as fast at 10 °C', () => {
    // Step 640–650. 10 minutes at 20 °C make 1/6; at 10 °C a minute makes 1/120, so 5/6 take 100 minutes more: 760.
    const reacts = {
      kind: 'reacts',
      atReference_min: 60,
      reference_C: 20,
      doublesPer_C: 10,
      minimum_C: 5,
      from: 'our assumption',
    } as const;
    const problem = withWait({ law: reacts }, { 11: { air_C: 10 }, 12: { air_C: 10 } });
    const plan = planWith(problem, { a: 640 });
    const wait = { step: 'a', wait: 'w', start: 650, finish: 760, tooCold: false };
    expect(broken({ ...plan, waits: [wait] }, problem)).toEqual([]);
    expect(broken({ ...plan, waits: [{ ...wait, finish: 759 }] }, problem)).toEqual(['wait time']);
    // At 4 °C, under its least 5 °C, it stands still for an hour, and says so: 660–720 nothing, then 100 more.
    const colder = withWait({ law: reacts }, { 11: { air_C: 4 }, 12: { air_C: 10 }, 13: { air_C: 10 } });
    const late = { ...wait, finish: 820, tooCold: true };
    expect(broken({ ...planWith(colder, { a: 640 }), waits: [late] }, colder)).toEqual([]);
    expect(broken({ ...planWith(colder, { a: 640 }), waits: [{ ...late, tooCold: false }] }, colder)).toEqual([
      'wait time',
    ]);
  });

  it('wait over: with 830 minutes to go from 610, a wait of 830 is over by the horizon at 1440', () => {
    const long = (minutes: number) => withWait({ law: { kind: 'set time', minutes, from: 'the tin' } });
    expect(broken(planWith(long(830), { a: 600 }), long(830))).toEqual([]);
    expect(broken(planWith(long(831), { a: 600 }), long(831))).toEqual(['wait over']);
  });

  it('wait dry: rain from 660 comes too late for a wait that ends at 660', () => {
    const problem = withWait({ needs: { dry: true } }, { 11: { rain: true } });
    const bare = { ...problem, aspects: [theMast] };
    expect(broken(planWith(bare, { a: 620 }), bare)).toEqual([]);
    expect(broken(planWith(bare, { a: 621 }), bare)).toEqual(['wait dry']);
    const roofed = { ...bare, hours: hoursBut({ 11: { rain: true, sheltered: true } }) };
    expect(broken(planWith(roofed, { a: 621 }), roofed)).toEqual([]);
  });

  it('wait dry: the cover keeps rain off while it is on, and not while it is being taken off', () => {
    // a 640–650, wait to 680, rain from 660. Taking the cover off from 680 is soon enough, from 679 one minute is wet.
    const problem = withWait({ needs: { dry: true } }, { 11: { rain: true } });
    const off = (start: number) => planWith(problem, { a: 640 }, [{ aspect: 'cover', from: 'on', to: 'off', start }]);
    expect(broken(planWith(problem, { a: 640 }), problem)).toEqual([]);
    expect(broken(off(680), problem)).toEqual([]);
    expect(broken(off(679), problem)).toEqual(['wait dry']);
    // Off at first, it must be on by 660.
    const bare = { ...problem, aspects: [{ ...theCover, initial: 'off' }] };
    const on = (start: number) => planWith(bare, { a: 640 }, [{ aspect: 'cover', from: 'off', to: 'on', start }]);
    expect(broken(on(655), bare)).toEqual([]);
    expect(broken(on(656), bare)).toEqual(['wait dry']);
  });

  it('wait dry: what is curing from before now keeps its cover, but gets wet without blame where it has none', () => {
    // Done at 630, wait to 660; now 640; it rains all day.
    const rain = Object.fromEntries(Array.from({ length: 24 }, (_, hour) => [hour, { rain: true }]));
    const progress = { kind: 'done', start: 620, finish: 630 } as const;
    const a = aStep('a', { progress, waits: [aWait('w', { needs: { dry: true } })] });
    const problem = problemWith([a], { now: 640, hours: hoursBut(rain), aspects: [theCover] });
    const off = (start: number) => planWith(problem, {}, [{ aspect: 'cover', from: 'on', to: 'off', start }]);
    expect(broken(off(660), problem)).toEqual([]);
    expect(broken(off(659), problem)).toEqual(['wait dry']);
    const bare = { ...problem, aspects: [{ ...theCover, initial: 'off' }] };
    expect(broken(planWith(bare, {}), bare)).toEqual([]);
  });

  it('wait warm: 7 °C from 660 on comes too late for a wait that ends at 660', () => {
    const problem = withWait({ needs: { air_min_C: 8 } }, { 11: { air_C: 7 } });
    expect(broken(planWith(problem, { a: 620 }), problem)).toEqual([]);
    expect(broken(planWith(problem, { a: 621 }), problem)).toEqual(['wait warm']);
  });

  it('before dew: a coat that is dry to the touch 20 minutes after 610 is clear of dew from 660, one finished at 641 is not', () => {
    // 20 °C and 50 %: the dew point lies in 9 to 10 °C (weather-and-things.test.ts), so 8 °C of clear sky leave 2 to 3 °C
    const touchDry = { kind: 'set time', minutes: 20, from: 'the tin' } as const;
    const needs = { beforeDew: { dewMargin_min_C: 3, touchDry } };
    const evening = { 11: { skyCooling_C: 8 } };
    const problem = withWait({ needs }, evening);
    expect(broken(planWith(problem, { a: 630 }), problem)).toEqual([]);
    expect(broken(planWith(problem, { a: 631 }), problem)).toEqual(['before dew']);
    // with 2 °C asked for it keeps them
    const less = withWait({ needs: { beforeDew: { dewMargin_min_C: 2, touchDry } } }, evening);
    expect(broken(planWith(less, { a: 660 }), less)).toEqual([]);
    // a wait over sooner ends it: of 5 minutes after 651, by 656
    const short = withWait({ needs, law: { kind: 'set time', minutes: 5, from: 'the tin' } }, evening);
    expect(broken(planWith(short, { a: 645 }), short)).toEqual([]);
    expect(broken(planWith(short, { a: 646 }), short)).toEqual(['before dew']);
  });

  it('before dew: under a roof or inside there is none, a cover is no roof, and what was begun is not blamed', () => {
    const touchDry = { kind: 'set time', minutes: 20, from: 'the tin' } as const;
    const needs = { beforeDew: { dewMargin_min_C: 3, touchDry } };
    const damp = { humidity_pct: 95 };
    const open = withWait({ needs }, { 11: damp });
    expect(broken(planWith(open, { a: 650 }), open)).toEqual(['before dew']);
    const roofed = withWait({ needs }, { 11: { ...damp, sheltered: true } });
    expect(broken(planWith(roofed, { a: 650 }), roofed)).toEqual([]);
    const zones = [{ id: 'cabin', name: 'cabin', room: 1, inside: true, near: [] }];
    const steps = [{ ...open.steps[0]!, zone: 'cabin' }];
    expect(broken(planWith({ ...open, zones, steps }, { a: 650 }), { ...open, zones, steps })).toEqual([]);
    const progress = { kind: 'done', start: 650, finish: 660 } as const;
    const begun = { ...open, now: 665, steps: [{ ...open.steps[0]!, progress }] };
    expect(broken(planWith(begun, {}), begun)).toEqual([]);
  });

  it('wait set-up: the mast stays up until the wait is over, at 640', () => {
    const problem = withWait({ setUps: [{ aspect: 'mast', states: ['up'] }] });
    const down = (start: number) => planWith(problem, { a: 600 }, [{ aspect: 'mast', from: 'up', to: 'down', start }]);
    expect(broken(down(640), problem)).toEqual([]);
    expect(broken(down(639), problem)).toEqual(['wait set-up']);
  });

  it('wait set-up: it binds a wait from before now, unless the need is already broken', () => {
    const progress = { kind: 'done', start: 620, finish: 630 } as const;
    const w = (state: string) => aWait('w', { setUps: [{ aspect: 'mast', states: [state] }] });
    const begun = (state: string) =>
      problemWith([aStep('a', { progress, waits: [w(state)] })], { now: 640, aspects: [theMast] });
    const down = (state: string) =>
      planWith(begun(state), {}, [{ aspect: 'mast', from: 'up', to: 'down', start: 650 }]);
    expect(broken(down('up'), begun('up'))).toEqual(['wait set-up']);
    expect(broken(down('down'), begun('down'))).toEqual([]);
  });

  it('still: the mast may be either way, but does not move until the wait is over, at 640', () => {
    const problem = withWait({ still: ['mast'] });
    const down = (start: number) => planWith(problem, { a: 600 }, [{ aspect: 'mast', from: 'up', to: 'down', start }]);
    expect(broken(down(640), problem)).toEqual([]);
    expect(broken(down(639), problem)).toEqual(['still']);
  });
});
