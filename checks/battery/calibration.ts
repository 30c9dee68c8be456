/** Owners of the other battery put to the estimate: how often its band of 90 of 100 holds what is so. */
import type { Band, BatteryHistory } from '#battery';
import { markdownTable } from '../markdown-table.ts';
import { forgettings, type Owner, owner, situations } from './other-owner.ts';

/** What is asked about, and its unit. */
export const quantities = ['soc_pct', 'left_Ah', 'capacity_Ah'] as const;
export type Quantity = (typeof quantities)[number];

export interface OwnerJudged {
  readonly seed: number;
  readonly situation: Owner['situation'];
  readonly forgot: Owner['forgot'];
  readonly chemistry: string;
  /** for each quantity: the band, the truth, and whether the truth lies in it, under it or over it */
  readonly of: Readonly<Record<Quantity, { readonly band: Band; readonly truth: number; readonly lies: Lies }>>;
  /** half the width of the band of the charge. [%] */
  readonly socHalfWidth_pct: number;
  readonly leftHalfWidth_pct: number;
}
type Lies = 'inside' | 'under' | 'over';

/** What is put to the test. */
export type Estimator = (history: BatteryHistory, seed: number) => Readonly<Record<Quantity, Band>>;

/** One owner's history estimated and held against the truth. */
export function judgedOwner(seed: number, estimator: Estimator): OwnerJudged {
  const { situation, forgot, history, truth } = owner(seed);
  const estimate = estimator(history, seed);
  const judged = (quantity: Quantity) => {
    const { low, likely, high } = estimate[quantity];
    const true_ = truth[quantity];
    const lies: Lies = true_ < low ? 'under' : true_ > high ? 'over' : 'inside';
    return { band: { low, likely, high }, truth: true_, lies };
  };
  const { soc_pct, left_Ah } = estimate;
  return {
    seed,
    situation,
    forgot,
    chemistry: history.battery.chemistry,
    of: { soc_pct: judged('soc_pct'), left_Ah: judged('left_Ah'), capacity_Ah: judged('capacity_Ah') },
    socHalfWidth_pct: (soc_pct.high - soc_pct.low) / 2,
    leftHalfWidth_pct: (50 * (left_Ah.high - left_Ah.low)) / history.battery.nominal_Ah,
  };
}

/** Owners of the seeds, judged one after another. */
export const judgedOwners = (first: number, last: number, estimator: Estimator): OwnerJudged[] =>
  Array.from({ length: last - first + 1 }, (_, i) => judgedOwner(first + i, estimator));

/** Share of owners whose truth lies in the band. [%] */
export const inside_pct = (owners: readonly OwnerJudged[], quantity: Quantity): number =>
  (100 * owners.filter(({ of }) => of[quantity].lies === 'inside').length) / owners.length;

/** The table: all owners, then by what they forgot to write down, by situation and by kind of battery. */
export function ownersInMarkdown(owners: readonly OwnerJudged[]): string[] {
  const row = (name: string, some: readonly OwnerJudged[]) => {
    const count = (quantity: Quantity, lies: Lies) => some.filter(({ of }) => of[quantity].lies === lies).length;
    const mean = (value: (each: OwnerJudged) => number) =>
      (some.reduce((sum, each) => sum + value(each), 0) / some.length).toFixed(0);
    return [
      name,
      String(some.length),
      ...quantities.map((quantity) => inside_pct(some, quantity).toFixed(1)),
      `${count('soc_pct', 'under')} / ${count('soc_pct', 'over')}`,
      `${count('left_Ah', 'under')} / ${count('left_Ah', 'over')}`,
      mean((each) => each.socHalfWidth_pct),
      mean((each) => each.leftHalfWidth_pct),
    ];
  };
  const kinds = [...new Set(owners.map(({ chemistry }) => chemistry))].sort();
  return markdownTable(
    [
      { head: 'owners' },
      { head: '', right: true },
      { head: 'charge in its band, of 100', right: true },
      { head: 'Ah left', right: true },
      { head: 'capacity', right: true },
      { head: 'charge under / over', right: true },
      { head: 'Ah left under / over', right: true },
      { head: 'half width, charge %', right: true },
      { head: 'Ah left, % of size', right: true },
    ],
    [
      row('all', owners),
      ...forgettings.map((kind) =>
        row(
          `forgot ${kind}`,
          owners.filter(({ forgot }) => forgot === kind),
        ),
      ),
      ...situations
        .map((situation) => [situation, owners.filter((each) => each.situation === situation)] as const)
        .filter(([, some]) => some.length > 0)
        .map(([name, some]) => row(name, some)),
      ...kinds.map((kind) =>
        row(
          kind,
          owners.filter(({ chemistry }) => chemistry === kind),
        ),
      ),
    ],
  );
}
