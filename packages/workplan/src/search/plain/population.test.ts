import { describe, expect, it } from 'vitest';
import { readPsplib } from '../../psplib.ts';
import { Dice } from '../dice.ts';
import { type PlainCase, plainCase } from './plain-case.ts';
import { Population } from './population.ts';
import { left, otherSide, right, Serial, tooLong } from './serial.ts';

const noLimit = 2 ** 30;

/** Cases of 1 to 6 resources, some of more than 127 units, so that every width of the packed profile is met. */
const cases = Array.from({ length: 60 }, (_, seed) => caseOf(seed + 1));

describe('laying activities one after the other', () => {
  it('places each where counting every resource minute by minute places it', () => {
    for (const plain of cases) {
      const serial = new Serial(plain);
      const start = new Int32Array(plain.count);
      for (let tries = 0; tries < 4; tries++) {
        const list = anyOrder(plain, new Dice(tries));
        const expected = placedByCounting(plain, list);
        expect(serial.lay(list, 0, left, start, noLimit)).toBe(endOf(plain, expected));
        expect([...start]).toEqual(expected);
      }
    }
  });

  it('never makes a schedule longer by laying it again from the other side, and keeps every rule', () => {
    for (const plain of cases) {
      const serial = new Serial(plain);
      const start = new Int32Array(plain.count);
      const list = anyOrder(plain, new Dice(7));
      let side = left;
      let end = serial.lay(list, 0, side, start, noLimit);
      for (let turn = 0; turn < 6; turn++) {
        serial.fromOtherSide(start, end, side, list, 0);
        side = otherSide(side);
        const again = serial.lay(list, 0, side, start, noLimit);
        expect(again).toBeLessThanOrEqual(end);
        end = again;
        const fromLeft = [...start].map((at, i) => (side === right ? end - at - plain.duration[i]! : at));
        expect(faults(plain, fromLeft, end)).toEqual([]);
      }
    }
  });

  it('gives up exactly where the schedule would be too long, and is none the worse for it', () => {
    for (const plain of cases) {
      const serial = new Serial(plain);
      const start = new Int32Array(plain.count);
      const list = anyOrder(plain, new Dice(3));
      const end = serial.lay(list, 0, left, start, noLimit);
      const whole = [...start];
      expect(serial.lay(list, 0, left, start, end - 1)).toBe(tooLong);
      expect(serial.lay(list, 0, left, start, end)).toBe(end);
      expect([...start]).toEqual(whole);
    }
  });
});

describe('the two populations', () => {
  it('keep a best that breaks no rule and never gets later', () => {
    for (const plain of cases.slice(0, 20)) {
      const population = new Population(plain, new Dice(1));
      let was = Number.POSITIVE_INFINITY;
      for (let spell = 0; spell < 10; spell++) {
        for (let n = 0; n < 60; n++) population.step();
        expect(population.best).toBeLessThanOrEqual(was);
        was = population.best;
        expect(faults(plain, [...population.bestStart], population.best)).toEqual([]);
      }
    }
  });

  it('come to the same with the same seed', () => {
    const [one, other] = [cases[4]!, cases[4]!].map((plain) => new Population(plain, new Dice(5)));
    for (let n = 0; n < 2000; n++) one!.step();
    for (let n = 0; n < 2000; n++) other!.step();
    expect([one!.best, one!.schedules, [...one!.bestStart]]).toEqual([
      other!.best,
      other!.schedules,
      [...other!.bestStart],
    ]);
  });

  it('cost one schedule a child', () => {
    const population = new Population(cases[4]!, new Dice(5));
    for (let n = 0; n < 160; n++) population.step();
    const filled = population.schedules;
    for (let n = 0; n < 100; n++) population.step();
    expect(population.schedules).toBe(filled + 100);
  });
});

/** Starts by the rule itself: the first minute after what it waits for from which all resources suffice throughout. */
function placedByCounting(plain: PlainCase, list: Int32Array): number[] {
  const { count, duration, resources, request, capacity } = plain;
  const taken = Array.from({ length: resources }, () => new Map<number, number>());
  const start = new Array<number>(count).fill(0);
  for (const i of list) {
    let at = 0;
    for (let b = plain.beforeFrom[i]!; b < plain.beforeFrom[i + 1]!; b++)
      at = Math.max(at, start[plain.before[b]!]! + duration[plain.before[b]!]!);
    const minutes = () => Array.from({ length: duration[i]! }, (_, n) => at + n);
    const fits = () =>
      minutes().every((minute) =>
        taken.every((by, k) => (by.get(minute) ?? 0) + request[i * resources + k]! <= capacity[k]!),
      );
    while (!fits()) at++;
    start[i] = at;
    for (const minute of minutes())
      taken.forEach((by, k) => {
        by.set(minute, (by.get(minute) ?? 0) + request[i * resources + k]!);
      });
  }
  return start;
}

function endOf(plain: PlainCase, start: readonly number[]): number {
  return Math.max(...start.map((at, i) => at + plain.duration[i]!));
}

function faults(plain: PlainCase, start: readonly number[], end: number): string[] {
  const { count, duration, resources, request, capacity } = plain;
  const found: string[] = [];
  for (let i = 0; i < count; i++) {
    if (start[i]! < 0 || start[i]! + duration[i]! > end) found.push(`activity ${i} at ${start[i]}`);
    for (let b = plain.beforeFrom[i]!; b < plain.beforeFrom[i + 1]!; b++) {
      const j = plain.before[b]!;
      if (start[j]! + duration[j]! > start[i]!) found.push(`${i} before ${j} is finished`);
    }
  }
  for (let minute = 0; minute < end; minute++)
    for (let k = 0; k < resources; k++) {
      let sum = 0;
      for (let i = 0; i < count; i++)
        if (start[i]! <= minute && minute < start[i]! + duration[i]!) sum += request[i * resources + k]!;
      if (sum > capacity[k]!) found.push(`resource ${k} at ${minute}: ${sum} of ${capacity[k]}`);
    }
  return found;
}

function anyOrder(plain: PlainCase, dice: Dice): Int32Array {
  const list: number[] = [];
  const isIn = new Set<number>();
  while (list.length < plain.count) {
    const ready = Array.from({ length: plain.count }, (_, i) => i).filter(
      (i) =>
        !isIn.has(i) &&
        [...plain.before.subarray(plain.beforeFrom[i], plain.beforeFrom[i + 1])].every((j) => isIn.has(j)),
    );
    const pick = ready[dice.below(ready.length)]!;
    list.push(pick);
    isIn.add(pick);
  }
  return Int32Array.from(list);
}

function caseOf(seed: number): PlainCase {
  const dice = new Dice(seed);
  const count = 6 + dice.below(14);
  const resources = 1 + (seed % 6);
  const most = seed % 3 === 0 ? 300 : 20;
  const lines = (rows: string[]) => rows.join('\n');
  const n = count + 2;
  const ties = Array.from({ length: n }, (_, index): number[] => {
    if (index === n - 1) return [];
    if (index === 0) return Array.from({ length: count }, (_, k) => k + 2);
    const after = Array.from({ length: count - index }, (_, k) => index + 2 + k).filter(() => dice.chance(0.15));
    return after.length > 0 ? after : [n];
  });
  const asks = Array.from({ length: n }, (_, index) => {
    const idle = index === 0 || index === n - 1;
    const uses = Array.from({ length: resources }, () => (idle || dice.chance(0.4) ? 0 : 1 + dice.below(most)));
    return [index + 1, 1, idle ? 0 : dice.below(10), ...uses];
  });
  const capacities = Array.from({ length: resources }, () => most + dice.below(most));
  const text = lines([
    `jobs (incl. supersource/sink ):  ${n}`,
    'PRECEDENCE RELATIONS:',
    'jobnr. #modes #successors successors',
    ...ties.map((after, index) => [index + 1, 1, after.length, ...after].join(' ')),
    'REQUESTS/DURATIONS:',
    'jobnr. mode duration',
    '----',
    ...asks.map((row) => row.join(' ')),
    'RESOURCEAVAILABILITIES:',
    'R',
    capacities.join(' '),
  ]);
  const plain = plainCase(readPsplib(text).problem);
  if (plain === null) throw new RangeError(`case ${seed} is not plain`);
  return plain;
}
