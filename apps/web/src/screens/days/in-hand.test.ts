import { describe, expect, it } from 'vitest';
import type { Problem } from '#workplan';
import { momentOf } from './in-hand.ts';
import { momentInWords } from './now-words.ts';
import { plan, problem } from './testing/three-days.ts';

const clock = (hour: number, minute = 0) => hour * 60 + minute;
const named = (item: ReturnType<typeof momentOf>['first']) => item?.key;

describe('what is in hand', () => {
  it('is what starts soonest for the keeper, with the hand’s work beside it', () => {
    const moment = momentOf(problem, plan, clock(8, 10));
    expect(named(moment.first)).toBe('lamp1');
    expect(moment.beside.map(named)).toEqual(['seal1']);
    expect(moment.next.map(named)).not.toContain('lamp1');
  });

  it('is the step under way, though another was due before it', () => {
    const begun: Problem = {
      ...problem,
      steps: problem.steps.map((step) =>
        step.id === 'shroud'
          ? {
              ...step,
              progress: { kind: 'under way', start: clock(10, 10), expectedFinish: clock(10, 50), hands: ['keeper'] },
            }
          : step,
      ),
    };
    expect(named(momentOf(begun, plan, clock(10, 20)).first)).toBe('shroud');
  });

  it('never is a step that is done', () => {
    const ticked: Problem = {
      ...problem,
      steps: problem.steps.map((step) => ({ ...step, progress: { kind: 'done', start: 0, finish: 1 } })),
    };
    const moment = momentOf(ticked, { ...plan, changes: [] }, clock(9));
    expect(moment.first).toBeNull();
    expect(moment.next).toEqual([]);
    // ticked since the plan was made
    const since = momentOf(problem, plan, clock(8, 10), (step) => step === 'lamp1');
    expect(named(since.first)).not.toBe('lamp1');
    expect(since.next.map(named)).not.toContain('lamp1');
    expect(since.first).not.toBeNull();
  });

  it('cures from the end of its step until the wait is over', () => {
    // the epoxy waits from 12:00 until 07:10 the next day, the varnish from 14:27 until 17:37
    const waits = (minute: number) => momentOf(problem, plan, minute).curing.map((wait) => wait.wait);
    // a step ticked within a minute ends at the next
    expect(waits(clock(11, 58))).toEqual([]);
    expect(waits(clock(12))).toEqual(['cure']);
    expect(waits(clock(15))).toEqual(['dry', 'cure']);
    expect(waits(clock(17, 37))).toEqual(['cure']);
  });

  it('says the clock and how long the sky stays', () => {
    // it rains from 16:00 to 18:00 that Saturday
    expect(momentInWords(problem, clock(11, 20))).toMatch(/^Saturday 11:20 · \d+ °C · dry until 16:00$/);
    expect(momentInWords(problem, clock(16, 30))).toMatch(/rain until 18:00$/);
    expect(momentInWords(problem, clock(23))).toBe('Saturday 23:00 · weather of this hour not entered');
  });
});
