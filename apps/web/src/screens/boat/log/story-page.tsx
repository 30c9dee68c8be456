/** Everything there is to know of one fitting, on one page: the page to open before it is taken off. */
import { useCallback, useMemo, useState } from 'react';
import type { Book, Id } from '#boat-book';
import { fittingStory } from '#log';
import { rigLimitsInWords } from '#reckoning';
import { BelowHeading } from '../../../parts/below-heading.tsx';
import { capital, dateInWords, listInWords, minutesInWords } from '../../../parts/in-words.ts';
import { MarkedLine } from '../../../parts/marked-line.tsx';
import { onDemand } from '../../../parts/on-demand.tsx';
import { OpenedSheet, useOpened } from '../../../parts/opened.tsx';
import { TextField } from '../../../parts/text-fields.tsx';
import { PhotoStrip } from '../../../photos/photo-strip.tsx';
import { todayAt } from '../../../reading/today.ts';
import { useOpenBook } from '../../../reading/use-open-book.ts';
import { address } from '../../../shell/route.ts';
import { EntryList } from './entry-list.tsx';
import { FoundList } from './found-list.tsx';
import { costInWords, dayOf } from './log-words.ts';
import { useFound } from './use-found.ts';

const FittingSheet = onDemand(() => import('../fitting-sheet.tsx'));
const NoteSheet = onDemand(() => import('./note-sheet.tsx'));
const EntrySheet = onDemand(() => import('./entry-sheet.tsx'));

type Open =
  | { readonly sheet: 'fitting' }
  | { readonly sheet: 'note'; readonly corrects: Id | null }
  | { readonly sheet: 'entry'; readonly id: Id };

export default function StoryPage({ id }: { readonly id: Id }) {
  const book = useOpenBook();
  const fitting = book.fittings[id];
  if (fitting === undefined)
    return (
      <>
        <h1>No such fitting</h1>
        <p>It was taken out of the book. What was written of it is still in the log.</p>
      </>
    );
  return (
    <div className="log">
      <h1>{capital(fitting.name)}</h1>
      <BelowHeading>
        <StoryBelow book={book} id={id} fitting={fitting} />
      </BelowHeading>
    </div>
  );
}

function StoryBelow({
  book,
  id,
  fitting,
}: {
  readonly book: Book;
  readonly id: Id;
  readonly fitting: Book['fittings'][Id];
}) {
  const today = todayAt(book);
  const [words, setWords] = useState('');
  const sheet = useOpened<Open>();
  const { close } = sheet;
  const openEntry = useCallback((entry: Id) => sheet.open({ sheet: 'entry', id: entry }), [sheet]);
  const found = useFound({ words, fitting: id });
  const { bedded, saidOfBedding, entries, jobs, rigs, papers, photos, costs, spent_min } = useMemo(
    () => fittingStory(book, id)!,
    [book, id],
  );
  const spent = [...costs.map(costInWords), ...(spent_min > 0 ? [`${minutesInWords(spent_min)} of work`] : [])];
  return (
    <>
      <p className="soft">{[book.zones[fitting.zone]?.name, fitting.size, fitting.note].filter(Boolean).join(' · ')}</p>
      <p>
        {bedded === null
          ? 'What it is bedded with is not written down.'
          : `Bedded with ${bedded.with}${bedded.at === null ? '' : `, ${dateInWords(dayOf(book, { at: bedded.at }), today)}`}.`}
        {saidOfBedding !== null && ` The fitting itself says: ${saidOfBedding}.`}
        {spent.length > 0 && ` It has taken ${listInWords(spent)}.`}
      </p>
      <div className="boat-acts">
        <button type="button" onClick={() => sheet.open({ sheet: 'note', corrects: null })}>
          Write in the log
        </button>
        <button type="button" onClick={() => sheet.open({ sheet: 'fitting' })}>
          Change the fitting
        </button>
      </div>
      {photos.length > 0 && (
        <section aria-labelledby="story-photos">
          <h2 id="story-photos">Photographs</h2>
          <PhotoStrip book={book} photos={photos.map(([photoId, photo]) => ({ id: photoId, photo }))} />
        </section>
      )}
      {rigs.length > 0 && (
        <section aria-labelledby="story-rigs">
          <h2 id="story-rigs">Jury rigs</h2>
          <ul>
            {rigs.map(([rigId, rig]) => (
              <MarkedLine
                key={rigId}
                mark={rig.state === 'standing' ? 'jury rig' : null}
                title={rig.title}
                note={
                  rig.state === 'standing'
                    ? `trusted until ${[dateInWords(rig.trustedUntil, today), ...rigLimitsInWords(rig)].join(', ')}. ${rig.reason}`
                    : `made ${dateInWords(rig.made, today)}, gone`
                }
              />
            ))}
          </ul>
        </section>
      )}
      {jobs.length > 0 && (
        <section aria-labelledby="story-jobs">
          <h2 id="story-jobs">Jobs</h2>
          <ul>
            {jobs.map(([jobId, job]) => (
              <MarkedLine
                key={jobId}
                mark={job.state === 'open' ? job.consequence : job.state === 'done' ? 'go' : null}
                href={address('work', 'job', jobId)}
                title={job.title}
                note={job.closed === null ? 'open' : `${job.state} on ${dateInWords(job.closed, today)}`}
              />
            ))}
          </ul>
        </section>
      )}
      {papers.length > 0 && (
        <section aria-labelledby="story-papers">
          <h2 id="story-papers">Papers</h2>
          <ul>
            {papers.map(([paperId, { title, kind }]) => (
              <MarkedLine key={paperId} href={address('boat', 'papers', paperId)} title={title} note={kind} />
            ))}
          </ul>
        </section>
      )}
      <section aria-labelledby="story-log">
        <h2 id="story-log">In the log</h2>
        {entries.length === 0 ? (
          <p>
            Nothing is written of it yet. Jobs done to it write themselves here; what it was bedded with, and when, is
            worth writing the next time it is off.
          </p>
        ) : (
          <search className="log-ask">
            <TextField
              label="Ask of it"
              note="‘What was this bedded with?’, ‘when was it last off?’"
              value={words}
              onChange={setWords}
            />
          </search>
        )}
        {words.trim() === '' ? (
          <EntryList book={book} entries={entries} onOpen={openEntry} />
        ) : (
          <FoundList book={book} found={found} kind="" onOpen={openEntry} />
        )}
      </section>
      <OpenedSheet of={sheet}>
        {(open) => (
          <>
            {open.sheet === 'fitting' && <FittingSheet book={book} id={id} onClose={close} />}
            {open.sheet === 'note' && <NoteSheet book={book} corrects={open.corrects} fitting={id} onClose={close} />}
            {open.sheet === 'entry' && (
              <EntrySheet
                book={book}
                id={open.id}
                onCorrect={() => sheet.open({ sheet: 'note', corrects: open.id })}
                onClose={close}
              />
            )}
          </>
        )}
      </OpenedSheet>
    </>
  );
}
