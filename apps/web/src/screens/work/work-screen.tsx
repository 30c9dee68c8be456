import { lazy, Suspense } from 'react';
import { useRoute } from '../../shell/route.ts';
import './work.css';
import { WorkList } from './work-list.tsx';

const JobPage = lazy(() => import('./job-page.tsx'));
const PutIn = lazy(() => import('./put-in.tsx'));

export default function WorkScreen() {
  const [page, id] = useRoute().rest;
  if (page === undefined) return <WorkList />;
  return (
    <Suspense fallback={null}>
      {page === 'put-in' && <PutIn />}
      {page === 'job' && id !== undefined && <JobPage key={id} id={id} />}
      {!(page === 'put-in' || (page === 'job' && id !== undefined)) && <WorkList />}
    </Suspense>
  );
}
