/** What keeps her on her trailer, a way at a time, in sentences. */
import type { Boat, TrailerRecord } from '#boat-book';
import { type Lashing, restraint, shareAsked, type WayHeld } from '#trailer';
import { sentence } from '../when-in-words.ts';
import type { Standing } from './standing.ts';
import type { TrailerFinding } from './trailer-finding.ts';
import { kgSaid, newtonsSaid } from './trailer-words.ts';

const ways = {
  forward: 'forward, when the car brakes',
  sideways: 'sideways, in a bend',
  rearward: 'backward, when the car pulls away',
} as const;

export interface LashingTold {
  readonly way: WayHeld['way'];
  /** `Backward, when the car pulls away: 2870 N are asked for; the lashings hold 3080 N.` */
  readonly words: string;
  readonly verdict: WayHeld['verdict'];
  /** how that came about, a sentence each */
  readonly because: readonly string[];
}

/** Every way she could go, with what is asked and what holds. */
export function lashingsTold(record: TrailerRecord, standings: readonly Standing[]): LashingTold[] {
  const mass_kg = standings.reduce((sum, { rides, mass }) => sum + (rides === 'boat' ? mass.likely_kg : 0), 0);
  if (mass_kg === 0) return [];
  const friction = record.friction ?? 0;
  return restraint(mass_kg, friction, record.post_N, record.lashings.map(inSums)).map((held) => ({
    way: held.way,
    verdict: held.verdict,
    words: `${sentence(ways[held.way])}: ${newtonsSaid(held.asked_N)} are asked for; ${heldBy(held)}.`,
    because: [
      `${kgSaid(mass_kg)} of boat and what is in her, ${shareSaid(shareAsked(held.way))} her weight: the larger of standard and code of practice.`,
      record.friction === null || record.friction === 0
        ? 'On rollers nothing rubs: friction is not counted.'
        : `Friction µ ${record.friction}, as entered, three quarters of it counted: ${newtonsSaid(held.friction_N)}.`,
      ...(held.way === 'forward'
        ? [
            record.post_N === null
              ? 'Forward she is held by the bow post and its chock: what they bear is not entered.'
              : `The bow post bears ${newtonsSaid(record.post_N)}, as entered.`,
          ]
        : []),
      ...idleSaid(record, held),
    ],
  }));
}

const shareSaid = (share: number) => (share === 1 ? 'all of' : share === 0.5 ? 'half' : `${share} of`);

/** A strap without a label that can be read counts for nothing, as one on a place nobody knows does. */
function inSums({
  name,
  kind,
  holds,
  capacity_N,
  above_deg,
  aside_deg,
  hull_N,
}: TrailerRecord['lashings'][number]): Lashing {
  const radians = (degrees: number) => (degrees * Math.PI) / 180;
  return {
    name,
    kind,
    holds,
    capacity_N: capacity_N ?? 0,
    above_rad: radians(above_deg),
    aside_rad: radians(aside_deg),
    hull_N: capacity_N === null ? null : hull_N,
  };
}

function heldBy({ friction_N, post_N, lashings_N, verdict }: WayHeld): string {
  const parts = [
    ...(post_N !== null && post_N > 0 ? [`the bow post holds ${newtonsSaid(post_N)}`] : []),
    ...(lashings_N > 0 ? [`the lashings hold ${newtonsSaid(lashings_N)}`] : []),
    ...(friction_N > 0 ? [`friction holds ${newtonsSaid(friction_N)}`] : []),
  ];
  if (parts.length === 0) return verdict === 'not known' ? 'what holds her is not known' : 'nothing holds her';
  return verdict === 'not known' ? `${parts.join(', ')}; whether it is enough is not known` : parts.join(', ');
}

function idleSaid({ lashings }: TrailerRecord, { idle }: WayHeld): string[] {
  return idle.map(({ name, because }) => {
    if (because === 'winch line') return `${name}: counts for nothing, a winch line is no lashing.`;
    const noLabel = lashings.some((each) => each.name === name && each.capacity_N === null);
    return noLabel
      ? `${name}: its label cannot be read, so it counts for nothing.`
      : `${name}: what its place on the hull may bear is not entered, so it counts for nothing.`;
  });
}

const lashBetter = (way: WayHeld['way']): TrailerFinding['mend'] => ({
  kind: 'steps',
  title: `Lash her better: ${way}`,
  steps: [
    {
      title: 'Straps with a readable label, against the way she would go, on places that are known to bear them',
      minutes: { low: 15, likely: 30, high: 60 },
      cautions: [
        'Padded at every edge. Throw a strap away that is cut by a tenth of its width, burnt, knotted or without its label.',
        'A strap can pull a fitting out or crush a hull: what a place may bear is for her builder or a surveyor to say.',
      ],
    },
  ],
});

export function lashingFindings(told: readonly LashingTold[]): TrailerFinding[] {
  return told.flatMap(({ way, words, verdict, because }): TrailerFinding[] =>
    verdict === 'held'
      ? []
      : [
          {
            id: `lashing-${way}`,
            subject: 'lashings',
            gravity: verdict === 'short' ? 'danger' : 'unknown',
            wrong: words,
            right:
              verdict === 'short'
                ? 'More or stronger lashings against that way; the winch line does not count.'
                : 'Enter what the bow post bears, or what the places on the hull may bear.',
            because,
            from: null,
            mend: verdict === 'short' ? lashBetter(way) : null,
          },
        ],
  );
}

/** The board on the road: it rests on the trailer, and does not hang on its wire. */
export function boardFindings({ boardRests }: TrailerRecord, { board }: Boat): TrailerFinding[] {
  if (boardRests === true || board === 'keel') return [];
  const words = {
    id: 'board',
    subject: 'board',
    because: ['Every bump of the road comes on wire, sheave and winch for hours.'],
    from: null,
  } as const;
  return [
    boardRests === false
      ? {
          ...words,
          gravity: 'danger',
          wrong: 'The board hangs on its wire on the road.',
          right: 'Let it down on to the trailer, or pin it, before she is towed.',
          mend: {
            kind: 'steps',
            title: 'Let the board rest on the trailer',
            steps: [
              {
                title: 'A bearer or chock under the board; let it down until the wire is slack',
                minutes: { low: 10, likely: 30, high: 90 },
                cautions: ['Nobody under the board; winch handle held until the pawl is in.'],
              },
            ],
          },
        }
      : {
          ...words,
          gravity: 'unknown',
          wrong: 'Whether the board rests on the trailer on the road is not entered.',
          right: 'Before towing it rests on the trailer, not on its wire.',
          mend: null,
        },
  ];
}
