/**
 * The rules a plan must keep, by name, with what each asks. Each is judged in `violations.ts`, where the meaning
 * of a doubtful case is written down.
 */
export const ruleMeanings = {
  'known things': 'what the plan names is in the problem, once, with whole minutes',
  'whole job':
    'all open steps of a job are in the plan, or none; the left-out list names exactly the jobs that are not',
  'already begun': 'what is done or under way stands in the plan as it was',
  'not before now': 'open work starts at or after now',
  'step time': 'a step takes its minutes, less a mixing it shares, plus its abrading',
  'job day': 'work lies within one job day, the one it names',
  'set-out and clear-up': 'work lies after the set-out and before the clear-up of its day',
  break: 'work does not overlap a break of its day',
  place: 'the place of the day has what the step needs: water, mains, level, slope',
  hands: 'exactly as many different hands as the work needs',
  'hand present': 'a hand is there for all of the work',
  'one thing at a time': 'a hand does one thing at a time',
  keeper: 'the keeper is one of the hands where the work asks for it; every set-up change does',
  'not alone': 'two hands are there throughout a step not to be done alone',
  tools: 'no more of a tool is in use than there is',
  'room in the zone': 'no more hands are busy in a zone than find room',
  dry: 'no rain reaches the work',
  wind: 'the wind is no more than the work allows',
  air: 'the air is warm enough and not too warm for the work',
  surface: 'the surface is warm enough for the work',
  humidity: 'the air is dry enough for the work',
  'dew margin': 'the surface is far enough over the dew point for the work',
  daylight: 'the work lies between sunrise and sunset',
  stores: 'what the step uses is on hand when it starts',
  held: 'a held step lies within what it is held to',
  deadline: 'all steps and waits of a job in the plan are over by its deadline',
  'comes after': 'a step does not come after one that is neither done nor in the plan',
  'least lag': 'a step starts no sooner after another, or its wait, than the least lag',
  'greatest lag': 'a step starts no later after another, or its wait, than the greatest lag',
  abrading: 'past its recoat window a step takes exactly the abrading it needs, within it none',
  'wait time': 'a wait starts as its step finishes and ends when its product is ready',
  'wait over': 'a wait is over by the horizon',
  'wait dry': 'no rain reaches a wait that must stay dry',
  'wait warm': 'the air stays warm enough for a wait',
  'step set-up': 'the set-ups a step needs hold throughout it',
  'wait set-up': 'the set-ups a wait needs hold throughout it',
  still: 'no set-up is changed that a wait needs still',
  'set-up chain': 'a set-up is changed from the state it is in, by a change there is, in its minutes, one at a time',
  'change set-up': 'the other set-ups a change needs hold throughout it',
  'day ends in': 'a day with work in it ends in the set-ups it must end in',
  batch: 'a step shares a batch of its own mix, mixed by another open step, once it is mixed',
  'pot life': 'a step that shares a batch is finished within its pot life',
  'dust and wet': 'dust keeps away from wet finishes in its zone and those near it',
  // last, though it is about waits: the seeds of the stored answers go by a rule's place
  'before dew': 'a coat in the open keeps its margin over the dew point until it is dry to the touch',
} as const;

export type Rule = keyof typeof ruleMeanings;

/** One breach of one rule: which, a sentence with the figures, and where. */
export interface Violation {
  readonly rule: Rule;
  readonly what: string;
  readonly where: {
    readonly step?: string;
    readonly wait?: string;
    readonly aspect?: string;
    readonly day?: string;
    readonly job?: string;
    readonly hand?: string;
    readonly tool?: string;
    readonly zone?: string;
  };
  /** the first minute of the breach; null where it has none */
  readonly minute: number | null;
}

/** The names of all rules, in the order they are judged in. */
export const rules: readonly Rule[] = Object.keys(ruleMeanings) as Rule[];
