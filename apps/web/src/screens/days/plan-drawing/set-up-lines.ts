/** The set-ups of the boat through a plan, as stretches of time in which she stands one way. */
import type { Minute, Plan, Problem, SetUpAspect } from '#workplan';

export interface SetUpStretch {
  readonly aspect: string;
  readonly state: string;
  /** `mast up` */
  readonly name: string;
  readonly from: Minute;
  readonly to: Minute;
  /** a change of this plan brings her into it; otherwise she stands so when the plan begins */
  readonly begins: boolean;
  /** a change of this plan ends it; otherwise she still stands so at the end */
  readonly ends: boolean;
  /** how she is left between job days: as a day must end, or as she stands at first. Not drawn */
  readonly resting: boolean;
}

/** Every stretch of every aspect, in order of time within each aspect. Times under change belong to none. */
export function setUpStretches(problem: Problem, plan: Plan): SetUpStretch[] {
  return problem.aspects.flatMap((aspect) => {
    const resting = restingState(problem, aspect);
    const changes = plan.changes.filter((c) => c.aspect === aspect.id).sort((a, b) => a.start - b.start);
    const stretches: SetUpStretch[] = [];
    let state = aspect.initial;
    // how she stood before now is not in the plan
    let from = problem.now;
    let begins = false;
    for (const change of changes) {
      stretches.push(stretch(aspect, state, from, change.start, begins, true, resting));
      state = change.to;
      from = change.finish;
      begins = true;
    }
    stretches.push(stretch(aspect, state, from, problem.horizon, begins, false, resting));
    return stretches;
  });
}

/** `mast up`: the state with the name of what it is a state of, unless it says that itself. */
export function stateInWords(aspect: SetUpAspect, state: string): string {
  const name = aspect.states.find((s) => s.id === state)?.name ?? state;
  return name.toLowerCase().includes(aspect.name.toLowerCase()) ? name : `${aspect.name.toLowerCase()} ${name}`;
}

function restingState(problem: Problem, aspect: SetUpAspect): string {
  for (const day of problem.days) for (const end of day.endsIn) if (end.aspect === aspect.id) return end.state;
  return aspect.initial;
}

function stretch(
  aspect: SetUpAspect,
  state: string,
  from: Minute,
  to: Minute,
  begins: boolean,
  ends: boolean,
  resting: string,
): SetUpStretch {
  return {
    aspect: aspect.id,
    state,
    name: stateInWords(aspect, state),
    from,
    to,
    begins,
    ends,
    resting: state === resting,
  };
}
