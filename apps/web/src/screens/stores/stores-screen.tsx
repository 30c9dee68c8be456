/** What is on hand and where it is kept, what must be got and when it is expected, and the tools. */
import { onDemand } from '../../parts/on-demand.tsx';
import { OnePage } from '../../shell/one-page.tsx';
import type { ScreenProps } from '../../shell/route.ts';
import './stores.css';
import { StoresPage } from './stores-page.tsx';

const ToGetSheet = onDemand(() => import('./to-get-sheet.tsx'));
const PlacesPage = onDemand(() => import('./places-page.tsx'));
const TinsPage = onDemand(() => import('./tins/tins-page.tsx'));

export default function StoresScreen({ at }: ScreenProps) {
  const [page] = at.rest;
  return <OnePage>{pageOf(page)}</OnePage>;
}

function pageOf(page: string | undefined) {
  if (page === 'list') return <ToGetSheet />;
  if (page === 'places') return <PlacesPage />;
  if (page === 'tins') return <TinsPage />;
  return <StoresPage />;
}
