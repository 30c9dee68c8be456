/** The plan as a drawing: a column a day beside each other where there is room, one day at a time where there is not. */
import './plan-drawing.css';
import { memo, useEffect, useMemo, useRef, useState } from 'react';
import type { Book } from '#boat-book';
import type { Minute, Plan, Problem } from '#workplan';
import { useOnPaper } from '../../../parts/use-on-paper.ts';
import { useWidth } from '../../../parts/use-width.ts';
import { dayAt, shortDay } from '../place-time.ts';
import type { Block } from './day-column.ts';
import { DayColumnDrawing } from './day-column-drawing.tsx';
import { canvasMeasure } from './text-size.ts';

/** narrowest column that three days beside each other may have. [px] */
const leastColumn = 276;
const gap = 26;
/** so that a day of ten hours stands on a page. [px a minute] */
const paperScale = 1.2;
/** how far a finger must go sideways to turn to another day. [px] */
const swipe = 60;

export interface PlanDrawingProps {
  readonly problem: Problem;
  readonly plan: Plan;
  readonly book: Book;
  readonly now: Minute | null;
  /** id of the day to begin with; the first that is not over where it names none */
  readonly openOn: string | null;
  /** by step: the minute it stood at before it moved; only those the keeper has not seen */
  readonly movedFrom: ReadonlyMap<string, Minute>;
  readonly onOpen: (block: Block) => void;
}

/** Drawn again only when the plan, the book or the minute is another: a search tells of itself many times a second. */
export const PlanDrawing = memo(function PlanDrawing({
  problem,
  plan,
  book,
  now,
  openOn,
  movedFrom,
  onOpen,
}: PlanDrawingProps) {
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame);
  const onPaper = useOnPaper();
  const faceReady = useFace();
  // biome-ignore lint/correctness/useExhaustiveDependencies: measured again once the bundled face is there
  const measure = useMemo(() => canvasMeasure("'Atkinson Hyperlegible Next Variable', system-ui"), [faceReady]);
  const days = problem.days;
  const [chosen, setChosen] = useState<string | null>(null);
  const opened = days.findIndex((d) => d.id === (chosen ?? openOn));
  const coming = days.findIndex((d) => d.to > (now ?? 0));
  const at = opened >= 0 ? opened : Math.max(coming, 0);
  const fits = Math.min(3, days.length, Math.max(1, Math.floor((width + gap) / (leastColumn + gap))));
  // there is nothing to turn on paper: all of them, one under the other
  const beside = onPaper ? days.length : fits;
  const first = Math.max(0, Math.min(at, days.length - beside));
  const columnWidth = onPaper ? width : Math.min(480, Math.floor((width - gap * (beside - 1)) / beside));
  const panel = days.length > beside ? { role: 'tabpanel', 'aria-labelledby': `days-tab-${days[first]?.id}` } : {};
  const pulledFrom = useRef<{ x: number; y: number } | null>(null);
  const turn = (by: number) => {
    const next = days[Math.min(Math.max(first + by, 0), days.length - 1)];
    if (next) setChosen(next.id);
  };

  return (
    <div className="days-plan" ref={frame}>
      {days.length > beside && (
        <div className="days-tabs" role="tablist" aria-label="Job days">
          {days.map((day, i) => {
            const shown = i >= first && i < first + beside;
            return (
              <button
                key={day.id}
                type="button"
                role="tab"
                id={`days-tab-${day.id}`}
                aria-selected={i === first}
                data-shown={shown}
                aria-controls="days-columns"
                tabIndex={i === first ? 0 : -1}
                onClick={() => setChosen(day.id)}
                onKeyDown={(event) => {
                  const by = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : 0;
                  const next = days[i + by];
                  if (by === 0 || !next) return;
                  setChosen(next.id);
                  document.getElementById(`days-tab-${next.id}`)?.focus();
                }}
              >
                {shortDay(dayAt(problem, day.from))}
              </button>
            );
          })}
        </div>
      )}
      {width > 0 && (
        <div
          id="days-columns"
          className="days-columns"
          {...panel}
          onTouchStart={(event) => {
            const touch = event.touches[0];
            pulledFrom.current = touch && event.touches.length === 1 ? { x: touch.clientX, y: touch.clientY } : null;
          }}
          onTouchEnd={(event) => {
            const touch = event.changedTouches[0];
            const start = pulledFrom.current;
            pulledFrom.current = null;
            if (!touch || !start || days.length <= beside) return;
            const across = touch.clientX - start.x;
            if (Math.abs(across) > swipe && Math.abs(across) > 2 * Math.abs(touch.clientY - start.y))
              turn(across < 0 ? 1 : -1);
          }}
        >
          {days.slice(first, first + beside).map((day) => (
            <DayColumnDrawing
              key={day.id}
              problem={problem}
              plan={plan}
              book={book}
              day={day}
              width={columnWidth}
              measure={measure}
              now={now}
              movedFrom={movedFrom}
              pxPerMinute={onPaper ? paperScale : undefined}
              onOpen={onOpen}
            />
          ))}
        </div>
      )}
    </div>
  );
});

/** True once the bundled face is loaded, so that words are measured in it. */
function useFace(): boolean {
  const [ready, setReady] = useState(() => document.fonts.status === 'loaded');
  useEffect(() => {
    let live = true;
    void document.fonts.ready.then(() => {
      if (live) setReady(true);
    });
    return () => {
      live = false;
    };
  }, []);
  return ready;
}
