/** How long the products of boatwork keep, by family. */

export interface ShelfLife {
  /** what it is called in a sentence: `polyurethane sealant` */
  readonly family: string;
  /** from the day it came, not opened; null: years, nobody minds. [months] */
  readonly sealed_months: number | null;
  /** from the day it was opened; null: as good as sealed. [months] */
  readonly opened_months: number | null;
}

/**
 * The first family whose words a name has. Common practice throughout, kept cool, dry and well closed: a printed date
 * and what the tin says count before any of it. The order matters: `epoxy primer` is a primer before it is epoxy.
 */
const families: readonly (ShelfLife & { readonly said: RegExp })[] = [
  { said: /butyl/i, family: 'butyl tape', sealed_months: 60, opened_months: null },
  {
    said: /polyurethane.*(sealant|adhesive)|\bPU sealant/i,
    family: 'polyurethane sealant',
    sealed_months: 12,
    opened_months: 1,
  },
  { said: /polysul(ph|f)ide/i, family: 'polysulphide', sealed_months: 12, opened_months: 2 },
  {
    said: /hybrid.*(sealant|adhesive)|(sealant|adhesive).*hybrid/i,
    family: 'hybrid sealant',
    sealed_months: 12,
    opened_months: 2,
  },
  { said: /silicone/i, family: 'silicone', sealed_months: 12, opened_months: 3 },
  { said: /\bsealant|\bbedding compound/i, family: 'sealant', sealed_months: 12, opened_months: 1 },
  { said: /antifouling/i, family: 'antifouling', sealed_months: 24, opened_months: 12 },
  { said: /two[- ]pot|two[- ]pack/i, family: 'two-pot paint or varnish', sealed_months: 24, opened_months: 6 },
  { said: /primer|barrier paint/i, family: 'two-pot primer', sealed_months: 24, opened_months: 12 },
  { said: /epoxy/i, family: 'epoxy', sealed_months: 24, opened_months: 12 },
  { said: /catalyst|peroxide/i, family: 'peroxide catalyst', sealed_months: 12, opened_months: 12 },
  { said: /polyester|vinyl ?ester|gel ?coat/i, family: 'polyester or gelcoat', sealed_months: 6, opened_months: 3 },
  { said: /contact adhesive/i, family: 'contact adhesive', sealed_months: 12, opened_months: 6 },
  { said: /cyanoacrylate/i, family: 'cyanoacrylate', sealed_months: 12, opened_months: 3 },
  { said: /threadlocker/i, family: 'threadlocker', sealed_months: 24, opened_months: 24 },
  {
    said: /varnish|paint(?!.*brush)|enamel|undercoat/i,
    family: 'one-pot paint or varnish',
    sealed_months: 36,
    opened_months: 12,
  },
  { said: /teak oil/i, family: 'oil', sealed_months: 36, opened_months: 12 },
  { said: /petrol/i, family: 'petrol', sealed_months: 6, opened_months: 3 },
  { said: /fuel stabili[sz]er/i, family: 'fuel stabiliser', sealed_months: 36, opened_months: 24 },
];

/** What things that only look like a product are: brushes, guns, papers, things that are put on with it. */
const notProduct = /\b(brush|roller|gun|tray|powder|paper|thinner|fibre|cloth|filler powder|nozzle|grit)\b/i;

/** How long a thing of this name keeps; null: nothing is known of it, or it keeps. */
export function shelfLifeOf(name: string): ShelfLife | null {
  if (notProduct.test(name)) return null;
  const found = families.find(({ said }) => said.test(name));
  if (found === undefined) return null;
  const { family, sealed_months, opened_months } = found;
  return { family, sealed_months, opened_months };
}
