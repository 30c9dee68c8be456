/** What falls due: by date, by use and by what was measured, with what makes each due. */
import { useMemo } from 'react';
import type { Book } from '#boat-book';
import {
  type DueOfBook,
  dueBesideOuting,
  dueJobs,
  dueParts,
  dueRenewal,
  duesAndPapers,
  duesToMake,
  dueWhen,
} from '#reckoning';
import { BelowHeading } from '../../../parts/below-heading.tsx';
import { countInWords, dayInWords } from '../../../parts/in-words.ts';
import { MarkedLine } from '../../../parts/marked-line.tsx';
import { onDemand } from '../../../parts/on-demand.tsx';
import { OpenedSheet, useOpened } from '../../../parts/opened.tsx';
import { useRun } from '../../../parts/use-run.ts';
import { todayAt } from '../../../reading/today.ts';
import { useOpenBook } from '../../../reading/use-open-book.ts';
import { address } from '../../../shell/route.ts';
import { DueLine } from './due-line.tsx';
import './dues.css';
import { UsedPart } from './used-part.tsx';

const DueSheet = onDemand(() => import('./due-sheet.tsx'));

const stages = [
  ['past', 'Past'],
  ['soon', 'Soon: time to plan it and get what it needs'],
  ['later', 'Later'],
  ['not known', 'Not known when'],
] as const;

export default function DuesPage() {
  const book = useOpenBook();
  const adding = useOpened<true>();
  return (
    <div className="dues">
      <p>
        <a className="button words" href={address('go')}>
          Go
        </a>
      </p>
      <div className="go-top">
        <h1>What falls due</h1>
        <button type="button" onClick={() => adding.open(true)}>
          Add a due
        </button>
      </div>
      <BelowHeading>
        <DuesBelow book={book} />
      </BelowHeading>
      <OpenedSheet of={adding}>{() => <DueSheet book={book} id={null} onClose={adding.close} />}</OpenedSheet>
    </div>
  );
}

function DuesBelow({ book }: { readonly book: Book }) {
  const today = todayAt(book);
  const dues = useMemo(() => duesAndPapers(book, today), [book, today]);
  const { run, refusal } = useRun();
  const toMake = duesToMake(dues);
  const makeAll = () => run('makeJobsOfDues', { jobs: dueJobs(book, toMake, today) });
  return (
    <>
      <p className="paper-only">
        {book.boat.name}, {dayInWords(today, '')}
      </p>
      <div className="dues-sides">
        <UsedPart book={book} today={today} />
        <div>
          {toMake.length > 0 && (
            <p className="dues-make">
              <span>
                {toMake.length === 1 ? 'One of them wants' : `${toMake.length} of them want`} a job now, so that it can
                be planned and its stores got.
              </span>
              <button type="button" className="main" onClick={() => void makeAll()}>
                {toMake.length === 1 ? 'Make the job' : `Make the ${countInWords(toMake.length, 'job')}`}
              </button>
            </p>
          )}
          {refusal && (
            <p role="alert">
              {refusal.wrong}; {refusal.right}.
            </p>
          )}
          {dues.length === 0 && (
            <p>
              Nothing comes round yet. Put in what has a date, an interval, a use or a limit: flares, bearings, a zinc.
              Papers that run out come here by themselves.
            </p>
          )}
          {dues.length > 0 && (
            <p className="small soft">
              On each line a year: the stroke is today, the box the time its job takes to plan and get ready, the dot
              the likely day, grey where it may lie.
            </p>
          )}
          {stages.map(([stage, title]) => {
            const here = dues.filter((each) => each.stage === stage);
            if (here.length === 0) return null;
            return (
              <section key={stage} aria-labelledby={`dues-${stage.replace(' ', '-')}`}>
                <h2 id={`dues-${stage.replace(' ', '-')}`}>{title}</h2>
                <ul>
                  {here.map((dueOf) => (
                    <OneDue key={dueOf.id} dueOf={dueOf} today={today} beside={dueBesideOuting(dueOf, book, today)} />
                  ))}
                </ul>
              </section>
            );
          })}
          <div className="no-print">
            <h2>The ends of the season</h2>
            <ul>
              <MarkedLine
                href={address('go', 'season', 'fit-out')}
                title="Fit-out"
                note="before she goes in: a list of what she has"
              />
              <MarkedLine
                href={address('go', 'season', 'lay-up')}
                title="Lay-up"
                note="before the winter: a list of what she has"
              />
            </ul>
          </div>
          <p className="small soft">
            Usual intervals are custom of the trade, not law. A date printed on the thing, its maker and the law where
            you sail come first; what you see at the boat comes before all.
          </p>
          <p className="dues-print">
            <button type="button" onClick={() => print()}>
              Print
            </button>
          </p>
        </div>
      </div>
    </>
  );
}

function OneDue({
  dueOf,
  today,
  beside,
}: {
  readonly dueOf: DueOfBook;
  readonly today: string;
  readonly beside: string | null;
}) {
  const { id, paper, due, stage, job } = dueOf;
  const renewal = dueRenewal(dueOf);
  return (
    <MarkedLine
      mark={stage === 'past' || stage === 'soon' ? due.consequence : null}
      href={paper === null ? address('go', 'dues', id) : address('boat', 'papers', paper)}
      title={due.title}
      note={
        <>
          {dueWhen(dueOf, today)} {stage === 'later' || paper !== null ? '' : (dueParts(dueOf, today)[0] ?? '')}
          {stage !== 'past' && beside !== null && ` ${beside}`}
          {job !== null && ' Its job stands under Work.'}
          {renewal !== null && stage !== 'later' && ` ${renewal}`}
          <DueLine dueOf={dueOf} today={today} />
        </>
      }
    />
  );
}
