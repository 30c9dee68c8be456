/** The next hours that would suit one job: when, what to prepare before, and a button that makes a job day of them. */
import { useState } from 'react';
import type { Book } from '#boat-book';
import { Form, RefusalLine } from '../../parts/form.tsx';
import { countInWords, dayInWords } from '../../parts/in-words.ts';
import { Mark } from '../../parts/mark.tsx';
import { type Faults, formReading } from '../../parts/read-form.ts';
import { Sheet } from '../../parts/sheet.tsx';
import { TextField } from '../../parts/text-fields.tsx';
import { useRun } from '../../parts/use-run.ts';
import { address } from '../../shell/route.ts';
import type { ShownWindow } from './window-report.ts';
import './windows.css';

export function WindowLine({
  window,
  book,
  headed,
}: {
  readonly window: ShownWindow;
  readonly book: Book;
  /** with the job's name over it */
  readonly headed: boolean;
}) {
  const { run, refusal } = useRun();
  const [asking, setAsking] = useState(false);
  const { answer, before, also } = window.words;
  const consequence = book.jobs[window.job]?.consequence;
  const button = window.days.length === 1 ? 'Book these hours' : `Book these ${window.days.length} days`;
  return (
    <li className="days-window" data-found={window.found}>
      {headed && (
        <h3>
          {consequence && <Mark of={consequence} />} <a href={address('work', 'job', window.job)}>{window.title}</a>
        </h3>
      )}
      <p className={window.found ? 'days-window-answer' : 'soft'}>{answer}</p>
      {before.map((words) => (
        <p key={words}>{words}</p>
      ))}
      {also.length > 0 && <p className="small soft">{also.join(' ')}</p>}
      {window.days.length > 0 && (
        <button
          type="button"
          aria-label={headed ? `${button}: ${window.title}` : undefined}
          onClick={() => (window.notAlone ? setAsking(true) : void run('bookHours', { days: window.days }))}
        >
          {button}
        </button>
      )}
      <RefusalLine refusal={refusal} />
      {asking && <WithWhom window={window} today={window.days[0]!.date} onClose={() => setAsking(false)} />}
    </li>
  );
}

/** A second hand is counted on: who it is stands in the job day. */
function WithWhom({
  window,
  today,
  onClose,
}: {
  readonly window: ShownWindow;
  readonly today: string;
  readonly onClose: () => void;
}) {
  const { run, refusal } = useRun();
  const count = window.days[0]!.hands.length;
  const [names, setNames] = useState<readonly string[]>(() => Array.from({ length: count }, () => ''));
  const [faults, setFaults] = useState<Faults<string>>({});
  const keep = async () => {
    const form = formReading<string>();
    const read = names.map((name, n) => form.words(`hand-${n}`, name, 'Say who it is.'));
    setFaults(form.faults);
    if (!form.sound()) return;
    const ids = read.map(() => crypto.randomUUID());
    const days = window.days.map((day) => ({
      ...day,
      hands: day.hands.map((hand, n) => ({ ...hand, id: ids[n] ?? hand.id, name: read[n] ?? hand.name })),
    }));
    const outcome = await run('bookHours', { days });
    if (outcome.kind === 'done') onClose();
  };
  return (
    <Sheet title="Book these hours" onClose={onClose} unsaved={names.some((name) => name !== '')}>
      <p>
        {window.days.map((day) => `${dayInWords(day.date, today)}, ${day.from} to ${day.to}`).join('; ')}. This is not
        done alone: {countInWords(count, 'hand')} must be there beside you.
      </p>
      <Form keep="Book them" onKeep={keep} faults={faults} refusal={refusal}>
        {names.map((name, n) => (
          <TextField
            // biome-ignore lint/suspicious/noArrayIndexKey: hands have no name yet, and their number stays the same
            key={n}
            label={count === 1 ? 'Who comes along' : `Who comes along, ${n + 1} of ${count}`}
            value={name}
            onChange={(text) => setNames(names.map((other, i) => (i === n ? text : other)))}
            refused={faults[`hand-${n}`]}
          />
        ))}
      </Form>
    </Sheet>
  );
}
