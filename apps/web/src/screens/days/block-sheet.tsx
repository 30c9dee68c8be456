/** What is behind one block of the drawing: why it is there, what it asks for, how long, with whom, and its cautions. */
import type { Book } from '#boat-book';
import {
  changeInWords,
  conditionsInWords,
  type HeldWords,
  keptInWords,
  moveInWords,
  type PlanOdds,
  setUpInWords,
  stepReasonsInWords,
  storeOfLine,
  waitCourseInWords,
} from '#reckoning';
import type { Minute, Plan, PlannedChange, PlannedStep, Problem, ProblemStep } from '#workplan';
import { capital, dayInWords, listInWords, minutesInWords } from '../../parts/in-words.ts';
import { consequenceName, Mark } from '../../parts/mark.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import { TunedMinutes } from '../../parts/tuned-minutes.tsx';
import { address } from '../../shell/route.ts';
import { HoldPart } from './hold-part.tsx';
import { clockAt, dayAt, whenInWords } from './place-time.ts';
import type { Block } from './plan-drawing/day-column.ts';
import type { PlanInHand } from './planner.ts';

interface Shown {
  readonly problem: Problem;
  readonly plan: Plan;
  readonly book: Book;
  /** null: not worked out yet */
  readonly odds: PlanOdds | null;
  /** by step what holds it where it is, once that is known; left out where it is not shown */
  readonly held?: Readonly<Record<string, HeldWords>> | null;
  readonly inHand: PlanInHand;
  /** where the step stood before it moved; null: it has not, or that was seen */
  readonly was: Minute | null;
}

export function BlockSheet({
  block,
  onClose,
  ...shown
}: Shown & { readonly block: Block; readonly onClose: () => void }) {
  const { what } = block;
  // a plan that was made anew while the sheet is open: what is told is the step as it lies now
  const step = what.kind === 'step' ? shown.problem.steps.find(({ id }) => id === what.step.id) : undefined;
  const planned = shown.plan.steps.find((one) => one.step === step?.id);
  return (
    <Sheet title={block.name} onClose={onClose}>
      {step && planned && <StepWorking {...shown} planned={planned} step={step} />}
      {what.kind === 'step' && !planned && (
        <p className="days-working">The plan was made anew since, and leaves this out.</p>
      )}
      {block.what.kind === 'change' && <ChangeWorking {...shown} change={block.what.planned} />}
      {block.what.kind === 'past' && (
        <div className="days-working">
          <p className="days-working-when">{whenLine(shown.problem, block.from, block.to)}, done</p>
          <p>
            <a href={address('work', 'job', block.what.job)}>{shown.book.jobs[block.what.job]?.title ?? 'The job'}</a>
          </p>
        </div>
      )}
    </Sheet>
  );
}

function StepWorking({
  problem,
  plan,
  book,
  odds,
  inHand,
  was,
  planned,
  step,
  held,
}: Shown & { readonly planned: PlannedStep; readonly step: ProblemStep }) {
  const record = book.steps[step.id];
  const job = book.jobs[step.job];
  const zone = step.zone === null ? undefined : book.zones[step.zone];
  const reasons = stepReasonsInWords(step.id, plan, problem);
  const waits = plan.waits.filter((w) => w.step === step.id);
  const tools = step.tools.map((t) => {
    const tool = book.tools[t.tool];
    const kept = tool && keptInWords(book.stowages, tool);
    return `${tool?.name ?? t.tool}${kept ? ` (${kept})` : ''}`;
  });
  const stores = step.stores.map((id) => {
    const store = book.stores[storeOfLine(id, book)];
    const kept = store && keptInWords(book.stowages, store);
    return `${store?.name ?? id}${kept ? ` (${kept})` : ''}`;
  });
  return (
    <div className="days-working">
      <p className="days-working-when">
        {whenLine(problem, planned.start, planned.finish)}
        {step.progress.kind === 'open' ? '' : `, ${step.progress.kind}`}
      </p>
      {was !== null && <p>Moved: {moveInWords({ was, now: planned.start }, problem)}</p>}
      {job && (
        <p>
          <Mark of={job.consequence} /> <a href={address('work', 'job', step.job)}>{job.title}</a>
          <span className="soft"> · {consequenceName[job.consequence]} if left</span>
        </p>
      )}
      {record?.cautions.map((caution) => (
        <p key={caution} className="days-caution">
          <b>Take care:</b> {caution}
        </p>
      ))}
      {odds?.jobs[step.job] && (
        <p>
          The job: {odds.jobs[step.job]!.words} <span className="soft">({odds.jobs[step.job]!.band})</span>.
        </p>
      )}
      <Part title="Why then">
        {reasons.length === 0 ? ['Nothing binds it to this time: it fits here with the rest.'] : reasons}
      </Part>
      {held !== undefined && step.progress.kind === 'open' && <HeldHere held={held?.[step.id] ?? null} />}
      <Facts
        rows={[
          [
            'hands-on',
            record ? estimate(record.minutes, planned.finish - planned.start) : minutesInWords(step.minutes),
          ],
          ['hands', handsInWords(problem, planned.hands)],
          ['where', zone?.name ?? null],
          ['weather', conditionsInWords(step.needs) || null],
          ['set-ups', step.setUps.map((need) => setUpInWords(problem, need.aspect, need.states)).join(', ') || null],
          ['tools', tools.join('; ') || null],
          ['stores', stores.join('; ') || null],
        ]}
      />
      {record && step.progress.kind === 'open' && <TunedMinutes book={book} step={record} />}
      {waits.length > 0 && (
        <Part title="Then it waits">
          {waits.map((wait) => {
            const stated = step.waits.find((w) => w.id === wait.wait);
            const until = `${capital(stated?.title ?? 'wait')}: until ${whenInWords(problem, wait.finish, wait.start)}.`;
            return [until, ...(stated ? waitCourseInWords(stated, wait, problem) : [])].join(' ');
          })}
        </Part>
      )}
      {step.progress.kind === 'open' && <HoldPart book={book} job={step.job} inHand={inHand} />}
    </div>
  );
}

function ChangeWorking({ problem, book, change }: Shown & { readonly change: PlannedChange }) {
  const record = book.setUps[change.aspect]?.changes.find((c) => c.from === change.from && c.to === change.to);
  return (
    <div className="days-working">
      <p className="days-working-when">{whenLine(problem, change.start, change.finish)}</p>
      <p>{capital(changeInWords(change, problem))}.</p>
      {record?.cautions.map((caution) => (
        <p key={caution} className="days-caution">
          <b>Take care:</b> {caution}
        </p>
      ))}
      <Facts
        rows={[
          ['takes', minutesInWords(change.finish - change.start)],
          ['hands', handsInWords(problem, change.hands)],
          ['weather', record ? conditionsInWords(record.needs) || null : null],
          ['set-ups', record?.setUps.map((need) => setUpInWords(problem, need.setUp, need.states)).join(', ') || null],
        ]}
      />
    </div>
  );
}

/** What keeps the step from starting sooner, and how much later it could. */
function HeldHere({ held }: { readonly held: HeldWords | null }) {
  if (held === null) return <Part title="What holds it here">{['Being worked out.']}</Part>;
  return (
    <>
      <Part title="What holds it here">{held.holds}</Part>
      <Part title="Room to spare">{[held.room]}</Part>
    </>
  );
}

function Part({ title, children }: { readonly title: string; readonly children: readonly string[] }) {
  return (
    <section>
      <h3>{title}</h3>
      {children.map((words) => (
        <p key={words}>{words}</p>
      ))}
    </section>
  );
}

function Facts({ rows }: { readonly rows: readonly (readonly [string, string | null])[] }) {
  return (
    <dl className="days-facts">
      {rows.map(([name, words]) =>
        words === null ? null : (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{words}</dd>
          </div>
        ),
      )}
    </dl>
  );
}

function whenLine(problem: Problem, from: number, to: number): string {
  const day = dayAt(problem, from);
  return `${dayInWords(day, day)}, ${clockAt(problem, from)} to ${clockAt(problem, to)}`;
}

/** `35 min likely, 25 to 50`; the planned time too where it is another */
export function estimate(minutes: { low: number; likely: number; high: number }, planned: number): string {
  const band =
    minutes.low === minutes.high
      ? minutesInWords(minutes.likely)
      : `${minutesInWords(minutes.likely)} likely, ${minutes.high < 60 ? minutes.low : minutesInWords(minutes.low)} to ${minutesInWords(minutes.high)}`;
  return planned === minutes.likely ? band : `${minutesInWords(planned)} here (${band})`;
}

export function handsInWords(problem: Problem, hands: readonly string[]): string {
  if (hands.length === 0) return 'none: it goes on by itself';
  return listInWords(hands.map((id) => problem.hands.find((h) => h.id === id)?.name ?? id));
}
