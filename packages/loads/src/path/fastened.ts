import type { Source } from '#working';
import { assumedGlassShare, type BaseMaterial, baseMaterials } from '../fastenings/base-material.ts';
import { firstToGive } from '../fastenings/bolt-pattern.ts';
import { jointSources } from '../fastenings/fastening-question.ts';
import { type Fastener, type Giving, type Joint, pulledAlong, pulledOut } from '../fastenings/holding.ts';
import { type ScrewSize, screwNames } from '../fastenings/size-cell.ts';
import type { FasteningsPart } from './part.ts';

/** What holds a fitting to the boat: the load at which the first of its ways gives, for all of them together. */
export type Fastened =
  | {
      readonly kind: 'found';
      readonly first: Giving;
      /** all together, at which the first gives. [N] */
      readonly all_N: number;
      readonly sources: readonly Source[];
    }
  | { readonly kind: 'unknown'; readonly because: string; readonly right: string };

/** The weakest of each kind of stuff, since the part does not say which it is. */
const weakest: Readonly<Record<Exclude<FasteningsPart['into'], 'steel'>, BaseMaterial>> = {
  laminate: baseMaterials.laminate,
  plywood: baseMaterials['okoume-ply'],
  timber: baseMaterials['western-red-cedar'],
  aluminium: baseMaterials['aluminium-spar'],
};

const evenly: Source = {
  title:
    'all share alike; the lightest wood, the weakest stainless (class 50), damp; a backing plate counts as large washers',
  seen: 'our assumption',
};

const metric = (size_mm: number): ScrewSize | undefined =>
  screwNames.find((name) => Math.abs(Number(name.slice(1)) - size_mm) <= 0.05);

function fastenerOf({ how, into, size_mm, backing }: FasteningsPart): Fastener | null {
  const size = metric(size_mm);
  if (how === 'screws' && (into === 'plywood' || into === 'timber')) return { kind: 'wood screw', across_mm: size_mm };
  if (size === undefined) return null;
  return how === 'screws'
    ? { kind: 'machine screw', size, ofClass: '50' }
    : { kind: 'bolt', size, ofClass: '50', washer: backing === 'none' ? 'plain' : 'large', pad_mm: 0 };
}

/**
 * What screws or bolts hold together, the pull shared by all alike.
 *
 * @param factor  breaking over working of the path, where a way of giving has none of its own. ≥ 1
 *
 * Not covered: a fitting that tips, which pulls its back row hardest; soft core; edges nearer than the spacing asked.
 */
export function fastened(part: FasteningsPart, factor: number): Fastened {
  const unknown = (because: string, right: string): Fastened => ({ kind: 'unknown', because, right });
  const { count, into, thickness_mm, pulled, metal } = part;
  if (into === 'steel') return unknown('no figure of ours is for steel under them', 'the figure of who made it');
  if (metal !== 'stainless')
    return unknown(`no figure of ours is for ${metal} fastenings`, 'the figure marked on them');
  if (thickness_mm === null)
    return unknown(
      'how thick what they go into is was not measured',
      'its thickness; of screws, how deep their thread stands',
    );
  const fastener = fastenerOf(part);
  if (fastener === null) return unknown(`no table of ours has M${part.size_mm}`, `one of ${screwNames.join(', ')}`);
  const joint: Joint = { base: weakest[into], thickness_mm, glassShare: assumedGlassShare, damp: true, fastener };
  const first = firstToGive(pulled === 'out' ? pulledOut(joint) : pulledAlong(joint), factor);
  return { kind: 'found', first, all_N: count * first.failing_N, sources: [...jointSources(joint), evenly] };
}
