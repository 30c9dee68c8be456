import { Suspense } from 'react';
import { onDemand } from '../../parts/on-demand.ts';
import { useRoute } from '../../shell/route.ts';
import './boat.css';
import { BoatPage } from './boat-page.tsx';

const CircuitsPage = onDemand(() => import('./circuits/circuits-page.tsx'));
const OutletPage = onDemand(() => import('./circuits/outlet-page.tsx'));
const BatteryPage = onDemand(() => import('./battery/battery-page.tsx'));
const CardPage = onDemand(() => import('./battery/card-page.tsx'));
const ReadingsPage = onDemand(() => import('./readings/readings-page.tsx'));
const LoadsScreen = onDemand(() => import('./loads/loads-screen.tsx'));
const BeddingPage = onDemand(() => import('./bedding/bedding-page.tsx'));
const TrailerPage = onDemand(() => import('./trailer/trailer-page.tsx'));
const LogScreen = onDemand(() => import('./log/log-screen.tsx'));
const PicturePage = onDemand(() => import('./picture/picture-page.tsx'));
const ZonePage = onDemand(() => import('./zone-page.tsx'));

export default function BoatScreen() {
  const [page, id, part] = useRoute().rest;
  if (page === 'zone' && id !== undefined)
    return (
      <Suspense fallback={null}>
        <ZonePage key={id} id={id} />
      </Suspense>
    );
  if (page === 'battery' && id !== undefined)
    return (
      <Suspense fallback={null}>
        {part === 'card' ? (
          <CardPage key={id} id={id} />
        ) : part === 'readings' ? (
          <ReadingsPage key={id} id={id} />
        ) : (
          <BatteryPage key={id} id={id} />
        )}
      </Suspense>
    );
  if (page === 'picture')
    return (
      <Suspense fallback={null}>
        <PicturePage />
      </Suspense>
    );
  if (page === 'circuits')
    return <Suspense fallback={null}>{id === 'outlet' ? <OutletPage /> : <CircuitsPage />}</Suspense>;
  if (page === 'bedding')
    return (
      <Suspense fallback={null}>
        <BeddingPage key={id} fitting={id ?? null} job={null} />
      </Suspense>
    );
  if (page === 'trailer')
    return (
      <Suspense fallback={null}>
        <TrailerPage key={id} id={id} />
      </Suspense>
    );
  if (page === 'loads')
    return (
      <Suspense fallback={null}>
        <LoadsScreen part={id} id={part} />
      </Suspense>
    );
  if (page === 'log' || page === 'papers')
    return (
      <Suspense fallback={null}>
        <LogScreen page={page} part={id} id={part} />
      </Suspense>
    );
  return <BoatPage />;
}
