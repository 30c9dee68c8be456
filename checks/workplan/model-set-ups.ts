/**
 * The part of the constraint model that is about set-ups: a bounded row of changes for each aspect, and what must
 * hold still between them.
 *
 * How many changes an aspect can need. Take a best plan. Between two demands on the aspect that follow each other
 * (a step with its waits, rain on a wait, a change of another aspect, a day's end), the walk through its states can
 * be cut down to one that meets no state twice, at the same minutes and with less work; so at most (states − 1)
 * changes go into one gap. A gap needs none where the demands on both sides allow one state only, and the same. If x
 * of the demands are for state s alone, the rest break their row into at most 2 · (demands − x) + 1 gaps that count,
 * one less where s is the state at the start. A change that another aspect's change asks for is a demand itself;
 * where two aspects ask for each other's states the count would have no end, and the model refuses the problem.
 */
import type { Problem, SetUpAspect, SetUpNeed } from '#workplan';
import { dayOfMinutes, hourOf, presenceOf, runsOf, startsFor, workableForChange } from './minute-tables.ts';
import {
  type Draft,
  type SlotTerms,
  type StepTerms,
  type Stretch,
  setText,
  sumText,
  type WaitTerms,
} from './model-draft.ts';

interface Row {
  readonly aspect: SetUpAspect;
  /** `states[k]` after k changes, as a term; numbers are places in `aspect.states` plus 1 */
  readonly states: readonly string[];
  readonly slots: readonly SlotTerms[];
}

/** All changes of set-ups as terms of the model, with what steps, waits, changes and days ask of them. */
export function setUpTerms(draft: Draft, steps: readonly StepTerms[]): SlotTerms[] {
  const { problem } = draft;
  const counts = changeCounts(problem);
  const rows = problem.aspects.map((aspect, at) => changeRow(draft, aspect, at, counts.get(aspect.id)!));
  const rowOf = (id: string) => rows.find(({ aspect }) => aspect.id === id)!;
  const need = (stretch: Stretch, { aspect, states }: SetUpNeed, name: string) =>
    holds(draft, rowOf(aspect), stretch, states, name);
  for (const [index, terms] of steps.entries()) {
    const { step, open } = terms;
    draft.rule(`${step.id}: step set-up, wait set-up, still, wait dry`);
    // what has begun need only go on as it stands now
    const counts = (wanted: SetUpNeed) => open || wanted.states.includes(rowOf(wanted.aspect).aspect.initial);
    for (const wanted of step.setUps.filter(counts)) need(ahead(problem, terms, open), wanted, `step_${index}`);
    for (const wait of terms.waits) {
      const stretch = ahead(problem, wait, open);
      for (const wanted of wait.wait.setUps.filter(counts)) need(stretch, wanted, wait.name);
      for (const id of wait.wait.still) keepStill(draft, rowOf(id), stretch);
      if (wait.wait.needs.dry) keepDry(draft, rows, wait, terms);
    }
  }
  for (const { slots } of rows)
    for (const slot of slots) {
      draft.rule(`${slot.name}: change set-up`);
      for (const [kind, change] of slot.changes.entries())
        for (const wanted of change.setUps)
          need({ ...slot, on: `(${slot.kind} = ${kind + 1})` }, wanted, `${slot.name}_${kind + 1}`);
    }
  daysEnd(draft, rows, steps);
  return rows.flatMap(({ slots }) => slots);
}

/** The part of a stretch that the plan answers for: all of it, or from now on where it has begun. */
function ahead(problem: Problem, stretch: Stretch, open: boolean): Stretch {
  if (open) return stretch;
  const from = String(Math.max(Number(stretch.from), problem.now));
  return { ...stretch, from };
}

/** A day with work in it ends in its set-ups: at its last minute's end, and so not while one is being changed. */
function daysEnd(draft: Draft, rows: readonly Row[], steps: readonly StepTerms[]): void {
  const work: Stretch[] = [...steps.filter(({ open }) => open), ...rows.flatMap(({ slots }) => slots)];
  for (const [index, day] of draft.problem.days.entries()) {
    if (day.endsIn.length === 0) continue;
    draft.rule(`${day.id}: day ends in`);
    const worked = draft.variable('bool', `worked_${index}`);
    // a step of no minutes may stand at the very end of a day
    for (const { on, from, mayBeEmpty } of work)
      draft.constraint(
        `(${on} /\\ ${from} >= ${day.from} /\\ ${from} ${mayBeEmpty ? '<=' : '<'} ${day.to}) -> ${worked}`,
      );
    const end = { on: worked, from: String(day.to), to: String(day.to + 1), mayBeEmpty: false };
    for (const { aspect, state } of day.endsIn)
      holds(draft, rows.find((row) => row.aspect.id === aspect)!, end, [state], `end_${index}`);
  }
}

function changeCounts(problem: Problem): Map<string, number> {
  const counts = new Map<string, number>();
  const askers = (aspect: SetUpAspect) =>
    problem.aspects.filter(({ changes }) =>
      changes.some(({ setUps }) => setUps.some((one) => one.aspect === aspect.id)),
    );
  const count = (aspect: SetUpAspect, above: readonly string[]): number => {
    const known = counts.get(aspect.id);
    if (known !== undefined) return known;
    if (above.includes(aspect.id)) throw new RangeError(`changes of ${aspect.id} ask for each other's set-ups`);
    const ofChanges = askers(aspect).flatMap((other) => {
      const states = other.changes.flatMap(({ setUps }) => setUps.filter((one) => one.aspect === aspect.id));
      const asked = [...new Set(states.flatMap((one) => one.states))];
      return Array.from({ length: count(other, [...above, aspect.id]) }, () => asked);
    });
    const demands = [...demandsOfWork(problem, aspect), ...ofChanges];
    const gaps = aspect.states.map(({ id }) => {
      const alone = demands.filter((states) => states.length === 1 && states[0] === id).length;
      return 2 * (demands.length - alone) + (id === aspect.initial ? 0 : 1);
    });
    const most = Math.min(demands.length, ...gaps) * (aspect.states.length - 1);
    counts.set(aspect.id, most);
    return most;
  };
  for (const aspect of problem.aspects) count(aspect, []);
  return counts;
}

/** For each demand on an aspect, the states it allows. A step with its waits is one where all allow the same. */
function demandsOfWork(problem: Problem, aspect: SetUpAspect): (readonly string[])[] {
  const shelters = aspect.states.filter((state) => state.shelters).map(({ id }) => id);
  const dayOf = dayOfMinutes(problem);
  // rain between which nobody works is one demand: no change can come in between
  let spells = 0;
  let apart = true;
  for (let minute = 0; minute < problem.horizon; minute++) {
    if (isWet(problem, minute) && apart) spells++;
    apart = !isWet(problem, minute) && (dayOf[minute] !== 0 || apart);
  }
  const ofSteps = problem.steps.flatMap(({ setUps, waits }) => {
    const all = [...setUps, ...waits.flatMap((wait) => wait.setUps)]
      .filter((need) => need.aspect === aspect.id)
      .map(({ states }) => states);
    const same = all.every((states) => states.join() === all[0]!.join());
    const dry = shelters.length > 0 && waits.some((wait) => wait.needs.dry);
    return [...(same ? all.slice(0, 1) : all), ...(dry ? Array.from({ length: spells }, () => shelters) : [])];
  });
  const ofDays = problem.days.flatMap(({ endsIn }) =>
    endsIn.filter((end) => end.aspect === aspect.id).map(({ state }) => [state]),
  );
  return [...ofSteps, ...ofDays];
}

function changeRow(draft: Draft, aspect: SetUpAspect, at: number, count: number): Row {
  const { problem } = draft;
  draft.rule(`${aspect.id}: set-up chain, hands, keeper`);
  const stateOf = (id: string) => aspect.states.findIndex((state) => state.id === id) + 1;
  const dayOf = dayOfMinutes(problem);
  const kinds = aspect.changes.map((change) => ({
    change,
    starts: startsFor(workableForChange(problem, change), dayOf, change.minutes),
  }));
  const allStarts = [...new Set(kinds.flatMap(({ starts }) => starts))].sort((a, b) => a - b);
  const lengths = [...new Set([0, ...aspect.changes.map(({ minutes }) => minutes)])].sort((a, b) => a - b);
  const states = [String(stateOf(aspect.initial))];
  const slots: SlotTerms[] = [];
  const never = problem.horizon;
  for (let k = 1; k <= count; k++) {
    const name = `change_${at}_${k}`;
    const kind = draft.variable(`0..${aspect.changes.length}`, `${name}_kind`);
    const from = draft.variable(setText([...allStarts, never]), `${name}_start`);
    const length = draft.variable(setText(lengths), `${name}_length`);
    const to = draft.variable(`0..${never}`, `${name}_finish`);
    const state = draft.variable(`1..${aspect.states.length}`, `${name}_state`);
    const hands = problem.hands.map((hand, h) => {
      const busy = draft.variable('bool', `${name}_hand_${h}`);
      const there = presenceOf(problem, hand).map((span) => `(${from} >= ${span.from} /\\ ${to} <= ${span.to})`);
      draft.constraint(`${busy} -> (${there.join(' \\/ ') || 'false'})`);
      return busy;
    });
    draft.constraint(`${to} = ${from} + ${length}`);
    draft.constraint(`${length} = [0, ${aspect.changes.map(({ minutes }) => minutes).join(', ')}][${kind} + 1]`);
    const none = [`${from} = ${never}`, `${length} = 0`, `${state} = ${states[k - 1]}`, `${sumText(hands)} = 0`];
    draft.constraint(`${kind} = 0 -> (${none.join(' /\\ ')})`);
    for (const [place, { change, starts }] of kinds.entries()) {
      const parts = [
        `${states[k - 1]} = ${stateOf(change.from)}`,
        `${state} = ${stateOf(change.to)}`,
        `${length} = ${change.minutes}`,
        `${from} in ${setText(starts)}`,
        `${sumText(hands)} = ${change.hands}`,
        `${hands[0]}`,
      ];
      draft.constraint(`${kind} = ${place + 1} -> (${parts.join(' /\\ ')})`);
    }
    const before = slots.at(-1);
    if (before) {
      draft.constraint(`${before.kind} = 0 -> ${kind} = 0`);
      draft.constraint(`${before.to} <= ${from}`);
    }
    states.push(state);
    slots.push({
      name,
      aspect,
      kind,
      length,
      changes: aspect.changes,
      on: `(${kind} > 0)`,
      from,
      to,
      mayBeEmpty: false,
      hands,
    });
  }
  return { aspect, states, slots };
}

/** Lets a row stand in one of some states throughout a stretch, with no change within it. */
function holds(draft: Draft, row: Row, stretch: Stretch, states: readonly string[], name: string): void {
  const wanted = states.map((id) => row.aspect.states.findIndex((state) => state.id === id) + 1);
  const isOn = stretch.mayBeEmpty ? `(${stretch.on} /\\ ${stretch.from} < ${stretch.to})` : stretch.on;
  const after = draft.variable(`0..${row.slots.length}`, `after_${name}_${row.aspect.id.replaceAll(/\W/g, '_')}`);
  draft.constraint(`not ${isOn} -> ${after} = 0`);
  for (const [k, state] of row.states.entries()) {
    const [last, next] = [row.slots[k - 1], row.slots[k]];
    const terms = [`${state} in {${wanted.join(',')}}`];
    if (last) terms.push(`${last.to} <= ${stretch.from}`, `${last.kind} > 0`);
    if (next) terms.push(`${stretch.to} <= ${next.from}`);
    draft.constraint(`(${isOn} /\\ ${after} = ${k}) -> (${terms.join(' /\\ ')})`);
  }
}

function keepStill(draft: Draft, { slots }: Row, wait: Stretch): void {
  for (const slot of slots) {
    const clear = `${slot.to} <= ${wait.from} \\/ ${wait.to} <= ${slot.from} \\/ ${wait.to} <= ${wait.from}`;
    draft.constraint(`(${wait.on} /\\ ${slot.kind} > 0) -> (${clear})`);
  }
}

const isWet = (problem: Problem, minute: number) => hourOf(problem, minute).rain && !hourOf(problem, minute).sheltered;

/** Every run of rain that a wait meets in the open, it meets under one sheltering state. */
function keepDry(draft: Draft, rows: readonly Row[], wait: WaitTerms, { step, open }: StepTerms): void {
  const { problem } = draft;
  if (problem.zones.find(({ id }) => id === step.zone)?.inside) return;
  const dry = ({ aspect }: Row) => aspect.states.filter(({ shelters }) => shelters).map(({ id }) => id);
  const sheltering = rows.filter((one) => dry(one).length > 0);
  if (sheltering.length > 1) throw new RangeError('the model takes at most one aspect with sheltering states');
  const row = sheltering[0];
  // begun with nothing over it: the plan cannot help it
  if (!open && !(row && dry(row).includes(row.aspect.initial))) return;
  const stretch = ahead(problem, wait, open);
  for (const [at, rain] of runsOf((minute) => isWet(problem, minute), 0, problem.horizon).entries()) {
    if (rain.to <= wait.earliest || (!open && rain.to <= problem.now)) continue;
    const meets = `${stretch.on} /\\ ${stretch.from} < ${rain.to} /\\ ${stretch.to} > ${rain.from} /\\ ${stretch.to} > ${stretch.from}`;
    if (!row) {
      draft.constraint(`not (${meets})`);
      continue;
    }
    const name = `${wait.name}_rain_${at}`;
    const on = draft.variable('bool', name);
    draft.constraint(`(${meets}) -> ${on}`);
    const from = `max(${stretch.from}, ${rain.from})`;
    const to = `min(${stretch.to}, ${rain.to})`;
    holds(draft, row, { on, from, to, mayBeEmpty: false }, dry(row), name);
  }
}
