/** What she cost, a bar a year. */
import type { CurrencyCosts } from '#log';

const size = { width: 358, height: 180, left: 10, right: 10, top: 24, bottom: 26 } as const;

export function CostsDrawing({ costs: { currency, years, total } }: { readonly costs: CurrencyCosts }) {
  const most = Math.max(...years.map(({ amount }) => amount), 1);
  const each = (size.width - size.left - size.right) / years.length;
  const wide = Math.min(56, each * 0.7);
  const y = (amount: number) => size.height - size.bottom - (amount / most) * (size.height - size.top - size.bottom);
  // names that would stand in each other are left out, from the last year back
  const every = Math.ceil(44 / each);
  const shown = (i: number) => (years.length - 1 - i) % every === 0;
  return (
    <figure className="log-bars">
      <svg
        viewBox={`0 0 ${size.width} ${size.height}`}
        role="img"
        aria-label={`Costs by year, ${total.toFixed(2)} ${currency} together: ${years.map(({ year, amount }) => `${year} ${amount.toFixed(2)}`).join(', ')}.`}
      >
        <line className="log-hair" x1={0} x2={size.width} y1={y(0)} y2={y(0)} />
        {years.map(({ year, amount }, i) => {
          const middle = size.left + each * (i + 0.5);
          return (
            <g key={year}>
              {amount > 0 && (
                <rect x={middle - wide / 2} y={y(amount)} width={wide} height={size.height - size.bottom - y(amount)} />
              )}
              {shown(i) && (
                <>
                  {amount > 0 && (
                    <text x={middle} y={y(amount) - 6} textAnchor="middle">
                      {Math.round(amount)}
                    </text>
                  )}
                  <text x={middle} y={size.height - 8} textAnchor="middle">
                    {year}
                  </text>
                </>
              )}
            </g>
          );
        })}
      </svg>
      <figcaption className="soft small">{currency} by year, from the entries that say a cost.</figcaption>
    </figure>
  );
}
