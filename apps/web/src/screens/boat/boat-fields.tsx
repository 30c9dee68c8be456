/** The fields of a boat's sizes, the few that are enough first, with her picture as it comes of them. */

import { boatDrawing, type KeelKind } from '#picture';
import { sizesOfBoat } from '#reckoning';
import { ChoiceField, PickField, TickField } from '../../parts/choice-fields.tsx';
import { type Faults, formReading } from '../../parts/read-form.ts';
import { NumberField, TextField } from '../../parts/text-fields.tsx';
import {
  type BoatDraft,
  type BoatFault,
  type Choice,
  choices,
  firstSizes,
  guessedInWords,
  keelNames,
  moreSizes,
  readBoat,
} from './boat-draft.ts';
import { DrawnLines } from './picture/drawn-lines.tsx';

type SetField = <Name extends keyof BoatDraft>(name: Name, value: BoatDraft[Name]) => void;

export function BoatFields({
  draft,
  faults,
  set,
}: {
  readonly draft: BoatDraft;
  readonly faults: Faults<BoatFault>;
  readonly set: SetField;
}) {
  const figure = ([name, label]: readonly [keyof BoatDraft & BoatFault, string, ...unknown[]]) => (
    <NumberField
      key={name}
      label={label}
      unit="m"
      value={draft[name] as string}
      onChange={(text) => set(name, text as never)}
      refused={faults[name]}
    />
  );
  const opened = [...moreSizes.map(([name]) => name), 'cabinHeight_m' as const].some(
    (name) => faults[name] !== undefined,
  );
  return (
    <>
      <TextField label="Her name" value={draft.name} onChange={(text) => set('name', text)} refused={faults.name} />
      <div className="field-row">
        {figure(['length_m', 'Length of the hull'])}
        {firstSizes.map(figure)}
      </div>
      <PickField
        label="Under her"
        value={draft.keel}
        onChange={(keel) => set('keel', keel)}
        options={(Object.keys(keelNames) as KeelKind[]).map((value) => ({ value, name: keelNames[value] }))}
        refused={faults.keel}
      />
      <TickField label="She has a cabin" value={draft.cabin} onChange={(on) => set('cabin', on)} />
      <SoDrawn draft={draft} />
      <details className="boat-more" open={opened || undefined}>
        <summary>More of her, where you know it</summary>
        <p className="soft small">What is left empty is guessed from her length, only to draw her by.</p>
        <TextField label="Who keeps her" value={draft.keeper} onChange={(text) => set('keeper', text)} />
        <div className="field-row">
          {moreSizes.map(figure)}
          {draft.cabin && figure(['cabinHeight_m', 'Cabin top over the deck'])}
        </div>
        <div className="field-row">
          {(Object.keys(choices) as Choice[]).map((name) => (
            <ChoiceField
              key={name}
              label={choices[name][0]}
              value={draft[name]}
              onChange={(value) => set(name, value)}
              none="as is usual"
              options={choices[name][1].map((value) => ({ value, name: value }))}
            />
          ))}
        </div>
      </details>
    </>
  );
}

/** Her picture as far as it can be drawn of what is typed; nothing before there is a length. */
function SoDrawn({ draft }: { readonly draft: BoatDraft }) {
  const boat = readBoat({ ...draft, keel: draft.keel || 'pivoting' }, formReading<BoatFault>());
  if (boat === null) return null;
  const { sizes } = sizesOfBoat({ name: draft.name, keeper: '', demo: false, ...boat });
  const { lines, extent } = boatDrawing(sizes, 'profile', { mastUp: true, board: 'down', coverOn: false });
  const width = 320;
  const scale = Math.min((width - 12) / (extent.right - extent.left), 260 / (extent.top - extent.bottom));
  const height = (extent.top - extent.bottom) * scale + 12;
  const right = width / 2 + ((extent.right - extent.left) * scale) / 2;
  return (
    <figure className="boat-so">
      <svg
        viewBox={`0 0 ${width} ${height}`}
        width={width}
        height={height}
        role="img"
        aria-label={`${draft.name || 'Your boat'} as she is drawn so far, ${boat.length_m} m`}
      >
        <DrawnLines
          lines={lines}
          transform={`matrix(${-scale} 0 0 ${-scale} ${right + extent.left * scale} ${extent.top * scale + 6})`}
        />
      </svg>
      <figcaption className="soft small">{guessedInWords(boat)}</figcaption>
    </figure>
  );
}
