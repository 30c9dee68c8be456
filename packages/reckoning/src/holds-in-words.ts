import type { Holder, Plan, Problem, StepHeld } from '#workplan';
import { changeInWords, setUpInWords } from './change-in-words.ts';
import { conditionInWords } from './condition-in-words.ts';
import { lengthInWords, listInWords, localMinute, minuteInWords, sentence } from './when-in-words.ts';

export interface HeldWords {
  /** why it does not start sooner, a sentence each, what binds most first */
  readonly holds: readonly string[];
  /** how much later it could start */
  readonly room: string;
}

/** What holds a step where it is and how much room it has, in sentences. */
export function heldInWords({ step, by, roomToSpare_min }: StepHeld, plan: Plan, problem: Problem): HeldWords {
  const start = plan.steps.find((each) => each.step === step)?.start ?? 0;
  const after = new Set(by.flatMap((holder) => (holder.kind === 'comes after' ? [holder.step] : [])));
  // what the step before it in the order takes with it (hands, room, a tool) goes without saying
  const told = by.filter(
    (holder) =>
      after.size === 0 ||
      !(
        holder.kind === 'room' ||
        holder.kind === 'tool' ||
        (holder.kind === 'hands busy' && after.has(holder.step ?? ''))
      ),
  );
  const holds = told
    .map((holder) => ({ holder, at: order.indexOf(holder.kind) }))
    .sort((a, b) => a.at - b.at)
    .map(({ holder }) => holderInWords(holder, step, plan, problem));
  const clock = localMinute(start + roomToSpare_min, problem).clock;
  return {
    holds: holds.length === 0 ? ['Nothing keeps it from starting sooner: it fits here with the rest.'] : holds,
    room:
      roomToSpare_min === 0
        ? 'None: a minute later, something else would have to move.'
        : `${sentence(lengthInWords(roomToSpare_min))}: started by ${clock}, it costs nothing and moves nothing else.`,
  };
}

const order: readonly Holder['kind'][] = [
  'comes after',
  'weather',
  'stores',
  'hand not there',
  'alone',
  'set-up',
  'hands busy',
  'tool',
  'room',
  'dust',
  'batch',
  'its wait',
  'what follows',
  'held',
  'break',
  'day begins',
  'now',
];

function holderInWords(holder: Holder, stepId: string, plan: Plan, problem: Problem): string {
  const clock = (minute: number) => localMinute(minute, problem).clock;
  const step = problem.steps.find(({ id }) => id === stepId);
  const titleOf = (id: string) => `'${problem.steps.find((each) => each.id === id)?.title ?? id}'`;
  const nameOf = (id: string) => problem.hands.find((hand) => hand.id === id)?.name ?? id;
  switch (holder.kind) {
    case 'day begins':
      return `Work on this day begins at ${clock(holder.at)}.`;
    case 'break':
      return `The break lasts until ${clock(holder.until)}.`;
    case 'now':
      return 'It starts as soon as it can from now.';
    case 'comes after': {
      const before = problem.steps.find(({ id }) => id === holder.step);
      const wait = before?.waits.find(({ id }) => id === holder.wait);
      const lag = holder.lag_min > 0 ? `, and ${lengthInWords(holder.lag_min)} more` : '';
      return wait
        ? `It waits for '${wait.title}' after ${titleOf(holder.step)}${lag}: over ${minuteInWords(holder.until, problem)}.`
        : `It comes after ${titleOf(holder.step)}${lag}: done ${minuteInWords(holder.until - holder.lag_min, problem)}.`;
    }
    case 'weather':
      return `It needs ${needInWords(holder.condition, step?.needs ?? {})}, which it has from ${clock(holder.from)}.`;
    case 'hands busy': {
      const who = listInWords(holder.hands.map(nameOf));
      const change = plan.changes.find(({ aspect, finish }) => aspect === holder.aspect && finish === holder.until);
      const what =
        holder.step !== null
          ? `with ${titleOf(holder.step)}`
          : change
            ? `(${changeInWords(change, problem)})`
            : 'with a set-up';
      return `${who} ${holder.hands.length === 1 ? 'is' : 'are'} busy until ${clock(holder.until)} ${what}.`;
    }
    case 'hand not there':
      return `${nameOf(holder.hand)} is there from ${clock(holder.from)}.`;
    case 'alone':
      return `It is not to be done alone, and a second hand is there from ${clock(holder.from)}.`;
    case 'set-up': {
      const states = step?.setUps.find(({ aspect }) => aspect === holder.aspect)?.states ?? [];
      return `It needs ${setUpInWords(problem, holder.aspect, states)}, which is so from ${clock(holder.until)}.`;
    }
    case 'tool':
      return `The ${toolName(holder.tool, problem)} is in use until then.`;
    case 'room':
      return `There is no room for more hands in the ${zoneName(holder.zone, problem)} before then.`;
    case 'dust':
      return holder.other === null
        ? 'Its dust and a wet finish near it are kept apart.'
        : `The dust of ${titleOf(holder.other)} and its wet finish are kept apart.`;
    case 'held':
      return `It is held to ${clock(holder.from)} or later.`;
    case 'stores':
      return `${sentence(problem.stores.find(({ id }) => id === holder.store)?.name ?? holder.store)}: here from ${minuteInWords(holder.from, problem)}.`;
    case 'batch':
      return `The batch it shares, of ${titleOf(holder.of)}, is mixed then.`;
    case 'its wait': {
      const wait = step?.waits.find(({ id }) => id === holder.wait)?.title ?? 'its wait';
      const would = {
        dry: 'stay dry',
        warm: 'stay warm enough',
        'before dew': 'keep clear of the dew until it is dry to the touch',
        'set-up': 'have her as it needs her',
      }[holder.need];
      return `Sooner, '${wait}' after it would not ${would}.`;
    }
    case 'what follows':
      return `Sooner, ${titleOf(holder.step)} would come too late after it.`;
  }
}

function needInWords(condition: string, needs: Parameters<typeof conditionInWords>[1]): string {
  if (condition === 'dry') return 'to be dry';
  if (condition === 'daylight') return 'daylight';
  const words = conditionInWords(condition, needs);
  return condition === 'air_min_C' || condition === 'air_max_C' ? `air ${words}` : words;
}

const toolName = (id: string, problem: Problem) =>
  (problem.tools.find((tool) => tool.id === id)?.name ?? id).toLowerCase();
const zoneName = (id: string, problem: Problem) =>
  (problem.zones.find((zone) => zone.id === id)?.name ?? id).toLowerCase();
