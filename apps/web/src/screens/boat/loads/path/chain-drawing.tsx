/**
 * A load path as a line drawing: what pulls at the top, what holds at the foot, each part to the scale of its own sizes, with
 * what it works at of what it may. The weakest is lit; what does not go together is marked between the two.
 */
import { memo } from 'react';
import type { Id, LoadPathRecord } from '#boat-book';
import { isPastTrust, type LoadPathTold, type PathMending, type PathPartTold, type RigTrust } from '#reckoning';
import { capital } from '../../../../parts/in-words.ts';
import { Mark } from '../../../../parts/mark.tsx';
import { trustInWords } from '../../../../reading/rig-in-words.ts';
import { drawingWidth, partDrawn } from './part-drawing.tsx';
import { shareInWords } from './share-in-words.ts';

export const ChainDrawing = memo(function ChainDrawing({
  record,
  told,
  shares,
  mendings,
  rigs,
  today,
  onOpen,
}: {
  readonly record: LoadPathRecord;
  readonly told: LoadPathTold;
  /** load over working load of each part; null: no load is looked at */
  readonly shares: readonly (number | null)[] | null;
  readonly mendings: readonly PathMending[];
  /** the jury rigs that stand */
  readonly rigs: readonly RigTrust[];
  readonly today: string;
  readonly onOpen: (part: Id) => void;
}) {
  return (
    <figure className="path-chain" aria-label={`${record.name}, drawn part by part`}>
      <ol>
        {told.parts.map((part, i) => (
          <li key={part.id}>
            <button type="button" className="prints" onClick={() => onOpen(part.id)}>
              <PartDrawing record={record} i={i} lit={litOf(part, shares?.[i] ?? null, mendings)} />
              <PartWords
                part={part}
                share={shares?.[i] ?? null}
                mendings={mendings}
                rig={rigs.find(({ id }) => id === record.parts[i]!.juryRig) ?? null}
                today={today}
              />
            </button>
            <Joint told={told} i={i} />
          </li>
        ))}
      </ol>
      <figcaption className="soft small">
        From what pulls, at the top, to what holds. Shackles, pins, chain, rope and wire to scale with each other; knots
        and fittings by their sign. The line beside each is what it may work at, the bar what it works at. Tap one for
        how it is worked out.
      </figcaption>
    </figure>
  );
});

type Lit = 'fails' | 'weakest' | 'unknown' | undefined;

/** How a part stands out: it fails, it is the weakest, or it is not known. */
export function litOf(part: PathPartTold, share: number | null, mendings: readonly PathMending[]): Lit {
  if ((share ?? 0) > 1) return 'fails';
  if (mendings.some((mending) => mending.part === part.id && mending.gravity === 'fails')) return 'fails';
  if (part.isWeakest) return 'weakest';
  return part.state === 'unknown' ? 'unknown' : undefined;
}

function PartDrawing({ record, i, lit }: { readonly record: LoadPathRecord; readonly i: number; readonly lit: Lit }) {
  const { height, shape } = partDrawn(record.parts[i]!);
  return (
    <svg
      aria-hidden="true"
      className="path-part"
      width={drawingWidth}
      height={height}
      viewBox={`0 0 ${drawingWidth} ${height}`}
      data-lit={lit}
    >
      {shape}
    </svg>
  );
}

function PartWords({
  part,
  share,
  mendings,
  rig,
  today,
}: {
  readonly part: PathPartTold;
  readonly share: number | null;
  readonly mendings: readonly PathMending[];
  /** null: it is none that stands */
  readonly rig: RigTrust | null;
  readonly today: string;
}) {
  const mending = mendings.find((one) => one.part === part.id && one.gravity === 'fails');
  return (
    <span className="path-words">
      <span>
        <b>{capital(part.name)}</b>
        {part.what !== part.name && <span className="soft"> {part.what}</span>}
      </span>
      {share !== null && <ShareBar share={share} />}
      <span className="path-share">
        {share === null ? part.bears : shareInWords(share)}
        {part.isWeakest && (
          <>
            {': '}
            <b>the weakest</b>
          </>
        )}
        {part.isJuryRig && ' · a jury rig'}
      </span>
      {rig && (
        <span className={isPastTrust(rig) ? 'path-fails' : 'path-share'}>
          <Mark of={isPastTrust(rig) ? 'danger' : 'jury rig'} /> {trustInWords(rig, today)}
        </span>
      )}
      {mending && (
        <span className="path-fails">
          <Mark of="danger" /> {mending.mend}
        </span>
      )}
    </span>
  );
}

/** The hairline is what it may work at; the bar runs past it where it works at more. */
function ShareBar({ share }: { readonly share: number }) {
  const whole = 120;
  return (
    <svg aria-hidden="true" className="path-bar-of" width="170" height="14" viewBox="0 0 170 14">
      <path d={`M0 7H${whole}M0 3v8M${whole} 1v12`} className="path-thin" />
      <path
        d={`M0 7H${Math.min(166, Math.max(1, share * whole))}`}
        className="path-borne"
        data-over={share > 1 || undefined}
      />
    </svg>
  );
}

/** What does not go together between a part and the next one. */
function Joint({ told, i }: { readonly told: LoadPathTold; readonly i: number }) {
  const [here, next] = [told.parts[i], told.parts[i + 1]];
  if (here === undefined || next === undefined) return null;
  const apart = told.findings.find(
    ({ gravity, parts }) => gravity === 'does not go together' && parts.includes(here.id) && parts.includes(next.id),
  );
  if (apart === undefined) return null;
  return (
    <p className="path-joint">
      <Mark of="danger" said="does not go together:" /> <span>{apart.wrong}</span>
    </p>
  );
}
