/**
 * Holding a job to a day or a time: what it is held to and what that costs, and before a new hold is made, what it would
 * cost.
 */
import { proxy } from 'comlink';
import { useEffect, useState } from 'react';
import type { Book, Id } from '#boat-book';
import { holdInWords } from '#reckoning';
import { ChoiceField } from '../../parts/choice-fields.tsx';
import { Refused } from '../../parts/field.tsx';
import { RefusalLine } from '../../parts/form.tsx';
import { ClockField } from '../../parts/text-fields.tsx';
import { useRun } from '../../parts/use-run.ts';
import { HeldMark } from './held-mark.tsx';
import { atOf, clockAt } from './place-time.ts';
import type { HoldTrialTelling } from './plan-report.ts';
import { type PlanInHand, planWorker, seed } from './planner.ts';

interface Hold {
  readonly heldTo: Id;
  readonly heldAt: string | null;
}

/** so many days have a button each; of more, one is chosen */
const mostButtons = 4;

export function HoldPart({
  book,
  job: id,
  inHand,
}: {
  readonly book: Book;
  readonly job: Id;
  readonly inHand: PlanInHand;
}) {
  const { run, refusal } = useRun();
  const [thought, setThought] = useState<Hold | null>(null);
  const [asking, setAsking] = useState(false);
  const job = book.jobs[id];
  if (job === undefined || job.state !== 'open' || inHand.problem === null) return null;
  const { days } = inHand.problem;
  const held = holdInWords(book, job);
  const cost = inHand.holds?.find((one) => one.job === id) ?? null;
  const first = firstStart(inHand, id);
  const others = days.filter((day) => job.heldAt !== null || day.id !== job.heldTo);
  const leave = () => {
    setThought(null);
    setAsking(false);
  };
  return (
    <section className="days-hold">
      <h3>{held === null ? 'Hold it' : <Held to={held} />}</h3>
      {held !== null && (
        <>
          <p>{cost?.words ?? 'What it costs is being worked out.'}</p>
          <p className="days-hold-acts">
            <button type="button" onClick={() => void run('holdJob', { job: id, day: null })}>
              Let go
            </button>
          </p>
        </>
      )}
      {thought === null && (
        <div className="days-hold-acts">
          {others.length <= mostButtons ? (
            others.map((day) => (
              <button key={day.id} type="button" onClick={() => setThought({ heldTo: day.id, heldAt: null })}>
                Hold to {holdInWords(book, { heldTo: day.id, heldAt: null }) ?? day.label}
              </button>
            ))
          ) : (
            <ChoiceField
              label="Hold to a day"
              value=""
              none="choose a day"
              onChange={(day) => day && setThought({ heldTo: day, heldAt: null })}
              options={others.map((day) => ({ value: day.id, name: day.label }))}
            />
          )}
          <button type="button" aria-expanded={asking} onClick={() => setAsking(!asking)}>
            Hold to a time
          </button>
        </div>
      )}
      {thought === null && asking && <TimeToHold book={book} inHand={inHand} start={first} onAsk={setThought} />}
      {thought !== null && (
        <Trial
          key={`${thought.heldTo} ${thought.heldAt}`}
          book={book}
          job={id}
          hold={thought}
          inHand={inHand}
          onLeave={leave}
          onHold={async () => {
            const outcome = await run('holdJob', { job: id, day: thought.heldTo, at: thought.heldAt });
            if (outcome.kind === 'done') leave();
          }}
        />
      )}
      <RefusalLine refusal={refusal} />
    </section>
  );
}

/** The pin and what it is held to. */
export function Held({ to }: { readonly to: string }) {
  return (
    <span className="days-held-words">
      <HeldMark />
      Held to {to}
    </span>
  );
}

/** Minute the job's first step to come starts at in the plan; null where it is left out. */
function firstStart({ problem, picture }: PlanInHand, job: Id): number | null {
  const open = new Set(
    (problem?.steps ?? []).filter((step) => step.job === job && step.progress.kind === 'open').map(({ id }) => id),
  );
  const starts = (picture?.outcome.plan.steps ?? []).filter(({ step }) => open.has(step)).map(({ start }) => start);
  return starts.length === 0 ? null : Math.min(...starts);
}

function TimeToHold({
  book,
  inHand: { problem },
  start,
  onAsk,
}: {
  readonly book: Book;
  readonly inHand: PlanInHand;
  readonly start: number | null;
  readonly onAsk: (hold: Hold) => void;
}) {
  const days = problem?.days ?? [];
  const planned = start === null ? undefined : days.find((day) => start >= day.from && start < day.to);
  const quarter = start === null ? null : Math.ceil(start / 15) * 15;
  const [day, setDay] = useState(planned?.id ?? days[0]?.id ?? '');
  const [at, setAt] = useState(problem === null || quarter === null ? '' : clockAt(problem, quarter));
  const [refused, setRefused] = useState<string | null>(null);
  return (
    <div className="days-hold-time">
      <ChoiceField
        label="On"
        value={day}
        none="choose a day"
        onChange={setDay}
        options={days.map((one) => ({ value: one.id, name: one.label }))}
      />
      <ClockField label="Its first step starts at" value={at} onChange={setAt} />
      <Refused text={refused} />
      <button
        type="button"
        onClick={() => {
          const chosen = book.jobDays[day];
          if (chosen === undefined) return setRefused('Choose the job day first.');
          if (!/^\d{2}:\d{2}$/.test(at)) return setRefused('Give a time, such as 14:15.');
          if (at < chosen.from || at >= chosen.to)
            return setRefused(`The job day is from ${chosen.from} to ${chosen.to}: give a time in it.`);
          onAsk({ heldTo: day, heldAt: at });
        }}
      >
        What it would cost
      </button>
    </div>
  );
}

function Trial({
  book,
  job,
  hold,
  inHand,
  onHold,
  onLeave,
}: {
  readonly book: Book;
  readonly job: Id;
  readonly hold: Hold;
  readonly inHand: PlanInHand;
  readonly onHold: () => void;
  readonly onLeave: () => void;
}) {
  const [told, setTold] = useState<HoldTrialTelling | null>(null);
  const [failed, setFailed] = useState<string | null>(null);
  const { problem, picture } = inHand;
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked once of the plan that stood when it was thought of
  useEffect(() => {
    if (problem === null || picture === null) return;
    let live = true;
    const plan = { startsAt: problem.startsAt, outcome: picture.outcome };
    const now = atOf(problem, problem.now);
    planWorker
      .tryHold(
        { book, now, seed, job, hold, inHand: plan },
        proxy((telling) => {
          if (live) setTold(telling);
        }),
      )
      .catch((error: unknown) => {
        if (live) setFailed(error instanceof Error ? error.message : String(error));
      });
    return () => {
      live = false;
    };
  }, []);
  return (
    <div className="days-panel" data-trial={told?.finished ? 'over' : 'looking'}>
      <p role="status">
        {failed !== null
          ? `What it would cost could not be worked out: ${failed}.`
          : (told?.words ?? 'Working out what it would cost.')}
        {told !== null && !told.finished && <span className="soft"> Still looking.</span>}
      </p>
      <p className="days-hold-acts">
        <button type="button" className="main" onClick={onHold}>
          Hold to {holdInWords(book, hold) ?? 'its day'}
        </button>
        <button type="button" onClick={onLeave}>
          Leave it
        </button>
      </p>
    </div>
  );
}
