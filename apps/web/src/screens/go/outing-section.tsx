import { Suspense } from 'react';
import type { Book, Id, Outing } from '#boat-book';
import { localAt } from '#units';
import { countInWords, dateInWords, dayInWords, daysAway } from '../../parts/in-words.ts';
import { consequenceName, Mark } from '../../parts/mark.tsx';
import { MarkedLine } from '../../parts/marked-line.tsx';
import { onDemand } from '../../parts/on-demand.ts';
import { type JobInTime, outingWork } from '../../reading/outing-work.ts';
import { zoneOf } from '../../reading/today.ts';
import { address } from '../../shell/route.ts';

const OutingDues = onDemand(() => import('./dues/outing-dues.tsx'));

export function OutingSection({
  book,
  today,
  id,
  outing,
  onChange,
}: {
  readonly book: Book;
  readonly today: string;
  readonly id: Id;
  readonly outing: Outing;
  readonly onChange: () => void;
}) {
  const work = outingWork(book, id, outing);
  const ready = work.jobs.filter(({ inTime }) => inTime.kind === 'in time');
  const standing = work.jobs.filter(({ inTime }) => inTime.kind !== 'in time');
  const out = work.rigs.filter(({ jobInTime }) => jobInTime?.kind === 'in time');
  const beyond = work.rigs.filter(({ jobInTime }) => jobInTime?.kind !== 'in time');
  const against = standing.length + beyond.length;
  const sailsCounted = [...work.rigs, ...work.within].some(({ rig }) => rig.sails_max !== null);
  const made = work.planMade === null ? null : localAt(Date.parse(work.planMade), zoneOf(book));
  return (
    <section className="go-outing" aria-labelledby={`go-${id}`}>
      <div className="go-head">
        <h2 id={`go-${id}`}>{outing.title}</h2>
        <button type="button" className="words" aria-label={`Change: ${outing.title}`} onClick={onChange}>
          Change
        </button>
      </div>
      <p className="soft">
        {dayInWords(outing.date, today)} {outing.from}, {daysAway(outing.date, today)}
        {outing.nights > 0 && ` · ${countInWords(outing.nights, 'night')}`}
        {outing.place && ` · ${outing.place}`}
        {outing.wind_kn === null ? ' · no wind written down' : ` · ${outing.wind_kn} knots expected`}
      </p>
      <p className="go-sum">
        <b>
          {against === 0
            ? work.jobs.length + out.length === 0
              ? 'Nothing looked at here stands against it.'
              : 'Nothing looked at here stands against it, if the plan is kept.'
            : `${countInWords(against, 'thing')} ${against === 1 ? 'stands' : 'stand'} against it as things are.`}
        </b>
      </p>
      <div className="go-sides">
        <div>
          {beyond.length > 0 && (
            <>
              <h3>Jury rigs it goes beyond</h3>
              <ul>
                {beyond.map(({ id: rigId, rig, beyond: why }) => (
                  <MarkedLine
                    key={rigId}
                    mark="danger"
                    said="not to be trusted for this"
                    title={rig.title}
                    note={`${why.join('; ')}.`}
                  >
                    {rig.job !== null && book.jobs[rig.job] && (
                      <a className="button words" href={address('work', 'job', rig.job)}>
                        {book.jobs[rig.job]?.title}
                      </a>
                    )}
                  </MarkedLine>
                ))}
              </ul>
            </>
          )}
          {standing.length > 0 && (
            <>
              <h3>{work.planMade === null ? 'Jobs it needs done' : 'Jobs that are not planned to be done in time'}</h3>
              {work.planMade === null && (
                <p className="small">
                  There is no plan yet, so none is known to be done in time.{' '}
                  <a href={address('days')}>Plan them under Days</a>
                </p>
              )}
              <ul>
                {standing.map(({ id: job, job: { title, consequence }, inTime, asked }) => (
                  <MarkedLine
                    key={job}
                    mark={consequence}
                    href={address('work', 'job', job)}
                    title={title}
                    note={[
                      `${consequenceName[consequence]}${asked ? ', needed for this outing' : ''}`,
                      inTimeInWords(inTime, today),
                    ]
                      .filter(Boolean)
                      .join(' · ')}
                  />
                ))}
              </ul>
            </>
          )}
        </div>
        <div>
          {ready.length > 0 && (
            <>
              <h3>Planned to be done in time</h3>
              <ul>
                {ready.map(({ id: job, job: { title }, inTime, asked }) => (
                  <MarkedLine
                    key={job}
                    mark="go"
                    said="in time"
                    href={address('work', 'job', job)}
                    title={title}
                    note={`${asked ? 'needed for this outing · ' : ''}${inTimeInWords(inTime, today)}`}
                  />
                ))}
              </ul>
            </>
          )}
          {out.length > 0 && (
            <>
              <h3>Jury rigs it goes beyond, out by then if the plan is kept</h3>
              <ul>
                {out.map(({ id: rigId, rig, beyond: why, jobInTime }) => (
                  <MarkedLine
                    key={rigId}
                    mark="jury rig"
                    said="jury rig"
                    title={rig.title}
                    note={`${why.join('; ')} · its job is ${jobInTime ? inTimeInWords(jobInTime, today) : ''}`}
                  />
                ))}
              </ul>
            </>
          )}
          <Suspense fallback={null}>
            <OutingDues book={book} today={today} outing={outing} />
          </Suspense>
          <h3>Looked at</h3>
          <p className="small">
            {countInWords(work.jobs.length, 'open job')} that this outing needs, or that are a danger, unlawful or stop
            her sailing; {countInWords(work.rigs.length + work.within.length, 'standing jury rig')} against its date,
            wind and the road
            {made === null ? '. There is no plan yet.' : `; the plan of ${dateInWords(made.day, today)} ${made.clock}.`}
          </p>
          {work.within.length > 0 && (
            <p className="small">
              <Mark of="jury rig" /> Within their limits, as far as they are written down:{' '}
              {work.within.map(({ rig }) => rig.title).join(', ')}.
            </p>
          )}
          <h3>Not looked at</h3>
          <p className="small soft">
            {outing.wind_kn === null && 'The wind: none is written down for this outing. '}
            {sailsCounted && 'How many sails the jury rigs have had. '}
            The battery, the trailer, the loads on her gear, the weather on the day, and jobs that only get worse or are
            comfort.
          </p>
        </div>
      </div>
    </section>
  );
}

function inTimeInWords(inTime: JobInTime, today: string): string {
  switch (inTime.kind) {
    case 'in time':
      return `done ${dayInWords(inTime.day, today)} ${inTime.clock} by the plan`;
    case 'too late':
      return `done only ${dayInWords(inTime.day, today)} ${inTime.clock} by the plan`;
    case 'left out':
      return 'the plan leaves it out: see Days for the reason';
    case 'not in that plan':
      return 'not in the latest plan: plan again under Days';
    case 'no plan':
      return '';
  }
}
