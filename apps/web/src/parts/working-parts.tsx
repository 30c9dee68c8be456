/** How figures came about, under their titles; where they are from last and small. */
import type { WorkingTold } from '#reckoning';
import './working-parts.css';

export function WorkingParts({ working }: { readonly working: readonly WorkingTold[] }) {
  return (
    <div className="working">
      {working.map(({ title, lines }) => (
        <section key={title} className={title === 'From' ? 'working-from' : undefined}>
          <h3>{title}</h3>
          {lines.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </section>
      ))}
    </div>
  );
}
