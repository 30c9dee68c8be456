/** The gauge card: drawn true to size, printed, and its print checked with two measured lines. */
import './gauge-card.css';
import { useState } from 'react';
import { type CardScale, cardScale, checkLines, gaugeCard } from '#loads';
import { BelowHeading } from '../../../../parts/below-heading.tsx';
import { type Faults, formReading } from '../../../../parts/read-form.ts';
import { NumberField } from '../../../../parts/text-fields.tsx';
import { useDraft } from '../../../../parts/use-draft.ts';
import { useOpenBook } from '../../../../reading/use-open-book.ts';
import { GaugeCardDrawing } from './gauge-card-drawing.tsx';

export default function GaugeCardPage() {
  const { boat } = useOpenBook();
  return (
    <>
      <h1 className="no-print">Gauge card</h1>
      <BelowHeading>
        <GaugeCardBelow boat={boat.name} />
      </BelowHeading>
    </>
  );
}

function GaugeCardBelow({ boat }: { readonly boat: string }) {
  return (
    <>
      <div className="no-print">
        <p>
          One page, A4 or Letter, with everything at its true size: pins, wire, rope, threads, grooves, thimbles, chain.
          Measure at the boat, and the part fits the first time.
        </p>
        <div className="boat-acts">
          <button type="button" className="main" onClick={() => print()}>
            Print the card
          </button>
        </div>
        <p className="gauge-note">
          In the print window choose a size of 100 %, not ‘fit to page’, on thick paper. A phone and a screen do not
          show it at its true size.
        </p>
        <CheckPrint />
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: on a phone it is wider than the screen and is moved by keys too */}
      <section className="gauge-paper" tabIndex={0} aria-label="The card as it is printed">
        <GaugeCardDrawing card={gaugeCard()} boat={boat} />
      </section>
    </>
  );
}

/** What two lines measured on the print say of it. */
function CheckPrint() {
  const { draft, set } = useDraft({ across: '', down: '' });
  const [faults, setFaults] = useState<Faults<'across' | 'down'>>({});
  const [scale, setScale] = useState<CardScale | null>(null);
  const check = () => {
    const form = formReading<'across' | 'down'>();
    const across = form.figure('across', draft.across, { min: 50, max: 450, unit: 'mm' });
    const down = form.figure('down', draft.down, { min: 50, max: 600, unit: 'mm' });
    setFaults(form.faults);
    setScale(form.sound() ? cardScale(across, down) : null);
  };
  return (
    <form
      className="gauge-check"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        check();
      }}
    >
      <h2>Is the print true?</h2>
      <div className="field-grid">
        <NumberField
          label="The check line across measures"
          unit={`mm; ${checkLines.across_mm} when true`}
          value={draft.across}
          onChange={(text) => set('across', text)}
          refused={faults.across}
        />
        <NumberField
          label="The check line down measures"
          unit={`mm; ${checkLines.down_mm} when true`}
          value={draft.down}
          onChange={(text) => set('down', text)}
          refused={faults.down}
        />
      </div>
      <button type="submit">Check the print</button>
      <p role="status" className="gauge-verdict">
        {scale && inWords(scale)}
      </p>
    </form>
  );
}

function inWords(scale: CardScale): string {
  const pct = (share: number) => `${(100 * share).toFixed(1)} %`;
  switch (scale.kind) {
    case 'true':
      return `It is true: ${pct(scale.across)} across, ${pct(scale.down)} down. Measure with it.`;
    case 'scaled':
      return `It came out at ${pct((scale.across + scale.down) / 2)}: what it calls 10 mm is ${(5 * (scale.across + scale.down)).toFixed(2)} mm. Print it again with the size set to ${scale.printAt_pct.toFixed(1)} %.`;
    case 'drawn out':
      return `It came out at ${pct(scale.across)} across and ${pct(scale.down)} down. No setting mends that: print it on another printer.`;
  }
}
