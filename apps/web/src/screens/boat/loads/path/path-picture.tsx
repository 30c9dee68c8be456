/** Where a load path runs on the boat: along its line a dot for each part, the weakest and what fails named. */
import { memo } from 'react';
import type { Book, LoadPathRecord } from '#boat-book';
import { boatDrawing, landmarks } from '#picture';
import { type LoadPathTold, type PathMending, sizesOfBoat } from '#reckoning';
import { capital } from '../../../../parts/in-words.ts';
import '../../picture/boat-picture.css';
import { DrawnLines } from '../../picture/drawn-lines.tsx';
import { runOfPath } from '../../picture/path-run.ts';
import { stanceOf } from '../../picture/stance.ts';
import { litOf } from './chain-drawing.tsx';

interface Bead {
  readonly part: LoadPathTold['parts'][number];
  readonly lit: ReturnType<typeof litOf>;
  readonly x: number;
  readonly y: number;
}

/** of the drawing, in its own units: a phone's width less its margins, so that text is never smaller than it says */
const width = 340;

export const PathPicture = memo(function PathPicture({
  book,
  record,
  told,
  shares,
  mendings,
}: {
  readonly book: Book;
  readonly record: LoadPathRecord;
  readonly told: LoadPathTold;
  /** load over working load of each part; null: no load is looked at */
  readonly shares: readonly (number | null)[] | null;
  readonly mendings: readonly PathMending[];
}) {
  const { boat } = book;
  const anchored = record.use === 'ground-tackle';
  const rigged = record.use === 'standing-rigging' || record.use === 'running-rigging';
  const { sizes } = sizesOfBoat(boat);
  const drawing = boatDrawing(sizes, 'profile', { mastUp: true, board: stanceOf(book).board, coverOn: false });
  const profile = drawing.extent;
  const [from, to] = runOfPath(boat, book.zones, record);
  const [left, right] = [Math.min(profile.left, to.x, from.x), Math.max(profile.right, to.x, from.x)];
  // what runs low is drawn without the rig above it
  const highest = rigged ? Math.max(profile.top, from.y) : landmarks(sizes).mastFoot.y + 0.2 * boat.length_m;
  const [top, bottom] = [highest + 0.3, Math.min(profile.bottom, to.y) - 0.3];
  const scale = Math.min((width - 16) / (right - left), 340 / (top - bottom));
  const margin = (width - (right - left) * scale) / 2;
  // the bow looks to the right, as on the Boat place
  const across = (x: number) => width - margin - (x - left) * scale;
  const down = (y: number) => (top - y) * scale;
  const height = (top - bottom) * scale;
  const beads = told.parts.map((part, i) => {
    const share = told.parts.length === 1 ? 0.5 : i / (told.parts.length - 1);
    return {
      part,
      lit: litOf(part, shares?.[i] ?? null, mendings),
      x: across(from.x + (to.x - from.x) * share),
      y: down(from.y + (to.y - from.y) * share),
    };
  });
  // what fails is drawn over the others
  const named: readonly Bead[] = beads.filter(({ lit }) => lit === 'fails' || lit === 'weakest');
  return (
    <figure className="path-picture picture">
      <svg
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={`${boat.name} in profile with ${record.name} on her${named.length > 0 ? `: ${named.map(({ part, lit }) => `${part.name}, ${lit === 'fails' ? 'does not hold' : 'the weakest'}`).join('; ')}` : ''}`}
      >
        <line className="picture-water" x1="0" x2={width} y1={down(0)} y2={down(0)} />
        <DrawnLines lines={drawing.lines} transform={`matrix(${-scale} 0 0 ${-scale} ${across(0)} ${down(0)})`} />
        {anchored && <line className="path-bottom" x1="0" x2={width} y1={down(to.y) + 7} y2={down(to.y) + 7} />}
        <line className="path-run" x1={across(from.x)} y1={down(from.y)} x2={across(to.x)} y2={down(to.y)} />
        {beads.map(({ part, lit, x, y }) => (
          <circle
            key={part.id}
            cx={x}
            cy={y}
            r={lit === 'fails' || lit === 'weakest' ? 6 : 3.5}
            className="path-bead"
            data-lit={lit}
          />
        ))}
        <Names named={named} top={anchored ? height - 14 - (named.length - 1) * nameLine : 16} />
      </svg>
      <figcaption className="soft small">
        Where it runs on her, drawn to scale; its parts are set evenly along it
        {anchored && ', and the depth is only a sign for it'}.
      </figcaption>
    </figure>
  );
});

/** between the lines of names, and the width of a letter of theirs, about. [px] */
const nameLine = 22;
const letter = 6.3;

/** Names of the parts that stand out, one under the other, each with a leader to its dot. */
function Names({
  named,
  top,
}: {
  readonly named: readonly Bead[];
  /** of the first name */
  readonly top: number;
}) {
  const words = named.map(({ part, lit }) => `${lit === 'fails' ? '▲ ' : ''}${capital(part.name)}`);
  // leaders leave from beyond the longest name, so that none crosses another's
  const clear = 12 + Math.max(0, ...words.map(({ length }) => length)) * letter;
  return named.map(({ part, lit, x, y }, i) => {
    const at = top + i * nameLine;
    return (
      <g key={part.id}>
        <path
          className="path-leader"
          data-lit={lit}
          d={`M${12 + words[i]!.length * letter} ${at - 5}H${clear}L${x} ${y}`}
        />
        <text x="6" y={at} className="picture-text path-name" data-lit={lit}>
          {words[i]}
        </text>
      </g>
    );
  });
}
