import type { Book, Id, Outing } from '#boat-book';
import type { FitAnswer } from '#fit-to-go';
import { outingFit } from '#reckoning';
import { countInWords } from '../../parts/in-words.ts';
import { address } from '../../shell/route.ts';
import { FindingLine } from './finding-line.tsx';
import { outingInWords } from './outing-in-words.ts';
import { useNights } from './use-nights.ts';

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
  const nights = useNights(book, id);
  const { answer, ifPlanKept } = outingFit(book, id, outing, Date.now(), nights);
  const { stops, conditions, sound, notLooked, toMakeFit } = answer;
  return (
    <section className="go-outing" aria-labelledby={`go-${id}`}>
      <div className="go-head">
        <h2 id={`go-${id}`}>{outing.title}</h2>
        <button type="button" className="words" aria-label={`Change: ${outing.title}`} onClick={onChange}>
          Change
        </button>
      </div>
      <p className="soft">{outingInWords(outing, today)}</p>
      <p className="go-sum" data-verdict={answer.verdict}>
        <b>{verdictInWords(answer)}</b>
        {ifPlanKept && <span> If the plan is kept: {verdictInWords(ifPlanKept).toLowerCase()}</span>}
        {nights === null && <span className="soft"> The battery’s nights are being worked out.</span>}
      </p>
      <p>
        <a className="button" href={address('go', 'morning', id)} aria-label={`Morning lists: ${outing.title}`}>
          Morning lists
        </a>
      </p>
      <div className="go-sides">
        <div>
          <Findings title="She is not fit while these stand" findings={stops} book={book} today={today} />
          <Findings title="She may go only so" findings={conditions} book={book} today={today} />
        </div>
        <div>
          {toMakeFit.length > 0 && (
            <>
              <h3>What would make her fit, least work first</h3>
              <ol className="go-mend">
                {toMakeFit.map(({ words, mends }) => (
                  <li key={words} className="go-reason">
                    {words}
                    {mends.length > 1 && <span className="soft"> It mends {mends.length} of these.</span>}
                  </li>
                ))}
              </ol>
            </>
          )}
          {sound.length > 0 && (
            <details className="go-sound">
              <summary className="go-looked">Looked at, nothing against it: {sound.length}</summary>
              <ul>
                {sound.map((finding) => (
                  <FindingLine key={finding.id} book={book} finding={finding} today={today} />
                ))}
              </ul>
            </details>
          )}
          <h3>Not looked at</h3>
          <ul className="go-not small">
            {notLooked.map(({ words, because }) => (
              <li key={`${words} ${because}`} className="go-reason">
                {words}: <span className="soft">{because}</span>
              </li>
            ))}
          </ul>
        </div>
      </div>
    </section>
  );
}

function Findings({
  title,
  findings,
  book,
  today,
}: {
  readonly title: string;
  readonly findings: FitAnswer['stops'];
  readonly book: Book;
  readonly today: string;
}) {
  if (findings.length === 0) return null;
  return (
    <>
      <h3>{title}</h3>
      <ul>
        {findings.map((finding) => (
          <FindingLine key={finding.id} book={book} finding={finding} today={today} />
        ))}
      </ul>
    </>
  );
}

/** Never a bare yes. */
function verdictInWords({ verdict, stops, conditions, notLooked }: FitAnswer): string {
  switch (verdict) {
    case 'not fit':
      return `Not fit to go: ${countInWords(stops.length, 'thing')} ${stops.length === 1 ? 'stands' : 'stand'} against it.`;
    case 'fit with conditions':
      return `Fit with ${countInWords(conditions.length, 'condition')}, as far as it was looked at.`;
    case 'nothing known against it':
      return `Nothing known against it; ${countInWords(notLooked.length, 'thing')} not looked at.`;
  }
}
