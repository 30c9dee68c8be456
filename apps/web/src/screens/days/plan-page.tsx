/** The plan of the job days ahead: how good it is, the drawing, what is left out and why, and the days themselves. */
import { useMemo } from 'react';
import { effortInWords } from '#reckoning';
import type { Plan, Problem } from '#workplan';
import { useOfBook } from '../../offline/use-book.ts';
import { BelowHeading } from '../../parts/below-heading.tsx';
import { capital, countInWords } from '../../parts/in-words.ts';
import { OpenedSheet, useOpened } from '../../parts/opened.tsx';
import { useOpenBook } from '../../reading/use-open-book.ts';
import { BlockSheet } from './block-sheet.tsx';
import { DaysList } from './days-list.tsx';
import { PlanForecast } from './forecast/plan-forecast.tsx';
import { LeftOut } from './left-out.tsx';
import { MovedLine, useMoved } from './moved-line.tsx';
import { nowHeadOf } from './now-head.ts';
import { OddsLines } from './odds-lines.tsx';
import { dayAt, minuteOf } from './place-time.ts';
import type { Block } from './plan-drawing/day-column.ts';
import { PlanDrawing } from './plan-drawing/plan-drawing.tsx';
import { setUpStretches } from './plan-drawing/set-up-lines.ts';
import { PlanProgress } from './plan-progress.tsx';
import { type PlanInHand, seed, usePlan, usePlanInHand } from './planner.ts';
import { ToGetLine } from './to-get-line.tsx';
import { VerdictLine } from './verdict-line.tsx';
import { Windows } from './windows.tsx';

export function PlanPage() {
  const { problem, picture } = usePlanInHand();
  return (
    <div className="days">
      <header className="days-top">
        <h1>
          {problem && picture
            ? `${capital(inWords(problem.days.length))} job ${problem.days.length === 1 ? 'day' : 'days'}`
            : 'Days'}
        </h1>
        {problem && picture && (
          <p className="soft">
            {effortInWords(picture.outcome)} {upsInWords(problem, picture.outcome.plan)}
          </p>
        )}
        {problem?.days.some((day) => dayAt(problem, day.from) === dayAt(problem, minuteOf(problem, Date.now()))) && (
          <NowLink />
        )}
      </header>
      <BelowHeading>
        <PlanBelow />
      </BelowHeading>
    </div>
  );
}

function NowLink() {
  const book = useOpenBook();
  const { problem, picture } = usePlanInHand();
  return (
    <p>
      <a
        className="button main"
        href="#/days/now"
        onPointerDown={() => problem && picture && nowHeadOf(book, problem, picture.outcome.plan)}
      >
        Now: the step in hand
      </a>
    </p>
  );
}

function PlanBelow() {
  const book = useOpenBook();
  const readOnly = useOfBook('readOnly');
  const inHand = usePlan(book);
  const { problem, picture } = inHand;
  const opened = useOpened<Block>();
  const moved = useMoved(book, inHand);
  const movedFrom = useMemo(
    () => new Map((moved?.moves.moved ?? []).map(({ step, was }) => [step, was] as const)),
    [moved],
  );
  return (
    <div data-plan-state={inHand.state}>
      <PlanState inHand={inHand} />
      <PlanForecast book={book} />
      <MovedLine book={book} moved={moved} />
      <ToGetLine book={book} inHand={inHand} />
      {problem && picture && (
        <div className="days-sheet-of-plan" data-days={Math.min(problem.days.length, 3)}>
          <PlanDrawing
            problem={problem}
            plan={picture.outcome.plan}
            book={book}
            now={minuteOf(problem, Date.now())}
            openOn={null}
            movedFrom={movedFrom}
            onOpen={opened.open}
          />
          <LeftOut
            problem={problem}
            picture={picture}
            book={book}
            reasons={inHand.reasons}
            settled={inHand.state !== 'planning'}
            readOnly={readOnly !== null}
          />
        </div>
      )}
      {inHand.state === 'nothing to plan' && !inHand.noWork && <Windows book={book} />}
      <DaysList book={book} />
      {inHand.notes.length > 0 && (
        <section className="days-notes">
          <h2>What the plan takes for granted</h2>
          <ul>
            {inHand.notes.map((note) => (
              <li key={note.words}>{note.words}</li>
            ))}
          </ul>
        </section>
      )}
      {problem && picture && (
        <OpenedSheet of={opened}>
          {(block) => (
            <BlockSheet
              block={block}
              problem={problem}
              plan={picture.outcome.plan}
              book={book}
              odds={inHand.odds}
              held={inHand.reasons?.held ?? null}
              inHand={inHand}
              was={block.what.kind === 'step' ? (movedFrom.get(block.what.step.id) ?? null) : null}
              onClose={opened.close}
            />
          )}
        </OpenedSheet>
      )}
    </div>
  );
}

function PlanState({ inHand }: { readonly inHand: PlanInHand }) {
  if (inHand.state === 'failed')
    return (
      <div className="days-verdict" role="alert">
        <p>
          <span className="days-danger">▲ </span>The plan could not be made: {inHand.words}. What is in the boat book is
          safe.
        </p>
      </div>
    );
  if (inHand.state === 'nothing to plan')
    return (
      <div className="days-verdict">
        <p>{inHand.words}</p>
        {inHand.noWork && (
          <p>
            <a href="#/work/put-in">Put in a job</a>
          </p>
        )}
      </div>
    );
  return (
    <>
      {inHand.picture && <VerdictLine picture={inHand.picture} settled={inHand.state !== 'planning'} />}
      {inHand.odds && inHand.problem && <OddsLines odds={inHand.odds} problem={inHand.problem} seed={seed} />}
      <PlanProgress inHand={inHand} />
    </>
  );
}

/** `Mast up once, cover off twice.`: how often each set-up is brought about that she does not rest in. */
export function upsInWords(problem: Problem, plan: Plan): string {
  const counts = new Map<string, number>();
  for (const { begins, resting, name } of setUpStretches(problem, plan))
    if (begins && !resting) counts.set(name, (counts.get(name) ?? 0) + 1);
  const words = [...counts].map(([name, n]) => `${name} ${timesInWords(n)}`);
  return words.length === 0 ? '' : `${capital(words.join(', '))}.`;
}

function timesInWords(n: number): string {
  if (n === 1) return 'once';
  return n === 2 ? 'twice' : countInWords(n, 'time');
}

function inWords(n: number): string {
  return ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'][n] ?? String(n);
}
