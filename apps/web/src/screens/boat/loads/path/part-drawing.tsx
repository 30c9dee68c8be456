/**
 * One part of a load path as a line drawing, to the scale of its own sizes where they are known: the load comes in at the
 * top and leaves at the foot. What is not measured is drawn in its usual proportion, what has no size as a sign for it.
 */
import type { ReactNode } from 'react';
import type { PartOfPath } from '#loads';

/** of the drawing: thickness of an 8 mm shackle 14 px */
const px_per_mm = 1.75;
export const drawingWidth = 96;
const mid = drawingWidth / 2;

interface Drawn {
  readonly height: number;
  readonly shape: ReactNode;
}

/** Size in the drawing, never so small that it is not seen nor so large that it leaves its column. [px] */
const drawn = (size_mm: number, least = 3, most = 44) => Math.min(most, Math.max(least, size_mm * px_per_mm));

/** A bar of round stock bent along a path: its outline, with paper between. */
const Bar = ({ d, thick }: { readonly d: string; readonly thick: number }) => (
  <>
    <path d={d} className="path-bar" strokeWidth={thick} />
    <path d={d} className="path-bar-inside" strokeWidth={Math.max(0.5, thick - 3)} />
  </>
);

export function partDrawn(part: PartOfPath): Drawn {
  switch (part.kind) {
    case 'rope':
    case 'wire':
      return laidLine(drawn(part.size_mm, 3, 30), part.kind === 'rope' ? 9 : 5);
    case 'lashing':
      return lashing(drawn(part.size_mm, 2, 8), part.passes);
    case 'chain':
      return chain(drawn(part.size_mm, 4, 12));
    case 'shackle': {
      const body = drawn(part.size_mm, 4, 18);
      return shackle(body, drawn(part.pin_mm ?? part.size_mm, 4, 18), drawn(part.jaw_mm ?? part.size_mm * 2, 8, 40));
    }
    case 'thimble':
      return thimble(drawn(part.size_mm, 4, 16));
    case 'ending':
      return ending(part.ending);
    case 'block':
      return block(drawn(part.sheave_mm ?? 25, 14, 60) / 2);
    case 'fitting':
      return fitting(part.what);
    case 'pin':
      return pin(drawn(part.size_mm, 4, 22));
    case 'rigging screw':
      return riggingScrew(drawn(part.thread_mm, 4, 16));
    case 'fastenings':
      return fastenings(part.count, drawn(part.size_mm, 3, 10));
    case 'winch':
      return winch;
    case 'hand':
      return hand;
  }
}

function laidLine(thick: number, lay: number): Drawn {
  const height = 66;
  const left = mid - thick / 2;
  const right = mid + thick / 2;
  const strands: string[] = [];
  for (let y = lay; y < height + thick; y += lay) strands.push(`M${left} ${y}L${right} ${y - thick * 0.9}`);
  return {
    height,
    shape: (
      <>
        <path d={`M${mid} 0V${height}`} className="path-bar" strokeWidth={thick} />
        <path d={`M${mid} 0V${height}`} className="path-bar-inside" strokeWidth={Math.max(0.5, thick - 3)} />
        <path d={strands.join('')} className="path-thin" />
      </>
    ),
  };
}

function lashing(thick: number, passes: number): Drawn {
  const height = 60;
  const legs = Math.min(6, Math.max(2, 2 * passes));
  const lines = Array.from({ length: legs }, (_, i) => {
    const out = (i - (legs - 1) / 2) * (thick + 4);
    return `M${mid + out * 0.3} 0C${mid + out} 14 ${mid + out} ${height - 14} ${mid + out * 0.3} ${height}`;
  });
  return {
    height,
    shape: (
      <>
        {lines.map((d) => (
          <Bar key={d} d={d} thick={thick} />
        ))}
        <path
          d={`M${mid - 18} ${height / 2 - 3}H${mid + 18}M${mid - 18} ${height / 2 + 3}H${mid + 18}`}
          className="path-line"
        />
      </>
    ),
  };
}

/** Three links, seen in turn from the face and from the edge: inside, 1.5 times the wire wide and 3 long. */
function chain(thick: number): Drawn {
  const pitch = thick * 3;
  const half = thick * 1.2;
  const face = (y: number) =>
    `M${mid - half} ${y + half}a${half} ${half} 0 0 1 ${2 * half} 0v${pitch - 2 * half + thick}a${half} ${half} 0 0 1 ${-2 * half} 0Z`;
  const height = pitch * 3 + thick;
  return {
    height,
    shape: (
      <>
        <Bar d={face(thick / 2)} thick={thick} />
        <Bar d={face(thick / 2 + 2 * pitch - thick)} thick={thick} />
        <Bar d={`M${mid} ${pitch - thick * 0.4}V${pitch * 2 + thick * 1.1}`} thick={thick} />
      </>
    ),
  };
}

function shackle(body: number, pinThick: number, jaw: number): Drawn {
  const half = (jaw + body) / 2;
  const top = body / 2 + 1;
  const pinY = top + half + Math.max(jaw, body) + pinThick / 2;
  const height = pinY + pinThick / 2 + 5;
  return {
    height,
    shape: (
      <>
        <Bar d={`M${mid - half} ${pinY}V${top + half}a${half} ${half} 0 0 1 ${2 * half} 0V${pinY}`} thick={body} />
        <Bar d={`M${mid - half - body * 0.7} ${pinY}H${mid + half + body * 0.7}`} thick={pinThick} />
        <path d={`M${mid + half + body * 0.7} ${pinY - pinThick * 0.75}v${pinThick * 1.5}`} className="path-line" />
      </>
    ),
  };
}

/** A groove for the rope round a drop. */
function thimble(thick: number): Drawn {
  const half = 10 + thick * 0.4;
  const height = 2 * half + 24;
  const round = (out: number) =>
    `M${mid} ${4 - out}C${mid - half - out} ${half} ${mid - half - out} ${height - 4 + out} ${mid} ${height - 4 + out}S${mid + half + out} ${half} ${mid} ${4 - out}Z`;
  return {
    height,
    shape: (
      <>
        <path d={round(0)} className="path-line" />
        <path d={round(-Math.min(6, thick * 0.6))} className="path-line" />
      </>
    ),
  };
}

const onWire: ReadonlySet<string> = new Set(['ferrule', 'swage', 'cone', 'clips', 'socket', 'wedge']);

/** Metal on wire is drawn as a sleeve, what is knotted or spliced as turns round the line. */
function ending(which: Extract<PartOfPath, { kind: 'ending' }>['ending']): Drawn {
  const height = 44;
  if (onWire.has(which))
    return {
      height,
      shape: (
        <>
          <path d={`M${mid} 0V${height}`} className="path-line" />
          <path d={`M${mid - 7} 6h14l-2 32h-10Z`} className="path-body" />
        </>
      ),
    };
  const splice = which.endsWith('splice');
  return {
    height,
    shape: (
      <>
        <path d={`M${mid} 0V${height}`} className="path-bar" strokeWidth="12" />
        <path d={`M${mid} 0V${height}`} className="path-bar-inside" strokeWidth="9" />
        {[10, 18, 26, 34].map((y) => (
          <path
            key={y}
            d={splice ? `M${mid - 9} ${y}l18 -8M${mid - 9} ${y - 8}l18 8` : `M${mid - 11} ${y - 2}c7 6 15 6 22 0`}
            className="path-line"
          />
        ))}
      </>
    ),
  };
}

function block(radius: number): Drawn {
  const height = radius * 2 + 20;
  const y = height / 2;
  return {
    height,
    shape: (
      <>
        <path d={`M${mid} 0V${y - radius - 2}M${mid} ${y + radius + 2}V${height}`} className="path-line" />
        <rect
          x={mid - radius * 0.62}
          y={3}
          width={radius * 1.24}
          height={height - 6}
          rx={radius * 0.6}
          className="path-body"
        />
        <circle cx={mid} cy={y} r={radius} className="path-line" />
        <circle cx={mid} cy={y} r="3" className="path-dot" />
      </>
    ),
  };
}

/** The signs of what is fixed: none of them is drawn from its sizes. */
const fittings: Readonly<Record<Extract<PartOfPath, { kind: 'fitting' }>['what'], Drawn>> = {
  anchor: {
    height: 74,
    shape: (
      <>
        <circle cx={mid} cy="8" r="6" className="path-line" />
        <path
          d={`M${mid} 14V62M${mid - 26} 44c4 18 18 24 26 26c8 -2 22 -8 26 -26M${mid - 14} 22h28`}
          className="path-heavy"
        />
        <path d={`M${mid - 31} 50l5 -8l7 6M${mid + 31} 50l-5 -8l-7 6`} className="path-line" />
      </>
    ),
  },
  cleat: {
    height: 50,
    shape: (
      <>
        <path d={`M${mid} 0V22`} className="path-line" />
        <path
          d={`M${mid - 32} 20c14 4 18 4 24 4h16c6 0 10 0 24 -4M${mid - 12} 24v16M${mid + 12} 24v16`}
          className="path-heavy"
        />
        <path d={`M${mid - 22} 42h44`} className="path-heavy" />
      </>
    ),
  },
  post: {
    height: 50,
    shape: (
      <>
        <path d={`M${mid - 9} 46V12a9 9 0 0 1 18 0V46`} className="path-body" />
        <path d={`M${mid - 24} 46h48M${mid - 18} 22h36`} className="path-heavy" />
      </>
    ),
  },
  'pad eye': {
    height: 46,
    shape: (
      <>
        <path d={`M${mid - 12} 36V20a12 12 0 0 1 24 0V36`} className="path-heavy" />
        <path d={`M${mid - 26} 38h52`} className="path-heavy" />
      </>
    ),
  },
  'chain plate': {
    height: 60,
    shape: (
      <>
        <path d={`M${mid - 9} 56V12a9 9 0 0 1 18 0V56Z`} className="path-body" />
        <circle cx={mid} cy="13" r="4" className="path-line" />
        <circle cx={mid} cy="32" r="2.5" className="path-dot" />
        <circle cx={mid} cy="46" r="2.5" className="path-dot" />
      </>
    ),
  },
  ring: { height: 52, shape: <circle cx={mid} cy="26" r="20" className="path-heavy" /> },
  hook: {
    height: 62,
    shape: (
      <>
        <circle cx={mid} cy="9" r="6" className="path-line" />
        <path d={`M${mid} 15v16c16 2 14 24 -2 24c-10 0 -15 -8 -13 -16`} className="path-heavy" />
      </>
    ),
  },
  other: {
    height: 46,
    shape: (
      <>
        <rect x={mid - 18} y="6" width="36" height="34" rx="4" className="path-body" />
        <circle cx={mid} cy="16" r="5" className="path-line" />
      </>
    ),
  },
};
const fitting = (what: keyof typeof fittings): Drawn => fittings[what];

function pin(thick: number): Drawn {
  const height = thick + 24;
  return {
    height,
    shape: (
      <>
        <path d={`M${mid - 24} 2v${height - 4}M${mid + 24} 2v${height - 4}`} className="path-thin" />
        <Bar d={`M${mid - 32} ${height / 2}h64`} thick={thick} />
        <circle cx={mid + 37} cy={height / 2 + 4} r="4" className="path-line" />
      </>
    ),
  };
}

function riggingScrew(thread: number): Drawn {
  const wide = thread + 10;
  return {
    height: 84,
    shape: (
      <>
        <Bar d={`M${mid} 2V26M${mid} 58V82`} thick={thread} />
        <path d={`M${mid - wide / 2} 20h${wide}v44h${-wide}Z`} className="path-body" />
        <path d={`M${mid - wide / 2 + 4} 28v28M${mid + wide / 2 - 4} 28v28`} className="path-thin" />
      </>
    ),
  };
}

function fastenings(count: number, thick: number): Drawn {
  const shown = Math.min(4, count);
  const across = Array.from({ length: shown }, (_, i) => mid + (i - (shown - 1) / 2) * (thick + 12));
  return {
    height: 54,
    shape: (
      <>
        <path d={`M${mid - 40} 12h80M${mid - 40} 44h80`} className="path-line" />
        {across.map((x) => (
          <g key={x}>
            <Bar d={`M${x} 8V50`} thick={thick} />
            <path d={`M${x - thick} 7h${2 * thick}`} className="path-heavy" />
          </g>
        ))}
      </>
    ),
  };
}

const winch: Drawn = {
  height: 62,
  shape: (
    <>
      <path d={`M${mid - 20} 8h40l-6 12v20l6 12h-40l6 -12v-20Z`} className="path-body" />
      <path d={`M${mid - 14} 24h28M${mid - 14} 31h28M${mid - 14} 38h28`} className="path-thin" />
    </>
  ),
};

const hand: Drawn = {
  height: 54,
  shape: (
    <>
      <path d={`M${mid} 0V54`} className="path-line" />
      {[14, 22, 30, 38].map((y) => (
        <rect key={y} x={mid - 14} y={y - 4} width="28" height="8" rx="4" className="path-body" />
      ))}
    </>
  ),
};
