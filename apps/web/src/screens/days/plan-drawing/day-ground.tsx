/** What lies under the words of a day: hour lines, weather strip, night, rain, set-up lines, hatched waits. */
import { useId } from 'react';
import { type DayColumn, hoursLeft, stripWidth } from './day-column.ts';

export function DayGround({ column }: { readonly column: DayColumn }) {
  const id = useId();
  const { scale, width, lanesLeft, lanesWidth } = column;
  const foot = 14;
  return (
    <svg
      className="days-ground"
      width={width}
      height={scale.height + foot}
      viewBox={`0 0 ${width} ${scale.height + foot}`}
      aria-hidden="true"
    >
      <defs>
        <pattern id={`${id}hatch`} width="8" height="8" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <rect width="8" height="8" className="days-fill-waitpale" />
          <rect width="1.5" height="8" className="days-fill-wait" />
        </pattern>
        <pattern id={`${id}rain`} width="6" height="10" patternUnits="userSpaceOnUse" patternTransform="rotate(18)">
          <rect width="1.6" height="6" className="days-fill-rain" />
        </pattern>
      </defs>
      <rect x="0.5" y="0" width={stripWidth - 1} height={scale.height} className="days-strip" />
      {column.night.map((band) => (
        <g key={band.top}>
          <rect x="0.5" y={band.top} width={stripWidth - 1} height={band.height} className="days-night" />
          <rect x={lanesLeft} y={band.top} width={width - lanesLeft} height={band.height} className="days-night" />
        </g>
      ))}
      {column.hours.map((hour) => (
        <line key={hour.y} x1={hoursLeft + 22} x2={width} y1={hour.y} y2={hour.y} className="days-hour-line" />
      ))}
      {column.rain.map((band) => (
        <g key={band.top} fill={`url(#${id}rain)`}>
          <rect x="1" y={band.top} width={stripWidth - 2} height={band.height} />
          <rect x={lanesLeft} y={band.top} width={lanesWidth} height={band.height} opacity="0.28" />
        </g>
      ))}
      {column.unknown.map((band) => (
        <rect
          key={band.top}
          x="0.5"
          y={band.top}
          width={stripWidth - 1}
          height={band.height}
          className="days-strip-unknown"
        />
      ))}
      {column.lanes.map((lane) =>
        lane.present.map((p) => (
          <line
            key={`${lane.id}-${p.top}`}
            x1={lane.left}
            x2={lane.left}
            y1={p.top}
            y2={p.top + p.height}
            className="days-present"
          />
        )),
      )}
      {column.setUps.map((line) => (
        <g key={`${line.stretch.aspect}-${line.stretch.from}`} className="days-set-up">
          <line x1={line.x} x2={line.x} y1={line.top} y2={line.bottom} />
          {line.dot && <circle cx={line.x} cy={line.top} r="4" className="days-dot" />}
          {line.ring && <circle cx={line.x} cy={line.bottom} r="4" className="days-ring" />}
          {line.arrow && <path d={`M${line.x - 5} ${line.bottom + 1} l5 9 l5 -9 z`} className="days-dot" />}
        </g>
      ))}
      {column.waits.map((bar) => {
        const x = column.waitsLeft + bar.left + 5;
        return (
          <g key={bar.key}>
            <path
              d={
                `M${x} ${bar.top} V${bar.bottom}` +
                (bar.goesOn ? ` M${x + bar.width} ${bar.bottom} V${bar.top}` : ` H${x + bar.width} V${bar.top}`) +
                (bar.comesIn ? '' : ` H${x}`)
              }
              className="days-wait-edge"
            />
            <rect x={x} y={bar.top} width={bar.width} height={bar.bottom - bar.top} fill={`url(#${id}hatch)`} />
            {bar.goesOn && (
              <path
                d={`M${x + 0.5} ${bar.bottom + 2} h${bar.width - 1} l${-(bar.width - 1) / 2} 9 z`}
                className="days-fill-wait"
              />
            )}
          </g>
        );
      })}
      {column.nowAt !== null && (
        <line x1="0" x2={width} y1={column.nowAt} y2={column.nowAt} className="days-now-line" />
      )}
    </svg>
  );
}
