/** A job day in print: black on white, in order of time, to be ticked with a pencil. */
import './day-sheet.css';
import type { ReactNode } from 'react';
import type { Book, Id, JobDay } from '#boat-book';
import { carryDown } from '#reckoning';
import type { Plan, Problem, ProblemDay } from '#workplan';
import { BelowHeading } from '../../parts/below-heading.tsx';
import { dayInWords } from '../../parts/in-words.ts';
import { Printable, SheetIs } from '../../parts/printable.tsx';
import { useOpenBook } from '../../reading/use-open-book.ts';
import { BackToPlan } from './day-page.tsx';
import { type SheetRow, sheetRows, standsInWords } from './day-sheet.ts';
import { clockAt, dayAt, shortDay } from './place-time.ts';
import { endedSince, overnightInWords } from './plan-drawing/wait-bars.ts';
import { PlanProgress } from './plan-progress.tsx';
import { isOfBookAsked, usePlan } from './planner.ts';
import { dayWeatherInWords } from './weather-words.ts';

export default function SheetPage({ id }: { readonly id: Id }) {
  const book = useOpenBook();
  const record = book.jobDays[id];
  return (
    <div className="days">
      <BackToPlan />
      <Printable button="Print the sheet">
        <BelowHeading meanwhile={<HeadOnly record={record} />}>
          <Printed book={book} id={id} />
        </BelowHeading>
      </Printable>
    </div>
  );
}

/** The sheet as far as it is known without a plan. */
function HeadOnly({ record, children }: { readonly record: JobDay | undefined; readonly children?: ReactNode }) {
  return (
    <article className="paper days-print">
      <header>
        <h1>{record === undefined ? 'Day sheet' : dayInWords(record.date, record.date)}</h1>
      </header>
      {children}
    </article>
  );
}

function Printed({ book, id }: { readonly book: Book; readonly id: Id }) {
  const inHand = usePlan(book);
  const { problem, picture, state } = inHand;
  const day = problem?.days.find((each) => each.id === id);
  const making = !isOfBookAsked(inHand);
  return (
    <div data-plan-state={state}>
      <SheetIs
        sheet={making ? 'coming' : day ? 'whole' : 'none'}
        waitsFor={making ? 'The plan is being made.' : state === 'failed' ? (inHand.words ?? '') : ''}
      />
      {problem && picture && day ? (
        <DaySheet book={book} problem={problem} plan={picture.outcome.plan} day={day} />
      ) : (
        <HeadOnly record={book.jobDays[id]}>
          {making || <p>{inHand.words ?? 'This day is not in the plan: it is over, or was removed.'}</p>}
        </HeadOnly>
      )}
      {/* it comes and goes: over the sheet it would move it */}
      <div className="no-print">
        <PlanProgress inHand={inHand} />
      </div>
    </div>
  );
}

interface Shown {
  readonly book: Book;
  readonly problem: Problem;
  readonly plan: Plan;
  readonly day: ProblemDay;
}

function DaySheet({ book, problem, plan, day }: Shown) {
  const rows = sheetRows(problem, plan, book, day);
  const carry = carryDown(problem, plan, book, day);
  const date = dayAt(problem, day.from);
  const before = problem.days[problem.days.indexOf(day) - 1];
  const ended = before ? endedSince(problem, plan, before.to, day.from) : [];
  const comingIn = plan.waits.filter((w) => w.start < day.from && w.finish > day.from);
  const overnight = overnightInWords(problem, plan, day.to);
  const record = book.jobDays[day.id];
  // on the day itself how she stood before now is not known
  const atFirst = standsInWords(problem, plan, day.from);
  return (
    <article className="paper days-print">
      <header>
        <h1>{dayInWords(date, date)}</h1>
        <p>
          {book.boat.name}
          {record ? `, ${book.places[record.place]?.name ?? ''}` : ''}, {clockAt(problem, day.from)} to{' '}
          {clockAt(problem, day.to)}
        </p>
        <p>{dayWeatherInWords(problem, day.from, day.to)}</p>
        <p>
          {atFirst !== '' && `She stands: ${atFirst}. `}Left at the end: {standsInWords(problem, plan, day.to)}.
        </p>
        {ended.map((words) => (
          <p key={words}>Overnight: {words}</p>
        ))}
        {comingIn.map((w) => (
          <p key={`${w.step}-${w.wait}`}>
            Still waiting at the start:{' '}
            {problem.steps.find((s) => s.id === w.step)?.waits.find((x) => x.id === w.wait)?.title}, until{' '}
            {clockAt(problem, w.finish)}
          </p>
        ))}
      </header>
      <table>
        <thead>
          <tr>
            <th scope="col">time</th>
            <th scope="col">what</th>
            <th scope="col">who</th>
            <th scope="col">
              <span className="unseen">done</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <SheetLine key={row.key} row={row} />
          ))}
        </tbody>
      </table>
      {overnight && (
        <section>
          <h2>Left to wait</h2>
          <p>{overnight.lead}</p>
          <ul>
            {overnight.ends.map((words) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        </section>
      )}
      {carry.length > 0 && (
        <section>
          <h2>Carry down, in order of use</h2>
          <ul className="paper-columns days-carry">
            {carry.flatMap(({ keptAt, things }) =>
              things.map((thing, n) => (
                <li key={thing.key}>
                  <span className="paper-box" aria-hidden="true" />
                  {n === 0 && <b>{thing.kind === 'mix' ? 'to mix' : (keptAt ?? 'place not written down')}: </b>}
                  {thing.count > 1 ? `${thing.count} × ${thing.name}` : thing.name}
                  <span className="days-print-soft">
                    {` ${clockAt(problem, thing.first)}`}
                    {thing.absent !== null &&
                      (thing.absent.expected === null
                        ? ' · not there yet, to get'
                        : ` · not there yet, expected ${shortDay(thing.absent.expected)}`)}
                  </span>
                </li>
              )),
            )}
          </ul>
        </section>
      )}
    </article>
  );
}

function SheetLine({ row }: { readonly row: SheetRow }) {
  if (row.kind === 'quiet')
    return (
      <tr className="days-print-quiet">
        <td>{row.time}</td>
        <td colSpan={3}>{row.name}</td>
      </tr>
    );
  return (
    <tr data-kind={row.kind}>
      <td>{row.time}</td>
      <td>
        <b>
          {row.danger ? '▲ ' : ''}
          {row.name}
        </b>
        {row.about !== '' && <span className="days-print-soft"> {row.about}</span>}
        {(row.needs !== '' || row.waits.length > 0 || row.cautions.length > 0) && (
          <div>
            {row.needs !== '' && <>{row.needs}. </>}
            {row.waits.map((wait) => (
              <span key={wait}>{wait}. </span>
            ))}
            {row.cautions.length > 0 && (
              <span className="days-print-caution">Take care: {row.cautions.map(asSentence).join(' ')}</span>
            )}
          </div>
        )}
      </td>
      <td>{row.who}</td>
      <td>
        <span className="paper-box" aria-hidden="true" />
      </td>
    </tr>
  );
}

function asSentence(words: string): string {
  return /[.!?]$/.test(words) ? words : `${words}.`;
}
