/**
 * The circuits of a battery as a line drawing: the battery, its two leads running down, and each circuit as a pair of wires there and
 * back, through its fuse, to what hangs on it. Lengths are to scale with each other, heavier for thicker wire.
 */
import type { BatteryRecord } from '#boat-book';
import type { CircuitTold } from '#reckoning';
import { Mark } from '../../../parts/mark.tsx';

export function CircuitsDrawing({
  record,
  label,
  circuits,
  onOpen,
}: {
  readonly record: BatteryRecord;
  readonly label: string;
  readonly circuits: readonly CircuitTold[];
  readonly onOpen: (circuit: CircuitTold) => void;
}) {
  const longest_m = Math.max(...circuits.map(({ drawn }) => drawn.lengthThereAndBack_m ?? 0), 0);
  return (
    <figure className="circuits-drawing" aria-label={`The circuits of ${record.name}, drawn`}>
      <div className="circuits-battery">
        <BatteryHead record={record} />
        <div>
          <b>{record.name}</b>
          <span className="soft"> {label}</span>
          <span className="circuits-battery-words soft">
            {record.isolator === true
              ? 'isolator'
              : record.isolator === false
                ? 'no isolator'
                : 'isolator: not entered'}
          </span>
        </div>
      </div>
      <ol>
        {circuits.map((circuit) => (
          <li key={`${circuit.place.kind} ${circuit.place.id}`} className="circuits-row">
            <button type="button" className="prints" onClick={() => onOpen(circuit)}>
              <CircuitLine circuit={circuit} longest_m={longest_m} />
            </button>
          </li>
        ))}
      </ol>
      <figcaption className="soft small">
        Each pair of lines is the wire out and home again, long as it is long beside the others, heavy as it is thick;
        dotted where it is not entered. Tap one for its figures and how they are worked out.
      </figcaption>
    </figure>
  );
}

/** Where the leads run down: minus and plus, from the left. [px] */
const minus_x = 8.5;
const plus_x = 22.5;
/** Where the wires of a row run: out on plus, home on minus. [px] */
const out_y = 14;
const home_y = 30;
const rowHeight = 44;
const endWidth = 38;

/** The battery with its posts and, on the plus lead, the isolator. */
function BatteryHead({ record }: { readonly record: BatteryRecord }) {
  return (
    <svg className="circuits-head" width="86" height="76" viewBox="0 0 86 76" aria-hidden="true">
      <rect x="1" y="9" width="72" height="32" className="circuits-body" />
      <path d={`M${minus_x - 4} 9v-5h8v5M${plus_x - 4} 9v-5h8v5`} className="circuits-outline" />
      <path d={`M${minus_x - 4} 20h8M${plus_x - 4} 20h8M${plus_x} 16v8`} className="circuits-outline" />
      <path d={`M${minus_x} 41V76`} className="circuits-lead" />
      {record.isolator === true ? (
        <>
          <path d={`M${plus_x} 41V50M${plus_x} 66V76M${plus_x} 66L${plus_x + 11} 53`} className="circuits-lead" />
          <circle cx={plus_x} cy="66" r="2.6" className="circuits-dot" />
          <circle cx={plus_x} cy="50" r="2.6" className="circuits-dot" />
        </>
      ) : (
        <path d={`M${plus_x} 41V76`} className="circuits-lead" />
      )}
    </svg>
  );
}

function CircuitLine({ circuit, longest_m }: { readonly circuit: CircuitTold; readonly longest_m: number }) {
  const { name, words, drawn, findings } = circuit;
  const faults = findings.filter(({ gravity }) => gravity !== 'unknown');
  return (
    <>
      <span className="circuits-name">
        <b>{name}</b> <span className="soft">{words.arrives ? `${words.draws}; ${words.arrives}` : words.draws}</span>
      </span>
      <span className="circuits-line" aria-hidden="true">
        <Fuse drawn={drawn} />
        <span className="circuits-run">
          <Run drawn={drawn} longest_m={longest_m} />
          <End drawn={drawn} />
        </span>
      </span>
      <span className="circuits-words">
        <span className="unseen">: </span>
        <span>{words.wire}</span>
        <span className="unseen">, </span>
        <span>{words.fuse}</span>
        {words.drop && <span className="unseen">, </span>}
        {words.drop && <span>{words.drop}</span>}
      </span>
      {faults.map(({ gravity, wrong, right }) => (
        <span key={wrong} className="circuits-wrong" data-gravity={gravity}>
          <Mark of={gravity === 'danger' ? 'danger' : 'worsens'} said={gravity === 'danger' ? 'can burn:' : 'fault:'} />
          <span>
            {wrong} <span className="circuits-on-paper">{right}</span>
          </span>
        </span>
      ))}
      {findings.length > faults.length && (
        <span className="circuits-wrong soft">
          <span aria-hidden="true">?</span>
          <span>
            {findings
              .filter(({ gravity }) => gravity === 'unknown')
              .map(({ wrong }) => wrong)
              .join(' ')}
          </span>
        </span>
      )}
    </>
  );
}

type Drawn = CircuitTold['drawn'];

/** From the leads through the fuse. One that stands too far is drawn farther along, with what lies bare before it. */
function Fuse({ drawn }: { readonly drawn: Drawn }) {
  const far = drawn.marks.includes('fuse too far');
  const wrong = drawn.marks.includes('fuse') || drawn.marks.includes('no fuse');
  const weight = weightOf(drawn);
  const left = far ? 66 : 38;
  const width = 48;
  const end = 122;
  const said = drawn.fuse_A === 'not said' ? '?' : drawn.fuse_A === null ? 'none' : `${drawn.fuse_A} A`;
  return (
    <svg
      aria-hidden="true"
      className="circuits-fuse"
      width={end}
      height={rowHeight}
      viewBox={`0 0 ${end} ${rowHeight}`}
    >
      <path
        d={`M${minus_x} ${home_y}H${plus_x - 6}a6 6 0 0 1 12 0H${end}`}
        className="circuits-wire"
        strokeWidth={weight}
      />
      <path
        d={`M${plus_x} ${out_y}H${left}`}
        className={far || wrong ? 'circuits-bare' : 'circuits-wire'}
        strokeWidth={far || wrong ? 4 : weight}
      />
      <path d={`M${left + width} ${out_y}H${end}`} className="circuits-wire" strokeWidth={weight} />
      <circle cx={minus_x} cy={home_y} r="3" className="circuits-dot" />
      <circle cx={plus_x} cy={out_y} r="3" className="circuits-dot" />
      <rect
        x={left}
        y={out_y - 11}
        width={width}
        height="22"
        className="circuits-fuse-body"
        data-wrong={wrong || far || undefined}
        data-none={typeof drawn.fuse_A !== 'number' || undefined}
      />
      <text x={left + width / 2} y={out_y + 5} textAnchor="middle">
        {said}
      </text>
    </svg>
  );
}

/** The wire itself: as long as its share of the longest, as heavy as its copper. */
function Run({ drawn, longest_m }: { readonly drawn: Drawn; readonly longest_m: number }) {
  const { lengthThereAndBack_m } = drawn;
  const known = lengthThereAndBack_m !== null && longest_m > 0;
  const share = known ? Math.max(0.04, lengthThereAndBack_m / longest_m) : 0.3;
  return (
    <svg
      aria-hidden="true"
      className="circuits-pair"
      height={rowHeight}
      style={{ flexBasis: `calc((100% - ${endWidth}px) * ${share.toFixed(3)})` }}
    >
      {[out_y, home_y].map((y) => (
        <line
          key={y}
          x1="-1"
          x2="100%"
          y1={y}
          y2={y}
          className="circuits-wire"
          strokeWidth={weightOf(drawn)}
          data-unknown={drawn.area_mm2 === null || !known || undefined}
          data-wrong={drawn.marks.includes('wire') || undefined}
        />
      ))}
    </svg>
  );
}

/** Width a wire is drawn with: by its diameter, so that 0.75 and 16 mm² still go on one sheet. [px] */
const weightOf = ({ area_mm2 }: Drawn) => (area_mm2 === null ? 2 : Math.min(6, 0.6 + 1.3 * Math.sqrt(area_mm2)));

/** What hangs on it: a lamp for any load, a panel, a charger. */
function End({ drawn }: { readonly drawn: Drawn }) {
  const { end } = drawn;
  const weight = weightOf(drawn);
  return (
    <svg
      aria-hidden="true"
      className="circuits-end"
      width={endWidth}
      height={rowHeight}
      viewBox={`0 0 ${endWidth} ${rowHeight}`}
    >
      {end === 'load' && (
        <>
          <path d={`M-1.5 ${out_y}H10M-1.5 ${home_y}H10`} className="circuits-wire" strokeWidth={weight} />
          <circle cx="18" cy="22" r="11.3" className="circuits-body" />
          <path d="M10 14l16 16M26 14l-16 16" className="circuits-outline" />
        </>
      )}
      {end === 'panel' && (
        <>
          <path d={`M-1.5 ${out_y}H6M-1.5 ${home_y}H6`} className="circuits-wire" strokeWidth={weight} />
          <rect x="6" y="6" width="30" height="32" className="circuits-body" />
          <path d="M16 6v32M26 6v32M6 16.7h30M6 27.3h30" className="circuits-outline" />
        </>
      )}
      {end === 'charger' && (
        <>
          <path d={`M-1.5 ${out_y}H6M-1.5 ${home_y}H6`} className="circuits-wire" strokeWidth={weight} />
          <rect x="6" y="6" width="30" height="32" className="circuits-body" />
          <path d="M11 22c3-7 7-7 10 0s7 7 10 0" className="circuits-outline" />
        </>
      )}
    </svg>
  );
}
