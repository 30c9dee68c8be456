/** All that needs doing: jury rigs first, then the jobs by what happens if they are left, or by where they are. */
import { Suspense, useMemo, useState } from 'react';
import { PickField } from '../../parts/choice-fields.tsx';
import { countInWords, minutesInWords } from '../../parts/in-words.ts';
import { consequenceName } from '../../parts/mark.tsx';
import { MarkedLine } from '../../parts/marked-line.tsx';
import { onDemand } from '../../parts/on-demand.ts';
import {
  consequences,
  type JobGroup,
  jobsByZone,
  minutesLeft,
  type NamedJob,
  openJobs,
  stepsOf,
  waitsFor,
} from '../../reading/open-work.ts';
import { todayAt } from '../../reading/today.ts';
import { useOpenBook } from '../../reading/use-open-book.ts';
import { address } from '../../shell/route.ts';
import { JobWords } from './job-words.tsx';
import { JuryRigs } from './jury-rigs.tsx';

const JuryRigSheet = onDemand(() => import('./jury-rig-sheet.tsx'));

type By = 'consequence' | 'zone';

export function WorkList() {
  const book = useOpenBook();
  const today = todayAt(book);
  const [by, setBy] = useState<By>('consequence');
  const [rigging, setRigging] = useState(false);
  const jobs = useMemo(() => openJobs(book), [book]);
  const minutes = useMemo(() => jobs.reduce((sum, { id }) => sum + minutesLeft(stepsOf(book, id)), 0), [book, jobs]);
  const groups = by === 'zone' ? jobsByZone(book) : byConsequence(jobs);
  const closed = Object.entries(book.jobs).filter(([, job]) => job.state !== 'open');

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
        <div className="work-put">
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
      <p>
        <a className="button words" href={address('work', 'recipes')}>
          Recipes
        </a>
      </p>
      <JuryRigs book={book} today={today} />
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
              {group.jobs.map((named) => (
                <JobLine key={named.id} named={named} by={by} today={today} />
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
      {closed.length > 0 && (
        <details className="work-closed">
          <summary>Done and dropped: {countInWords(closed.length, 'job')}</summary>
          <ul>
            {closed
              .sort(([, a], [, b]) => (b.closed ?? '').localeCompare(a.closed ?? ''))
              .map(([id, job]) => (
                <MarkedLine
                  key={id}
                  mark={job.state === 'done' ? 'go' : null}
                  href={address('work', 'job', id)}
                  title={job.title}
                  note={<JobWords closed={job} today={today} />}
                />
              ))}
          </ul>
        </details>
      )}
      {rigging && (
        <Suspense fallback={null}>
          <JuryRigSheet book={book} today={today} onClose={() => setRigging(false)} />
        </Suspense>
      )}
    </div>
  );
}

function JobLine({ named, by, today }: { readonly named: NamedJob; readonly by: By; readonly today: string }) {
  const book = useOpenBook();
  const steps = stepsOf(book, named.id);
  const zone = named.job.zone === null ? undefined : book.zones[named.job.zone];
  const done = steps.filter(({ step }) => step.progress.kind === 'done').length;
  return (
    <MarkedLine
      mark={named.job.consequence}
      said={by === 'consequence' ? consequenceName[named.job.consequence] : ''}
      href={address('work', 'job', named.id)}
      title={named.job.title}
      note={
        <JobWords
          book={book}
          named={named}
          waits={waitsFor(book, named, steps)}
          where={by === 'zone' ? consequenceName[named.job.consequence] : zone?.name}
          today={today}
        />
      }
      figure={
        <>
          {steps.length === 0 ? 'no steps' : minutesInWords(minutesLeft(steps))}
          {done > 0 && (
            <span className="work-done">
              {done} of {steps.length} done
            </span>
          )}
        </>
      }
    />
  );
}

function byConsequence(jobs: readonly NamedJob[]): readonly JobGroup[] {
  return consequences
    .map((consequence) => ({
      key: consequence,
      name: consequenceName[consequence].replace(/^./, (letter) => letter.toUpperCase()),
      jobs: jobs.filter(({ job }) => job.consequence === consequence),
    }))
    .filter((group) => group.jobs.length > 0);
}
