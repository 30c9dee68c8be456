import { describe, expect, it } from 'vitest';
import type { Conditions } from '#sky';
import type { PlanHour, WorkZone } from '../problem.ts';
import { aStep, broken, hoursBut, planWith, problemWith, theMast } from './smallest-plan.ts';

/** Ten minutes with these needs, on a day whose 11th hour (660 to 720) is as given and whose 10th is fair. */
function twoHours(needs: Conditions, eleventh: Partial<PlanHour>) {
  const problem = problemWith([aStep('a', { needs })], { hours: hoursBut({ 11: eleventh }) });
  return (start: number) => broken(planWith(problem, { a: start }), problem);
}

describe('weather of work', () => {
  // In each: from 650 the 10 minutes lie in the fair hour alone; from 651 their last minute lies in the other.
  it('dry', () => {
    const rain = twoHours({ dry: true }, { rain: true });
    expect(rain(650)).toEqual([]);
    expect(rain(651)).toEqual(['dry']);
  });

  it('dry: a roof over the boat for the hour, or a zone that is inside, keeps rain off', () => {
    expect(twoHours({ dry: true }, { rain: true, sheltered: true })(651)).toEqual([]);
    const cabin: WorkZone = { id: 'cabin', name: 'cabin', room: 1, inside: true, near: [] };
    const step = aStep('a', { needs: { dry: true }, zone: 'cabin' });
    const problem = problemWith([step], { zones: [cabin], hours: hoursBut({ 11: { rain: true } }) });
    expect(broken(planWith(problem, { a: 651 }), problem)).toEqual([]);
    const deck = { ...problem, zones: [{ ...cabin, inside: false }] };
    expect(broken(planWith(deck, { a: 651 }), deck)).toEqual(['dry']);
  });

  it('wind: 12 kn is allowed where the most is 12, 13 is not', () => {
    expect(twoHours({ wind_max_kn: 12 }, { wind_kn: 12 })(651)).toEqual([]);
    const windy = twoHours({ wind_max_kn: 12 }, { wind_kn: 13 });
    expect(windy(650)).toEqual([]);
    expect(windy(651)).toEqual(['wind']);
  });

  it('wind: a set-up change has its own limit', () => {
    const [down, up] = theMast.changes;
    const mast = { ...theMast, changes: [{ ...down!, needs: { wind_max_kn: 12 } }, up!] };
    const problem = problemWith([], { aspects: [mast], hours: hoursBut({ 11: { wind_kn: 13 } }) });
    const at = (start: number) => planWith(problem, {}, [{ aspect: 'mast', from: 'up', to: 'down', start }]);
    expect(broken(at(655), problem)).toEqual([]);
    expect(broken(at(656), problem)).toEqual(['wind']);
  });

  it('air: too cold and too warm', () => {
    const cold = twoHours({ air_min_C: 12 }, { air_C: 11 });
    expect(cold(650)).toEqual([]);
    expect(cold(651)).toEqual(['air']);
    expect(twoHours({ air_min_C: 12 }, { air_C: 12 })(651)).toEqual([]);
    expect(twoHours({ air_max_C: 25 }, { air_C: 26 })(651)).toEqual(['air']);
  });

  it('surface: where its temperature is not known, the air stands for it', () => {
    const cold = twoHours({ surface_min_C: 10 }, { surface_C: 9 });
    expect(cold(650)).toEqual([]);
    expect(cold(651)).toEqual(['surface']);
    expect(twoHours({ surface_min_C: 10 }, { air_C: 9 })(651)).toEqual(['surface']);
  });

  it('humidity', () => {
    const damp = twoHours({ humidity_max_pct: 80 }, { humidity_pct: 81 });
    expect(damp(650)).toEqual([]);
    expect(damp(651)).toEqual(['humidity']);
  });

  it('dew margin: at 20 °C and 50 % the dew point is 9.3 °C, so a surface at 12 °C has less than 3 °C over it', () => {
    // Dew point 9.3 °C for 20 °C, 50 %: common psychrometric tables, from memory; here it need only lie in 9–10.
    const near = twoHours({ dewMargin_min_C: 3 }, { surface_C: 12 });
    expect(near(650)).toEqual([]);
    expect(near(651)).toEqual(['dew margin']);
    expect(twoHours({ dewMargin_min_C: 3 }, { surface_C: 13 })(651)).toEqual([]);
    // what the clear sky takes counts in the open only
    expect(twoHours({ dewMargin_min_C: 3 }, { skyCooling_C: 8 })(651)).toEqual(['dew margin']);
    expect(twoHours({ dewMargin_min_C: 3 }, { skyCooling_C: 8, sheltered: true })(651)).toEqual([]);
  });

  it('daylight: with the sun down at 655, 10 minutes start at 645 at the latest', () => {
    const step = aStep('a', { needs: { daylight: true } });
    const problem = problemWith([step], { daylight: [{ from: 300, to: 655 }] });
    expect(broken(planWith(problem, { a: 645 }), problem)).toEqual([]);
    expect(broken(planWith(problem, { a: 646 }), problem)).toEqual(['daylight']);
  });
});

describe('things in use', () => {
  const hands = ['keeper', 'second'].map((id) => ({ id, name: id, present: [{ from: 0, to: 1440 }] }));

  it('tools: one drill serves two steps one after the other', () => {
    const steps = ['a', 'b'].map((id) => aStep(id, { tools: [{ tool: 'drill', count: 1 }] }));
    const drill = { id: 'drill', name: 'drill', capacity: [{ from: 0, to: 700, count: 1 }] };
    const problem = problemWith(steps, { hands, tools: [drill] });
    const plan = (b: number) => planWith(problem, { a: 600, b: { start: b, hands: ['second'] } });
    expect(broken(plan(610), problem)).toEqual([]);
    expect(broken(plan(609), problem)).toEqual(['tools']);
    // it is given back at 700
    expect(broken(plan(690), problem)).toEqual([]);
    expect(broken(plan(691), problem)).toEqual(['tools']);
  });

  it('room in the zone: where one finds room, two steps go one after the other', () => {
    const steps = ['a', 'b'].map((id) => aStep(id, { zone: 'locker' }));
    const locker: WorkZone = { id: 'locker', name: 'locker', room: 1, inside: false, near: [] };
    const problem = problemWith(steps, { hands, zones: [locker] });
    const plan = (b: number) => planWith(problem, { a: 600, b: { start: b, hands: ['second'] } });
    expect(broken(plan(610), problem)).toEqual([]);
    expect(broken(plan(609), problem)).toEqual(['room in the zone']);
  });

  it('stores: a step waits for what it uses, and for ever for what is not in sight', () => {
    const step = aStep('a', { stores: ['screws'] });
    const there = problemWith([step], { stores: [{ id: 'screws', name: 'screws', from: 640 }] });
    expect(broken(planWith(there, { a: 640 }), there)).toEqual([]);
    expect(broken(planWith(there, { a: 639 }), there)).toEqual(['stores']);
    const never = problemWith([step], { stores: [{ id: 'screws', name: 'screws', from: null }] });
    expect(broken(planWith(never, { a: 640 }), never)).toEqual(['stores']);
  });
});
