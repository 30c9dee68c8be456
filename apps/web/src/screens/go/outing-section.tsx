import type { Book, Id, Outing } from '#boat-book';
import type { FitAnswer } from '#fit-to-go';
import { fitInWords } from '#reckoning';
import { FoldedList } from '../../parts/folded-list.tsx';
import { address } from '../../shell/route.ts';
import type { PlanInHand } from '../days/planner.ts';
import { FindingLine } from './finding-line.tsx';
import { moreInWords, worstFirst } from './finding-mark.ts';
import { MakeFit } from './make-fit.tsx';
import { outingInWords } from './outing-in-words.ts';
import { useAnswer } from './use-answer.ts';

export function OutingSection({
  book,
  today,
  id,
  outing,
  plan,
  onChange,
}: {
  readonly book: Book;
  readonly today: string;
  readonly id: Id;
  readonly outing: Outing;
  /** null: no outing needs one */
  readonly plan: PlanInHand | null;
  readonly onChange: () => void;
}) {
  const { answer, ifPlanKept, looking, planning } = useAnswer(book, id, outing, plan);
  const { stops, conditions, sound, notLooked } = answer;
  const sure = answer.verdict === 'not fit' || looking.length === 0;
  return (
    <section className="go-outing" aria-labelledby={`go-${id}`}>
      <div className="go-head">
        <h2 id={`go-${id}`}>{outing.title}</h2>
        <a className="button words" href={address('go', 'sheet', id)} aria-label={`Sheet to print: ${outing.title}`}>
          Sheet
        </a>
        <button type="button" className="words" aria-label={`Change: ${outing.title}`} onClick={onChange}>
          Change
        </button>
      </div>
      <p className="soft">{outingInWords(outing, today)}</p>
      <p
        className="go-sum"
        data-verdict={sure ? answer.verdict : 'being looked at'}
        data-looking={looking.length > 0}
        aria-live="polite"
      >
        <b>{fitInWords(answer, looking)}</b>
        {ifPlanKept && <span> If the plan is kept: {inLine(fitInWords(ifPlanKept, looking))}</span>}
        {looking.length > 0 && <span className="soft"> Still looking at {looking.join(' and ')}.</span>}
      </p>
      {planning !== null && <p className="soft small">{planning}</p>}
      <p>
        <a className="button" href={address('go', 'morning', id)} aria-label={`Morning lists: ${outing.title}`}>
          Morning lists
        </a>
      </p>
      <MakeFit answer={answer} />
      <div className="go-sides">
        <div>
          <Findings title="She is not fit while these stand" findings={stops} book={book} today={today} />
        </div>
        <div>
          <Findings title="She may go only so" findings={conditions} book={book} today={today} />
          {sound.length > 0 && (
            <details className="go-sound">
              <summary className="go-looked prints">Looked at, nothing against it: {sound.length}</summary>
              <ul>
                {sound.map((finding) => (
                  <FindingLine key={finding.id} book={book} finding={finding} today={today} />
                ))}
              </ul>
            </details>
          )}
          <h3>Not looked at: {notLooked.length}</h3>
          <FoldedList
            className="go-not small"
            items={notLooked}
            rest={(more) => `${more.length} more not looked at`}
            of={({ words, because }) => (
              <li key={`${words} ${because}`} className="go-reason">
                {words}: <span className="soft">{because}</span>
              </li>
            )}
          />
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
      <h3>
        {title}: {findings.length}
      </h3>
      <FoldedList
        items={worstFirst(book, findings)}
        rest={(more) => moreInWords(book, more)}
        of={(finding) => <FindingLine key={finding.id} book={book} finding={finding} today={today} />}
      />
    </>
  );
}

/** A sentence inside another. */
const inLine = (words: string) => `${words.charAt(0).toLowerCase()}${words.slice(1)}`;
