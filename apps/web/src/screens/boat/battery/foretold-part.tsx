/** Nights foretold beside what was read in the morning: one that reads lower and lower tires. */
import { comparedInWords, type NightCompared, trendInWords } from '#reckoning';
import { dateInWords } from '../../../parts/in-words.ts';
import { ToldLines, ToldWords } from './told-words.tsx';

const size = { width: 358, height: 160, left: 42, right: 10, top: 12, bottom: 28 } as const;
/** Mornings drawn, and told in words. */
const drawn = 14;
const told = 4;

export function ForetoldPart({ nights, today }: { readonly nights: readonly NightCompared[]; readonly today: string }) {
  const trend = trendInWords(nights);
  return (
    <section>
      <h2>Nights foretold and read</h2>
      {nights.length === 0 ? (
        <p className="soft">
          None yet. What this page foretells of an evening is kept, and held beside the volts you read before sunrise.
        </p>
      ) : (
        <>
          <ForetoldDrawing nights={nights.slice(-drawn)} today={today} />
          {trend !== null && <ToldWords line={trend} />}
          <ToldLines lines={[...nights.slice(-told)].reverse().map(comparedInWords)} />
        </>
      )}
    </section>
  );
}

function ForetoldDrawing({ nights, today }: { readonly nights: readonly NightCompared[]; readonly today: string }) {
  const all = nights.flatMap(({ foretold_V: { low, high }, read_V }) => [low, high, read_V]);
  const [least, most] = [Math.floor(10 * Math.min(...all)) / 10, Math.ceil(10 * Math.max(...all)) / 10];
  const inner = { left: size.left + 26, right: size.width - size.right - 26 };
  const x = (n: number) =>
    nights.length === 1
      ? (inner.left + inner.right) / 2
      : inner.left + (n / (nights.length - 1)) * (inner.right - inner.left);
  const y = (volts: number) => size.top + ((most - volts) / (most - least)) * (size.height - size.top - size.bottom);
  const step = most - least > 0.6 ? 0.2 : 0.1;
  const ticks = Array.from({ length: Math.floor((most - least) / step + 1e-6) + 1 }, (_, i) => least + i * step);
  const first = nights[0]!;
  const last = nights.at(-1)!;
  return (
    <figure className="battery-nights">
      <svg
        viewBox={`0 0 ${size.width} ${size.height}`}
        role="img"
        aria-label={`Volts foretold and read on ${nights.length} ${nights.length === 1 ? 'morning' : 'mornings'}: the last, ${dateInWords(last.morning, today)}, foretold ${last.foretold_V.likely.toFixed(2)}, read ${last.read_V.toFixed(2)}.`}
      >
        {ticks.map((volts) => (
          <g key={volts}>
            <line className="battery-hair" x1={size.left} x2={size.width - size.right} y1={y(volts)} y2={y(volts)} />
            <text x={size.left - 5} y={y(volts) + 4} textAnchor="end">
              {volts.toFixed(1)}
            </text>
          </g>
        ))}
        {nights.map(({ morning, foretold_V: { low, likely, high }, read_V }, n) => (
          <g key={morning}>
            <path
              className="battery-reach"
              d={`M${x(n)} ${y(low)}V${y(high)}M${x(n) - 5} ${y(low)}h10M${x(n) - 5} ${y(high)}h10`}
            />
            <path className="battery-reach" d={`M${x(n) - 8} ${y(likely)}h16`} />
            <circle className="battery-dot" cx={x(n)} cy={y(read_V)} r="4.5" />
          </g>
        ))}
        <text x={x(0)} y={size.height - 8} textAnchor="middle">
          {dateInWords(first.morning, today)}
        </text>
        {nights.length > 1 && x(nights.length - 1) - x(0) > 100 && (
          <text x={size.width - 2} y={size.height - 8} textAnchor="end">
            {dateInWords(last.morning, today)}
          </text>
        )}
      </svg>
      <figcaption className="soft small">Volts before sunrise. Bar: foretold, 9 in 10; dot: read.</figcaption>
    </figure>
  );
}
