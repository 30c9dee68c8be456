/** The part of the constraint model that is about what steps share: hands, tools, room, and air without dust. */
import type { StepTerms, Work } from './model-draft.ts';
import { type Draft, type Stretch, sumText } from './model-draft.ts';

export function sharingTerms(draft: Draft, steps: readonly StepTerms[], changes: readonly Work[]): void {
  draft.rule('one thing at a time');
  const work: Work[] = [...steps, ...changes];
  pairs(work, (one, other) => {
    for (const [h, busy] of one.hands.entries()) {
      const also = other.hands[h]!;
      if (busy === 'false' || also === 'false' || (busy === 'true' && also === 'true')) continue;
      draft.constraint(`(${busy} /\\ ${also}) -> (${draft.before(one, other)} \\/ ${draft.before(other, one)})`);
    }
  });
  tools(draft, steps);
  room(draft, steps);
  dust(draft, steps);
}

function pairs<T>(all: readonly T[], visit: (one: T, other: T) => void): void {
  for (const [index, one] of all.entries()) for (const other of all.slice(index + 1)) visit(one, other);
}

/**
 * What steps use together never exceeds what there is. Use rises only where a step starts, and what there is falls
 * only at known minutes; so it is enough to count then, where something open is in use.
 *
 * @param uses  for each step how much of it, 0 for none
 * @param there in which minutes there is how much
 */
function together(
  draft: Draft,
  name: string,
  steps: readonly StepTerms[],
  uses: (step: StepTerms) => number,
  there: readonly { readonly from: number; readonly to: number; readonly count: number }[],
): void {
  const users = steps.filter((step) => step.step.progress.kind !== 'done' && uses(step) > 0);
  const inUse = (at: string, label: string) =>
    users.map((user, index) => {
      const busy = draft.variable('bool', `${name}_${label}_${index}`);
      draft.constraint(`(${user.on} /\\ ${user.from} <= ${at} /\\ ${at} < ${user.to}) -> ${busy}`);
      draft.constraint(`${busy} -> ${user.on}`);
      return busy;
    });
  const total = (busy: readonly string[]) => sumText(users.map((user, index) => `${uses(user)} * ${busy[index]}`));
  for (const [index, user] of users.entries()) {
    if (!user.open) continue;
    const used = total(inUse(user.from, `start_${index}`));
    const isOn = user.mayBeEmpty ? `${user.on} /\\ ${user.from} < ${user.to}` : user.on;
    for (const { from, to, count } of there)
      draft.constraint(`(${isOn} /\\ ${user.from} >= ${from} /\\ ${user.from} < ${to}) -> ${used} <= ${count}`);
  }
  for (const [place, { from, count }] of there.entries()) {
    if (from <= 0) continue;
    const used = total(inUse(String(from), `change_${place}`));
    for (const user of users)
      if (user.open)
        draft.constraint(`(${user.on} /\\ ${user.from} <= ${from} /\\ ${from} < ${user.to}) -> ${used} <= ${count}`);
  }
}

function tools(draft: Draft, steps: readonly StepTerms[]): void {
  for (const [index, tool] of draft.problem.tools.entries()) {
    draft.rule(`${tool.id}: tools`);
    const uses = ({ step }: StepTerms) => step.tools.find((use) => use.tool === tool.id)?.count ?? 0;
    together(draft, `tool_${index}`, steps, uses, tool.capacity);
  }
}

function room(draft: Draft, steps: readonly StepTerms[]): void {
  for (const [index, zone] of draft.problem.zones.entries()) {
    draft.rule(`${zone.id}: room in the zone`);
    const uses = ({ step, open, hands }: StepTerms) => {
      if (step.zone !== zone.id) return 0;
      return open ? step.hands : hands.filter((busy) => busy === 'true').length;
    };
    together(draft, `room_${index}`, steps, uses, [{ from: 0, to: draft.problem.horizon, count: zone.room }]);
  }
}

function dust(draft: Draft, steps: readonly StepTerms[]): void {
  draft.rule('dust and wet');
  const { zones } = draft.problem;
  const near = (one: string | null, other: string | null) => {
    if (one === null || other === null) return false;
    const reaches = (a: string, b: string) => zones.find(({ id }) => id === a)!.near.includes(b);
    return one === other || reaches(one, other) || reaches(other, one);
  };
  for (const dusty of steps) {
    const { from, abrade } = dusty;
    const spells: Stretch[] = [];
    if (dusty.step.dusty) spells.push(dusty);
    else if (abrade !== '0') spells.push({ on: dusty.on, from, to: `${from} + ${abrade}`, mayBeEmpty: true });
    for (const wet of steps) {
      if (wet === dusty || !near(dusty.step.zone, wet.step.zone) || (!wet.open && !dusty.open)) continue;
      const wetSpells: Stretch[] = [...(wet.step.wet ? [wet] : []), ...wet.waits.filter(({ wait }) => wait.wet)];
      for (const spell of spells) for (const wetSpell of wetSpells) apart(draft, spell, wetSpell);
    }
  }
}

/** Two stretches share no minute. */
function apart(draft: Draft, one: Stretch, other: Stretch): void {
  const clear = [draft.before(one, other), draft.before(other, one)];
  for (const { from, to, mayBeEmpty } of [one, other]) if (mayBeEmpty) clear.push(`${to} <= ${from}`);
  draft.constraint(`(${one.on} /\\ ${other.on}) -> (${clear.join(' \\/ ')})`);
}
