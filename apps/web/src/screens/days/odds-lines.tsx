/** How likely the plan is to be done in time, in sentences, with the working one tap away. */
import { useState } from 'react';
import { oddsWorking, type PlanOdds } from '#reckoning';
import type { Problem } from '#workplan';
import { Sheet } from '../../parts/sheet.tsx';

export function OddsLines({
  odds,
  problem,
  seed,
}: {
  readonly odds: PlanOdds;
  readonly problem: Problem;
  readonly seed: number;
}) {
  const [opened, setOpened] = useState(false);
  return (
    <section className="days-odds" aria-label="Odds">
      {odds.dates.map(({ words, band }) => (
        <p key={words}>
          {words} <span className="soft">({band})</span>.
        </p>
      ))}
      <p className="small">
        <button type="button" className="words" onClick={() => setOpened(true)}>
          Odds of each day, and how they are worked out
        </button>{' '}
        <span className="soft">odds from {odds.runs} runs</span>
      </p>
      {opened && (
        <Sheet title="The odds of this plan" onClose={() => setOpened(false)}>
          <div className="days-working">
            {[...odds.dates, ...odds.days].map(({ words, band }) => (
              <p key={words}>
                {words} <span className="soft">({band})</span>.
              </p>
            ))}
            {oddsWorking(problem, { runs: odds.runs, seed }).map(({ title, lines }) => (
              <section key={title}>
                <h3>{title}</h3>
                {lines.map((line) => (
                  <p key={line}>{line}</p>
                ))}
              </section>
            ))}
          </div>
        </Sheet>
      )}
    </section>
  );
}
