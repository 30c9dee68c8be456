/** Every line of a morning list in its order, to tick or to change, and what the list was made of. */
import type { Id } from '#boat-book';
import { listTitles, type MorningItem, type MorningListTold } from '#reckoning';
import { onDemand } from '../../../parts/on-demand.tsx';
import type { Run } from '../../../parts/use-run.ts';
import { address } from '../../../shell/route.ts';
import { LineRow } from './line-row.tsx';

const ChangeList = onDemand(() => import('./change-list.tsx'));

export function AllLines({
  id,
  told,
  zone,
  inHand,
  changing,
  onChange,
  onTick,
}: {
  readonly id: Id;
  readonly told: MorningListTold;
  readonly zone: string;
  readonly inHand: MorningItem | undefined;
  readonly changing: boolean;
  readonly onChange: (changing: boolean) => void;
  readonly onTick: (item: MorningItem) => ReturnType<Run>;
}) {
  const { list, items } = told;
  const done = items.filter(({ tick }) => tick !== null).length;
  return (
    <section aria-labelledby="morning-all">
      <div className="morning-head">
        <h2 id="morning-all">
          {listTitles[list]}: {done} of {items.length}
        </h2>
        <button type="button" className="words" aria-expanded={changing} onClick={() => onChange(!changing)}>
          {changing ? 'Leave it so' : 'Change the list'}
        </button>
      </div>
      {changing ? (
        <ChangeList id={id} told={told} />
      ) : (
        <ol className="morning-lines">
          {items.map((item) => (
            <LineRow key={item.id} item={item} zone={zone} here={item === inHand} onTick={() => onTick(item)} />
          ))}
        </ol>
      )}
      {told.setAside.map(({ before, after, because, reason }) => (
        <p key={`${before} ${after}`} className="morning-aside small">
          Against the usual order, as you wanted it: ‘{after}’ may come before ‘{before}’. {because} Your reason:{' '}
          {reason}.
        </p>
      ))}
      <p className="small soft">
        Made of what is in this boat’s book
        {told.lacking.length > 0 && `, which has no ${told.lacking.join(', no ')}: nothing of that is asked`}. Common
        practice; the makers of boat and gear, and the law, come first.
      </p>
      <p>
        <a className="button" href={address('go', 'morning', id, list, 'print')}>
          Print {listTitles[list]}
        </a>
      </p>
    </section>
  );
}
