/** What each single change would gain and cost; any of them can be put in the book, and taken back. */
import type { Id } from '#boat-book';
import type { HoistChangeTold } from '#reckoning';
import { RefusalLine } from '../../../../parts/form.tsx';
import { useRun } from '../../../../parts/use-run.ts';

export function ChangesPart({ id, changes }: { readonly id: Id; readonly changes: readonly HoistChangeTold[] }) {
  const { run, refusal } = useRun();
  return (
    <>
      <RefusalLine refusal={refusal} />
      <ul className="hoist-changes">
        {changes.map(({ title, gains, costs, record }) => (
          <li key={title}>
            <b>{title}.</b>
            {gains.length > 0 && (
              <p>
                <span className="hoist-gain">Gained:</span> {gains.join(' ')}
              </p>
            )}
            {costs.length > 0 && (
              <p>
                <span className="hoist-gain">Lost:</span> {costs.join(' ')}
              </p>
            )}
            <button
              type="button"
              className="words"
              aria-label={`She has it now: ${title}`}
              onClick={() => void run('changeBoardHoist', { id, ...record })}
            >
              She has it now
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}
