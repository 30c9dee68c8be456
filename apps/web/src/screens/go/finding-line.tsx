/** One finding: what it is, and when it is opened its reasons down to the figures and their days, what would mend it, and its page. */
import type { Book } from '#boat-book';
import type { Finding } from '#fit-to-go';
import { dateInWords } from '../../parts/in-words.ts';
import { Mark } from '../../parts/mark.tsx';
import { findingMark } from './finding-mark.ts';
import { pageOf } from './in-book.ts';

export function FindingLine({
  book,
  finding,
  today,
}: {
  readonly book: Book;
  readonly finding: Finding;
  readonly today: string;
}) {
  const { words, because, remedies, cautions, bearing } = finding;
  const there = pageOf(finding.of);
  const mark = findingMark(book, finding);
  return (
    <li className="go-finding">
      <details>
        <summary className="go-what prints">
          <Mark of={mark.of} said={mark.said} />
          <span>
            {words}
            {bearing !== 'sound' && because[0] && <span className="go-first soft">{because[0].words}</span>}
          </span>
        </summary>
        {cautions.map((caution) => (
          <p key={caution} className="go-caution">
            {caution}
          </p>
        ))}
        {because.length > 0 && (
          <ol className="go-reasons" aria-label="Reasons">
            {because.map(({ words: reason, from }) => (
              <li key={reason} className="go-reason">
                {reason} {from !== null && <span className="soft">From {dateInWords(from, today)}.</span>}
              </li>
            ))}
          </ol>
        )}
        {remedies.map((remedy) => (
          <p key={remedy.words}>
            <b>Mends it:</b> {[remedy.words, remedy.waits, remedy.inTime?.words ?? ''].filter(Boolean).join(' ')}
          </p>
        ))}
        {there && (
          <p>
            <a className="button" href={there.href}>
              {there.title}
            </a>
          </p>
        )}
      </details>
    </li>
  );
}
