/** A morning list changed: lines moved, taken out, put back, put in; for this outing or for all. An order that works is kept. */
import { useState } from 'react';
import type { Id, OperationFields } from '#boat-book';
import { type LineMove, lineMove, type MorningItem, type MorningListTold } from '#reckoning';
import { PickField } from '../../../parts/choice-fields.tsx';
import { RefusalLine } from '../../../parts/form.tsx';
import { TextField } from '../../../parts/text-fields.tsx';
import { useRun } from '../../../parts/use-run.ts';

type Against = Extract<LineMove, { readonly kind: 'against' }>;

export default function ChangeList({ id, told }: { readonly id: Id; readonly told: MorningListTold }) {
  const { list, items, out } = told;
  const [scope, setScope] = useState<'boat' | 'outing'>('boat');
  const [against, setAgainst] = useState<{ readonly line: string; readonly move: Against } | null>(null);
  const [rewording, setRewording] = useState<string | null>(null);
  const [reason, setReason] = useState('');
  const [text, setText] = useState('');
  const { run, refusal } = useRun();
  const outing = scope === 'outing' ? id : null;
  const change = async (lines: OperationFields<'changeMorningLines'>['lines']) => {
    const outcome = await run('changeMorningLines', { list, lines });
    if (outcome.kind !== 'done') return;
    setAgainst(null);
    setRewording(null);
  };
  const move = (item: MorningItem, by: number) => {
    const asked = lineMove(told, item.id, by, { outing, here: id });
    setReason('');
    if (asked.kind === 'moved') void change(asked.lines);
    else setAgainst({ line: item.id, move: asked });
  };
  // told for this outing or for all: both give way to the words of the house
  const houseWords = (of: string) => [
    { of, outing: null, text: null },
    { of, outing: id, text: null },
  ];
  const add = async () => {
    if (text.trim() === '') return;
    const outcome = await run('addMorningLine', { list, outing, place: null, text: text.trim() });
    if (outcome.kind === 'done') setText('');
  };
  return (
    <div className="morning-change">
      <PickField
        label="It is changed"
        value={scope}
        onChange={setScope}
        options={[
          { value: 'boat', name: 'for every outing' },
          { value: 'outing', name: 'for this one' },
        ]}
      />
      <RefusalLine refusal={refusal} />
      <ol className="morning-lines">
        {items.map((item, i) => (
          <li key={item.id} className="morning-line">
            <span className="morning-words">{item.text}</span>
            <span className="morning-moves">
              <button type="button" disabled={i === 0} aria-label={`Up: ${item.text}`} onClick={() => move(item, -1)}>
                Up
              </button>
              <button
                type="button"
                disabled={i === items.length - 1}
                aria-label={`Down: ${item.text}`}
                onClick={() => move(item, 1)}
              >
                Down
              </button>
              <button
                type="button"
                className="words"
                aria-label={`Take out: ${item.text}`}
                onClick={() => void change([{ of: item.id, outing, out: true }])}
              >
                Take out
              </button>
              <button
                type="button"
                className="words"
                aria-expanded={rewording === item.id}
                aria-label={`Other words: ${item.text}`}
                onClick={() => setRewording(rewording === item.id ? null : item.id)}
              >
                Other words
              </button>
            </span>
            {rewording === item.id && (
              <Reword
                item={item}
                onKeep={(words) => void change([{ of: item.id, outing, text: words }])}
                onHouse={item.reworded ? () => void change(houseWords(item.id)) : null}
              />
            )}
            {against?.line === item.id && (
              <div className="morning-against" role="alert">
                {against.move.rules.map(({ words, because, always }) => (
                  <p key={words}>
                    Not moved: {words}. {because} {always && 'That always holds.'}
                  </p>
                ))}
                {against.move.lines && (
                  <>
                    <TextField label="Why it may be so here" value={reason} onChange={setReason} />
                    <button
                      type="button"
                      disabled={reason.trim() === ''}
                      onClick={() => void change(against.move.lines!(reason.trim()))}
                    >
                      Move it all the same
                    </button>{' '}
                  </>
                )}
                <button type="button" className="words" onClick={() => setAgainst(null)}>
                  Leave it
                </button>
              </div>
            )}
          </li>
        ))}
      </ol>
      <form
        className="morning-add"
        onSubmit={(event) => {
          event.preventDefault();
          void add();
        }}
      >
        <TextField label="A line of your own" value={text} onChange={setText} />
        <button type="submit">Put it in</button>
      </form>
      {out.length > 0 && (
        <>
          <h3>Taken out</h3>
          <ul className="morning-out">
            {out.map(({ id: line, text: words, outing: of }) => (
              <li key={line}>
                {words}{' '}
                <button
                  type="button"
                  className="words"
                  aria-label={`Put back: ${words}`}
                  onClick={() => void change([{ of: line, outing: of, out: false }])}
                >
                  Put back
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}

/** A line in the keeper's own words, or in the house's again. */
function Reword({
  item,
  onKeep,
  onHouse,
}: {
  readonly item: MorningItem;
  readonly onKeep: (words: string) => void;
  /** null: they are the house's words already, or there are none of the house */
  readonly onHouse: (() => void) | null;
}) {
  const [words, setWords] = useState(item.text);
  const said = words.trim();
  return (
    <form
      className="morning-reword"
      onSubmit={(event) => {
        event.preventDefault();
        if (said !== '' && said !== item.text) onKeep(said);
      }}
    >
      <TextField label="What the line says" value={words} onChange={setWords} />
      <button type="submit" disabled={said === '' || said === item.text}>
        Keep these words
      </button>{' '}
      {onHouse && (
        <button type="button" className="words" onClick={onHouse}>
          As it was
        </button>
      )}
    </form>
  );
}
