/**
 * The gauge card, drawn in millimetres: one unit of the drawing is one millimetre of paper. It fits A4 and Letter with 10 mm to the
 * edges. Filled shapes are as wide as they say; outlines are true along the middle of their line.
 */
import type { ReactNode } from 'react';
import { checkLines, type GaugeCard, type GaugeThread } from '#loads';

/** The drawing on the paper. [mm] */
export const card_mm = { width: 180, height: 250 } as const;
/** Left edge of what stands beside the check line down. [mm] */
const left = 16;
/** A bank card, ISO/IEC 7810 size ID-1. [mm] */
const bankCard = { width: 85.6, height: 53.98 } as const;

export function GaugeCardDrawing({ card, boat }: { readonly card: GaugeCard; readonly boat: string }) {
  return (
    <svg
      className="gauge"
      style={{ width: `${card_mm.width}mm`, height: `${card_mm.height}mm` }}
      viewBox={`0 0 ${card_mm.width} ${card_mm.height}`}
      role="img"
      aria-label="Gauge card: check lines, pins, rounds, wedge, threads, tongues for grooves, chain"
    >
      <text x="0" y="4.6" className="gauge-title">
        Gauge card of {boat}
      </text>
      <text x="0" y="10.4">
        Print at 100 %, not fitted to the page. Measure both check lines with a steel rule before you trust it.
      </text>
      <CheckAcross />
      <CheckDown />
      <BankCard />
      <Block x={108} y={28} title="On end: pins, eyes, thimbles">
        <Rounds diameters={card.rounds_mm} />
      </Block>
      <Block
        x={left}
        y={90}
        title="Wedge, cut out: push it into a jaw, eye or thimble until it stops, and read the width"
      >
        <Wedge {...card.wedge} />
      </Block>
      <Block x={left} y={119} title="Lying: the bar that the wire, rope or pin just hides">
        <Bars widths={card.bars_mm} />
      </Block>
      <Block x={left} y={152} title="Threads: the comb that the screw sits in along its whole length">
        <Combs threads={card.threads} />
      </Block>
      <Block x={left} y={185} title="Tongues for grooves, cut out">
        <Tongues tongues={card.tongues} />
      </Block>
      <Block x={100} y={185} title="Chain: lay a link on it">
        <Links links={card.links.slice(0, 2)} />
      </Block>
      <g transform={`translate(${left} 215)`}>
        <Links links={card.links.slice(2)} />
      </g>
      <g transform="translate(150 219)">
        {['A tongue fits if it', 'reaches the bottom', 'and the sides are', 'just free.'].map((line, n) => (
          <text key={line} y={5 * n}>
            {line}
          </text>
        ))}
      </g>
    </svg>
  );
}

function Block({
  x,
  y,
  title,
  children,
}: {
  readonly x: number;
  readonly y: number;
  readonly title: string;
  readonly children: ReactNode;
}) {
  return (
    <g transform={`translate(${x} ${y})`}>
      <text className="gauge-head">{title}</text>
      <g transform="translate(0 3)">{children}</g>
    </g>
  );
}

const tens = (length_mm: number) => Array.from({ length: length_mm / 10 + 1 }, (_, n) => 10 * n);
const eachMillimetre = (length_mm: number) => Array.from({ length: length_mm + 1 }, (_, n) => n);
const tickLength = (at: number) => (at % 10 === 0 ? 4 : at % 5 === 0 ? 3 : 2);

function CheckAcross() {
  const { across_mm } = checkLines;
  return (
    <g transform="translate(20 15)">
      <path
        className="gauge-line"
        d={`M0 0H${across_mm}${eachMillimetre(across_mm)
          .map((x) => `M${x} 0v${tickLength(x)}`)
          .join('')}`}
      />
      {tens(across_mm).map((x) => (
        <text key={x} x={x} y="7.4" textAnchor="middle">
          {x}
        </text>
      ))}
    </g>
  );
}

function CheckDown() {
  const { down_mm } = checkLines;
  return (
    <g transform="translate(11 30)">
      <path
        className="gauge-line"
        d={`M0 0V${down_mm}${eachMillimetre(down_mm)
          .map((y) => `M0 ${y}h-${tickLength(y)}`)
          .join('')}`}
      />
      {tens(down_mm).map((y) => (
        <text key={y} x="-4.6" y={y + 1.2} textAnchor="end">
          {y}
        </text>
      ))}
    </g>
  );
}

function BankCard() {
  const { width, height } = bankCard;
  return (
    <g transform={`translate(${left} 27)`}>
      <rect className="gauge-line" width={width} height={height} rx="3.18" />
      {[
        'A bank card laid here hides the outline:',
        `the quick check (${width.toFixed(2)} by ${height} mm).`,
        'The lines across and down must measure',
        `${checkLines.across_mm} and ${checkLines.down_mm} mm. If not, the page this came`,
        'from says what to set the printer to.',
        '',
        'An eye or thimble takes the biggest pin',
        'whose circle shows whole in it.',
        '',
        'Paper finds the part. What carries a load',
        'is measured with a calliper.',
      ].map((line, n) => (
        <text key={line || n} x="4" y={6.2 + 4.5 * n}>
          {line}
        </text>
      ))}
    </g>
  );
}

/** Circles four to a row; the figure inside where there is room. */
function Rounds({ diameters }: { readonly diameters: readonly number[] }) {
  return diameters.map((across, n) => {
    const [x, y] = [9 + 18 * (n % 4), 8 + 17.6 * Math.floor(n / 4)];
    const inside = across >= 8;
    return (
      <g key={across}>
        <circle className="gauge-line" cx={x} cy={y} r={across / 2} />
        <text x={inside ? x : x + across / 2 + 1} y={y + 1.2} textAnchor={inside ? 'middle' : 'start'}>
          {across}
        </text>
      </g>
    );
  });
}

/** A right triangle with a line for each half millimetre of its width. Its edges are lines for the scissors. */
function Wedge({ from_mm, to_mm, length_mm }: GaugeCard['wedge']) {
  const at = (width: number) => ((width - from_mm) / (to_mm - from_mm)) * length_mm;
  const halves = Array.from({ length: 2 * (to_mm - 1) }, (_, n) => 1 + n / 2);
  return (
    <>
      <path className="gauge-line" d={`M0 0H${length_mm}V${to_mm}Z`} />
      <path
        className="gauge-hair"
        d={halves.map((width) => `M${at(width)} 0v${Number.isInteger(width) ? width : Math.min(width, 1.6)}`).join('')}
      />
      {halves
        .filter((width) => Number.isInteger(width) && width >= 6)
        .map((width) => (
          <text key={width} x={at(width) - 0.7} y={Math.min(width - 0.4, 5.4)} textAnchor="end">
            {width}
          </text>
        ))}
    </>
  );
}

function Bars({ widths }: { readonly widths: readonly number[] }) {
  const gap = (card_mm.width - left - widths.reduce((sum, width) => sum + width, 0)) / (widths.length - 1);
  return widths.map((width, n) => {
    const x = widths.slice(0, n).reduce((sum, before) => sum + before + gap, 0);
    return (
      <g key={width}>
        <rect className="gauge-bar" x={x} width={width} height="18" />
        <text x={x + width / 2} y="22.4" textAnchor="middle">
          {width}
        </text>
      </g>
    );
  });
}

/** Combs four to a row, each twenty millimetres of the thread's outline. */
function Combs({ threads }: { readonly threads: readonly GaugeThread[] }) {
  return threads.map(({ name, pitch_mm }, n) => {
    const teeth = Math.floor(20 / pitch_mm);
    // the depth of a 60° thread
    const depth = 0.6134 * pitch_mm;
    return (
      <g key={name} transform={`translate(${41 * (n % 4)} ${9 * Math.floor(n / 4)})`}>
        <text y="4.6">{name}</text>
        <path
          className="gauge-bar"
          d={`M17 6V${4 - depth}${`l${pitch_mm / 2} ${depth}l${pitch_mm / 2} ${-depth}`.repeat(teeth)}V6Z`}
        />
      </g>
    );
  });
}

function Tongues({ tongues }: { readonly tongues: GaugeCard['tongues'] }) {
  const gap = 4;
  return tongues.map(({ rope_mm, width_mm }, n) => {
    const x = tongues.slice(0, n).reduce((sum, before) => sum + before.width_mm + gap, 0);
    const r = width_mm / 2;
    return (
      <g key={rope_mm} transform={`translate(${x} 0)`}>
        <path className="gauge-line" d={`M0 0V${17 - r}A${r} ${r} 0 0 0 ${width_mm} ${17 - r}V0Z`} />
        <text x={r} y="21.4" textAnchor="middle">
          {rope_mm}
        </text>
      </g>
    );
  });
}

/** Links lying along the page: the wire between the two outlines is as thick as the chain is called. */
function Links({ links }: { readonly links: GaugeCard['links'] | readonly GaugeCard['links'][number][] }) {
  return links.map(({ wire_mm, insideLength_mm, insideWidth_mm }, n) => {
    const x = links.slice(0, n).reduce((sum, before) => sum + before.insideLength_mm + 2 * before.wire_mm + 4, 0);
    const [length, width] = [insideLength_mm + 2 * wire_mm, insideWidth_mm + 2 * wire_mm];
    return (
      <g key={wire_mm} transform={`translate(${x} 0)`}>
        <rect className="gauge-line" width={length} height={width} rx={width / 2} />
        <rect
          className="gauge-line"
          x={wire_mm}
          y={wire_mm}
          width={insideLength_mm}
          height={insideWidth_mm}
          rx={insideWidth_mm / 2}
        />
        <text x={length / 2} y={width / 2 + 1.2} textAnchor="middle">
          {wire_mm}
        </text>
      </g>
    );
  });
}
