/** One job: why, where, what happens if it is left, its steps, and how far it has come. */
import type { Book, Id, Job } from '#boat-book';
import { BelowHeading } from '../../parts/below-heading.tsx';
import { RefusalLine } from '../../parts/form.tsx';
import { capital, countInWords, dateInWords, dayInWords, daysAway, minutesInWords } from '../../parts/in-words.ts';
import { consequenceName, Mark } from '../../parts/mark.tsx';
import { onDemand } from '../../parts/on-demand.tsx';
import { OpenedSheet, useOpened } from '../../parts/opened.tsx';
import { useRun } from '../../parts/use-run.ts';
import { beddedInWords } from '../../reading/bedded-in-words.ts';
import { loadsOfJob } from '../../reading/loads-of-job.ts';
import { minutesLeft, stepsOf, waitsFor } from '../../reading/open-work.ts';
import { rigOfJob } from '../../reading/rig-of-job.ts';
import { todayAt } from '../../reading/today.ts';
import { useOpenBook } from '../../reading/use-open-book.ts';
import { address, goTo } from '../../shell/route.ts';
import './job-page.css';
import { JobPhotos } from './job-photos.tsx';
import { JobRigs } from './job-rigs.tsx';
import { StepList } from './step-list.tsx';

const JobSheet = onDemand(() => import('./job-sheet.tsx'));
const HoldSheet = onDemand(() => import('../days/hold-sheet.tsx'));
const StepSheet = onDemand(() => import('./step-sheet.tsx'));
const NextWindow = onDemand(() => import('../days/next-window.tsx'));
const FinishSheet = onDemand(() => import('./finish-sheet.tsx'));
const JuryRigSheet = onDemand(() => import('./jury-rig-sheet.tsx'));
const RecipeFromJobSheet = onDemand(() => import('./recipe-from-job-sheet.tsx'));
const JobFollowUps = onDemand(() => import('./job-follow-ups.tsx'));

type Open =
  | { readonly sheet: 'job' | 'rig' | 'hold' | 'finish' | 'recipe' }
  | { readonly sheet: 'step'; readonly step: Id | null };

export default function JobPage({ id }: { readonly id: Id }) {
  const book = useOpenBook();
  const job = book.jobs[id];
  if (!job)
    return (
      <div className="job">
        <h1>No such job</h1>
        <p>
          It was taken out of the book, or is in another boat's. <a href={address('work')}>Back to Work</a>
        </p>
      </div>
    );
  return (
    <div className="job">
      <p className="job-back no-print">
        <a className="button words" href={address('work')}>
          ‹ Work
        </a>
      </p>
      <h1>{job.title}</h1>
      <BelowHeading>
        <JobBelow book={book} id={id} job={job} />
      </BelowHeading>
    </div>
  );
}

function JobBelow({ book, id, job }: { readonly book: Book; readonly id: Id; readonly job: Job }) {
  const today = todayAt(book);
  const sheet = useOpened<Open>();
  const { run, refusal } = useRun();
  const steps = stepsOf(book, id);
  const left = minutesLeft(steps);
  const openSteps = steps.filter(({ step }) => step.progress.kind !== 'done').length;
  const waits = waitsFor(book, { id, job }, steps);
  const zone = job.zone === null ? undefined : book.zones[job.zone];
  const fitting = job.fitting === null ? undefined : book.fittings[job.fitting];
  const outing = job.outing === null ? undefined : book.outings[job.outing];
  const held = job.heldTo === null ? undefined : book.jobDays[job.heldTo];
  const loads = [...loadsOfJob(book, job), ...rigOfJob(book, { id, job })];
  const spent = Object.values(book.log)
    .filter((entry) => entry.job === id && entry.spent_min !== null)
    .reduce((sum, entry) => sum + (entry.spent_min ?? 0), 0);

  return (
    <>
      <p className="job-meaning">
        <Mark of={job.consequence} /> {capital(consequenceName[job.consequence])} if it is left
        {job.state !== 'open' && (
          <b>
            {' '}
            · {job.state}
            {job.closed !== null && ` ${dateInWords(job.closed, today)}`}
          </b>
        )}
      </p>
      {job.why && <p>{job.why}</p>}
      <dl className="job-facts">
        <Fact name="where">{[zone?.name, fitting?.name].filter(Boolean).join(', ') || 'no zone given'}</Fact>
        {fitting && (fitting.size || fitting.beddedWith) && (
          <Fact name="fitting">{[fitting.size, beddedInWords(fitting, today)].filter(Boolean).join(', ')}</Fact>
        )}
        {job.due !== null && (
          <Fact name="by">
            {dayInWords(job.due, today)}, {daysAway(job.due, today)}
          </Fact>
        )}
        {outing && (
          <Fact name="for">
            {outing.title}, {dayInWords(outing.date, today)}
          </Fact>
        )}
        {held && (
          <Fact name="held to">
            {dayInWords(held.date, today)}
            {job.heldAt !== null && `, ${job.heldAt}`}
          </Fact>
        )}
        {waits.jobs.length > 0 && <Fact name="after">{waits.jobs.map((title) => `‘${title}’`).join(', ')}</Fact>}
        {waits.stores.length > 0 && (
          <Fact name="to get">
            {waits.stores
              .map(({ name, expected }) =>
                expected === null ? `${name}, not in stores` : `${name}, expected ${dateInWords(expected, today)}`,
              )
              .join('; ')}
          </Fact>
        )}
        {loads.length > 0 && (
          <Fact name="loads">
            <span className="job-loads">
              {loads.map(({ name, at }) => (
                <a key={name} className="button words" href={address('boat', 'loads', ...at)}>
                  {name}
                </a>
              ))}
            </span>
          </Fact>
        )}
        <Fact name="bedding">
          <a className="button words" href={address('work', 'job', id, 'bedding')}>
            What to bed it with
          </a>
        </Fact>
        <Fact name="put in">
          {dateInWords(job.opened, today)}
          {job.said && (
            <>
              {' '}
              as <q>{job.said}</q>
            </>
          )}
        </Fact>
        {job.note && <Fact name="note">{job.note}</Fact>}
      </dl>
      <div className="job-acts">
        {job.state === 'open' ? (
          <>
            <button
              type="button"
              className={openSteps === 0 ? 'main' : undefined}
              onClick={() => sheet.open({ sheet: 'finish' })}
              aria-describedby={openSteps > 0 ? 'job-open-steps' : undefined}
            >
              Job done
            </button>
            <button type="button" onClick={() => sheet.open({ sheet: 'job' })}>
              Change
            </button>
            {Object.keys(book.jobDays).length > 0 && steps.length > 0 && (
              <button type="button" onClick={() => sheet.open({ sheet: 'hold' })}>
                {held ? 'The hold and its cost' : 'Hold to a day or time'}
              </button>
            )}
            <button type="button" onClick={() => sheet.open({ sheet: 'rig' })}>
              Jury rig for it
            </button>
            <button
              type="button"
              className="words removes"
              onClick={async () => {
                const outcome = await run('dropJob', { id });
                if (outcome.kind === 'done') goTo(address('work'));
              }}
            >
              Drop it
            </button>
          </>
        ) : (
          <>
            <button type="button" className="main" onClick={() => void run('reopenJob', { id })}>
              Open it again
            </button>
            {job.state === 'done' && steps.length > 0 && (
              <button type="button" onClick={() => sheet.open({ sheet: 'recipe' })}>
                Make a recipe of it
              </button>
            )}
          </>
        )}
      </div>
      {job.state === 'open' && openSteps > 0 && steps.length > 0 && (
        <p className="soft small" id="job-open-steps">
          {countInWords(openSteps, 'step')} not ticked.
        </p>
      )}
      <RefusalLine refusal={refusal} />
      <JobRigs book={book} job={id} today={today} />
      {(job.recipe || job.followsJob || job.writeDown || job.followUps) && (
        <JobFollowUps book={book} id={id} today={today} />
      )}
      <section aria-labelledby="job-steps">
        <div className="job-steps-head">
          <h2 id="job-steps">Steps</h2>
          <p className="soft small">
            {steps.length === 0
              ? 'None yet: the planner needs at least one, with its minutes.'
              : `${minutesInWords(left)} hands-on to do${spent > 0 ? `, ${minutesInWords(spent)} really spent` : ''}`}
          </p>
        </div>
        <StepList
          book={book}
          steps={steps}
          today={today}
          locked={job.state !== 'open'}
          onChange={(step) => sheet.open({ sheet: 'step', step })}
        />
        {job.state === 'open' && (
          <p className="job-add">
            <button type="button" onClick={() => sheet.open({ sheet: 'step', step: null })}>
              Add a step
            </button>
          </p>
        )}
      </section>
      <JobPhotos book={book} job={id} />
      {job.state === 'open' && openSteps > 0 && <NextWindow book={book} job={id} />}
      <OpenedSheet of={sheet}>
        {(open) => (
          <>
            {open.sheet === 'recipe' && <RecipeFromJobSheet book={book} job={id} onClose={sheet.close} />}
            {open.sheet === 'job' && <JobSheet book={book} today={today} id={id} onClose={sheet.close} />}
            {open.sheet === 'hold' && <HoldSheet book={book} job={id} onClose={sheet.close} />}
            {open.sheet === 'rig' && <JuryRigSheet book={book} today={today} job={id} onClose={sheet.close} />}
            {open.sheet === 'finish' && <FinishSheet book={book} id={id} onClose={sheet.close} />}
            {open.sheet === 'step' && <StepSheet book={book} job={id} id={open.step} onClose={sheet.close} />}
          </>
        )}
      </OpenedSheet>
    </>
  );
}

function Fact({ name, children }: { readonly name: string; readonly children: React.ReactNode }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}
