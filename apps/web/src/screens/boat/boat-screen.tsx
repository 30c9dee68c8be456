import { onDemand } from '../../parts/on-demand.tsx';
import { OnePage } from '../../shell/one-page.tsx';
import type { ScreenProps } from '../../shell/route.ts';
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

export default function BoatScreen({ at }: ScreenProps) {
  const [page, id, part] = at.rest;
  return <OnePage>{pageOf(page, id, part)}</OnePage>;
}

function pageOf(page: string | undefined, id: string | undefined, part: string | undefined) {
  if (page === 'zone' && id !== undefined) return <ZonePage key={id} id={id} />;
  if (page === 'battery' && id !== undefined)
    return part === 'card' ? (
      <CardPage key={id} id={id} />
    ) : part === 'readings' ? (
      <ReadingsPage key={id} id={id} />
    ) : (
      <BatteryPage key={id} id={id} />
    );
  if (page === 'picture') return <PicturePage />;
  if (page === 'circuits') return id === 'outlet' ? <OutletPage /> : <CircuitsPage />;
  if (page === 'bedding') return <BeddingPage key={id} fitting={id ?? null} job={null} />;
  if (page === 'trailer') return <TrailerPage key={id} id={id} />;
  if (page === 'loads') return <LoadsScreen part={id} id={part} />;
  if (page === 'log' || page === 'papers') return <LogScreen page={page} part={id} id={part} />;
  return <BoatPage />;
}
