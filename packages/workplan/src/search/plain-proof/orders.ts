import type { ProofCase } from './proof-case.ts';

/**
 * What goes before what: arcs between sides (value[head] ≥ value[tail] + weight), some of them only where a figure of
 * two values says so. Two activities that together ask for more of a resource than there is get such a figure:
 * 1 where the lower number goes first, 0 where the other does.
 */
export interface Orders {
  /** arcs leaving side s are listed in arc[arcFrom[s] … arcFrom[s + 1]) */
  readonly arcFrom: Int32Array;
  readonly arc: Int32Array;
  readonly tail: Int32Array;
  readonly head: Int32Array;
  readonly weight: Int32Array;
  /** side of the figure that must be known to `needs` for the arc to hold, or −1 for an arc that always holds */
  readonly onlyIf: Int32Array;
  readonly needs: Int32Array;
  /** arcs that hold once side s is known to its most: heldBy[heldFrom[s] … heldFrom[s + 1]) */
  readonly heldFrom: Int32Array;
  readonly heldBy: Int32Array;
  /** figures: activities, then the finish of all, then one for each pair that cannot be at work together */
  readonly finish: number;
  readonly pairs: number;
}

/** More pairs than this are left to the resources alone. */
const mostPairs = 30_000;

export function ordersOf(plain: ProofCase, duration: Int32Array): Orders {
  const { count, resources, capacity, request, afterFrom, after } = plain;
  const follows = reach(plain);
  const arcs: [tail: number, head: number, weight: number, onlyIf: number, needs: number][] = [];
  const both = (i: number, j: number, weight: number, onlyIf: number, needs: number) => {
    arcs.push([2 * i, 2 * j, weight, onlyIf, needs], [2 * j + 1, 2 * i + 1, weight, onlyIf, needs]);
  };
  const finish = count;
  for (let i = 0; i < count; i++) {
    for (let a = afterFrom[i]!; a < afterFrom[i + 1]!; a++) both(i, after[a]!, duration[i]!, -1, 0);
    if (afterFrom[i] === afterFrom[i + 1]) both(i, finish, duration[i]!, -1, 0);
  }
  const couples: [number, number][] = [];
  for (let i = 0; i < count; i++)
    for (let j = i + 1; j < count; j++) {
      if (duration[i] === 0 || duration[j] === 0 || follows[i * count + j] || follows[j * count + i]) continue;
      for (let k = 0; k < resources; k++)
        if (request[i * resources + k]! + request[j * resources + k]! > capacity[k]!) {
          couples.push([i, j]);
          break;
        }
    }
  const pairs = couples.length <= mostPairs ? couples.length : 0;
  for (let p = 0; p < pairs; p++) {
    const [i, j] = couples[p]!;
    const figure = count + 1 + p;
    both(i, j, duration[i]!, 2 * figure, 1);
    both(j, i, duration[j]!, 2 * figure + 1, 0);
  }
  const sides = 2 * (count + 1 + pairs);
  const [arcFrom, arc] = listed(sides, arcs, (one) => one[0]);
  const [heldFrom, heldBy] = listed(sides, arcs, (one) => one[3]);
  return {
    arcFrom,
    arc,
    tail: Int32Array.from(arcs, (one) => one[0]),
    head: Int32Array.from(arcs, (one) => one[1]),
    weight: Int32Array.from(arcs, (one) => one[2]),
    onlyIf: Int32Array.from(arcs, (one) => one[3]),
    needs: Int32Array.from(arcs, (one) => one[4]),
    heldFrom,
    heldBy,
    finish,
    pairs,
  };
}

/** follows[i · count + j] is 1 where j waits for i, directly or not. Activities must be numbered in such an order. */
function reach({ count, afterFrom, after }: ProofCase): Uint8Array {
  const follows = new Uint8Array(count * count);
  for (let i = count - 1; i >= 0; i--)
    for (let a = afterFrom[i]!; a < afterFrom[i + 1]!; a++) {
      const j = after[a]!;
      follows[i * count + j] = 1;
      for (let m = j + 1; m < count; m++) if (follows[j * count + m]) follows[i * count + m] = 1;
    }
  return follows;
}

function listed<T>(sides: number, all: readonly T[], key: (one: T) => number): [Int32Array, Int32Array] {
  const lists: number[][] = Array.from({ length: sides }, () => []);
  all.forEach((one, index) => {
    if (key(one) >= 0) lists[key(one)]!.push(index);
  });
  const from = new Int32Array(sides + 1);
  lists.forEach((list, side) => {
    from[side + 1] = from[side]! + list.length;
  });
  return [from, Int32Array.from(lists.flat())];
}
