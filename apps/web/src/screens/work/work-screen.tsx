import { Suspense } from 'react';
import { onDemand } from '../../parts/on-demand.ts';
import { useRoute } from '../../shell/route.ts';
import './work.css';
import { WorkList } from './work-list.tsx';

const BeddingPage = onDemand(() => import('../boat/bedding/bedding-page.tsx'));
const JobPage = onDemand(() => import('./job-page.tsx'));
const PutIn = onDemand(() => import('./put-in.tsx'));
const WalkRound = onDemand(() => import('./walk-round.tsx'));

export default function WorkScreen() {
  const [page, id, part] = useRoute().rest;
  if (page === undefined) return <WorkList />;
  return (
    <Suspense fallback={null}>
      {page === 'put-in' && <PutIn />}
      {page === 'walk-round' && <WalkRound />}
      {page === 'job' &&
        id !== undefined &&
        (part === 'bedding' ? <BeddingPage key={id} fitting={null} job={id} /> : <JobPage key={id} id={id} />)}
      {!(page === 'put-in' || page === 'walk-round' || (page === 'job' && id !== undefined)) && <WorkList />}
    </Suspense>
  );
}
