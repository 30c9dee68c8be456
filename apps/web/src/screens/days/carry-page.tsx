/** What to carry down for a job day, in order of use with its place, ticked as it is carried. */
import { useState } from 'react';
import type { Book, Id } from '#boat-book';
import { type Carried, carriedInWords, carryDown, carryText } from '#reckoning';
import type { Problem } from '#workplan';
import { BelowHeading } from '../../parts/below-heading.tsx';
import { capital, dayInWords } from '../../parts/in-words.ts';
import { onDemand } from '../../parts/on-demand.tsx';
import { todayAt } from '../../reading/today.ts';
import { useOpenBook } from '../../reading/use-open-book.ts';
import { address } from '../../shell/route.ts';
import { useCarried } from './carried.ts';
import './carry-page.css';
import { ShareButton } from '../stores/share-button.tsx';
import { BackToPlan } from './day-page.tsx';
import { PlanProgress } from './plan-progress.tsx';
import { usePlan } from './planner.ts';

const StoreSheet = onDemand(() => import('../stores/store-sheet.tsx'));
const ToolSheet = onDemand(() => import('../stores/tool-sheet.tsx'));

export default function CarryPage({ id }: { readonly id: Id }) {
  const book = useOpenBook();
  return (
    <div className="days days-narrow">
      <BackToPlan />
      <h1>Carry down</h1>
      <BelowHeading>
        <CarryBelow book={book} id={id} />
      </BelowHeading>
    </div>
  );
}

function CarryBelow({ book, id }: { readonly book: Book; readonly id: Id }) {
  const inHand = usePlan(book);
  const today = todayAt(book);
  const { problem, picture } = inHand;
  const day = problem?.days.find((each) => each.id === id);
  const record = book.jobDays[id];
  const stops = problem && picture && day ? carryDown(problem, picture.outcome.plan, book, day) : [];
  const things = stops.flatMap((stop) => stop.things);
  const { carried, tick } = useCarried(book.id, id, record?.date ?? today, today);
  const [placing, setPlacing] = useState<Carried | null>(null);
  const left = things.filter(({ key }) => !carried.has(key)).length;
  return (
    <div data-plan-state={inHand.state}>
      {record && (
        <p className="soft">
          <a href={address('days', 'day', id)}>{dayInWords(record.date, today)}</a>, in order of use.
          {things.length > 0 &&
            (left === 0 ? ' All carried.' : ` ${things.length - left} of ${things.length} carried.`)}{' '}
          Ticks are kept on this device until the day is over.
        </p>
      )}
      {day === undefined ? (
        <p>
          {inHand.state === 'planning'
            ? 'Making the plan.'
            : (inHand.words ?? 'This day is not in the plan: it is over, or was removed.')}
        </p>
      ) : (
        things.length === 0 && <p>Nothing: no step planned that day names a tool, a thing from the stores or a mix.</p>
      )}
      <PlanProgress inHand={inHand} />
      {things.length > 0 && problem && record && (
        <p className="carry-share">
          <ShareButton title="Carry down" text={carryText(stops, problem, record.date, today)} />
        </p>
      )}
      <ol className="carry">
        {stops.map(({ keptAt, things: here }) => (
          <li key={here[0]!.key}>
            <h2>
              {keptAt === null
                ? here.every(({ kind }) => kind === 'mix')
                  ? 'To mix'
                  : 'Place not written down'
                : `${capital(keptAt)}${here[0]!.aboard ? ', on board already' : ''}`}
            </h2>
            <ul>
              {here.map((thing) => (
                <CarriedLine
                  key={thing.key}
                  thing={thing}
                  problem={problem!}
                  today={today}
                  ticked={carried.has(thing.key)}
                  onTick={() => tick(thing.key)}
                  onPlace={keptAt === null && thing.kind !== 'mix' ? () => setPlacing(thing) : null}
                />
              ))}
            </ul>
          </li>
        ))}
      </ol>
      <PlaceSheet placing={placing} book={book} onClose={() => setPlacing(null)} />
    </div>
  );
}

function CarriedLine({
  thing,
  problem,
  today,
  ticked,
  onTick,
  onPlace,
}: {
  readonly thing: Carried;
  readonly problem: Problem;
  readonly today: string;
  readonly ticked: boolean;
  readonly onTick: () => void;
  readonly onPlace: (() => void) | null;
}) {
  const { name, about } = carriedInWords(thing, problem, today);
  return (
    <li className="carry-thing">
      <label>
        <input type="checkbox" checked={ticked} onChange={onTick} />
        <span>
          <b>{name}</b>
          <span className="small soft">{about}</span>
        </span>
      </label>
      {onPlace && (
        <button type="button" className="words small" aria-label={`Say where it is kept: ${name}`} onClick={onPlace}>
          Say where it is kept
        </button>
      )}
    </li>
  );
}

function PlaceSheet({
  placing,
  book,
  onClose,
}: {
  readonly placing: Carried | null;
  readonly book: Book;
  readonly onClose: () => void;
}) {
  if (placing === null) return null;
  return placing.kind === 'tool' ? (
    <ToolSheet book={book} id={placing.id} onClose={onClose} />
  ) : (
    <StoreSheet book={book} id={placing.id} onClose={onClose} />
  );
}
