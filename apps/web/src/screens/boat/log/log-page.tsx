/** The log: everything done and measured, found by words or gone through by date, fitting, zone, kind and year. */
import { useCallback, useDeferredValue, useMemo, useState } from 'react';
import { type Book, type Id, type LogKind, standingLog } from '#boat-book';
import { BelowHeading } from '../../../parts/below-heading.tsx';
import { ChoiceField } from '../../../parts/choice-fields.tsx';
import { countInWords } from '../../../parts/in-words.ts';
import { onDemand } from '../../../parts/on-demand.tsx';
import { TextField } from '../../../parts/text-fields.tsx';
import { useOpenBook } from '../../../reading/use-open-book.ts';
import { address } from '../../../shell/route.ts';
import { EntryList, type NamedEntry } from './entry-list.tsx';
import { FoundList } from './found-list.tsx';
import { kindName } from './log-words.ts';
import { useFound } from './use-found.ts';

const NoteSheet = onDemand(() => import('./note-sheet.tsx'));
const EntrySheet = onDemand(() => import('./entry-sheet.tsx'));

type Open = { readonly sheet: 'note'; readonly corrects: Id | null } | { readonly sheet: 'entry'; readonly id: Id };

export default function LogPage() {
  const book = useOpenBook();
  return (
    <div className="log">
      <h1>Log</h1>
      <BelowHeading>
        <LogBelow book={book} />
      </BelowHeading>
    </div>
  );
}

function LogBelow({ book }: { readonly book: Book }) {
  const [words, setWords] = useState('');
  const [fitting, setFitting] = useState<Id>('');
  const [zone, setZone] = useState<Id>('');
  const [year, setYear] = useState('');
  const [kind, setKind] = useState<LogKind | ''>('');
  const [open, setOpen] = useState<Open | null>(null);
  const openEntry = useCallback((id: Id) => setOpen({ sheet: 'entry', id }), []);

  const all = useMemo(
    () => [...standingLog(book.log)].sort(([, a], [, b]) => (a.at < b.at ? 1 : a.at > b.at ? -1 : 0)),
    [book.log],
  );
  const years = useMemo(() => [...new Set(all.map(([, { at }]) => at.slice(0, 4)))], [all]);
  const narrow = useDeferredValue(`${fitting} ${zone} ${year} ${kind}`);
  // biome-ignore lint/correctness/useExhaustiveDependencies: `narrow` stands for the four, a moment later
  const entries = useMemo((): readonly NamedEntry[] => {
    const passes = ([, entry]: NamedEntry): boolean =>
      (fitting === '' || entry.fitting === fitting) &&
      (zone === '' || entry.zone === zone) &&
      (year === '' || entry.at.startsWith(year)) &&
      (kind === '' || entry.kind === kind);
    return fitting || zone || year || kind ? all.filter(passes) : all;
  }, [all, narrow]);
  const found = useFound({
    words,
    ...(fitting === '' ? {} : { fitting }),
    ...(zone === '' ? {} : { zone }),
    ...(year === '' ? {} : { from: year, to: `${year}-12-31` }),
  });
  const narrowed = fitting !== '' || zone !== '' || year !== '' || kind !== '';
  const close = () => setOpen(null);

  return (
    <>
      <p className="soft">
        What was done and measured, by whom, when, with what. Nothing in it is rewritten: an entry that was wrong is put
        right by another.
      </p>
      <div className="boat-acts">
        <button type="button" className="main" onClick={() => setOpen({ sheet: 'note', corrects: null })}>
          Write in the log
        </button>
        <a className="button words" href={address('boat', 'log', 'costs')}>
          What she has cost
        </a>
      </div>
      <search className="log-ask no-print">
        <TextField
          label="Find"
          note="In your own words: ‘what was the hatch bedded with’, ‘greased rudder’."
          value={words}
          onChange={setWords}
        />
        <details className="log-narrow">
          <summary>{narrowed ? 'Only some of it is shown' : 'Only a fitting, a zone, a year or a kind'}</summary>
          <div className="log-choices">
            <ChoiceField
              label="Fitting"
              value={fitting}
              onChange={setFitting}
              none="any"
              options={Object.entries(book.fittings).map(([value, { name }]) => ({ value, name }))}
            />
            <ChoiceField
              label="Zone"
              value={zone}
              onChange={setZone}
              none="any"
              options={Object.entries(book.zones).map(([value, { name }]) => ({ value, name }))}
            />
            <ChoiceField
              label="Year"
              value={year}
              onChange={setYear}
              none="any"
              options={years.map((value) => ({ value, name: value }))}
            />
            <ChoiceField
              label="Kind"
              value={kind}
              onChange={setKind}
              none="any"
              options={(Object.keys(kindName) as LogKind[])
                .filter((value) => value !== 'taken back')
                .map((value) => ({ value, name: kindName[value] }))}
            />
          </div>
        </details>
      </search>
      {words.trim() !== '' ? (
        <FoundList book={book} found={found} kind={kind} onOpen={openEntry} />
      ) : (
        <>
          <p className="soft small" role="status">
            {narrowed
              ? `${countInWords(entries.length, 'entry', 'entries')} of ${all.length}`
              : countInWords(all.length, 'entry', 'entries')}
          </p>
          {entries.length > 0 ? (
            <EntryList key={`${fitting} ${zone} ${year} ${kind}`} book={book} entries={entries} onOpen={openEntry} />
          ) : (
            <p>
              {all.length === 0
                ? 'Nothing is written yet. Steps ticked, jobs finished, readings and what is got write themselves; the rest you write here.'
                : 'Nothing in the log is of that fitting, zone, year and kind together.'}
            </p>
          )}
        </>
      )}
      {open?.sheet === 'note' && <NoteSheet book={book} corrects={open.corrects} onClose={close} />}
      {open?.sheet === 'entry' && (
        <EntrySheet
          book={book}
          id={open.id}
          onCorrect={() => setOpen({ sheet: 'note', corrects: open.id })}
          onClose={close}
        />
      )}
    </>
  );
}
