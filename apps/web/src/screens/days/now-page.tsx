/** On the day itself: the step in hand with its cautions and three answers, what is curing, and what comes next. */
import { type ReactNode, useEffect, useState } from 'react';
import type { Book, Id } from '#boat-book';
import { waitCourseInWords } from '#reckoning';
import type { PlannedWait, Problem } from '#workplan';
import { BelowHeading } from '../../parts/below-heading.tsx';
import { capital, countInWords, minutesInWords } from '../../parts/in-words.ts';
import { onDemand } from '../../parts/on-demand.tsx';
import { todayAt } from '../../reading/today.ts';
import { useOpenBook } from '../../reading/use-open-book.ts';
import { address } from '../../shell/route.ts';
import { TimerLine } from '../../timers/timer-line.tsx';
import { momentOf, ticksOf } from './in-hand.ts';
import { MovedLine, useMoved } from './moved-line.tsx';
import { type NowHead, nowHeadOf } from './now-head.ts';
import { itemName, momentInWords } from './now-words.ts';
import { clockAt, dayAt, instantOf, minuteOf, whenInWords } from './place-time.ts';
import { waitTitle } from './plan-drawing/wait-bars.ts';
import { PlanProgress } from './plan-progress.tsx';
import { planBook, usePlan, usePlanInHand } from './planner.ts';
import { RigsPast, rigsPast } from './rigs-past.tsx';
import { StepInHand } from './step-in-hand.tsx';

const FinishSheet = onDemand(() => import('../work/finish-sheet.tsx'));

/** the page's clock moves on this often. [ms] */
const tick_ms = 20_000;
/** on the day an answer matters more than the last per cent. [ms] */
const onTheDay_ms = 1200;
/** how far a step may be behind its planned start before the plan is said to be behind. [min] */
const behind_min = 10;

export default function NowPage() {
  const book = useOpenBook();
  return (
    <BelowHeading meanwhile={<NowHeading book={book} />}>
      <Now book={book} />
    </BelowHeading>
  );
}

/** The page as far as its heading: what is in hand by the plan there is. */
function NowHeading({ book }: { readonly book: Book }) {
  const { problem, picture } = usePlanInHand();
  if (!problem || !picture) return <NoPlanYet book={book} />;
  const { said, past, first } = nowHeadOf(book, problem, picture.outcome.plan);
  return (
    <div className="days days-now">
      <div className="days-now-main">
        <OverTheStep book={book} said={said} past={past} />
        {first ? (
          <section className="days-in-hand">
            <h1>{itemName(first, problem)}</h1>
          </section>
        ) : (
          <h1>Nothing more is planned</h1>
        )}
      </div>
    </div>
  );
}

/** @param children  what stands below */
function NoPlanYet({ book, children }: { readonly book: Book; readonly children?: ReactNode }) {
  return (
    <div className="days days-narrow">
      <RigsPast book={book} />
      <h1>Now</h1>
      {children}
    </div>
  );
}

function OverTheStep({
  book,
  said,
  past,
}: Pick<NowHead, 'said' | 'past'> & {
  readonly book: Book;
}) {
  return (
    <>
      <RigsPast book={book} past={past} />
      <p className="small soft">{said}</p>
    </>
  );
}

function Now({ book }: { readonly book: Book }) {
  const inHand = usePlan(book, onTheDay_ms);
  const moved = useMoved(book, inHand);
  const clock = useClock();
  const { problem, picture } = inHand;
  if (!problem || !picture)
    return (
      <NoPlanYet book={book}>
        <p>{inHand.words ?? 'Making the plan.'}</p>
        <p>
          <a className="button" href="#/days/plan">
            The job days
          </a>{' '}
          {inHand.state === 'nothing to plan' && inHand.noWork && (
            <a className="button" href="#/work/put-in">
              Put in a job
            </a>
          )}
        </p>
      </NoPlanYet>
    );
  const now = minuteOf(problem, clock);
  const plan = picture.outcome.plan;
  const moment = momentOf(problem, plan, now, ticksOf(book));
  const today = dayAt(problem, now);
  const later = moment.next.filter((item) => dayAt(problem, item.planned.start) === today);
  const dayNow = problem.days.find((day) => day.from <= now && now < day.to);
  const late = moment.first ? now - moment.first.planned.start : 0;
  const open = moment.first?.kind === 'change' || moment.first?.step.progress.kind === 'open';
  return (
    <div className="days days-now" data-plan-state={inHand.state}>
      <div className="days-now-main">
        <OverTheStep book={book} said={momentInWords(problem, now)} past={rigsPast(book, todayAt(book))} />
        {moment.first ? (
          <StepInHand key={moment.first.key} item={moment.first} book={book} problem={problem} now={now} leading />
        ) : (
          <h1>Nothing more is planned</h1>
        )}
        {open && late > behind_min && (
          <p className="days-behind">
            The plan is {minutesInWords(late)} behind the clock.{' '}
            <button
              type="button"
              className="words"
              onClick={() => planBook(book, { afresh: true, spend_ms: onTheDay_ms })}
            >
              Plan the rest from now
            </button>
          </p>
        )}
        <MovedLine book={book} moved={moved} />
        {moment.beside.map((item) => (
          <StepInHand key={item.key} item={item} book={book} problem={problem} now={now} leading={false} />
        ))}
        <JobsWithNothingLeft book={book} waiting={moment.curing.map((wait) => wait.step)} />
      </div>
      <div className="days-now-beside">
        <section>
          <h2>Curing</h2>
          {moment.curing.length === 0 && <p className="soft">Nothing is curing.</p>}
          <ul>
            {moment.curing.map((wait) => (
              <li key={`${wait.step}-${wait.wait}`} className="days-cure">
                <span className="days-hatch" aria-hidden="true" />
                <span>
                  {capital(waitTitle(problem, wait.step, wait.wait))}
                  <span className="small soft">
                    {stepTitle(problem, wait.step)}; until {whenInWords(problem, wait.finish, now)}
                    {wait.tooCold ? '; too cold for part of it, it may never reach its strength' : ''}
                  </span>
                  <span className="small soft">{courseOf(problem, wait).join(' ')}</span>
                </span>
                <b>{leftInWords(wait.finish - now)}</b>
                {wait.tooCold || (
                  <div className="days-cure-timer">
                    <TimerLine
                      book={book}
                      step={wait.step}
                      wait={wait.wait}
                      words={waitTitle(problem, wait.step, wait.wait)}
                      start="Tell me when it is over"
                      ends={() => instantOf(problem, wait.finish)}
                    />
                  </div>
                )}
              </li>
            ))}
          </ul>
        </section>
        <section>
          <h2>Then</h2>
          {later.length === 0 && <p className="soft">Nothing more today.</p>}
          <ol className="days-then">
            {later.map((item) => (
              <li key={item.key}>
                <span>{clockAt(problem, item.planned.start)}</span>{' '}
                <span className="days-then-name">{itemName(item, problem)}</span>
                {item.kind === 'step' && <span className="days-then-job">{book.jobs[item.step.job]?.title}</span>}
              </li>
            ))}
          </ol>
          {inHand.notes.flatMap(({ kind, words }) => (kind === 'to be left so' ? [<p key={words}>{words}</p>] : []))}
          <p>
            <a href="#/days/plan">The whole plan</a>
          </p>
          {dayNow !== undefined && (
            <p>
              <a href={address('days', 'carry', dayNow.id)}>Carry-down list</a>
            </p>
          )}
          <PlanProgress inHand={inHand} />
        </section>
      </div>
    </div>
  );
}

/** `2 h 50`; whole days from two on */
function leftInWords(minutes: number): string {
  return minutes < 2 * 1440 ? minutesInWords(minutes) : countInWords(Math.round(minutes / 1440), 'day');
}

/** What it takes as its product says, and how the cold lengthens it. */
function courseOf(problem: Problem, wait: PlannedWait): readonly string[] {
  const stated = problem.steps.find(({ id }) => id === wait.step)?.waits.find(({ id }) => id === wait.wait);
  return stated ? waitCourseInWords(stated, wait, problem) : [];
}

function stepTitle(problem: Problem, id: string): string {
  return problem.steps.find((step) => step.id === id)?.title ?? '';
}

/** A job whose last step is ticked and whose waits are over is done when the keeper says so: its proof may still be owed. */
function JobsWithNothingLeft({
  book,
  waiting,
}: {
  readonly book: Book;
  /** steps with a wait that is not over */
  readonly waiting: readonly Id[];
}) {
  const notOver = new Set(waiting.map((step) => book.steps[step]?.job));
  const [finishing, setFinishing] = useState<Id | null>(null);
  const done = Object.entries(book.jobs).filter(([id, job]) => {
    const steps = Object.values(book.steps).filter((step) => step.job === id);
    return (
      job.state === 'open' &&
      !notOver.has(id) &&
      steps.length > 0 &&
      steps.every((step) => step.progress.kind === 'done')
    );
  });
  if (done.length === 0) return null;
  return (
    <ul className="days-all-ticked">
      {done.map(([id, job]) => (
        <li key={id}>
          Every step is ticked: {job.title}.{' '}
          <button type="button" className="words" onClick={() => setFinishing(id)}>
            The job is done
          </button>
        </li>
      ))}
      {finishing !== null && <FinishSheet book={book} id={finishing} onClose={() => setFinishing(null)} />}
    </ul>
  );
}

/** The device's clock, moving on. [ms] */
function useClock(): number {
  const [, moveOn] = useState(0);
  useEffect(() => {
    const seen = () => moveOn((n) => n + 1);
    const timer = setInterval(seen, tick_ms);
    document.addEventListener('visibilitychange', seen);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', seen);
    };
  }, []);
  return Date.now();
}
