/** What would make her fit, least work first: what it comes to, each with its hands-on time, its waits and its place in the plan. */
import type { FitAnswer, Mend } from '#fit-to-go';
import { leastWorkInWords, lengthInWords, mendNotes, plannedOfInWords } from '#reckoning';
import { FoldedList } from '../../parts/folded-list.tsx';
import { pageOf } from './in-book.ts';

export function MakeFit({ answer: { least, toMakeFit } }: { readonly answer: FitAnswer }) {
  if (toMakeFit.length === 0) return null;
  const others = toMakeFit.filter((mend) => !least?.work.includes(mend));
  return (
    <section aria-label="What would make her fit">
      <h3>What would make her fit, least work first</h3>
      {least === null ? (
        <p>Something of what stands against it is mended by no work in the book.</p>
      ) : (
        <>
          <p className="go-least">
            {leastWorkInWords(least)} <span className="soft">{plannedOfInWords(least.work)}</span>
          </p>
          <FoldedList
            ordered
            className="go-mend"
            items={least.work}
            rest={(more) => moreWork(more)}
            of={(mend) => <MendLine key={mend.words} mend={mend} />}
          />
        </>
      )}
      {others.length > 0 && (
        <details open={least === null}>
          <summary className="go-looked">
            {least === null ? 'What there is' : 'Or instead of one of these'}: {others.length}
          </summary>
          <ul className="go-mend">
            {others.map((mend) => (
              <MendLine key={mend.words} mend={mend} />
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

/** `11 more, 14 h 50 of work` */
function moreWork(more: readonly Mend[]): string {
  const minutes = more.reduce((sum, mend) => sum + (mend.minutes ?? 0), 0);
  return `${more.length} more${minutes === 0 ? '' : `, ${lengthInWords(minutes)} of work`}`;
}

function MendLine({ mend }: { readonly mend: Mend }) {
  const page = pageOf(mend.of);
  return (
    <li className="go-reason">
      {page === null ? (
        mend.words
      ) : (
        <a className="go-work" href={page.href}>
          {mend.words}
        </a>
      )}
      {mendNotes(mend).map((note) => (
        <span key={note} className="soft">
          {' '}
          {note}
        </span>
      ))}
    </li>
  );
}
