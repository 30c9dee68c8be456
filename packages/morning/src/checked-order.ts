/** An order in which everything comes after what must come before it. It knows no trade: lines are ids. */

/** One thing must come before another, and why. */
export interface OrderRule {
  readonly before: string;
  readonly after: string;
  /** a whole sentence: it is told when somebody would turn the two round */
  readonly because: string;
  /** `always`: turned round, it hurts or sinks; `usual`: a keeper may have a reason to do it the other way */
  readonly holds: 'always' | 'usual';
}

export type CheckedOrder =
  | { readonly kind: 'order'; readonly ids: readonly string[] }
  /** they wait for each other: each comes before the next, and the last before the first */
  | { readonly kind: 'ring'; readonly ring: readonly string[] };

/**
 * The order nearest to the wanted one in which every rule holds: at each place the line that is wanted first of those
 * that wait for nothing. A wanted order that breaks no rule comes back as it was. A rule holds between two lines that are
 * both there: what must come before another also without those between has a rule of its own.
 *
 * @param wanted  ids, each once, at most 1,000
 * @param rules   in any order; the same one twice is one
 * @throws RangeError for an id that stands twice
 */
export function checkedOrder(wanted: readonly string[], rules: readonly OrderRule[]): CheckedOrder {
  if (new Set(wanted).size !== wanted.length) throw new RangeError('an id stands twice in the wanted order');
  const before = waitsFor(wanted, rules);
  const ids: string[] = [];
  const left = new Set(wanted);
  while (left.size > 0) {
    // sets keep the wanted order, so that the first that is free is the one wanted first
    const next = [...left].find((id) => ![...before.get(id)!].some((other) => left.has(other)));
    if (next === undefined) return { kind: 'ring', ring: ringIn(left, before) };
    ids.push(next);
    left.delete(next);
  }
  return { kind: 'order', ids };
}

/** The rules that an order breaks, in the order of the lines that come too early. */
export function brokenRules(order: readonly string[], rules: readonly OrderRule[]): readonly OrderRule[] {
  const place = new Map(order.map((id, i) => [id, i]));
  return rules
    .filter(({ before, after }) => (place.get(before) ?? -1) > (place.get(after) ?? Number.POSITIVE_INFINITY))
    .sort((a, b) => place.get(a.after)! - place.get(b.after)!);
}

export type MovedLine =
  | { readonly kind: 'moved'; readonly ids: readonly string[] }
  /** the rules it would break, which the order before did not */
  | { readonly kind: 'against'; readonly rules: readonly OrderRule[] };

/**
 * One line put at another place, the others as they were; or the rules that this would break.
 *
 * @param to  its new place, counted from 0 in the order without it
 * @throws RangeError for an id that is not in the order, or a place that there is not
 */
export function movedLine(order: readonly string[], id: string, to: number, rules: readonly OrderRule[]): MovedLine {
  if (!order.includes(id)) throw new RangeError(`there is no line ${id} in the order`);
  if (!Number.isInteger(to) || to < 0 || to >= order.length)
    throw new RangeError(`a place from 0 to ${order.length - 1}, got ${to}`);
  const others = order.filter((other) => other !== id);
  const ids = [...others.slice(0, to), id, ...others.slice(to)];
  const broken = new Set(brokenRules(order, rules));
  const against = brokenRules(ids, rules).filter((rule) => !broken.has(rule));
  return against.length === 0 ? { kind: 'moved', ids } : { kind: 'against', rules: against };
}

/** What each line that is there waits for. */
function waitsFor(wanted: readonly string[], rules: readonly OrderRule[]): ReadonlyMap<string, ReadonlySet<string>> {
  const found = new Map(wanted.map((id) => [id, new Set<string>()]));
  for (const { before, after } of rules) if (found.has(before)) found.get(after)?.add(before);
  return found;
}

/** A ring among lines each of which waits for another of them. */
function ringIn(left: ReadonlySet<string>, before: ReadonlyMap<string, ReadonlySet<string>>): readonly string[] {
  const walked: string[] = [];
  let at = [...left][0]!;
  while (!walked.includes(at)) {
    walked.push(at);
    at = [...before.get(at)!].find((other) => left.has(other))!;
  }
  return walked.slice(walked.indexOf(at)).reverse();
}
