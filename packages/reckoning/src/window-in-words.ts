import type { Day } from '#boat-book';
import type { Conditions } from '#sky';
import { localAt } from '#units';
import type { MinuteSpan, Obstacle, Problem } from '#workplan';
import { changeInWords } from './change-in-words.ts';
import { conditionsInWords } from './condition-in-words.ts';
import { obstacleInWords } from './obstacle-in-words.ts';
import type { FoundWindow, StandingWindow, WindowSpan } from './standing-window.ts';
import { dayNear } from './to-get-in-words.ts';
import { lengthInWords, listInWords, sentence } from './when-in-words.ts';
import type { WillingHours } from './window-hours.ts';

export interface WindowWords {
  /** the answer in one sentence: `5 h dry, from 12 °C: tomorrow 13:00 to 18:00.` or why there is none */
  readonly answer: string;
  /** what to do before, a sentence each: `Prepare 40 minutes tonight, from 18:20: ease the nuts, put the cover on.` */
  readonly before: readonly string[];
  /** what goes with it, a sentence each: second hand, air, waits, dates */
  readonly also: readonly string[];
}

/** A standing window in words, as seen from today at the place. */
export function windowInWords(window: StandingWindow, willing: WillingHours, today: Day): WindowWords {
  switch (window.kind) {
    case 'window':
      return foundInWords(window, today);
    case 'any hours':
      return {
        answer: `It asks nothing of the weather: any ${lengthInWords(window.minutes)} will do.`,
        before: [],
        also: [],
      };
    case 'cannot be planned':
      return { answer: window.words, before: [], also: [] };
    case 'none':
      return { answer: noneInWords(window, willing, today), before: [], also: [] };
  }
}

function foundInWords(window: FoundWindow, today: Day): WindowWords {
  const { problem } = window;
  const at = (minute: number) => whenNear(problem, minute, today);
  const spans = window.spans.map((span, n) => {
    const asks = conditionsInWords(asksOf(span, problem));
    const length = lengthInWords(span.to - span.from);
    const what = window.anyWeather
      ? `${length} in any weather`
      : asks === ''
        ? length
        : asks.startsWith('dry')
          ? `${length} ${asks}`
          : `${length}, ${asks}`;
    const stays =
      span.dryTo !== null && span.dryTo > span.to
        ? `, and dry until ${whenFrom(problem, span.dryTo, span.to, today)}`
        : '';
    return `${n === 0 ? sentence(what) : `then ${what}`}: ${at(span.from)} to ${whenFrom(problem, span.to, span.from, today)}${stays}`;
  });
  return { answer: `${spans.join('; ')}.`, before: beforeInWords(window, today), also: alsoInWords(window, today) };
}

function beforeInWords(window: FoundWindow, today: Day): string[] {
  const { problem } = window;
  const words: string[] = [];
  for (const { name, from, ordered } of window.toGet)
    words.push(
      ordered
        ? `Wait for: ${name}, expected ${whenNear(problem, from, today)}.`
        : `Order today: ${name}, here ${dayNear(local(problem, from).day, today)}.`,
    );
  const byDay = new Map<Day, FoundWindow['before'][number][]>();
  for (const piece of window.before) {
    const { day } = local(problem, piece.span.from);
    byDay.set(day, [...(byDay.get(day) ?? []), piece]);
  }
  for (const [day, pieces] of byDay) {
    const minutes = pieces.reduce((sum, { span }) => sum + span.to - span.from, 0);
    const first = local(problem, pieces[0]!.span.from);
    const when = day === today ? (first.clock >= evening ? 'tonight' : 'today') : dayNear(day, today);
    words.push(
      `Prepare ${lengthInWords(minutes)} ${when}, from ${first.clock}: ${listInWords(pieces.map((piece) => pieceInWords(piece, window)))}.`,
    );
  }
  return words;
}

/** from when today is called tonight */
const evening = '17:00';

function pieceInWords(piece: FoundWindow['before'][number], { problem, plan }: FoundWindow): string {
  if (piece.kind === 'step') return `'${problem.steps.find(({ id }) => id === piece.id)?.title ?? piece.id}'`;
  const change = plan.changes.find(({ aspect, start }) => aspect === piece.id && start === piece.span.from)!;
  return changeInWords(change, problem);
}

function alsoInWords(window: FoundWindow, today: Day): string[] {
  const { problem } = window;
  const words: string[] = [];
  if (window.with.length > 0)
    words.push(`${listInWords(window.with.map((title) => `'${title}'`))} comes first, and is in these hours too.`);
  if (window.helpers > 0) {
    const times = joined(window.notAlone).map(
      (span) => `${whenNear(problem, span.from, today)} to ${whenFrom(problem, span.to, span.from, today)}`,
    );
    const when = times.length === 0 ? '' : `, ${listInWords(times)}`;
    words.push(
      `Not alone: ${window.helpers === 1 ? 'a second hand is' : `${window.helpers} more hands are`} needed${when}.`,
    );
  }
  if (!window.anyWeather) {
    const least = Math.min(...window.spans.map(({ air_C }) => air_C.least));
    const most = Math.max(...window.spans.map(({ air_C }) => air_C.most));
    const margin = Math.min(...window.spans.map(({ dewMargin_C }) => dewMargin_C));
    words.push(
      `Air ${least === most ? `${figure(least)} °C` : `${figure(least)} to ${figure(most)} °C`}, at the least ${figure(Math.max(0, margin))} °C clear of the dew point.`,
    );
  }
  const ends = window.spans.at(-1)!.to;
  if (window.over > ends) words.push(`All over ${whenNear(problem, window.over, today)}, waits included.`);
  if (window.tooCold)
    words.push('A wait meets hours below the least temperature of its product: it may never reach its strength.');
  if (window.waitAssumed)
    words.push('A wait runs on past the weather that is known: those hours are taken as wet and cool.');
  if (window.pastDate !== null) words.push(`That is past its date, ${dayNear(window.pastDate, today)}.`);
  return words;
}

function noneInWords(window: Extract<StandingWindow, { kind: 'none' }>, willing: WillingHours, today: Day): string {
  if (window.knownTo === null)
    return 'No weather is known for the days ahead, and it asks for some: enter the weather as it is forecast.';
  const known = `The weather is known to ${dayNear(window.knownTo.day, today)}${window.knownTo.hour === 24 ? '' : ` ${String(window.knownTo.hour).padStart(2, '0')}:00`}`;
  const { problem } = window;
  const obstacle = window.because[0];
  if (problem === null || obstacle === undefined)
    return `${known}, with no time in it between ${willing.from} and ${willing.to} on a day that is no job day yet.`;
  const why = obstacleToWindow(obstacle, problem, today);
  return ofTheWeather.has(obstacle.kind) ? `${known}; ${why}` : sentence(why);
}

const ofTheWeather: ReadonlySet<Obstacle['kind']> = new Set(['weather', 'wait needs not kept', 'longer than any day']);

function obstacleToWindow(obstacle: Obstacle, problem: Problem, today: Day): string {
  const step = 'step' in obstacle ? problem.steps.find(({ id }) => id === obstacle.step) : undefined;
  switch (obstacle.kind) {
    case 'weather': {
      const asks = conditionsInWords(step?.needs ?? {});
      const day = problem.days.find(({ id }) => id === obstacle.bestDay);
      const best =
        obstacle.best_min > 0 && day
          ? `the longest is ${lengthInWords(obstacle.best_min)}, ${dayNear(local(problem, day.from).day, today)}`
          : 'not an hour of it';
      return `no ${lengthInWords(obstacle.need_min)} in one go ${asks === '' ? 'of fit weather' : `(${asks})`} in it for '${step?.title}': ${best}.`;
    }
    case 'longer than any day':
      return `'${step?.title}' takes ${lengthInWords(obstacle.minutes)} in one go, and the longest stretch of those hours is ${lengthInWords(obstacle.longest_min)}.`;
    case 'wait needs not kept': {
      const wait = step?.waits.find(({ id }) => id === obstacle.wait);
      if (obstacle.need === 'beforeDew')
        return `the coat of '${step?.title}' must be dry to the touch before dew, and in no such hours would it be.`;
      const need =
        obstacle.need === 'dry'
          ? 'stay dry all through'
          : obstacle.need === 'air_min_C' && wait?.needs.air_min_C !== undefined
            ? `stay from ${wait.needs.air_min_C} °C all through`
            : 'have her left as she is all through';
      return `'${wait?.title ?? 'the wait'}' after '${step?.title}' must ${need}, and in no such hours would it.`;
    }
    case 'not in stores': {
      const name = problem.stores.find(({ id }) => id === obstacle.store)?.name ?? 'something';
      return obstacle.from === null
        ? `${name} is not in stores, and not on order: say when it can be here.`
        : `${name} is not here before ${whenNear(problem, obstacle.from, today)}.`;
    }
    case 'no such place':
    case 'set-up out of reach':
    case 'no hands':
    case 'no second hand':
      return decapitalised(obstacleInWords(obstacle, problem).why.replaceAll('no job day', 'none of those hours'));
    default:
      return decapitalised(obstacleInWords(obstacle, problem).why);
  }
}

/** What the steps of a span ask of the weather, taken together. */
function asksOf({ steps }: WindowSpan, problem: Problem): Conditions {
  const needs = problem.steps.filter(({ id }) => steps.includes(id)).map((step) => step.needs);
  const least = (key: (typeof upTo)[number]) => needs.flatMap((need) => need[key] ?? []);
  const merged: { -readonly [K in keyof Conditions]: Conditions[K] } = {};
  if (needs.some((need) => need.dry)) merged.dry = true;
  if (needs.some((need) => need.daylight)) merged.daylight = true;
  for (const key of upTo) if (least(key).length > 0) merged[key] = Math.min(...least(key));
  for (const key of from) {
    const asked = needs.flatMap((need) => need[key] ?? []);
    if (asked.length > 0) merged[key] = Math.max(...asked);
  }
  return merged;
}

const upTo = ['wind_max_kn', 'air_max_C', 'humidity_max_pct'] as const;
const from = ['air_min_C', 'surface_min_C', 'dewMargin_min_C'] as const;

function local(problem: Problem, minute: number) {
  return localAt(Date.parse(problem.startsAt) + minute * 60_000, problem.timeZone);
}

/** `tomorrow 13:00` */
function whenNear(problem: Problem, minute: number, today: Day): string {
  const { day, clock } = local(problem, minute);
  return `${dayNear(day, today)} ${clock}`;
}

/** Spans in order, those that touch made one. */
function joined(spans: FoundWindow['notAlone']): MinuteSpan[] {
  const out: { from: number; to: number }[] = [];
  for (const span of spans) {
    const last = out.at(-1);
    if (last !== undefined && span.from <= last.to) last.to = Math.max(last.to, span.to);
    else out.push({ ...span });
  }
  return out;
}

/** `18:00`, with the day where it is not that of `beside`. */
function whenFrom(problem: Problem, minute: number, beside: number, today: Day): string {
  return local(problem, minute).day === local(problem, beside).day
    ? local(problem, minute).clock
    : whenNear(problem, minute, today);
}

/** `13`, `4.5` */
const figure = (value: number) => String(Math.round(value * 10) / 10).replace('-', '−');

const decapitalised = (words: string) =>
  words.startsWith("'") ? words : words.charAt(0).toLowerCase() + words.slice(1);
