/** What coats take as a rule: how many, how far a litre goes, how dry the wood must be. Common practice; the tin wins. */

/** Coats and thinning, varnishing practice (handbook rows materials.coats). */
export const usualCoats: Readonly<
  Record<
    string,
    {
      readonly title: string;
      readonly meaning: string;
      readonly low: number;
      readonly high: number;
      readonly unit: string;
    }
  >
> = {
  'varnish-bare': {
    title: 'varnish on bare wood',
    meaning: 'coats, the first thinned most',
    low: 6,
    high: 8,
    unit: 'coats',
  },
  'varnish-yearly': { title: 'varnish, yearly', meaning: 'coats a year', low: 1, high: 2, unit: 'coats' },
  'first-thinning': {
    title: 'thinning of the first coat on bare wood',
    meaning: 'thinner in it',
    low: 25,
    high: 50,
    unit: '%',
  },
  oil: { title: 'oil on bare wood', meaning: 'coats', low: 3, high: 6, unit: 'coats' },
};

/** How far a litre goes in one coat. [m²/l] Tins on the shelf (handbook rows materials.spread). */
export const usualSpread_m2_l: Readonly<
  Record<string, { readonly title: string; readonly low: number; readonly high: number }>
> = {
  'varnish-one-pot': { title: 'varnish', low: 12, high: 16 },
  'paint-one-pot': { title: 'enamel, one pot', low: 10, high: 12 },
  'paint-two-pot': { title: 'paint, two pot polyurethane', low: 9, high: 12 },
  'epoxy-primer': { title: 'epoxy primer', low: 6, high: 9 },
  antifouling: { title: 'antifouling', low: 7, high: 10 },
  'bilge-paint': { title: 'bilge paint', low: 9, high: 12 },
  'teak-oil': { title: 'oil for teak', low: 10, high: 15 },
};

/**
 * Most water in wood that is coated. [% of its dry weight] Varnish 12 to 16, epoxy under 12 to 18: sources vary, so the
 * lower end is where it is dry enough for all of them (handbook row materials.wood.mc gives 8 to 16 for the two together).
 */
export const timberLimits = {
  varnish: { most_pct: 14, low_pct: 12, high_pct: 16 },
  epoxy: { most_pct: 12, low_pct: 12, high_pct: 18 },
} as const;

export type TimberFit = 'dry enough' | 'doubtful: let it dry longer' | 'too wet';

/** Whether wood is dry enough. @param moisture_pct of its dry weight. [%] */
export function timberFit(moisture_pct: number, what: keyof typeof timberLimits): TimberFit {
  const { most_pct, high_pct } = timberLimits[what];
  return moisture_pct <= most_pct ? 'dry enough' : moisture_pct <= high_pct ? 'doubtful: let it dry longer' : 'too wet';
}
