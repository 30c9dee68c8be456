/** All that needs doing: jury rigs first, then the jobs by what happens if they are left, or by where they are. */
import { useDeferredValue, useState } from 'react';
import type { Book } from '#boat-book';
import { useOfBook } from '../../offline/use-book.ts';
import { BelowHeading } from '../../parts/below-heading.tsx';
import { PickField } from '../../parts/choice-fields.tsx';
import { countInWords, minutesInWords } from '../../parts/in-words.ts';
import { consequenceName } from '../../parts/mark.tsx';
import { MarkedLine } from '../../parts/marked-line.tsx';
import { onDemand } from '../../parts/on-demand.tsx';
import { consequences } from '../../reading/open-work.ts';
import { todayAt } from '../../reading/today.ts';
import {
  dayAtPlace,
  type JobGroup,
  jobsByZone,
  type ShownJob,
  type WorkShown,
  workShown,
} from '../../reading/work-shown.ts';
import { address } from '../../shell/route.ts';
import { closedInWords, JobWords } from './job-words.tsx';
import { JuryRigs } from './jury-rigs.tsx';

const JuryRigSheet = onDemand(() => import('./jury-rig-sheet.tsx'));

type By = 'consequence' | 'zone';

export function WorkList() {
  const book = useOfBook('book');
  const first = useOfBook('first');
  if (book !== null) return <Work book={book} shown={workShown(book)} today={() => todayAt(book)} />;
  return first === null ? null : <Work book={null} shown={first} today={() => dayAtPlace(first, Date.now())} />;
}

interface WorkOf {
  /** null until it is there: what is asked of it meanwhile is answered then */
  readonly book: Book | null;
  readonly shown: WorkShown;
  /** asked once the heading is there */
  readonly today: () => string;
}

function Work({ book, shown, today }: WorkOf) {
  const { jobs } = shown;
  const [rigging, setRigging] = useState(false);
  const minutes = jobs.reduce((sum, job) => sum + job.minutes, 0);
  return (
    <div className="work">
      <div className="work-top">
        <div>
          <h1>Work</h1>
          <p className="soft">
            {jobs.length === 0
              ? 'Nothing is open.'
              : `${countInWords(jobs.length, 'job')} open, ${minutesInWords(minutes)} hands-on.`}
          </p>
        </div>
        <div className="work-put at-foot no-print">
          <a className="button main" href={address('work', 'put-in')}>
            Put in a job
          </a>
          <a className="button" href={address('work', 'walk-round')}>
            Walk-round
          </a>
          <button type="button" onClick={() => setRigging(true)}>
            Jury rig
          </button>
        </div>
      </div>
      <BelowHeading>
        <WorkBelow book={book} shown={shown} today={today} />
      </BelowHeading>
      {rigging && book !== null && <JuryRigSheet book={book} today={today()} onClose={() => setRigging(false)} />}
    </div>
  );
}

function WorkBelow({ book, shown, today: todayOf }: WorkOf) {
  const { jobs, rigs, closed } = shown;
  const [by, setBy] = useState<By>('consequence');
  const today = todayOf();
  // the choice is marked at once; the list follows
  const inOrder = useDeferredValue(by);
  const groups = inOrder === 'zone' ? jobsByZone(shown) : byConsequence(jobs);
  const zoneNames = new Map(shown.zones.map(({ id, name }) => [id, name]));
  return (
    <>
      <p>
        <a className="button words" href={address('work', 'recipes')}>
          Recipes
        </a>
      </p>
      <JuryRigs rigs={rigs} book={book} today={today} />
      {jobs.length > 0 && (
        <PickField
          quiet
          label="Jobs in order of"
          value={by}
          onChange={setBy}
          options={[
            { value: 'consequence', name: 'by consequence' },
            { value: 'zone', name: 'by zone' },
          ]}
        />
      )}
      <div className="work-groups">
        {groups.map((group) => (
          <section key={group.key} className="work-group" aria-labelledby={`work-${group.key}`}>
            <h2 id={`work-${group.key}`}>
              {group.name}
              <span className="soft small"> {countInWords(group.jobs.length, 'job')}</span>
            </h2>
            <ul>
              {group.jobs.map((job) => (
                <JobLine
                  key={job.id}
                  job={job}
                  zone={job.zone === null ? undefined : zoneNames.get(job.zone)}
                  by={inOrder}
                  today={today}
                />
              ))}
            </ul>
          </section>
        ))}
      </div>
      {jobs.length === 0 && (
        <p>
          Say it in one line, as you would to someone on the pontoon: what is wrong, where, how long it takes, what
          happens if it is left.
        </p>
      )}
      {closed > 0 && <Closed count={closed} book={book} today={today} />}
    </>
  );
}

function JobLine({
  job,
  zone,
  by,
  today,
}: {
  readonly job: ShownJob;
  readonly zone: string | undefined;
  readonly by: By;
  readonly today: string;
}) {
  const consequence = consequenceName[job.consequence];
  return (
    <MarkedLine
      mark={job.consequence}
      said={by === 'consequence' ? consequence : ''}
      href={address('work', 'job', job.id)}
      title={job.title}
      note={<JobWords job={job} where={by === 'zone' ? consequence : zone} today={today} />}
      figure={
        <>
          {job.steps === 0 ? 'no steps' : minutesInWords(job.minutes)}
          {job.stepsDone > 0 && (
            <span className="work-done">
              {job.stepsDone} of {job.steps} done
            </span>
          )}
        </>
      }
    />
  );
}

/** What is done with. Years of it are only drawn when they are looked at. */
function Closed({
  count,
  book,
  today,
}: {
  readonly count: number;
  readonly book: Book | null;
  readonly today: string;
}) {
  const [open, setOpen] = useState(false);
  return (
    <details className="work-closed" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Done and dropped: {countInWords(count, 'job')}</summary>
      {open && book !== null && (
        <ul>
          {Object.entries(book.jobs)
            .filter(([, job]) => job.state !== 'open')
            .sort(([, a], [, b]) => (b.closed ?? '').localeCompare(a.closed ?? ''))
            .map(([id, job]) => (
              <MarkedLine
                key={id}
                mark={job.state === 'done' ? 'go' : null}
                href={address('work', 'job', id)}
                title={job.title}
                note={closedInWords(job, today)}
              />
            ))}
        </ul>
      )}
    </details>
  );
}

/** The gravest first. */
function byConsequence(jobs: readonly ShownJob[]): readonly JobGroup[] {
  return consequences
    .map((consequence) => ({
      key: consequence,
      name: consequenceName[consequence].replace(/^./, (letter) => letter.toUpperCase()),
      jobs: jobs.filter((job) => job.consequence === consequence),
    }))
    .filter((group) => group.jobs.length > 0);
}
