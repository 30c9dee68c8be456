import { describe, expect, it } from 'vitest';
import type { Book, JobDay, Step } from '#boat-book';
import { cureLawOf } from '#materials';
import { dewMargin_C } from '#sky';
import { type Problem, relaxed, startReasons, startSearch, violations } from '#workplan';
import { coatWaitOf } from './coat-before-dew.ts';
import { obstacleInWords } from './obstacle-in-words.ts';
import { problemFrom } from './problem-from.ts';
import { wayInWords } from './reason-in-words.ts';
import { stepReasonsInWords } from './step-reasons-in-words.ts';
import { job, jobDay, smallBook, soak, step, weather } from './testing/small-book.ts';
import { localMinute } from './when-in-words.ts';

const varnish = {
  ...soak('hardens', 1),
  title: 'Varnish hardens',
  law: cureLawOf('varnish-two-pot').law,
  family: 'varnish-two-pot',
};
const coat = (parts: Partial<Step> = {}) =>
  step('seat', 0, 'Varnish the seat', {
    minutes: { low: 60, likely: 60, high: 60 },
    needs: { dry: true, dewMargin_min_C: 3 },
    wet: true,
    waits: [varnish],
    ...parts,
  });

/**
 * Saturday 9 May at 20 °C and 50 %, so dry to the touch in the 3 h of our figure; from 17:00 at 90 %, when the dew point
 * is 18.3 °C (Magnus form of WMO-No. 8: ln 0.9 + 17.62 · 20 / 263.12 = 1.234, and 243.12 · 1.234 / 16.386): 1.7 °C below.
 */
const fair = { air_C: 20, humidity_pct: 50, wind_kn: 4 };
const dewy = (day: Partial<JobDay> = {}, parts: Partial<Book> = {}): Book =>
  smallBook({
    jobs: { seat: job('Varnish the seat') },
    steps: { coat: coat() },
    jobDays: { sat: jobDay('2026-05-09', { from: '09:00', to: '19:00', setOut_min: 0, clearUp_min: 0, ...day }) },
    weather: {
      day: weather('2026-05-09', { fromHour: 0, toHour: 17, ...fair }),
      evening: weather('2026-05-09', { fromHour: 17, toHour: 24, air_C: 20, humidity_pct: 90, wind_kn: 4 }),
      sunday: weather('2026-05-10', { fromHour: 0, toHour: 24, ...fair }),
    },
    outings: {
      // long enough after it that the varnish is hard by the end of what is planned
      sail: { title: 'The sail', date: '2026-05-12', from: '08:00', nights: 0, place: '', wind_kn: null },
    },
    ...parts,
  });

function planned(book: Book) {
  const matter = problemFrom(book, { now: '2026-05-08T09:40:00Z' });
  if (matter.kind !== 'problem') throw new Error(matter.because);
  const search = startSearch(matter.problem, { seed: 1 });
  search.advance(200);
  return { problem: matter.problem, outcome: search.outcome() };
}
const clock = (minute: number, problem: Problem) => localMinute(minute, problem).clock;

describe('a coat is dry to the touch before dew', () => {
  it('is asked of the wait of a step that leaves a wet finish and asks for a margin over the dew point', () => {
    expect(coatWaitOf(coat())).toMatchObject({
      wait: 'hardens',
      beforeDew: { dewMargin_min_C: 3, touchDry: { kind: 'reacts', atReference_min: 180 } },
    });
    // a wait that the keeper says is for that, by the tin, is the one that counts
    expect(coatWaitOf(coat({ waits: [varnish, soak('touch', 120)] }))).toMatchObject({ wait: 'touch' });
    expect(coatWaitOf(coat({ wet: false }))).toBeNull();
    expect(coatWaitOf(coat({ needs: { dry: true } }))).toBeNull();
    expect(
      coatWaitOf(coat({ waits: [{ ...varnish, law: cureLawOf('butyl-tape').law, family: 'butyl-tape' }] })),
    ).toBeNull();
  });

  it('puts the coat on early enough, and says by when, why and by whose figure', () => {
    const jobs = { seat: job('Varnish the seat', { heldTo: 'sat', heldAt: '13:00' }) };
    const { problem, outcome } = planned(dewy({}, { jobs }));
    expect(outcome.plan.leftOut).toEqual([]);
    const { finish } = outcome.plan.steps[0]!;
    expect(clock(finish, problem)).toBe('14:00');
    expect(stepReasonsInWords('coat', outcome.plan, problem).at(-1)).toBe(
      'Be done by 14:00, to be dry to the touch before dew: as planned it is at 17:00 (3 h at 20 °C, our figure; the tin wins), and from 17:00 what lies under a clear sky is less than 3 °C over the dew point (the margin of ISO 8502-4).',
    );
    // a quarter of an hour later it is not
    const later = { seat: job('Varnish the seat', { heldTo: 'sat', heldAt: '13:15' }) };
    expect(planned(dewy({}, { jobs: later })).outcome.plan.leftOut).toEqual(['seat']);
  });

  it('tells why it is left out, and the least that would let it in, each shown by a plan', () => {
    // from 14:00: finished at 15:00 at the soonest, dry at 18:00; the dew is near from 17:00
    const { problem, outcome } = planned(dewy({ from: '14:00' }));
    expect(outcome.plan.leftOut).toEqual(['seat']);
    expect(obstacleInWords(outcome.obstacles[0]!, problem)).toEqual({
      why: "The coat of 'Varnish the seat' must be dry to the touch before dew: 3 °C clear of the dew point until then, and at no time in the plan would it be.",
      gain: 'A drier evening, an earlier start, or a roof over it would let it in.',
    });
    const run = startReasons(problem, outcome, { seed: 1, arrival_clock: '09:00' });
    let reasons = run.advance(0);
    for (let n = 0; n < 1000 && !reasons.finished; n++) reasons = run.advance(100);
    const { ways } = reasons.ways[0]!;
    for (const { relaxation, plan } of ways) {
      expect(violations(plan, relaxed(problem, relaxation))).toEqual([]);
      expect(plan.leftOut).toEqual([]);
    }
    expect(ways.map((way) => wayInWords(way, problem))).toEqual([
      'Starting at 13:00 on Saturday, 1 h sooner.',
      'One more hour with a surface 3 °C clear of the dew point on Saturday, 17:00 to 18:00, would let it in.',
      'A roof over her on Saturday and the night after.',
    ]);
  });

  it('asks nothing under a roof, and nothing inside', () => {
    const places = { yard: { ...smallBook({}).places.yard!, sheltered: true } };
    expect(planned(dewy({ from: '14:00' }, { places })).outcome.plan.leftOut).toEqual([]);
    const zones = { deck: { ...smallBook({}).zones.deck!, inside: true } };
    expect(planned(dewy({ from: '14:00' }, { zones })).outcome.plan.leftOut).toEqual([]);
  });

  it('counts a clear night’s sky on what lies in the open, and an evening nobody has looked at as damp', () => {
    const { problem } = planned(dewy());
    const at = (hour: number) => problem.hours[24 + hour]!;
    // the sun sets at 19:38 UTC on 9 May at 50° north on the meridian (20:38 in London); 0.95·σ·… as in evening-dew.test.ts
    expect(at(19).skyCooling_C).toBeUndefined();
    expect(at(22).skyCooling_C).toBeGreaterThan(2);
    expect(dewMargin_C(at(22))).toBeLessThan(0);
    const unknown = planned(
      dewy({ from: '15:30' }, { weather: { day: weather('2026-05-09', { fromHour: 0, toHour: 18, ...fair }) } }),
    );
    // 16:30 and 3 h: into hours counted as 95 % from 18:00 on
    expect(unknown.outcome.plan.leftOut).toEqual(['seat']);
  });

  it('leaves the hours as they were where no step asks for a margin', () => {
    const { problem } = planned(dewy({}, { steps: { coat: coat({ needs: { dry: true } }) } }));
    expect(problem.hours.every((hour) => !('skyCooling_C' in hour))).toBe(true);
  });
});
