/** One line of the list: a box as wide as a thumb, its words, and when it was ticked. */
import type { MorningItem } from '#reckoning';
import { localAt } from '#units';
import { Mark } from '../../../parts/mark.tsx';
import { TickLine } from '../../../parts/tick-line.tsx';
import type { Run } from '../../../parts/use-run.ts';
import { address } from '../../../shell/route.ts';

export function LineRow({
  item,
  zone,
  here,
  onTick,
}: {
  readonly item: MorningItem;
  readonly zone: string;
  /** it is the one in hand */
  readonly here: boolean;
  readonly onTick: () => ReturnType<Run>;
}) {
  const { text, about, tick, juryRig, cautions } = item;
  return (
    <li className="morning-line" data-came={tick?.came} aria-current={here ? 'step' : undefined}>
      <TickLine ticked={tick !== null} onTick={onTick}>
        <span className="morning-words">
          {juryRig && <Mark of="jury rig" said="jury rig" />}
          {cautions.length > 0 && tick === null && <Mark of="danger" said="take care" />} {text}
        </span>
        {about !== '' && tick === null && <span className="small soft">{about}</span>}
        {tick !== null && (
          <span className="small">
            {tick.came === 'failed' ? 'Not right' : 'Ticked'} {localAt(Date.parse(tick.at), zone).clock}
          </span>
        )}
      </TickLine>
      {tick?.job && (
        <a className="button words" href={address('work', 'job', tick.job)} aria-label={`Its job: ${text}`}>
          Its job
        </a>
      )}
    </li>
  );
}
