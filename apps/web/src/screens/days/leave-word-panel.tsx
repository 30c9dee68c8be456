/** Leaving word before working alone: the line is made here, shown, and sent by the keeper's own hand. */
import { useId, useState } from 'react';
import { localAt } from '#units';
import { ClockField, TextField } from '../../parts/text-fields.tsx';
import { zoneOf } from '../../reading/today.ts';
import { type InHandProps, isUnderWay } from './in-hand.ts';
import { quarterAfter, wordToLeave } from './leave-word.ts';
import { itemName } from './now-words.ts';
import { instantOf, minuteOf } from './place-time.ts';

/** One is heard from so long after the step should be done. Our judgement; the time can be changed. [min] */
const assumedLate_min = 30;

export default function LeaveWord({ item, book, problem }: InHandProps) {
  const planned = item.planned.finish - item.planned.start;
  const from = isUnderWay(item) ? item.planned.finish : minuteOf(problem, Date.now()) + planned;
  const [by, setBy] = useState<string>(
    () => localAt(quarterAfter(instantOf(problem, from), assumedLate_min), zoneOf(book)).clock,
  );
  const made = wordToLeave(book, itemName(item, problem), whereOf(item, book, problem), by);
  const [changed, setChanged] = useState<string | null>(null);
  const [said, setSaid] = useState('');
  const id = useId();
  const text = changed ?? made;
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(text);
      setSaid('Copied. Put it in a message and send it.');
    } catch {
      setSaid('The browser did not let it be copied: mark the words and copy them.');
    }
  };
  const share = async () => {
    try {
      await navigator.share({ text });
    } catch {
      setSaid('It was not handed on.');
    }
  };
  return (
    <section className="days-panel" aria-labelledby={id}>
      <h3 id={id}>Leave word with somebody</h3>
      <ClockField
        label="They hear from you by"
        value={by}
        onChange={(value) => {
          setBy(value);
          setChanged(null);
        }}
      />
      <TextField label="The words" rows={4} value={text} onChange={setChanged} />
      <div className="days-word-ways">
        {'share' in navigator && (
          <button type="button" onClick={() => void share()}>
            Share
          </button>
        )}
        <a className="button" href={`sms:?&body=${encodeURIComponent(text)}`}>
          As a message
        </a>
        <button type="button" onClick={() => void copy()}>
          Copy
        </button>
      </div>
      <p className="small soft" role="status">
        {said || 'Nothing is sent by itself, and nothing here looks after you: it is their word that counts.'}
      </p>
    </section>
  );
}

/** The zone and the place of the job day. */
function whereOf(item: InHandProps['item'], book: InHandProps['book'], problem: InHandProps['problem']): string[] {
  const day = problem.days.find((one) => one.from <= item.planned.start && item.planned.start < one.to);
  const place = day && book.places[book.jobDays[day.id]?.place ?? ''];
  const zone = item.kind === 'step' && item.step.zone !== null ? book.zones[item.step.zone] : undefined;
  return [place?.name ?? '', zone?.name ?? ''];
}
