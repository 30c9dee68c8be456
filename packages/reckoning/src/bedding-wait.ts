import type { WaitRecord } from '#boat-book';
import { type BeddingKind, beddingKinds, beddingNames, cureLawOf } from '#materials';

const products = new Set(beddingNames.map((kind) => beddingKinds[kind].product));

/**
 * How far in from its edges a bedded joint is waited for: it then keeps water out, and its middle goes on setting
 * unseen. Our judgement. [mm]
 */
const assumedEdge_mm = 3;

/**
 * The waits of a step that is bedded with a kind: the wait that was for another bedding now goes by the law of this one,
 * and no longer by what another's tin says. A step without such a wait gets one, where the kind sets at all.
 */
export function waitsBeddedWith(waits: readonly WaitRecord[], kind: BeddingKind): readonly WaitRecord[] {
  const { product } = beddingKinds[kind];
  const { law: known } = cureLawOf(product);
  const at = waits.findIndex(({ family }) => family != null && products.has(family));
  const before = waits[at];
  const depth_mm = before?.law.kind === 'moisture' ? before.law.depth_mm : assumedEdge_mm;
  const law = known.kind === 'moisture' ? { ...known, depth_mm } : known;
  if (before !== undefined)
    return waits.with(at, { ...before, law, family: product, ...(before.family === product ? {} : { tin: null }) });
  if (law.kind === 'never cures') return waits;
  const wait: WaitRecord = {
    id: 'bedding',
    title: 'the bedding sets',
    law,
    family: product,
    needs: {},
    setUps: [],
    still: [],
    wet: false,
  };
  return waits.some(({ id }) => id === wait.id) ? waits : [...waits, wait];
}
