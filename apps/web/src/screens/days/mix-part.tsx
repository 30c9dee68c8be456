/** What to mix now for the step in hand: grams, pot life at the temperature there is, and the timer of the pot. */
import { useState } from 'react';
import type { Book, Id } from '#boat-book';
import { mixNow } from '#reckoning';
import type { Minute, Problem } from '#workplan';
import { capital } from '../../parts/in-words.ts';
import { readFigure } from '../../parts/read-form.ts';
import { NumberField } from '../../parts/text-fields.tsx';
import { TimerLine } from '../../timers/timer-line.tsx';

const amountLimits = { min: 1, max: 50_000, unit: 'g' } as const;

export function MixPart({
  book,
  step,
  problem,
  now,
}: {
  readonly book: Book;
  readonly step: Id;
  readonly problem: Problem;
  readonly now: Minute;
}) {
  const [amount, setAmount] = useState('');
  const [asking, setAsking] = useState(false);
  const hour = problem.hours[Math.floor(now / 60)];
  if (hour === undefined) return null;
  const read = amount.trim() === '' ? null : readFigure(amount, amountLimits);
  const mix = mixNow(book, step, hour, read?.kind === 'figure' ? { total_g: read.value } : {});
  if (mix === null) return null;
  const { against, batches, cautions, coverage, missing, parts, potLife, total_g } = mix;
  return (
    <div className="days-have">
      <h2>Mix now{mix.tin === null ? '' : `, by the tin of ${mix.tin}`}</h2>
      {cautions.length > 0 && (
        <p className="days-caution">
          <b>Take care:</b> {cautions.join(' ')}
        </p>
      )}
      {against.map((words) => (
        <p key={words} className="days-caution">
          <b>Not now:</b> {words}
        </p>
      ))}
      <dl>
        {total_g !== null && (
          <div>
            <dt>{mix.mix}, in all</dt>
            <dd>
              {Math.round(total_g)} g{coverage !== null && `, ${coverage}`}
            </dd>
          </div>
        )}
        {parts.map(({ name, words, from }) => (
          <div key={name}>
            <dt>
              {name}
              {from === 'the tin' && ', from the tin'}
            </dt>
            <dd>{words}</dd>
          </div>
        ))}
        <div>
          <dt>pot life</dt>
          <dd>{potLife.words}</dd>
        </div>
      </dl>
      {batches !== null && <p>{batches}</p>}
      {missing.map((words) => (
        <p key={words} className="small soft">
          {words}
        </p>
      ))}
      {asking || total_g === null ? (
        <NumberField
          label="How much it takes, mixed"
          unit="g"
          value={amount}
          onChange={setAmount}
          refused={read?.kind === 'refused' ? read.why : null}
        />
      ) : (
        <button type="button" className="words" onClick={() => setAsking(true)}>
          Another amount
        </button>
      )}
      <TimerLine
        book={book}
        step={step}
        wait={null}
        words={`pot life of ${mix.mix}`}
        start={`${capital(mix.mix)} is mixed: time its pot life`}
        ends={() => Date.now() + potLife.minutes * 60_000}
      />
    </div>
  );
}
