/** How one reading of a stay is worked out, and the way to take it out again. */
import { foundInWords, type StayReadingTold, sinceInWords } from '#reckoning';
import { RefusalLine } from '../../../../parts/form.tsx';
import { capital, dayInWords } from '../../../../parts/in-words.ts';
import { Sheet } from '../../../../parts/sheet.tsx';
import { useRun } from '../../../../parts/use-run.ts';
import { WorkingParts } from '../../../../parts/working-parts.tsx';

export default function ReadingToldSheet({
  reading,
  today,
  onClose,
}: {
  readonly reading: StayReadingTold;
  readonly today: string;
  readonly onClose: () => void;
}) {
  const { run, refusal } = useRun();
  const { on, moment, told, turns } = reading.reading;
  const since = sinceInWords(reading);
  return (
    <Sheet title={`${dayInWords(on, today)}, ${moment}`} onClose={onClose}>
      <p>{capital(foundInWords(reading))}</p>
      {since !== null && <p>{since}</p>}
      <p className="soft">
        Read: {readInWords(told)}
        {turns !== 0 && `, after ${Math.abs(turns)} turns ${turns > 0 ? 'tighter' : 'easier'}`}.
      </p>
      <WorkingParts working={reading.working} />
      {reading.cautions.length > 0 && (
        <section className="rig-care">
          <h3>Take care</h3>
          {reading.cautions.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </section>
      )}
      <RefusalLine refusal={refusal} />
      <div className="boat-acts">
        <button
          type="button"
          className="removes"
          onClick={async () => {
            const outcome = await run('removeStayReading', { id: reading.id });
            if (outcome.kind === 'done') onClose();
          }}
        >
          Take the reading out
        </button>
      </div>
    </Sheet>
  );
}

function readInWords(told: StayReadingTold['reading']['told']): string {
  switch (told.kind) {
    case 'stretch':
      return `${told.stretch_mm} mm of stretch on ${told.measured_m} m of wire`;
    case 'pull':
      return `${told.pull_N} N, ${told.pulledAt_m} m from its end, drew it ${told.aside_mm} mm aside`;
    case 'sway':
      return `its middle moves ${told.sway_mm} mm to either side`;
  }
}
