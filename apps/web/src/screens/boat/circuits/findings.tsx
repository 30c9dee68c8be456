/** What was found wrong, each with what would be right; then what was not entered. The mark has its word beside it. */
import type { Finding } from '#reckoning';
import { Mark } from '../../../parts/mark.tsx';

const gravityName = { danger: 'Can burn.', worse: 'Fault.', unknown: 'Not looked at.' } as const;

export function Findings({ findings }: { readonly findings: readonly Finding[] }) {
  if (findings.length === 0) return null;
  return (
    <ul className="circuits-findings">
      {findings.map(({ gravity, wrong, right }) => (
        <li key={wrong} data-gravity={gravity}>
          {gravity === 'unknown' ? (
            <span className="circuits-unknown" aria-hidden="true">
              ?
            </span>
          ) : (
            <Mark of={gravity === 'danger' ? 'danger' : 'worsens'} />
          )}
          <span>
            <b>{gravityName[gravity]}</b> {wrong} {right && <span className="circuits-right">{right}</span>}
          </span>
        </li>
      ))}
    </ul>
  );
}
