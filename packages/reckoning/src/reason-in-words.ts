import type { Gain, Problem, Relaxation, WayIn } from '#workplan';
import { conditionInWords, conditionsInWords } from './condition-in-words.ts';
import { dayInWords, lengthInWords, listInWords, localMinute, sentence, weekdayInWords } from './when-in-words.ts';

/**
 * The change that would let a job in, as one sentence with its figures: `Two more dry hours on Sunday, 13:00 to 15:00,
 * would let it in.`, `A second hand from 14:00 on Saturday.` Times are the place's.
 */
export function wayInWords(
  { job, letsIn, relaxation }: Pick<WayIn, 'job' | 'letsIn' | 'relaxation'>,
  problem: Problem,
) {
  const others = letsIn.filter((id) => id !== job);
  const too =
    others.length === 0
      ? ''
      : ` ${listInWords(others.map((id) => jobTitle(id, problem)))} ${others.length === 1 ? 'comes' : 'come'} in with it.`;
  const change = relaxationInWords(relaxation, problem);
  return relaxation.kind === 'fit hours' ? `${change}, would let it in.${too}` : `${change}.${too}`;
}

/** That nothing less of the same kind does, where that is proved; null where it is only the least that was found. */
export function leastInWords({ leastProved }: Pick<WayIn, 'leastProved'>): string | null {
  return leastProved ? 'Nothing less of it does.' : null;
}

/** The one change that gains most, what it brings in and by how much: two sentences. */
export function gainInWords({ relaxation, weight, jobs }: Gain, problem: Problem, weightNow: number): string {
  const titles = listInWords(jobs.map((id) => jobTitle(id, problem)));
  const brings = jobs.length === 0 ? 'More comes in' : `${titles} ${jobs.length === 1 ? 'comes' : 'come'} in`;
  return `${relaxationInWords(relaxation, problem)}. ${sentence(brings)}: ${figure(weight)} more in weight, on ${figure(weightNow)}.`;
}

/** A change to a problem without a full stop: `A second hand from 14:00 on Saturday`. */
export function relaxationInWords(relaxation: Relaxation, problem: Problem): string {
  const clock = (minute: number) => localMinute(minute, problem).clock;
  const onDay = (id: string) => dayOfId(id, problem);
  switch (relaxation.kind) {
    case 'freed':
      return 'Free of the day it is held to';
    case 'stores by': {
      const names = relaxation.stores.map((id) => problem.stores.find((line) => line.id === id)?.name ?? id);
      const list = sentence(listInWords(names));
      return `${list}${list.includes(',') ? ':' : ''} in stores by ${dayCalled(relaxation.by, problem)}`;
    }
    case 'tool': {
      const tool = problem.tools.find(({ id }) => id === relaxation.tool);
      const name = tool?.name ?? relaxation.tool;
      const has = tool?.capacity.some(({ count }) => count > 0) ?? false;
      if (!has && relaxation.more === 1) return `${sentence(name)}: one, got or borrowed`;
      return `${sentence(name)}: ${inWords(relaxation.more)}${has ? ' more' : ''}, got or borrowed`;
    }
    case 'earlier start':
      return `Starting at ${clock(relaxation.from)} on ${onDay(relaxation.day)}, ${lengthInWords(relaxation.minutes)} sooner`;
    case 'later end':
      return `Going on until ${clock(relaxation.to)} on ${onDay(relaxation.day)}, ${lengthInWords(relaxation.minutes)} longer`;
    case 'second hand': {
      const there = problem.hands.some(
        (hand, index) => index > 0 && hand.present.some(({ from, to }) => from < relaxation.to && relaxation.from < to),
      );
      return `${there ? 'One hand more' : 'A second hand'} from ${clock(relaxation.from)} on ${onDay(relaxation.day)}`;
    }
    case 'fit hours':
      return fitHoursInWords(relaxation, problem);
    case 'under a roof':
      return `A roof over her on ${onDay(relaxation.day)} and the night after`;
    case 'place':
      return `A place with ${featureInWords(relaxation.feature)} on ${onDay(relaxation.day)}`;
    case 'without job':
      return `Without ${jobTitle(relaxation.job, problem)}`;
    case 'later date': {
      const { day, clock: at } = localMinute(relaxation.deadline, problem);
      const when =
        at === '00:00' ? dayInWords(localMinute(relaxation.deadline - 1, problem).day) : `${dayInWords(day)} ${at}`;
      return `With its date ${relaxation.days === 1 ? 'a day' : `${inWords(relaxation.days)} days`} later, ${when}`;
    }
    case 'another day': {
      const asks = relaxation.needs === null ? '' : `, in fit weather (${conditionsInWords(relaxation.needs)})`;
      return `One more job day of ${lengthInWords(relaxation.to - relaxation.from)}, such as ${dayInWords(localMinute(relaxation.from, problem).day)} ${clock(relaxation.from)} to ${clock(relaxation.to)}${asks}`;
    }
  }
}

/** `Two more dry hours on Sunday, 13:00 to 15:00` */
function fitHoursInWords(hours: Extract<Relaxation, { kind: 'fit hours' }>, problem: Problem): string {
  const [from, to] = [localMinute(hours.from, problem), localMinute(hours.to, problem)];
  const conditions = Object.keys(hours.needs);
  const noun = hours.hours === 1 ? 'hour' : 'hours';
  const count = sentence(inWords(hours.hours));
  const kind =
    conditions.length === 1 && conditions[0] === 'dry'
      ? `${count} more dry ${noun}`
      : conditions.length === 1
        ? `${count} more ${noun} ${withInWords(conditions[0]!, hours.needs)}`
        : `${count} more fit ${noun} (${conditionsInWords(hours.needs)})`;
  const day = dayOfId(hours.day, problem);
  if (from.day !== to.day && to.clock !== '00:00')
    return `${kind} between ${from.clock} on ${dayCalled(hours.from, problem)} and ${to.clock} on ${dayCalled(hours.to, problem)}`;
  const inARow = hours.to - hours.from === hours.hours * 60;
  return `${kind} on ${day}, ${inARow ? '' : 'between '}${from.clock} ${inARow ? 'to' : 'and'} ${to.clock === '00:00' ? '24:00' : to.clock}`;
}

/** `from 16 °C`, `with the wind up to 12 knots`, `with humidity up to 85 %` */
function withInWords(condition: string, needs: Parameters<typeof conditionInWords>[1]): string {
  const words = conditionInWords(condition, needs);
  switch (condition) {
    case 'wind_max_kn':
      return `with the ${words}`;
    case 'air_min_C':
    case 'air_max_C':
      return words;
    default:
      return `with ${words}`;
  }
}

/** The day of a job day by its id: `Saturday`, with its date where it is a week off or more. */
function dayOfId(id: string, problem: Problem): string {
  const day = problem.days.find((each) => each.id === id);
  return day === undefined ? id : dayCalled(day.from, problem);
}

/** `Saturday` where it falls in the six days after now, else `Saturday 9 May`. */
function dayCalled(minute: number, problem: Problem): string {
  const { day } = localMinute(minute, problem);
  return minute - problem.now < 6 * 1440 ? weekdayInWords(day) : dayInWords(day);
}

function jobTitle(id: string, problem: Problem): string {
  return `'${problem.jobs.find((job) => job.id === id)?.title ?? id}'`;
}

function featureInWords(feature: string): string {
  const words: Record<string, string> = {
    water: 'running water',
    mains: 'mains power',
    level: 'level ground',
    slope: 'a slope',
  };
  return words[feature] ?? feature;
}

/** Small whole numbers as words, others as figures. */
function inWords(n: number): string {
  return ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'][n] ?? String(n);
}

/** A weight to one decimal at the most. */
function figure(weight: number): string {
  return String(Math.round(weight * 10) / 10);
}
