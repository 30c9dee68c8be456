import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readPsplib } from '../../psplib.ts';
import { Dice } from '../dice.ts';
import { plainCase } from '../plain/plain-case.ts';
import { Proof } from './proof.ts';
import type { ProofCase } from './proof-case.ts';

describe('the proof of the plain case', () => {
  /**
   * Three activities of 2, 3 and 2 minutes that each take one of one thing: whatever goes first, 7 minutes in all,
   * although no chain is longer than 3.
   */
  it('adds up what cannot be at work together', () => {
    const proof = new Proof(caseOf([2, 3, 2], [[], [], []], [[1], [1], [1]], [1]), 8);
    proof.advance(1000);
    expect([proof.closed, proof.finish, proof.lowerBound, proof.improved]).toEqual([true, 7, 7, true]);
    expect(faults(proof, caseOf([2, 3, 2], [[], [], []], [[1], [1], [1]], [1]))).toEqual([]);
  });

  it('says at once that nothing beats the longest chain', () => {
    const proof = new Proof(caseOf([10, 20, 5], [[1], [], []], [[1], [1], [1]], [2]), 30);
    expect([proof.closed, proof.lowerBound, proof.improved]).toEqual([true, 30, false]);
  });

  it('does nothing more, and takes no less, once closed', () => {
    const proof = new Proof(caseOf([1], [[]], [[1]], [1]), 5);
    proof.advance(10);
    expect([proof.closed, proof.finish]).toEqual([true, 1]);
    proof.know(1);
    proof.advance(10);
    expect([proof.closed, proof.finish, proof.lowerBound]).toEqual([true, 1, 1]);
  });

  /** Serial generation over every order of tiny cases holds an optimum, since some optimum is active. */
  it.each([
    ['a loose bound', 99],
    ['the optimum itself', 0],
    ['one more than the optimum', 1],
  ])('agrees with trying every order on 400 seeded cases, from %s', (_, over) => {
    for (let seed = 1; seed <= 400; seed++) {
      const plain = tinyCase(seed);
      const optimum = byEveryOrder(plain);
      const proof = new Proof(plain, optimum + over);
      for (let turns = 0; turns < 2000 && !proof.closed; turns++) {
        proof.advance(1);
        expect(proof.lowerBound, `seed ${seed}`).toBeLessThanOrEqual(optimum);
      }
      expect(proof.closed, `seed ${seed}`).toBe(true);
      expect([proof.finish, proof.improved], `seed ${seed}`).toEqual([optimum, over > 0]);
      if (proof.improved) expect(faults(proof, plain), `seed ${seed}`).toEqual([]);
    }
  });

  /**
   * Turned round in time, its activities and resources in another order, begun from another bound: the optimum is the
   * same. Each of these goes another way through the search, so a wrong lesson in one of them shows.
   */
  it('finds the same optimum of 40 middling cases from five sides', { timeout: 300_000 }, () => {
    for (let seed = 1; seed <= 40; seed++) {
      const plain = tightCase(seed);
      const total = plain.duration.reduce((sum, lasts) => sum + lasts, 0);
      const proofs = [plain, turnedRound(plain), otherOrder(plain), otherOrder(turnedRound(plain))].map(
        (one) => new Proof(one, total),
      );
      for (const proof of proofs) proof.advance(20_000);
      proofs.push(new Proof(plain, proofs[0]!.finish));
      proofs[4]!.advance(20_000);
      expect(
        proofs.map(({ closed, finish }) => [closed, finish]),
        `seed ${seed}`,
      ).toEqual(proofs.map(() => [true, proofs[0]!.finish]));
      expect(proofs[4]!.improved).toBe(false);
      expect(faults(proofs[0]!, plain)).toEqual([]);
    }
  });

  it('goes the same way however its work is cut up', () => {
    const plain = tinyCase(7, 14);
    const [whole, pieces] = [new Proof(plain, plain.count * 9), new Proof(plain, plain.count * 9)];
    whole.advance(300);
    for (let n = 0; n < 300; n++) pieces.advance(1);
    expect([pieces.finish, pieces.lowerBound, pieces.closed, pieces.conflicts, [...pieces.start]]).toEqual([
      whole.finish,
      whole.lowerBound,
      whole.closed,
      whole.conflicts,
      [...whole.start],
    ]);
  });

  it('goes on soundly after hearing of a better schedule', () => {
    for (let seed = 1; seed <= 60; seed++) {
      const plain = tinyCase(seed, 7);
      const optimum = byEveryOrder(plain);
      const proof = new Proof(plain, optimum + 30);
      proof.advance(2);
      proof.know(optimum + 1);
      proof.advance(2);
      proof.know(optimum);
      proof.advance(10_000);
      expect([proof.closed, proof.finish], `seed ${seed}`).toEqual([true, optimum]);
    }
  });
});

const archives = join(import.meta.dirname, '../../../../../../shared/data/psplib');
const there = existsSync(archives);

/**
 * Published optima: R. Kolisch, A. Sprecher, "PSPLIB - a project scheduling problem library", European Journal of
 * Operational Research 96 (1996/97); the J30 optima are those of E. Demeulemeester and W. Herroelen (1995). A row
 * whose makespan is not proved may be beaten, a row that is may not.
 */
describe.skipIf(!there)(`published optima${there ? '' : ' (skipped: no data)'}`, () => {
  let folder = '';
  let references: Map<string, { makespan: number; proved: boolean }>;
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'fettle-proof-'));
    for (const set of ['j30', 'j60']) execFileSync('tar', ['xzf', join(archives, `${set}.tar.gz`), '-C', folder]);
    const [head, ...rows] = readFileSync(join(archives, 'references.csv'), 'utf8').trim().split(/\r?\n/);
    const columns = head!.split(',');
    const [makespan, proved] = [columns.indexOf('reference_makespan'), columns.indexOf('is_proven_optimum')];
    references = new Map(
      rows.map((row) => {
        const cells = row.split(',');
        return [cells[0]!, { makespan: Number(cells[makespan]), proved: cells[proved] === '1' }];
      }),
    );
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  const compare = (set: string, every: number, over: number, conflicts: number) => {
    const names = readdirSync(join(folder, set))
      .filter((name) => name.endsWith('.sm'))
      .sort()
      .filter((_, n) => n % every === 0);
    let closed = 0;
    for (const name of names) {
      const { makespan, proved } = references.get(name.replace('.sm', ''))!;
      const plain = plainCase(readPsplib(readFileSync(join(folder, set, name), 'utf8')).problem)!;
      const proof = new Proof(plain, makespan + over);
      proof.advance(conflicts);
      expect(proof.lowerBound, name).toBeLessThanOrEqual(makespan);
      if (proved) expect(proof.finish, name).toBeGreaterThanOrEqual(makespan);
      if (proof.improved) expect(faults(proof, plain), name).toEqual([]);
      if (!proof.closed) continue;
      closed++;
      expect(proof.finish, name).toBeLessThanOrEqual(makespan);
    }
    return closed / names.length;
  };

  it('J30, every fourth: the published optimum is proved, from itself and from above', { timeout: 300_000 }, () => {
    expect(compare('j30', 4, 0, 6000)).toBeGreaterThanOrEqual(0.95);
    expect(compare('j30', 4, 3, 6000)).toBeGreaterThanOrEqual(0.95);
  });

  it('J60, every eighth: never beside the published bounds', { timeout: 300_000 }, () => {
    expect(compare('j60', 8, 1, 4000)).toBeGreaterThanOrEqual(0.7);
  });
});

function caseOf(duration: number[], successors: number[][], requests: number[][], capacity: number[]): ProofCase {
  const afterFrom = new Int32Array(duration.length + 1);
  successors.forEach((list, i) => {
    afterFrom[i + 1] = afterFrom[i]! + list.length;
  });
  return {
    count: duration.length,
    duration: Int32Array.from(duration),
    resources: capacity.length,
    capacity: Int32Array.from(capacity),
    request: Int32Array.from(requests.flat()),
    afterFrom,
    after: Int32Array.from(successors.flat()),
  };
}

/** Four to seven activities, one to six resources, some of great capacity, some activities without length or request. */
function tinyCase(seed: number, size?: number): ProofCase {
  const dice = new Dice(seed);
  const count = size ?? 4 + dice.below(4);
  const resources = 1 + dice.below(6);
  const scale = dice.chance(0.3) ? 5 : 1;
  const great = dice.chance(0.2) ? 100 : 1;
  const capacity = Array.from({ length: resources }, () => (2 + dice.below(4)) * great);
  const duration = Array.from({ length: count }, () => (dice.chance(0.1) ? 0 : 1 + dice.below(6)) * scale);
  const successors = Array.from({ length: count }, (_, i) =>
    Array.from({ length: count - i - 1 }, (__, n) => i + 1 + n).filter(() => dice.chance(0.2)),
  );
  const requests = Array.from({ length: count }, () =>
    capacity.map((most) => (dice.chance(0.4) ? 0 : dice.below(most + 1))),
  );
  return caseOf(duration, successors, requests, capacity);
}

/** Fourteen activities, up to two thirds of a resource each, few chains: much to settle. */
function tightCase(seed: number): ProofCase {
  const dice = new Dice(1000 + seed);
  const count = 14;
  const capacity = [12, 9, 15];
  return caseOf(
    Array.from({ length: count }, () => 1 + dice.below(9)),
    Array.from({ length: count }, (_, i) =>
      Array.from({ length: count - i - 1 }, (__, n) => i + 1 + n).filter(() => dice.chance(0.12)),
    ),
    Array.from({ length: count }, () => capacity.map((most) => 1 + dice.below((2 * most) / 3))),
    capacity,
  );
}

function turnedRound(plain: ProofCase): ProofCase {
  const { count } = plain;
  return renumbered(
    plain,
    Array.from({ length: count }, (_, i) => count - 1 - i),
    true,
  );
}

/** Another order in which each still comes after what it waits for: by how long the chain before it is. */
function otherOrder(plain: ProofCase): ProofCase {
  const depth = new Array<number>(plain.count).fill(0);
  for (let i = 0; i < plain.count; i++)
    for (let a = plain.afterFrom[i]!; a < plain.afterFrom[i + 1]!; a++)
      depth[plain.after[a]!] = Math.max(depth[plain.after[a]!]!, depth[i]! + 1);
  const order = depth.map((_, i) => i).sort((i, j) => depth[i]! - depth[j]! || j - i);
  return renumbered(plain, order, false);
}

/** The case with activity order[n] as its n-th, all arrows turned where asked, resources from the last. */
function renumbered(plain: ProofCase, order: number[], turned: boolean): ProofCase {
  const { resources, capacity, request, afterFrom, after } = plain;
  const place = order.map((_, i) => order.indexOf(i));
  const successors: number[][] = order.map(() => []);
  for (let i = 0; i < plain.count; i++)
    for (let a = afterFrom[i]!; a < afterFrom[i + 1]!; a++) {
      const [from, to] = turned ? [after[a]!, i] : [i, after[a]!];
      successors[place[from]!]!.push(place[to]!);
    }
  return caseOf(
    order.map((i) => plain.duration[i]!),
    successors,
    order.map((i) => [...request.subarray(i * resources, (i + 1) * resources)].reverse()),
    [...capacity].reverse(),
  );
}

function byEveryOrder(plain: ProofCase): number {
  const { count, duration, resources, capacity, request, afterFrom, after } = plain;
  const horizon = duration.reduce((sum, lasts) => sum + lasts, 0);
  const free = Array.from({ length: horizon }, () => [...capacity]);
  const start = new Array<number>(count).fill(-1);
  let best = Number.POSITIVE_INFINITY;
  const lay = (laid: number, end: number) => {
    if (end >= best) return;
    if (laid === count) {
      best = end;
      return;
    }
    for (let i = 0; i < count; i++) {
      if (start[i] !== -1) continue;
      let soonest = 0;
      let ready = true;
      for (let j = 0; j < count; j++)
        for (let a = afterFrom[j]!; a < afterFrom[j + 1]!; a++)
          if (after[a] === i) {
            if (start[j] === -1) ready = false;
            else soonest = Math.max(soonest, start[j]! + duration[j]!);
          }
      if (!ready) continue;
      const asks = Array.from({ length: resources }, (_, k) => request[i * resources + k]!);
      const span = (at: number) => free.slice(at, at + duration[i]!);
      while (span(soonest).some((left) => asks.some((ask, k) => ask > left[k]!))) soonest++;
      for (const left of span(soonest)) for (let k = 0; k < resources; k++) left[k]! -= asks[k]!;
      start[i] = soonest;
      lay(laid + 1, Math.max(end, soonest + duration[i]!));
      start[i] = -1;
      for (const left of span(soonest)) for (let k = 0; k < resources; k++) left[k]! += asks[k]!;
    }
  };
  lay(0, 0);
  return best;
}

/** What is wrong with the schedule of a proof, counted minute by minute. */
function faults(proof: Proof, plain: ProofCase): string[] {
  const { count, duration, resources, capacity, request, afterFrom, after } = plain;
  const { start } = proof;
  const found: string[] = [];
  for (let i = 0; i < count; i++) {
    if (start[i]! < 0 || start[i]! + duration[i]! > proof.finish) found.push(`${i} lies outside`);
    for (let a = afterFrom[i]!; a < afterFrom[i + 1]!; a++)
      if (start[after[a]!]! < start[i]! + duration[i]!) found.push(`${after[a]} starts before ${i} is done`);
  }
  for (let minute = 0; minute < proof.finish; minute++)
    for (let k = 0; k < resources; k++) {
      let taken = 0;
      for (let i = 0; i < count; i++)
        if (start[i]! <= minute && minute < start[i]! + duration[i]!) taken += request[i * resources + k]!;
      if (taken > capacity[k]!) found.push(`too much of ${k} at ${minute}`);
    }
  return found;
}
