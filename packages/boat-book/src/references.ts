/** Which records a record names, and where in it; so that none can name what is not there. */

import type { RecordOf } from './collections.ts';
import type { CollectionName } from './operation-fields.ts';
import type { Id, SetUpNeedRecord } from './records.ts';

export interface Reference {
  readonly path: readonly (string | number)[];
  readonly collection: CollectionName;
  readonly id: Id;
  /** a state of the set-up, or a wait of the step, that must be there too */
  readonly within?: Id;
}

const one = (path: string, collection: CollectionName, id: Id | null): Reference[] =>
  id === null ? [] : [{ path: [path], collection, id }];

const many = (path: string, collection: CollectionName, ids: readonly Id[]): Reference[] =>
  ids.map((id, i) => ({ path: [path, i], collection, id }));

const needs = (path: readonly (string | number)[], setUps: readonly SetUpNeedRecord[]): Reference[] =>
  setUps.flatMap(({ setUp, states }, i) =>
    states.map((state) => ({ path: [...path, i], collection: 'setUps' as const, id: setUp, within: state })),
  );

/** What each kind of record names. Fixed records name what was there when they were written, so none. */
const namedBy: { readonly [C in CollectionName]?: (record: RecordOf<C>) => Reference[] } = {
  zones: (zone) => many('near', 'zones', zone.near),
  fittings: (fitting) => [
    ...one('zone', 'zones', fitting.zone),
    ...(fitting.bedding?.job
      ? [{ path: ['bedding', 'job'], collection: 'jobs' as const, id: fitting.bedding.job }]
      : []),
  ],
  setUps: (setUp) => setUp.changes.flatMap((change, i) => needs(['changes', i, 'setUps'], change.setUps)),
  batteries: (battery) => one('zone', 'zones', battery.zone),
  panels: (panel) => one('battery', 'batteries', panel.battery),
  chargers: (charger) => one('battery', 'batteries', charger.battery),
  circuits: (circuit) => [...one('battery', 'batteries', circuit.battery), ...one('zone', 'zones', circuit.zone)],
  loadPaths: (path) => [
    ...one('zone', 'zones', path.zone),
    ...path.parts.flatMap(({ juryRig }, i) =>
      juryRig === null ? [] : [{ path: ['parts', i, 'juryRig'], collection: 'juryRigs' as const, id: juryRig }],
    ),
  ],
  rodes: (rode) => [...one('zone', 'zones', rode.zone), ...one('path', 'loadPaths', rode.path)],
  loadTests: (test) => [
    ...one('battery', 'batteries', test.battery),
    ...many('readings', 'readings', test.readings),
    ...one('circuit', 'circuits', test.circuit),
  ],
  stays: (stay) => one('zone', 'zones', stay.zone),
  stowages: (stowage) => one('within', 'stowages', stowage.within),
  stores: (store) => one('stowage', 'stowages', store.stowage ?? null),
  tools: (tool) => one('stowage', 'stowages', tool.stowage ?? null),
  boardHoists: (hoist) => one('zone', 'zones', hoist.zone),
  dues: (due) => [...one('zone', 'zones', due.zone), ...one('fitting', 'fittings', due.fitting)],
  trailers: (trailer) => one('zone', 'zones', trailer.zone),
  carried: (thing) => [
    ...one('trailer', 'trailers', thing.trailer),
    ...one('hoist', 'boardHoists', thing.hoist),
    ...one('battery', 'batteries', thing.battery),
  ],
  papers: (paper) => [...one('fitting', 'fittings', paper.fitting), ...one('job', 'jobs', paper.job)],
  jobs: (job) => [
    ...one('zone', 'zones', job.zone),
    ...one('fitting', 'fittings', job.fitting),
    ...one('outing', 'outings', job.outing),
    ...one('heldTo', 'jobDays', job.heldTo),
    ...many('afterJobs', 'jobs', job.afterJobs),
    ...one('followsJob', 'jobs', job.followsJob ?? null),
  ],
  tins: (tin) => one('store', 'stores', tin.store),
  mixes: (mix) => one('tin', 'tins', mix.tin ?? null),
  steps: (step) => [
    ...one('job', 'jobs', step.job),
    ...one('zone', 'zones', step.zone),
    ...step.tools.map(({ tool }, i) => ({ path: ['tools', i, 'tool'], collection: 'tools' as const, id: tool })),
    ...needs(['setUps'], step.setUps),
    ...many('stores', 'stores', step.stores),
    ...(step.takes ?? []).map(({ store }, i) => ({ path: ['takes', i], collection: 'stores' as const, id: store })),
    ...one('mix', 'mixes', step.mix),
    ...step.waits.flatMap((wait, i) => [
      ...needs(['waits', i, 'setUps'], wait.setUps),
      ...(wait.tin ? [{ path: ['waits', i, 'tin'], collection: 'tins' as const, id: wait.tin }] : []),
      ...wait.still.map((id, j) => ({ path: ['waits', i, 'still', j], collection: 'setUps' as const, id })),
    ]),
    ...(step.follows ?? []).map((follow, i) => ({
      path: ['follows', i],
      collection: 'steps' as const,
      id: follow.step,
      ...(follow.wait === null ? {} : { within: follow.wait }),
    })),
  ],
  morningLines: (line) => one('outing', 'outings', line.outing),
  juryRigs: (rig) => [...one('job', 'jobs', rig.job), ...one('zone', 'zones', rig.zone)],
  jobDays: (jobDay) => [
    ...one('place', 'places', jobDay.place),
    ...jobDay.endsIn.map(({ setUp, state }, i) => ({
      path: ['endsIn', i],
      collection: 'setUps' as const,
      id: setUp,
      within: state,
    })),
  ],
};

/** Every record that `record` names, with the place in it that names it. */
export function referencesOf<C extends CollectionName>(collection: C, record: RecordOf<C>): readonly Reference[] {
  const named = namedBy[collection] as ((record: RecordOf<C>) => Reference[]) | undefined;
  return named === undefined ? [] : named(record);
}
