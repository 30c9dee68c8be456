/** The pages of the log: `#/boat/log`, `#/boat/log/costs` and `#/boat/log/fitting/<id>`; and of the papers, `#/boat/papers`. */
import { onDemand } from '../../../parts/on-demand.tsx';
import { address } from '../../../shell/route.ts';
import './log.css';
import LogPage from './log-page.tsx';

const CostsPage = onDemand(() => import('./costs-page.tsx'));
const StoryPage = onDemand(() => import('./story-page.tsx'));
const PapersPage = onDemand(() => import('./papers-page.tsx'));

export default function LogScreen({
  page,
  part,
  id,
}: {
  readonly page: 'log' | 'papers';
  readonly part: string | undefined;
  readonly id: string | undefined;
}) {
  const up = page === 'log' && part !== undefined;
  return (
    <div className="boat">
      <p className="boat-back no-print">
        {up ? (
          <a className="button words" href={address('boat', 'log')}>
            ‹ Log
          </a>
        ) : (
          <a className="button words" href={address('boat')}>
            ‹ Boat
          </a>
        )}
      </p>
      {page === 'papers' ? (
        <PapersPage openId={part} />
      ) : part === undefined ? (
        <LogPage />
      ) : part === 'costs' ? (
        <CostsPage />
      ) : part === 'fitting' && id !== undefined ? (
        <StoryPage key={id} id={id} />
      ) : (
        <h1>No such page</h1>
      )}
    </div>
  );
}
