import { onDemand } from '../../parts/on-demand.tsx';
import { OnePage } from '../../shell/one-page.tsx';
import type { ScreenProps } from '../../shell/route.ts';
import './work.css';
import { WorkList } from './work-list.tsx';

const BeddingPage = onDemand(() => import('../boat/bedding/bedding-page.tsx'));
const JobPage = onDemand(() => import('./job-page.tsx'));
const PutIn = onDemand(() => import('./put-in.tsx'));
const RecipeList = onDemand(() => import('./recipe-list.tsx'));
const RecipePage = onDemand(() => import('./recipe-page.tsx'));
const WalkRound = onDemand(() => import('./walk-round.tsx'));

export default function WorkScreen({ at }: ScreenProps) {
  const [page, id, part] = at.rest;
  return <OnePage>{pageOf(page, id, part)}</OnePage>;
}

function pageOf(page: string | undefined, id: string | undefined, part: string | undefined) {
  if (page === 'put-in') return <PutIn />;
  if (page === 'walk-round') return <WalkRound />;
  if (page === 'recipes') return <RecipeList />;
  if (page === 'job' && id !== undefined && part === 'bedding') return <BeddingPage key={id} fitting={null} job={id} />;
  if (page === 'job' && id !== undefined) return <JobPage key={id} id={id} />;
  if (page === 'recipe' && id !== undefined) return <RecipePage key={id} id={id} />;
  return <WorkList />;
}
