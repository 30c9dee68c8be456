/** The line in hand, readable at arm's length: what, what hurts, and the answers within reach of the thumb. */
import { useState } from 'react';
import { listTitles, type MorningItem, type MorningListTold } from '#reckoning';
import { TextField } from '../../../parts/text-fields.tsx';

export function LineInHand({
  list,
  item,
  at,
  of,
  onDone,
  onPass,
  onFail,
}: {
  readonly list: MorningListTold['list'];
  readonly item: MorningItem;
  /** its place, from 1 */
  readonly at: number;
  readonly of: number;
  readonly onDone: () => void;
  /** null: there is no other line */
  readonly onPass: (() => void) | null;
  /** with what holds it for now; null: nothing does */
  readonly onFail: (mended: string | null) => void;
}) {
  const [failing, setFailing] = useState(false);
  const [mended, setMended] = useState('');
  return (
    <div className="morning-in-hand">
      <p className="small soft">
        {listTitles[list]}, line {at} of {of}
      </p>
      <h1>{item.text}</h1>
      {item.about !== '' && <p className="soft">{item.about}</p>}
      {item.cautions.map((caution) => (
        <p key={caution} className="morning-caution">
          <b>Take care:</b> {caution}
        </p>
      ))}
      <div className="morning-answers at-foot">
        <button type="button" className="main" onClick={onDone}>
          Done
        </button>
        <button type="button" aria-expanded={failing} onClick={() => setFailing(!failing)}>
          Not right
        </button>
        {onPass && (
          <button type="button" onClick={onPass}>
            Later
          </button>
        )}
      </div>
      {failing && (
        <div className="morning-failing">
          <p>
            Not right: it becomes the job <b>{item.fails.title}</b>, needed for this outing.
          </p>
          <button type="button" className="main" onClick={() => onFail(null)}>
            Make the job
          </button>
          <TextField label="Or it is mended for now, with" value={mended} onChange={setMended} />
          <button type="button" onClick={() => onFail(mended)}>
            Make the job and a jury rig
          </button>
          <p className="small soft">
            The jury rig is trusted as is usual for what it is, and no longer than this outing.
          </p>
        </div>
      )}
      <p className="small soft">From: {item.from}.</p>
    </div>
  );
}
