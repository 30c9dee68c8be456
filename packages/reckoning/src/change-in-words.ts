import type { PlannedChange, Problem, SetUpAspect } from '#workplan';

/**
 * The work of a set-up change as a sailor says it: `raise the mast`, `put the cover on`. Set-ups with other names
 * than the usual ones read `battery: from charging to resting`.
 */
export function setUpChangeInWords(aspect: string, from: string, to: string): string {
  const what = aspect.trim().toLowerCase();
  const state = to.trim().toLowerCase();
  const left = from.trim().toLowerCase();
  const the = /^(the|her) /.test(what) ? what : `the ${what}`;
  switch (state) {
    case 'up':
    case 'raised':
    case 'stepped':
      return what.includes('mast') ? `raise ${the}` : `bring ${the} up`;
    case 'down':
    case 'unstepped':
    case 'struck':
      return what.includes('mast') ? `lower ${the}` : `let ${the} down`;
    case 'lowered':
      return `lower ${the}`;
    case 'housed':
      return `house ${the}`;
    case 'removed':
    case 'out':
      return `take ${the} out`;
    case 'on':
      return `put ${the} on`;
    case 'off':
      return `take ${the} off`;
    case 'afloat':
      return 'launch her';
    case 'on trailer':
    case 'on the trailer':
      return left === 'afloat' ? 'recover her onto the trailer' : 'let her down onto the trailer';
    case 'propped':
    case 'on props':
      return 'prop her up';
    case 'on charge':
      return `put ${the} on charge`;
    case 'off charge':
      return `take ${the} off charge`;
    case 'open':
    case 'opened':
      return `open ${the}`;
    case 'shut':
    case 'closed':
      return `shut ${the}`;
    default:
      return `${what}: from ${left} to ${state}`;
  }
}

/** A planned change in words. */
export function changeInWords(change: Pick<PlannedChange, 'aspect' | 'from' | 'to'>, problem: Problem): string {
  const aspect = problem.aspects.find((each) => each.id === change.aspect);
  return aspect
    ? setUpChangeInWords(aspect.name, stateName(aspect, change.from), stateName(aspect, change.to))
    : `${change.aspect}: from ${change.from} to ${change.to}`;
}

/** The keeper's name for a state. */
export function stateName(aspect: SetUpAspect, state: string): string {
  return aspect.states.find((each) => each.id === state)?.name ?? state;
}

/** `the mast down`, `the cover on or half back` */
export function setUpInWords(problem: Problem, aspectId: string, states: readonly string[]): string {
  const aspect = problem.aspects.find((each) => each.id === aspectId);
  if (!aspect) return `${aspectId} ${states.join(' or ')}`;
  const names = states.map((state) => stateName(aspect, state).toLowerCase());
  const name = aspect.name.toLowerCase();
  // 'boat: on the trailer' stands for itself
  if (name === 'boat' || name === 'she' || name === 'her') return `her ${names.join(' or ')}`;
  return `the ${name} ${names.join(' or ')}`;
}
