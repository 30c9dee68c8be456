import { describe, expect, it } from 'vitest';
import type { Precedence, ProblemJob, WorkZone } from '../problem.ts';
import { aStep, aWait, broken, planWith, problemWith } from './smallest-plan.ts';

const tie = (but: Partial<Precedence> = {}): Precedence => ({
  before: 'a',
  wait: null,
  after: 'b',
  least_min: 0,
  greatest_min: null,
  past: { kind: 'forbidden' },
  ...but,
});
const hands = ['keeper', 'second'].map((id) => ({ id, name: id, present: [{ from: 0, to: 1440 }] }));

describe('held steps and deadlines', () => {
  it('held: a step held to 640–660 takes its 10 minutes from 640 to 650', () => {
    const problem = problemWith([aStep('a', { held: { from: 640, to: 660 } })]);
    expect(broken(planWith(problem, { a: 640 }), problem)).toEqual([]);
    expect(broken(planWith(problem, { a: 639 }), problem)).toEqual(['held']);
    expect(broken(planWith(problem, { a: 650 }), problem)).toEqual([]);
    expect(broken(planWith(problem, { a: 651 }), problem)).toEqual(['held']);
  });

  it('deadline: 10 minutes and a wait of 30 are over by 680 when they start at 640', () => {
    const job: ProblemJob = { id: 'job', title: 'job', weight: 10, deadline: 680, optional: true };
    const problem = problemWith([aStep('a', { waits: [aWait('w')] })], { jobs: [job] });
    expect(broken(planWith(problem, { a: 640 }), problem)).toEqual([]);
    expect(broken(planWith(problem, { a: 641 }), problem)).toEqual(['deadline']);
    const bare = problemWith([aStep('a')], { jobs: [job] });
    expect(broken(planWith(bare, { a: 670 }), bare)).toEqual([]);
    expect(broken(planWith(bare, { a: 671 }), bare)).toEqual(['deadline']);
  });
});

describe('order of steps', () => {
  it('comes after: a step cannot be where the one before it is in a job left out', () => {
    const problem = problemWith([aStep('a', { job: 'one' }), aStep('b', { job: 'two' })], { precedence: [tie()] });
    expect(broken(planWith(problem, { a: 600, b: 610 }), problem)).toEqual([]);
    expect(broken(planWith(problem, { b: 610 }), problem)).toEqual(['comes after']);
    expect(broken(planWith(problem, { a: 600 }), problem)).toEqual([]);
  });

  it('least lag: 15 minutes after a, which ends at 610, is 625', () => {
    const problem = problemWith([aStep('a'), aStep('b')], { precedence: [tie({ least_min: 15 })] });
    expect(broken(planWith(problem, { a: 600, b: 625 }), problem)).toEqual([]);
    expect(broken(planWith(problem, { a: 600, b: 624 }), problem)).toEqual(['least lag']);
  });

  it('least lag: after the wait of a, from 610 to 640', () => {
    const steps = [aStep('a', { waits: [aWait('w')] }), aStep('b')];
    const problem = problemWith(steps, { precedence: [tie({ wait: 'w' })] });
    expect(broken(planWith(problem, { a: 600, b: 640 }), problem)).toEqual([]);
    expect(broken(planWith(problem, { a: 600, b: 639 }), problem)).toEqual(['least lag']);
  });

  it('least lag: nothing comes after a wait, begun before now, that is never over', () => {
    // The wait takes two days; there is one. It was begun before now, so it is not held against the plan itself.
    const wait = aWait('w', { law: { kind: 'set time', minutes: 2880, from: 'the tin' } });
    const a = aStep('a', { waits: [wait], progress: { kind: 'done', start: 590, finish: 600 } });
    const problem = problemWith([a, aStep('b')], { now: 600, precedence: [tie({ wait: 'w' })] });
    expect(broken(planWith(problem, {}), problem)).toEqual([]);
    expect(broken(planWith(problem, { b: 710 }), problem)).toEqual(['least lag']);
  });

  it('greatest lag: no more than 20 minutes after a, which ends at 610, is 630', () => {
    const problem = problemWith([aStep('a'), aStep('b')], { precedence: [tie({ greatest_min: 20 })] });
    expect(broken(planWith(problem, { a: 600, b: 630 }), problem)).toEqual([]);
    expect(broken(planWith(problem, { a: 600, b: 631 }), problem)).toEqual(['greatest lag']);
  });

  it('abrading: past the recoat window b takes 5 minutes more, and within it none', () => {
    const past = { kind: 'abrade', minutes: 5 } as const;
    const problem = problemWith([aStep('a'), aStep('b')], { precedence: [tie({ greatest_min: 20, past })] });
    const late = (abrade_min: number) => ({ start: 631, finish: 641 + abrade_min, abrade_min });
    expect(broken(planWith(problem, { a: 600, b: 630 }), problem)).toEqual([]);
    expect(broken(planWith(problem, { a: 600, b: late(5) }), problem)).toEqual([]);
    expect(broken(planWith(problem, { a: 600, b: late(0) }), problem)).toEqual(['abrading']);
    expect(broken(planWith(problem, { a: 600, b: late(6) }), problem)).toEqual(['abrading']);
    const early = { start: 630, finish: 645, abrade_min: 5 };
    expect(broken(planWith(problem, { a: 600, b: early }), problem)).toEqual(['abrading']);
  });

  it('abrading: of two windows past, the longer abrading, once', () => {
    const steps = [aStep('a'), aStep('c'), aStep('b')];
    const precedence = [
      tie({ greatest_min: 0, past: { kind: 'abrade', minutes: 5 } }),
      tie({ before: 'c', greatest_min: 0, past: { kind: 'abrade', minutes: 8 } }),
    ];
    const problem = problemWith(steps, { precedence });
    const b = (abrade_min: number) => ({ start: 640, finish: 650 + abrade_min, abrade_min });
    expect(broken(planWith(problem, { a: 600, c: 610, b: b(8) }), problem)).toEqual([]);
    expect(broken(planWith(problem, { a: 600, c: 610, b: b(13) }), problem)).toEqual(['abrading']);
  });
});

describe('batches', () => {
  // Each step takes 10 minutes, 4 of them mixing. a mixes from 600 to 604; the batch lasts until 624.
  const mix = { id: 'epoxy', name: 'epoxy', mixing_min: 4, potLife_min: 20 };
  const steps = ['a', 'b', 'c'].map((id) => aStep(id, { mix: 'epoxy' }));
  const problem = problemWith(steps, { mixes: [mix], hands });
  const shares = (start: number, of = 'a') => ({ start, finish: start + 6, batchOf: of });

  it('pot life: 6 minutes with the shared batch are finished by 624 when they start at 618', () => {
    expect(broken(planWith(problem, { a: 600, b: shares(610), c: shares(618) }), problem)).toEqual([]);
    expect(broken(planWith(problem, { a: 600, b: shares(610), c: shares(619) }), problem)).toEqual(['pot life']);
  });

  it('batch: the batch is there once it is mixed, at 604', () => {
    const plan = (b: number) => planWith(problem, { a: 600, b: { ...shares(b), hands: ['second'] }, c: 630 });
    expect(broken(plan(604), problem)).toEqual([]);
    expect(broken(plan(603), problem)).toEqual(['batch']);
  });

  it('batch: it is shared with the step that mixes it, not with one that shares, nor with itself or another mix', () => {
    expect(broken(planWith(problem, { a: 600, b: shares(610), c: shares(616, 'b') }), problem)).toEqual(['batch']);
    expect(broken(planWith(problem, { a: 600, b: shares(610, 'b'), c: 620 }), problem)).toEqual(['batch']);
    const other = problemWith([aStep('a', { mix: 'filler' }), aStep('b', { mix: 'epoxy' })], {
      mixes: [mix, { ...mix, id: 'filler' }],
    });
    expect(broken(planWith(other, { a: 600, b: shares(610) }), other)).toEqual(['batch']);
  });

  it('batch: a pot mixed before now is not shared', () => {
    const progress = { kind: 'done', start: 600, finish: 610 } as const;
    const later = problemWith([aStep('a', { mix: 'epoxy', progress }), aStep('b', { mix: 'epoxy' })], {
      mixes: [mix],
      now: 610,
    });
    expect(broken(planWith(later, { b: 610 }), later)).toEqual([]);
    expect(broken(planWith(later, { b: shares(610) }), later)).toEqual(['batch']);
  });

  it('step time: who shares saves the mixing, and no more', () => {
    const plan = planWith(problem, { a: 600, b: { start: 610, finish: 620, batchOf: 'a' }, c: 630 });
    expect(broken(plan, problem)).toEqual(['step time']);
  });
});

describe('dust and wet finishes', () => {
  const zone = (id: string, near: string[]): WorkZone => ({ id, name: id, room: 2, inside: false, near });
  const zones = [zone('deck', ['mast']), zone('mast', []), zone('trailer', [])];
  const varnish = aStep('a', { zone: 'deck', wet: true, waits: [aWait('w', { wet: true })] });
  const sand = (where: string | null) => aStep('b', { zone: where, dusty: true });
  const plan = (where: string | null, start: number) => {
    const problem = problemWith([varnish, sand(where)], { zones, hands });
    return broken(planWith(problem, { a: 600, b: { start, hands: ['second'] } }), problem);
  };

  it('dust and wet: sanding near it ends before the varnish starts or begins when it is hard, at 640', () => {
    expect(plan('deck', 640)).toEqual([]);
    expect(plan('deck', 639)).toEqual(['dust and wet']);
    expect(plan('deck', 605)).toEqual(['dust and wet']);
    // near is given on the deck's side only
    expect(plan('mast', 639)).toEqual(['dust and wet']);
    expect(plan('trailer', 620)).toEqual([]);
    expect(plan(null, 620)).toEqual([]);
  });

  it('dust and wet: abrading is dusty for its own minutes', () => {
    // b comes after c's recoat window, so it starts with 5 minutes of abrading; from 635 they end at 640, when w ends.
    const steps = [varnish, aStep('c', { zone: 'trailer' }), aStep('b', { zone: 'mast' })];
    const past = { kind: 'abrade', minutes: 5 } as const;
    const problem = problemWith(steps, { zones, hands, precedence: [tie({ before: 'c', greatest_min: 0, past })] });
    const at = (start: number) =>
      broken(planWith(problem, { a: 600, c: 610, b: { start, finish: start + 15, abrade_min: 5 } }), problem);
    expect(at(640)).toEqual([]);
    expect(at(639)).toEqual(['dust and wet']);
    expect(at(625)).toEqual(['dust and wet']);
  });
});
