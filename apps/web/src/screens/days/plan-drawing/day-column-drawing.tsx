/** One job day of the drawing: its name and weather, the day running down, and what goes on past its foot. */
import type { Book } from '#boat-book';
import type { Minute, Plan, Problem, ProblemDay } from '#workplan';
import { dayInWords, minutesInWords } from '../../../parts/in-words.ts';
import { HeldMark } from '../held-mark.tsx';
import { clockAt, dayAt } from '../place-time.ts';
import { dayWeatherInWords } from '../weather-words.ts';
import { insetsOf } from './block-size.ts';
import { type Block, type DayColumn, dayColumn } from './day-column.ts';
import { DayGround } from './day-ground.tsx';
import type { Measure } from './text-size.ts';
import { endedSince, overnightInWords, type WaitBar } from './wait-bars.ts';

export interface DayColumnProps {
  readonly problem: Problem;
  readonly plan: Plan;
  readonly book: Book;
  readonly day: ProblemDay;
  readonly width: number;
  readonly measure: Measure;
  readonly now: Minute | null;
  readonly movedFrom: ReadonlyMap<string, Minute>;
  readonly pxPerMinute?: number | undefined;
  readonly onOpen: (block: Block) => void;
}

export function DayColumnDrawing(props: DayColumnProps) {
  const { problem, plan, day, onOpen } = props;
  const column = dayColumn(props);
  const overnight = overnightInWords(problem, plan, column.to);
  const dayBefore = problem.days[problem.days.findIndex((d) => d.id === day.id) - 1];
  const ended = dayBefore ? endedSince(problem, plan, dayBefore.to, column.from) : [];
  const date = dayAt(problem, day.from);
  const heading = `days-day-${day.id}`;
  return (
    <section className="days-column" style={{ width: column.width }} aria-labelledby={heading}>
      <div className="days-column-head">
        <h3 id={heading}>{dayInWords(date, date)}</h3>
        <p className="days-column-weather">{dayWeatherInWords(problem, day.from, day.to)}</p>
        {ended.map((words) => (
          <p key={words} className="days-wait-words">
            {words}
          </p>
        ))}
      </div>
      <div>
        <LaneHeads column={column} />
        <div className="days-run" style={{ height: column.scale.height + 14 }}>
          <DayGround column={column} />
          <Margins column={column} />
          <ol className="days-blocks">
            {inOrder(column).map((item) =>
              item.kind === 'block' ? (
                <li key={item.block.key}>
                  <BlockButton block={item.block} problem={problem} onOpen={onOpen} />
                </li>
              ) : (
                <li key={item.bar.key} className="unseen">
                  {clockAt(problem, item.bar.from)}: wait, {item.bar.title}
                  {item.bar.goesOn ? ', goes on overnight' : `, until ${clockAt(problem, item.bar.to)}`}
                </li>
              ),
            )}
          </ol>
          {column.nowAt !== null && (
            <span className="days-now-words" style={{ top: column.nowAt }}>
              now
            </span>
          )}
        </div>
        {column.waits.some((w) => w.letter !== null) && (
          <ul className="days-wait-key">
            {column.waits.map((w) => (
              <li key={w.key} className="days-wait-words">
                {w.letter}: {w.title}
                {w.goesOn ? '' : `, until ${clockAt(problem, w.to)}`}
              </li>
            ))}
          </ul>
        )}
        {overnight && (
          <div className="days-wait-words days-overnight">
            <p>{overnight.lead}</p>
            <ul>
              {overnight.ends.map((words) => (
                <li key={words}>{words}</li>
              ))}
            </ul>
          </div>
        )}
      </div>
    </section>
  );
}

function LaneHeads({ column }: { readonly column: DayColumn }) {
  return (
    <div className="days-lane-heads" aria-hidden="true">
      {column.lanes.map((lane) => (
        <span key={lane.id} style={{ left: lane.left, width: lane.width }}>
          {lane.name}
        </span>
      ))}
      {column.waits.length > 0 && (
        <span style={{ left: column.waitsLeft + 5, width: column.width - column.waitsLeft }}>waits</span>
      )}
    </div>
  );
}

/** Hours and weather figures at the left, names of set-ups and waits, and the quiet parts of the day. */
function Margins({ column }: { readonly column: DayColumn }) {
  return (
    <div aria-hidden="true">
      {column.hours.map((hour) => (
        <div key={hour.y} className="days-hour" data-known={hour.known} style={{ top: hour.y }}>
          <b>{hour.clock}</b>
          {hour.air && <span>{hour.air}</span>}
          {hour.wind && <span>{hour.wind}</span>}
        </div>
      ))}
      {column.night.map(
        (band) =>
          band.name && (
            <span key={band.top} className="days-sun" style={{ top: band.top, left: column.lanesLeft }}>
              {band.name}
            </span>
          ),
      )}
      {column.quiet.map((q) => (
        <div
          key={`${q.name}-${q.top}`}
          className="days-quiet"
          style={{ left: q.left, top: q.top, width: q.width, height: q.height }}
        >
          {q.name}
        </div>
      ))}
      {column.setUps.map((line) => (
        <span
          key={`${line.stretch.aspect}-${line.stretch.from}`}
          className="days-up-name"
          style={{ left: line.x + 3, top: line.nameTop }}
        >
          {line.stretch.name}
        </span>
      ))}
      {column.waits.map((bar) => (
        <WaitName key={bar.key} bar={bar} left={column.waitsLeft + bar.left + 5} />
      ))}
    </div>
  );
}

function WaitName({ bar, left }: { readonly bar: WaitBar; readonly left: number }) {
  if (bar.letter !== null)
    return (
      <span className="days-wait-letter" style={{ left, top: bar.top, width: bar.width }}>
        {bar.letter}
      </span>
    );
  return (
    <span className="days-wait-name" style={{ left: left + bar.width + 2, top: bar.name?.top }}>
      {bar.name?.text}
    </span>
  );
}

function BlockButton({
  block,
  problem,
  onOpen,
}: {
  readonly block: Block;
  readonly problem: Problem;
  readonly onOpen: (block: Block) => void;
}) {
  const busy = block.what.kind === 'past' ? [] : block.what.planned.hands;
  const hands = busy.map((id) => problem.hands.find((h) => h.id === id)?.name ?? id);
  const spoken = [
    `${clockAt(problem, block.from)} to ${clockAt(problem, block.to)}, ${minutesInWords(block.to - block.from)}`,
    block.what.kind === 'change' ? 'set-up change' : null,
    block.name,
    block.consequence === 'danger' ? 'danger to people if left' : null,
    block.state === 'open' ? null : block.state,
    block.held ? 'held' : null,
    block.moved === null ? null : `moved from ${block.moved}`,
    hands.length > 0 ? `by ${hands.join(' and ')}` : null,
  ]
    .filter((part) => part !== null)
    .join(', ');
  return (
    <button
      type="button"
      className="days-block prints"
      data-kind={block.what.kind}
      data-consequence={block.consequence ?? 'none'}
      data-state={block.state}
      data-beside={block.beside}
      data-held={block.held}
      data-moved={block.moved !== null}
      data-narrow={insetsOf(block.width) < 20}
      aria-label={spoken}
      style={{ left: block.left, top: block.top, width: block.width, height: block.height }}
      onClick={() => onOpen(block)}
    >
      <span className="days-block-name">
        {block.state === 'done' && <span className="days-tick">✓ </span>}
        {block.consequence === 'danger' && <span className="days-danger">▲ </span>}
        {block.name}
      </span>
      {block.held && <HeldMark />}
      {block.note && <span className="days-block-note">{block.note}</span>}
    </button>
  );
}

function inOrder(column: DayColumn) {
  return [
    ...column.blocks.map((block) => ({ kind: 'block' as const, at: block.from, block })),
    ...column.waits.map((bar) => ({ kind: 'wait' as const, at: bar.from, bar })),
  ].sort((a, b) => a.at - b.at);
}
