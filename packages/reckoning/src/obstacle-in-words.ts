import type { Obstacle, Problem } from '#workplan';
import { setUpInWords } from './change-in-words.ts';
import { conditionInWords, conditionsInWords } from './condition-in-words.ts';
import {
  dayInWords,
  lengthInWords,
  listInWords,
  localMinute,
  minuteInWords,
  sentence,
  weekdayInWords,
} from './when-in-words.ts';

export interface ObstacleWords {
  /** one sentence: what stands in the way, with its figures */
  readonly why: string;
  /** one sentence: the change that would let the job in; null where there is none the keeper can make */
  readonly gain: string | null;
}

/** Why a job is not in the plan, and the one change that would let it in. */
export function obstacleInWords(obstacle: Obstacle, problem: Problem): ObstacleWords {
  const step = 'step' in obstacle ? problem.steps.find((each) => each.id === obstacle.step) : undefined;
  const job = problem.jobs.find((each) => each.id === obstacle.job);
  const title = step ? `'${step.title}'` : 'It';
  switch (obstacle.kind) {
    case 'not in stores': {
      const name = problem.stores.find((line) => line.id === obstacle.store)?.name ?? obstacle.store;
      const lastDay = problem.days.at(-1);
      const by = lastDay ? ` by ${lastDay.label}` : '';
      return obstacle.from === null
        ? {
            why: `${sentence(name)}: not in stores, and not on order.`,
            gain: `Get it${by}, or say when it can be here.`,
          }
        : {
            why: `${sentence(name)}: not in stores until ${minuteInWords(obstacle.from, problem)}.`,
            gain: `Get it sooner, or add a job day after ${dayInWords(localMinute(obstacle.from, problem).day)}.`,
          };
    }
    case 'no second hand':
      return {
        why: `${title} is not to be done alone, and no second hand is there for ${lengthInWords(step?.minutes ?? 0)} when it could be done.`,
        gain: 'Ask someone along for that time on a job day.',
      };
    case 'no hands':
      return {
        why: `${title} needs ${obstacle.need} ${obstacle.need === 1 ? 'hand' : 'hands'} at once; no job day has them together for long enough.`,
        gain: `Add a hand for ${lengthInWords(step?.minutes ?? 0)} on a job day.`,
      };
    case 'no tool': {
      const name = problem.tools.find((tool) => tool.id === obstacle.tool)?.name ?? obstacle.tool;
      return { why: `${title} needs the ${name}, which is not there.`, gain: `Get or borrow the ${name}.` };
    }
    case 'no such place':
      return {
        why: `${title} needs ${featureInWords(obstacle.feature)}, which no job day's place has.`,
        gain: `Plan a job day at a place with ${featureInWords(obstacle.feature)}.`,
      };
    case 'weather':
      return weatherWords(obstacle, problem, title);
    case 'set-up out of reach': {
      const wanted = setUpInWords(problem, obstacle.aspect, obstacle.states);
      return {
        why: `${title} needs ${wanted}, and no way was found to bring that about with the hands, the calm and the time of the job days.`,
        gain: 'Add a hand, a calmer day, or the change itself to the boat’s set-ups.',
      };
    }
    case 'longer than any day':
      return {
        why: `${title} takes ${lengthInWords(obstacle.minutes)} in one go; the longest stretch in any job day is ${lengthInWords(obstacle.longest_min)}.`,
        gain: 'Split the step in two, or lengthen a job day.',
      };
    case 'wait not over in time': {
      const wait = step?.waits.find((each) => each.id === obstacle.wait);
      return {
        why: `'${wait?.title ?? obstacle.wait}' after ${title} would not be over by ${minuteInWords(obstacle.by, problem)}.`,
        gain: 'An earlier or a warmer job day would let it in.',
      };
    }
    case 'wait needs not kept': {
      const wait = step?.waits.find((each) => each.id === obstacle.wait);
      const margin_C = wait?.needs.beforeDew?.dewMargin_min_C;
      if (obstacle.need === 'beforeDew' && margin_C !== undefined)
        return {
          why: `The coat of ${title} must be dry to the touch before dew: ${margin_C} °C clear of the dew point until then, and at no time in the plan would it be.`,
          gain: 'A drier evening, an earlier start, or a roof over it would let it in.',
        };
      return {
        why: `'${wait?.title ?? obstacle.wait}' after ${title} must ${waitNeedInWords(obstacle.need, wait, problem)} all through, and at no time in the plan would it.`,
        gain: waitNeedGain(obstacle.need),
      };
    }
    case 'deadline':
      return {
        why:
          obstacle.earliest === null
            ? `It cannot be done by ${minuteInWords(obstacle.deadline, problem)}, nor in the days after it.`
            : `It is to be done by ${minuteInWords(obstacle.deadline, problem)}, and can be over ${minuteInWords(obstacle.earliest, problem)} at the earliest.`,
        gain: 'Add a job day before that date, or change the date.',
      };
    case 'window missed': {
      const before = problem.steps.find((each) => each.id === obstacle.before);
      const link = problem.precedence.find((each) => each.before === obstacle.before && each.after === obstacle.step);
      const within = link?.greatest_min == null ? 'its time' : lengthInWords(link.greatest_min);
      return {
        why: `${title} must follow '${before?.title ?? obstacle.before}' within ${within}, and no job day falls in that time.`,
        gain: 'Add a job day sooner after it.',
      };
    }
    case 'waits for a job left out': {
      const other = problem.jobs.find((each) => each.id === obstacle.other);
      return {
        why: `It comes after '${other?.title ?? obstacle.other}', which is left out.`,
        gain: `Let '${other?.title ?? obstacle.other}' in first.`,
      };
    }
    case 'steps wait for each other': {
      const titles = obstacle.steps.map((id) => `'${problem.steps.find((each) => each.id === id)?.title ?? id}'`);
      return {
        why: `${listInWords(titles)} wait for each other in a ring.`,
        gain: 'Take one of these follow-ons away.',
      };
    }
    case 'held elsewhere':
      return {
        why: `${title} is held to a day in which it does not fit.`,
        gain: 'Free it, or hold it to another day.',
      };
    case 'no room left':
      return noRoomWords(obstacle, job?.weight);
  }
}

function noRoomWords(
  { need_min, free_min }: Extract<Obstacle, { kind: 'no room left' }>,
  weight: number | undefined,
): ObstacleWords {
  const matters = `What is in the plan matters more for its time${weight === undefined ? '' : ` (this one weighs ${weight})`}.`;
  const need = lengthInWords(need_min);
  if (free_min >= need_min)
    return {
      why: `It fits alone but not beside the rest: it needs ${need}, and the ${lengthInWords(free_min)} left over do not lie where its weather, set-ups and waits would have it. ${matters}`,
      gain: `A job day with ${need} more in fit weather would let it in.`,
    };
  const free = free_min > 0 ? `${lengthInWords(free_min)} are left over` : 'nothing is left over';
  return {
    why: `It fits alone but not beside the rest: it needs ${need}, and ${free}. ${matters}`,
    gain: `${lengthInWords(need_min - free_min)} more on a job day would let it in.`,
  };
}

function weatherWords(
  obstacle: Extract<Obstacle, { kind: 'weather' }>,
  problem: Problem,
  title: string,
): ObstacleWords {
  const step = problem.steps.find((each) => each.id === obstacle.step);
  const needs = step?.needs ?? {};
  const all = conditionsInWords(needs);
  const asks = all === '' ? conditionInWords(obstacle.condition, needs) : all;
  const day = problem.days.find((each) => each.id === obstacle.bestDay);
  const best =
    day === undefined || obstacle.best_min <= 0
      ? 'no job day has such an hour'
      : `${dayCalled(day, problem)} has ${lengthInWords(obstacle.best_min)} at the most`;
  return {
    why: `${title} needs ${lengthInWords(obstacle.need_min)} in one go ${asksInWords(asks)}; ${best}. What stands in the way is ${standsInTheWay(obstacle.condition)}.`,
    gain: weatherGain(obstacle.condition, lengthInWords(obstacle.need_min), needs.air_min_C),
  };
}

/** `Saturday`, or `Saturday 9 May` where the plan has two. */
function dayCalled(day: Problem['days'][number], problem: Problem): string {
  const called = (each: Problem['days'][number]) => weekdayInWords(localMinute(each.from, problem).day);
  const alike = problem.days.filter((each) => called(each) === called(day)).length;
  return alike > 1 ? day.label : called(day);
}

const asksInWords = (asks: string) => (asks === '' ? 'of fit weather' : `(${asks})`);

function standsInTheWay(condition: string): string {
  switch (condition) {
    case 'dry':
      return 'rain';
    case 'wind_max_kn':
      return 'the wind';
    case 'air_min_C':
      return 'cold air';
    case 'air_max_C':
      return 'hot air';
    case 'surface_min_C':
      return 'a cold surface';
    case 'humidity_max_pct':
      return 'damp air';
    case 'dewMargin_min_C':
      return 'dew';
    case 'daylight':
      return 'the dark';
    default:
      return condition;
  }
}

function weatherGain(condition: string, need: string, air_min_C: number | undefined): string {
  switch (condition) {
    case 'dry':
      return `${sentence(need)} without rain on a job day, or a roof over her, would let it in.`;
    case 'wind_max_kn':
      return `${sentence(need)} of less wind on a job day would let it in.`;
    case 'daylight':
      return `A job day with ${need} more of daylight would let it in.`;
    case 'air_min_C':
      return `${sentence(need)} ${air_min_C === undefined ? 'of warmer air' : `from ${air_min_C} °C`} on a job day would let it in.`;
    case 'dewMargin_min_C':
    case 'humidity_max_pct':
      return `${sentence(need)} of drier air on a job day, earlier in the day as a rule, would let it in.`;
    default:
      return `${sentence(need)} of fitter weather on a job day would let it in.`;
  }
}

function featureInWords(feature: string): string {
  switch (feature) {
    case 'water':
      return 'running water';
    case 'mains':
      return 'mains power';
    case 'level':
      return 'level ground';
    case 'slope':
      return 'a slope';
    default:
      return feature;
  }
}

function waitNeedInWords(need: string, wait: Problem['steps'][number]['waits'][number] | undefined, problem: Problem) {
  if (need === 'dry') return 'stay dry';
  if (need === 'air_min_C')
    return wait?.needs.air_min_C === undefined ? 'stay warm' : `stay from ${wait.needs.air_min_C} °C`;
  const still = problem.aspects.find((aspect) => aspect.id === need);
  if (!still) return `keep ${need}`;
  const asked = wait?.setUps.find((each) => each.aspect === need);
  return asked ? `have ${setUpInWords(problem, need, asked.states)}` : `leave the ${still.name.toLowerCase()} as it is`;
}

function waitNeedGain(need: string): string {
  if (need === 'dry') return 'A cover over it, a roof, or a dry night would let it in.';
  if (need === 'air_min_C') return 'Warmer nights, or warmth brought to it, would let it in.';
  return 'Another order of the set-ups, or a later end to the day, would let it in.';
}
