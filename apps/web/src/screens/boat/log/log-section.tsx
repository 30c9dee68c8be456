/** The log and the papers, on the Boat place. */
import { MarkedLine } from '../../../parts/marked-line.tsx';
import { address } from '../../../shell/route.ts';

export function LogSection() {
  return (
    <section className="no-print" aria-labelledby="boat-log">
      <h2 id="boat-log">Log and papers</h2>
      <ul>
        <MarkedLine
          href={address('boat', 'log')}
          title="Log"
          note="what was done and measured, found again by words, fitting or date"
        />
        <MarkedLine href={address('boat', 'log', 'costs')} title="Costs" note="what she has cost, by year and zone" />
        <MarkedLine
          href={address('boat', 'papers')}
          title="Papers"
          note="registration, insurance, manuals, and when they run out"
        />
      </ul>
    </section>
  );
}
