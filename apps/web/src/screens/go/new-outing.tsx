/** An outing put in with two taps: what it is, and which day. Both say what goes in; the rest is changed like any other. */
import { useState } from 'react';
import type { Book, Outing } from '#boat-book';
import { addDays, weekday } from '#units';
import { RefusalLine } from '../../parts/form.tsx';
import { countInWords, dateInWords, dayInWords } from '../../parts/in-words.ts';
import { onDemand } from '../../parts/on-demand.tsx';
import { useRun } from '../../parts/use-run.ts';

const OutingSheet = onDemand(() => import('./outing-sheet.tsx'));

type Begun = Pick<Outing, 'title' | 'nights' | 'way' | 'from'>;
/** the clock time stands on the buttons of the second tap */
const kinds: readonly Begun[] = [
  { title: 'A day sail', nights: 0, way: 'water', from: '09:00' },
  { title: 'A night aboard', nights: 1, way: 'water', from: '09:00' },
  { title: 'Two nights aboard', nights: 2, way: 'water', from: '09:00' },
  { title: 'On the road', nights: 0, way: 'road', from: '09:00' },
];

/** The days that come next to mind: tomorrow, and the days of the weekend ahead. */
function daysAhead(today: string): readonly string[] {
  const saturday = addDays(today, (5 - weekday(today) + 7) % 7);
  return [addDays(today, 1), saturday, addDays(saturday, 1)]
    .filter((day, i, all) => day > today && all.indexOf(day) === i)
    .sort();
}

export function NewOuting({ book, today }: { readonly book: Book; readonly today: string }) {
  const [kind, setKind] = useState<Begun | null>(null);
  const [sheet, setSheet] = useState<Partial<Outing> | null>(null);
  const { run, refusal } = useRun();
  const put = async (begun: Begun, date: string) => {
    const outing = { ...begun, date, place: '', wind_kn: null, title: `${begun.title}, ${dateInWords(date, today)}` };
    if ((await run('addOuting', outing)).kind === 'done') setKind(null);
  };
  return (
    <section className="go-new no-print" aria-labelledby="go-new-title">
      <h2 id="go-new-title" className="go-new-title">
        Add an outing
      </h2>
      <div className="go-choices">
        {kinds.map((each) => (
          <button
            key={each.title}
            type="button"
            aria-pressed={kind === each}
            onClick={() => setKind(kind === each ? null : each)}
          >
            {each.title}
          </button>
        ))}
        <button type="button" className="words" onClick={() => setSheet({})}>
          Write it all
        </button>
      </div>
      {kind && (
        <fieldset className="go-choices">
          <legend className="small">
            {kind.title}
            {kind.nights > 0 && `, ${countInWords(kind.nights, 'night')}`}: on which day, ready at {kind.from}?
          </legend>
          {daysAhead(today).map((day) => (
            <button key={day} type="button" className="main" onClick={() => void put(kind, day)}>
              {dayInWords(day, today)}
            </button>
          ))}
          <button type="button" onClick={() => setSheet(kind)}>
            Another day
          </button>
        </fieldset>
      )}
      <RefusalLine refusal={refusal} />
      {sheet && (
        <OutingSheet
          book={book}
          id={null}
          begun={sheet}
          onClose={() => {
            setSheet(null);
            setKind(null);
          }}
        />
      )}
    </section>
  );
}
