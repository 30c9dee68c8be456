/** What there is at one zone: open work, jury rigs, fittings. */
import type { Book, Id } from '#boat-book';
import { rigLimitsInWords, seenFirst, standingRigs } from '#reckoning';
import { BelowHeading } from '../../parts/below-heading.tsx';
import { countInWords, dateInWords, minutesInWords } from '../../parts/in-words.ts';
import { consequenceName } from '../../parts/mark.tsx';
import { MarkedLine } from '../../parts/marked-line.tsx';
import { onDemand } from '../../parts/on-demand.tsx';
import { OpenedSheet, useOpened } from '../../parts/opened.tsx';
import { beddedInWords } from '../../reading/bedded-in-words.ts';
import { minutesLeft, openJobs, stepsOf } from '../../reading/open-work.ts';
import { todayAt } from '../../reading/today.ts';
import { useOpenBook } from '../../reading/use-open-book.ts';
import { address } from '../../shell/route.ts';

const ZoneSheet = onDemand(() => import('./zone-sheet.tsx'));
const FittingSheet = onDemand(() => import('./fitting-sheet.tsx'));

type Open = { readonly sheet: 'zone' } | { readonly sheet: 'fitting'; readonly id: Id | null };

export default function ZonePage({ id }: { readonly id: Id }) {
  const book = useOpenBook();
  const zone = book.zones[id];
  const back = (
    <p className="boat-back no-print">
      <a className="button words" href={address('boat')}>
        ‹ Boat
      </a>
    </p>
  );
  if (!zone)
    return (
      <div className="boat">
        {back}
        <h1>No such zone</h1>
        <p>It was taken out of the book.</p>
      </div>
    );
  return (
    <div className="boat boat-zone">
      {back}
      <h1>{zone.name}</h1>
      <BelowHeading>
        <ZoneBelow book={book} id={id} zone={zone} />
      </BelowHeading>
    </div>
  );
}

function ZoneBelow({ book, id, zone }: { readonly book: Book; readonly id: Id; readonly zone: Book['zones'][Id] }) {
  const today = todayAt(book);
  const sheet = useOpened<Open>();
  const rigs = standingRigs(book, today).filter(({ rig }) => rig.zone === id);
  const jobs = openJobs(book).filter(({ job }) => job.zone === id);
  const fittings = Object.entries(book.fittings).filter(([, fitting]) => fitting.zone === id);
  const loadPaths = Object.entries(book.loadPaths).filter(([, path]) => path.zone === id);
  return (
    <>
      <p className="soft">
        {zone.inside ? 'inside' : 'in the open'} · room for {countInWords(zone.room, 'person', 'people')}
        {zone.words.length > 0 && ` · also called ${zone.words.join(', ')}`}
      </p>
      {rigs.length > 0 && (
        <>
          <h2>Jury rigs</h2>
          <ul>
            {rigs.map((trust) => (
              <MarkedLine
                key={trust.id}
                mark={seenFirst(trust) ? 'danger' : 'jury rig'}
                title={trust.rig.title}
                note={`${trust.daysPast > 0 ? 'past its trust since' : 'trusted until'} ${[dateInWords(trust.rig.trustedUntil, today), ...rigLimitsInWords(trust.rig)].join(', ')}. ${trust.rig.reason}`}
              />
            ))}
          </ul>
        </>
      )}
      <h2>Open here</h2>
      <ul>
        {jobs.map(({ id: job, job: { title, consequence } }) => (
          <MarkedLine
            key={job}
            mark={consequence}
            href={address('work', 'job', job)}
            title={title}
            note={consequenceName[consequence]}
            figure={minutesInWords(minutesLeft(stepsOf(book, job)))}
          />
        ))}
      </ul>
      {jobs.length === 0 && <p className="soft">Nothing is open here.</p>}
      <h2>Fitted here</h2>
      <ul>
        {fittings.map(([fittingId, fitting]) => (
          <MarkedLine
            key={fittingId}
            title={fitting.name}
            note={[fitting.size, beddedInWords(fitting, today), fitting.note].filter(Boolean).join(' · ')}
            figure={
              <>
                <a
                  className="button words"
                  aria-label={`Bedding of ${fitting.name}`}
                  href={address('boat', 'bedding', fittingId)}
                >
                  Bedding
                </a>
                <button
                  type="button"
                  className="words"
                  aria-label={`Change the fitting: ${fitting.name}`}
                  onClick={() => sheet.open({ sheet: 'fitting', id: fittingId })}
                >
                  Change
                </button>
              </>
            }
          >
            <a
              className="button words"
              href={address('boat', 'log', 'fitting', fittingId)}
              aria-label={`All of ${fitting.name}`}
            >
              All of it
            </a>
          </MarkedLine>
        ))}
      </ul>
      {fittings.length === 0 && <p className="soft">No fitting is written down here.</p>}
      {loadPaths.length > 0 && (
        <>
          <h2>Load paths here</h2>
          <ul>
            {loadPaths.map(([path, { name }]) => (
              <MarkedLine key={path} href={address('boat', 'loads', 'path', path)} title={name} />
            ))}
          </ul>
        </>
      )}
      <div className="boat-acts">
        <button type="button" onClick={() => sheet.open({ sheet: 'fitting', id: null })}>
          Add a fitting
        </button>
        <button type="button" onClick={() => sheet.open({ sheet: 'zone' })}>
          Change the zone
        </button>
      </div>
      <OpenedSheet of={sheet}>
        {(open) =>
          open.sheet === 'zone' ? (
            <ZoneSheet book={book} id={id} onClose={sheet.close} />
          ) : (
            <FittingSheet book={book} id={open.id} zone={id} onClose={sheet.close} />
          )
        }
      </OpenedSheet>
    </>
  );
}
