/** The page of one part of the loads: `#/boat/loads/<part>`, and where there are several of a kind `…/<part>/<id>`. */
import type { ComponentType } from 'react';
import type { Id } from '#boat-book';
import { onDemand } from '../../../parts/on-demand.tsx';
import { address } from '../../../shell/route.ts';
import './loads.css';
import PathPage from './path/path-page.tsx';

/** by the word in the address; the load paths come with this screen, the others when they are first shown (`onDemand`) */
const pages: Readonly<Record<string, ComponentType<{ readonly id: Id | undefined }>>> = {
  path: PathPage,
  hoist: onDemand(() => import('./hoist/hoist-page.tsx')),
  stays: onDemand(() => import('./rig/stays-page.tsx')),
  mast: onDemand(() => import('./rig/mast-page.tsx')),
  rode: onDemand(() => import('./ground/ground-page.tsx')),
  fastenings: onDemand(() => import('./fastenings/fastenings-page.tsx')),
  'gauge-card': onDemand(() => import('./gauge-card/gauge-card-page.tsx')),
};

export default function LoadsScreen({ part, id }: { readonly part: string | undefined; readonly id: Id | undefined }) {
  const Page = part === undefined ? undefined : pages[part];
  return (
    <div className="boat loads">
      <p className="boat-back no-print">
        <a className="button words" href={address('boat')}>
          ‹ Boat
        </a>
      </p>
      {Page ? <Page key={id} id={id} /> : <h1>No such page</h1>}
    </div>
  );
}
