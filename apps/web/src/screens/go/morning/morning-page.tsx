/** One morning list of an outing: the line in hand, then all of them; ticked with a thumb, with no network. */
import { useState } from 'react';
import type { Book, Id, Outing } from '#boat-book';
import {
  lineFailed,
  listDone,
  listsOf,
  listTitles,
  type MorningItem,
  type MorningListTold,
  morningList,
  tickOf,
} from '#reckoning';
import { BelowHeading } from '../../../parts/below-heading.tsx';
import { Following } from '../../../parts/following.tsx';
import { RefusalLine } from '../../../parts/form.tsx';
import { countInWords, dayInWords } from '../../../parts/in-words.ts';
import { onDemand } from '../../../parts/on-demand.tsx';
import { useRun } from '../../../parts/use-run.ts';
import { todayAt, zoneOf } from '../../../reading/today.ts';
import { useOpenBook } from '../../../reading/use-open-book.ts';
import { address } from '../../../shell/route.ts';
import { AllLines } from './all-lines.tsx';
import { LineInHand } from './line-in-hand.tsx';
import './morning.css';

const MorningSheet = onDemand(() => import('./morning-sheet.tsx'), <p className="soft">Opening.</p>);

type List = MorningListTold['list'];

export default function MorningPage({ id, rest }: { readonly id: Id; readonly rest: readonly string[] }) {
  const book = useOpenBook();
  const outing = book.outings[id];
  const back = (
    <p className="no-print">
      <a className="button words" href={address('go')}>
        Go
      </a>
    </p>
  );
  if (outing === undefined)
    return (
      <>
        {back}
        <h1>Morning lists</h1>
        <p>That outing is not in the book any more.</p>
      </>
    );
  const lists = listsOf(outing);
  const list = lists.find((name) => name === rest[0]) ?? lists[0]!;
  if (rest[1] === 'print') return <MorningSheet book={book} id={id} outing={outing} list={list} />;
  return (
    <div className="morning">
      {back}
      <ListTabs book={book} id={id} outing={outing} here={list} />
      {/* the list tapped for is marked among the others at once; which line is in hand is reckoned after that */}
      <BelowHeading key={`${id} ${list}`} meanwhile={<h1 className="unseen">{listTitles[list]}</h1>}>
        <OneList book={book} id={id} outing={outing} list={list} />
      </BelowHeading>
    </div>
  );
}

/** The lists of the outing, each with how far it is. */
function ListTabs({
  book,
  id,
  outing,
  here,
}: {
  readonly book: Book;
  readonly id: Id;
  readonly outing: Outing;
  readonly here: List;
}) {
  return (
    <nav className="morning-lists" aria-label="Morning lists">
      {listsOf(outing).map((list) => {
        return (
          <a
            key={list}
            className="button"
            href={address('go', 'morning', id, list)}
            aria-current={list === here ? 'page' : undefined}
          >
            {listTitles[list]}{' '}
            <span className="morning-far small">
              <BelowHeading>
                <Following>
                  <HowFar book={book} id={id} list={list} />
                </Following>
              </BelowHeading>
            </span>
          </a>
        );
      })}
    </nav>
  );
}

function HowFar({ book, id, list }: { readonly book: Book; readonly id: Id; readonly list: List }) {
  const { items, lastDone } = morningList(book, id, list, todayAt(book));
  const ticked = items.filter(({ tick }) => tick !== null).length;
  return ticked === 0 && lastDone !== null ? 'done' : `${ticked} of ${items.length}`;
}

function OneList({
  book,
  id,
  outing,
  list,
}: {
  readonly book: Book;
  readonly id: Id;
  readonly outing: Outing;
  readonly list: List;
}) {
  const today = todayAt(book);
  const zone = zoneOf(book);
  const told = morningList(book, id, list, today);
  const [changing, setChanging] = useState(false);
  // a line that was passed over is taken up again by tapping it
  const [passed, setPassed] = useState<readonly string[]>([]);
  // answered 'Done', while the book is being told: the next line is in hand at once
  const [answered, setAnswered] = useState<string | null>(null);
  if (told.items.some(({ id: line, tick }) => line === answered && tick !== null)) setAnswered(null);
  const { run, refusal } = useRun();
  const open = told.items.filter(({ id: line, tick }) => tick === null && line !== answered);
  const inHand = open.find((item) => !passed.includes(item.id)) ?? open[0];
  const who = book.boat.keeper;
  const tick = (item: MorningItem) =>
    item.tick === null
      ? run('tickMorningLine', tickOf(id, told, item, who))
      : run('untickMorningLine', { id: item.tick.id });
  const done = async (item: MorningItem) => {
    setAnswered(item.id);
    const { kind } = await tick(item);
    if (kind === 'refused') setAnswered(null);
  };
  const fail = (item: MorningItem, mended: string | null) =>
    run('failMorningLine', lineFailed(book, id, told, item, mended, { today, who }));
  const finish = () => run('finishMorningList', listDone(book, id, told, { timeZone: zone, who }));
  const far = told.items.length - open.length;
  return (
    <div className="morning-sides">
      <div>
        <p className="small soft">
          {outing.title} · {dayInWords(outing.date, today)} {outing.from}
        </p>
        {changing ? (
          <h1>{listTitles[list]}: change the list</h1>
        ) : inHand ? (
          <LineInHand
            key={inHand.id}
            list={list}
            item={inHand}
            at={told.items.indexOf(inHand) + 1}
            of={told.items.length}
            onDone={() => void done(inHand)}
            onPass={
              open.length > 1
                ? () => setPassed(passed.includes(inHand.id) ? [inHand.id] : [...passed, inHand.id])
                : null
            }
            onFail={(mended) => void fail(inHand, mended)}
          />
        ) : (
          <h1>{listTitles[list]}: every line is ticked</h1>
        )}
        <RefusalLine refusal={refusal} />
        {far > 0 && !changing && (
          <p className="morning-finish">
            <button type="button" className={open.length === 0 ? 'main' : ''} onClick={() => void finish()}>
              The list is done
            </button>{' '}
            <span className="small soft">
              {open.length === 0
                ? 'It goes into the log with its times.'
                : `With ${countInWords(open.length, 'line')} left open, it goes into the log so.`}
            </span>
          </p>
        )}
        {told.lastDone !== null && (
          <p className="small">
            Gone through {told.round - 1 === 1 ? 'once' : `${told.round - 1} times`} for this outing; it stands in{' '}
            <a href={address('boat', 'log')}>the log</a>. Here it begins again, for the way home.
          </p>
        )}
      </div>
      <BelowHeading>
        <Following>
          <AllLines
            id={id}
            told={told}
            zone={zone}
            inHand={inHand}
            changing={changing}
            onChange={setChanging}
            onTick={tick}
          />
        </Following>
      </BelowHeading>
    </div>
  );
}
