/** What is on hand and where it is kept, what must be got and when it is expected, and the tools. */
import { Suspense } from 'react';
import { onDemand } from '../../parts/on-demand.ts';
import { useRoute } from '../../shell/route.ts';
import './stores.css';
import { StoresPage } from './stores-page.tsx';

const ToGetSheet = onDemand(() => import('./to-get-sheet.tsx'));
const PlacesPage = onDemand(() => import('./places-page.tsx'));
const TinsPage = onDemand(() => import('./tins/tins-page.tsx'));

export default function StoresScreen() {
  const [page] = useRoute().rest;
  return (
    <Suspense fallback={null}>
      {page === 'list' ? (
        <ToGetSheet />
      ) : page === 'places' ? (
        <PlacesPage />
      ) : page === 'tins' ? (
        <TinsPage />
      ) : (
        <StoresPage />
      )}
    </Suspense>
  );
}
