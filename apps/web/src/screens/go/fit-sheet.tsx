/** The answer for an outing in print: black on white, with what to do to be ticked; the screen shows it as it will be printed. */
import type { Book, Id, Outing } from '#boat-book';
import type { Finding, FitAnswer, Mend } from '#fit-to-go';
import { fitInWords, leastWorkInWords, mendNotes, plannedOfInWords } from '#reckoning';
import { localAt } from '#units';
import { BelowHeading } from '../../parts/below-heading.tsx';
import { capital, dateInWords, dayInWords } from '../../parts/in-words.ts';
import { Printable, SheetIs } from '../../parts/printable.tsx';
import { todayAt } from '../../reading/today.ts';
import { useOpenBook } from '../../reading/use-open-book.ts';
import { address } from '../../shell/route.ts';
import { type Numbered, NumberedBoat } from '../boat/picture/numbered-boat.tsx';
import './fit-sheet.css';
import { whereInBook } from './in-book.ts';
import { outingOnPaper } from './outing-in-words.ts';
import { useAnswer } from './use-answer.ts';
import { usePlanOfOutings } from './use-plan-of-outings.ts';

export default function FitSheet({ id }: { readonly id: Id }) {
  const book = useOpenBook();
  const outing = book.outings[id];
  return (
    <>
      <p className="no-print">
        <a className="button words" href={address('go')}>
          ‹ Go
        </a>
      </p>
      {outing === undefined ? (
        <>
          <h1>No such outing</h1>
          <p>It was taken out.</p>
        </>
      ) : (
        <Printable button="Print the sheet">
          <BelowHeading
            meanwhile={
              <article className="paper fit-print">
                <header>{headOf(outing)}</header>
              </article>
            }
          >
            <Printed book={book} id={id} outing={outing} />
          </BelowHeading>
        </Printable>
      )}
    </>
  );
}

const headOf = ({ title }: Outing) => <h1>Fit to go? {title}</h1>;

function Printed({ book, id, outing }: { readonly book: Book; readonly id: Id; readonly outing: Outing }) {
  const plan = usePlanOfOutings(book, [[id, outing]]);
  const today = todayAt(book);
  const { answer, ifPlanKept, looking, planning } = useAnswer(book, id, outing, plan);
  const { stops, conditions, sound, notLooked } = answer;
  const zone = Object.values(book.places)[0]?.timeZone ?? 'UTC';
  const asked = localAt(Date.now(), zone);
  return (
    <div data-looking={looking.length > 0 || planning !== null}>
      <SheetIs
        sheet={looking.length > 0 ? 'coming' : 'whole'}
        waitsFor={looking.length > 0 ? `Still looking at ${looking.join(' and ')}.` : ''}
      >
        {looking.length === 0 && <p className="small soft">{planning}</p>}
      </SheetIs>
      <article className="paper fit-print">
        <header>
          {headOf(outing)}
          <p>
            {book.boat.name} · {outingOnPaper(outing, today)}
          </p>
          <p>
            <b>{fitInWords(answer, looking)}</b>
            {ifPlanKept && ` If the plan is kept: ${fitInWords(ifPlanKept, looking)}`} Asked{' '}
            {dayInWords(asked.day, today)} {asked.clock}, out of her book.
          </p>
        </header>
        <WhereOnHer book={book} findings={[...stops, ...conditions]} />
        <Lines title="She is not fit while these stand" findings={stops} from={1} today={today} />
        <Lines title="She may go only so" findings={conditions} from={stops.length + 1} today={today} />
        <ToDo answer={answer} />
        <Short title="Take care" parts={[...new Set([...stops, ...conditions].flatMap(({ cautions }) => cautions))]} />
        <Short title="Not looked at" parts={notLooked.map(({ words, because }) => `${words}: ${because}`)} />
        <Short title="Looked at, nothing against it" parts={sound.map(({ words }) => words)} />
      </article>
    </div>
  );
}

/** The numbers of the list below, each where the thing is. */
function WhereOnHer({ book, findings }: { readonly book: Book; readonly findings: readonly Finding[] }) {
  const numbered = findings.map((finding, n): Numbered => {
    const { fitting, zone } = whereInBook(book, finding.of);
    return { label: String(n + 1), meaning: finding.bearing === 'stops' ? 'danger' : 'worsens', fitting, zone };
  });
  return <NumberedBoat book={book} things={numbered} tallest_px={236} />;
}

function Lines({
  title,
  findings,
  from,
  today,
}: {
  readonly title: string;
  readonly findings: readonly Finding[];
  /** number of the first */
  readonly from: number;
  readonly today: string;
}) {
  if (findings.length === 0) return null;
  return (
    <section className="fit-print-part">
      <h2>{title}</h2>
      <ol>
        {findings.map(({ id, bearing, words, because: [first] }, n) => (
          <li key={id}>
            <span className="fit-print-number">{from + n}</span>
            <span>
              <b>
                {bearing === 'stops' ? '▲ ' : '○ '}
                {words.replace(/\.$/, '')}.
              </b>{' '}
              {first?.words}
              {first?.from != null && ` From ${dateInWords(first.from, today)}.`}
            </span>
          </li>
        ))}
      </ol>
    </section>
  );
}

function ToDo({ answer: { least, toMakeFit } }: { readonly answer: FitAnswer }) {
  if (toMakeFit.length === 0) return null;
  const work: readonly Mend[] = least?.work ?? toMakeFit;
  return (
    <section className="fit-print-part">
      <h2>What would make her fit, least work first</h2>
      <p>
        {least === null
          ? 'Something of what stands against it is mended by no work in the book.'
          : `${leastWorkInWords(least)} ${plannedOfInWords(least.work)}`}
      </p>
      <ul>
        {work.map((mend) => (
          <li key={mend.words}>
            <span className="paper-box" aria-hidden="true" /> <b>{mend.words}</b> {mendNotes(mend).join(' ')}
          </li>
        ))}
      </ul>
    </section>
  );
}

function Short({ title, parts }: { readonly title: string; readonly parts: readonly string[] }) {
  if (parts.length === 0) return null;
  return (
    <section className="fit-print-part">
      <h2>{title}</h2>
      <ul className="paper-columns">
        {parts.map((part) => (
          <li key={part}>{capital(part.replace(/\.$/, ''))}.</li>
        ))}
      </ul>
    </section>
  );
}
