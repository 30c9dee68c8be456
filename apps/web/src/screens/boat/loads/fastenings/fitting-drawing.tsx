/**
 * One fastening cut through, and the pattern from above, both to the scale of their own drawing. What gives first is drawn heavy, and
 * red where it does not hold.
 */
import { type ScrewSize, sizeCell } from '#loads';
import type { FittingAsked, FittingTold } from '#reckoning';

type Told = Extract<FittingTold, { kind: 'told' }>;

export function FittingDrawing({ asked, told }: { readonly asked: FittingAsked; readonly told: Told }) {
  return (
    <figure className="fastened-figure">
      <div className="fastened-drawings">
        <Cut asked={asked} told={told} />
        <Above asked={asked} told={told} />
      </div>
      <figcaption className="soft small">
        One cut through, and all of them from above with the pull to the right, each drawing to its own scale. Heavy:
        what gives first.
      </figcaption>
    </figure>
  );
}

/** Where a way of giving is seen. */
function placeOf(gives: string): 'bolt' | 'under' | 'hole' {
  if (gives.startsWith('the washer')) return 'under';
  return /parts|shears|bends/.test(gives) ? 'bolt' : 'hole';
}

const side = 300;

/** Middle of one fastening, cut: fitting on top, base, pad, washer and nut below. */
function Cut({ asked, told }: { readonly asked: FittingAsked; readonly told: Told }) {
  const d = asked.size_mm;
  const t = asked.thickness_mm;
  const isBolt = asked.by === 'bolt';
  const washer = isBolt
    ? (sizeCell(asked.washer === 'plain' ? 'washer plain' : 'washer large', `M${d}` as ScrewSize)?.value ?? 2 * d)
    : 0;
  // a fitting, a head and a nut as thick as they mostly are
  const [plate, head] = [0.6 * d, 0.7 * d];
  const below = isBolt ? asked.pad_mm + 0.2 * d + 0.8 * d + 0.4 * d : 0.4 * d;
  const tall = head + plate + t + below;
  const wide = Math.max(4 * d, 1.3 * washer + 2 * asked.pad_mm, tall);
  const scale = (side - 20) / Math.max(wide, tall);
  const x = (mm: number) => side / 2 + mm * scale;
  const y = (mm: number) => 10 + mm * scale;
  const box = (left: number, from: number, width: number, height: number) => ({
    x: x(left),
    y: y(from),
    width: width * scale,
    height: height * scale,
  });
  const lit = placeOf(told.gives);
  const state = told.holds ? 'holds' : 'gives';
  const base = head + plate;
  const end = base + t;
  return (
    <svg
      className="fastened-drawing"
      viewBox={`0 0 ${side} ${tall * scale + 20}`}
      role="img"
      aria-label={`One fastening cut through ${t} mm; first to give: ${told.gives}`}
    >
      <rect {...box(-wide / 2, head, wide, plate)} className="fastened-fitting" />
      <rect
        {...box(-wide / 2, base, wide, t)}
        className="fastened-base"
        data-lit={lit === 'hole' ? state : undefined}
      />
      {isBolt && asked.pad_mm > 0 && (
        <rect
          {...box(-(washer / 2 + asked.pad_mm), end, washer + 2 * asked.pad_mm, asked.pad_mm)}
          className="fastened-base"
        />
      )}
      {isBolt && (
        <rect
          {...box(-washer / 2, end + asked.pad_mm, washer, 0.2 * d)}
          className="fastened-metal"
          data-lit={lit === 'under' ? state : undefined}
        />
      )}
      {isBolt && (
        <rect {...box(-0.85 * d, end + asked.pad_mm + 0.2 * d, 1.7 * d, 0.8 * d)} className="fastened-metal" />
      )}
      <rect {...box(-0.85 * d, 0, 1.7 * d, head)} className="fastened-metal" />
      {isBolt ? (
        <rect
          {...box(-d / 2, head, d, plate + t + below - 0.1 * d)}
          className="fastened-metal"
          data-lit={lit === 'bolt' ? state : undefined}
        />
      ) : (
        <path
          d={`M${x(-d / 2)} ${y(head)}V${y(end - 0.4 * d)}L${x(0)} ${y(end)}L${x(d / 2)} ${y(end - 0.4 * d)}V${y(head)}Z`}
          className="fastened-metal"
          data-lit={lit === 'bolt' ? state : undefined}
        />
      )}
      {lit === 'under' && (
        // the cone that comes out
        <path
          d={`M${x(-washer / 2 - asked.pad_mm)} ${y(end)}V${y(base)}M${x(washer / 2 + asked.pad_mm)} ${y(end)}V${y(base)}`}
          className="fastened-break"
          data-lit={state}
        />
      )}
      <text x={x(-wide / 2) + 6} y={y(base + t / 2) + 5}>
        {t} mm
      </text>
    </svg>
  );
}

/** The two rows from above, the pull to the right; edges as near as they may be. */
function Above({ asked, told }: { readonly asked: FittingAsked; readonly told: Told }) {
  const { rows_mm, size_mm: d, count } = asked;
  const { between_mm, edge_mm } = told;
  const each = count / 2;
  const across = (each - 1) * between_mm;
  const [long, high] = [rows_mm + 2 * edge_mm, across + 2 * edge_mm];
  const scale = (side - 70) / Math.max(long, high);
  const [left, top] = [(side - long * scale) / 2, 10];
  const rows = [0, 1].flatMap((row) => Array.from({ length: each }, (_, n) => ({ row, n })));
  const foot = top + high * scale;
  const dims = foot + 14;
  return (
    <svg
      className="fastened-drawing"
      viewBox={`0 0 ${side} ${dims + 24}`}
      role="img"
      aria-label={`${count} in two rows ${rows_mm} mm apart, at least ${between_mm} mm from each other and ${edge_mm} mm from an edge`}
    >
      <rect x={left} y={top} width={long * scale} height={high * scale} className="fastened-fitting" />
      {rows.map(({ row, n }) => (
        <circle
          key={`${row} ${n}`}
          cx={left + (edge_mm + row * rows_mm) * scale}
          cy={top + (edge_mm + n * between_mm) * scale}
          r={Math.max(2, (d / 2) * scale)}
          className="fastened-metal"
          data-lit={
            row === 0 && asked.height_mm > 0 && asked.angle_deg > 0 ? (told.holds ? 'holds' : 'gives') : undefined
          }
        />
      ))}
      <path d={`M${left + long * scale - 12} ${top + (high * scale) / 2}h36m-9-6l9 6l-9 6`} className="fastened-pull" />
      <path d={`M${left + edge_mm * scale} ${dims - 4}v8m0-4h${rows_mm * scale}m0-4v8`} className="fastened-thin" />
      <text x={left + (edge_mm + rows_mm / 2) * scale} y={dims + 17} textAnchor="middle">
        {rows_mm} mm
      </text>
    </svg>
  );
}
