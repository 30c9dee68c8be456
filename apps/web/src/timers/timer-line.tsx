/** One timer: started with a tap, running down, or to be put away; and what the device can do to tell of it. */
import { useEffect, useState } from 'react';
import type { Book, Id } from '#boat-book';
import { calendarType } from '#calendar';
import { localAt } from '#units';
import { RefusalLine } from '../parts/form.tsx';
import { giveFile } from '../parts/give-file.ts';
import { useRun } from '../parts/use-run.ts';
import { zoneOf } from '../reading/today.ts';
import { timerCalendar } from './timer-calendar.ts';
import './timers.css';
import { leftInWords, timersOf } from './timers-of.ts';
import { useNotices } from './use-notices.ts';

export function TimerLine({
  book,
  step,
  wait,
  words,
  start,
  ends,
}: {
  readonly book: Book;
  readonly step: Id;
  readonly wait: Id | null;
  /** what it is over for */
  readonly words: string;
  /** on the button that starts it */
  readonly start: string;
  /** when it would be over if it were started now. [ms] */
  readonly ends: () => number;
}) {
  const { run, refusal } = useRun();
  const now = useSecond();
  const found = timersOf(book, now).find(({ timer }) => timer.step === step && timer.wait === wait);
  if (found === undefined)
    return (
      <div className="timer-start">
        <button
          type="button"
          onClick={() => void run('startTimer', { step, wait, words, ends: new Date(ends()).toISOString() })}
        >
          {start}
        </button>
        <RefusalLine refusal={refusal} />
      </div>
    );
  const { id, timer, left_ms } = found;
  const clock = localAt(Date.parse(timer.ends), zoneOf(book)).clock;
  return (
    <div className="timer">
      <p>
        <b className="timer-left">{left_ms > 0 ? leftInWords(left_ms) : 'over'}</b> {timer.words}{' '}
        {left_ms > 0 ? `until ${clock}` : `since ${clock}`}
      </p>
      <button type="button" className="words" onClick={() => void run('stopTimer', { id })}>
        {left_ms > 0 ? 'Put the timer away' : 'Heard'}
      </button>
      <RefusalLine refusal={refusal} />
      {left_ms > 0 && <Told id={id} words={timer.words} clock={clock} ends={Date.parse(timer.ends)} />}
    </div>
  );
}

/** What tells of it when it is over: only what is true on this device. */
function Told({
  id,
  words,
  clock,
  ends,
}: {
  readonly id: Id;
  readonly words: string;
  readonly clock: string;
  readonly ends: number;
}) {
  const { notices, ask } = useNotices();
  return (
    <div className="small soft timer-told">
      <p>
        {notices === 'allowed'
          ? `This device tells it at ${clock} while Fettle is open, in front or behind. Closed, it cannot: it is then said when you open it again.`
          : notices === 'refused'
            ? `The browser does not let this page tell it. It is said here at ${clock} while Fettle is open, or when you open it again.`
            : `It is said here at ${clock} while Fettle is open, or when you open it again.`}
      </p>
      {notices === 'not asked' && (
        <button type="button" className="words" onClick={() => void ask()}>
          Tell it outside this page too
        </button>
      )}
      <button
        type="button"
        className="words"
        onClick={() =>
          giveFile(timerCalendar(id, words, Date.now(), ends), `${clock.replace(':', '-')} timer.ics`, calendarType)
        }
      >
        For the device’s own calendar, with its alarm
      </button>
    </div>
  );
}

/** The device's clock, moving on by the second: the last minutes of a pot life are watched. [ms] */
function useSecond(): number {
  const [, moveOn] = useState(0);
  useEffect(() => {
    const timer = setInterval(() => moveOn((n) => n + 1), 1000);
    return () => clearInterval(timer);
  }, []);
  return Date.now();
}
