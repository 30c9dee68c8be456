/** The tackles of a hoist, each by its sheaves and where its rope is made fast, with the parts that makes. */
import { rove } from '#loads';
import { PickField } from '../../../../parts/choice-fields.tsx';
import { Refused } from '../../../../parts/field.tsx';
import { NumberField } from '../../../../parts/text-fields.tsx';
import { bearingOptions, newTackle, type TackleDraft } from './hoist-draft.ts';

export function TackleFields({
  tackles,
  onChange,
  faults,
}: {
  readonly tackles: readonly TackleDraft[];
  readonly onChange: (tackles: readonly TackleDraft[]) => void;
  readonly faults: readonly (string | undefined)[];
}) {
  const set = (i: number, tackle: TackleDraft) => onChange(tackles.map((each, n) => (n === i ? tackle : each)));
  return (
    <>
      {tackles.map((tackle, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a tackle is what it is by its place on the line
        <fieldset key={i} className="boat-change">
          <legend>{i === 0 ? 'Tackle on the wire' : `Tackle ${i + 1}, on the fall of the one before`}</legend>
          <div className="field-row">
            <NumberField
              label="Sheaves that move"
              unit="with the load"
              whole
              value={tackle.moving}
              onChange={(moving) => set(i, { ...tackle, moving })}
            />
            <NumberField
              label="Sheaves that stand"
              unit="turning blocks apart"
              whole
              value={tackle.fixed}
              onChange={(fixed) => set(i, { ...tackle, fixed })}
            />
          </div>
          <PickField
            label="The rope’s end is made fast"
            value={tackle.endAt}
            onChange={(endAt) => set(i, { ...tackle, endAt })}
            options={[
              { value: 'fixed', name: 'at the standing block' },
              { value: 'moving', name: 'at the moving block' },
            ]}
          />
          <PickField
            label="Its sheaves run"
            value={tackle.bearing}
            onChange={(bearing) => set(i, { ...tackle, bearing })}
            options={bearingOptions}
          />
          <p className="field-note">{partsSaid(tackle)}</p>
          <Refused text={faults[i]} />
          <button
            type="button"
            className="words removes"
            aria-label={`Take out tackle ${i + 1}`}
            onClick={() => onChange(tackles.filter((_, n) => n !== i))}
          >
            Take this tackle out
          </button>
        </fieldset>
      ))}
      {tackles.length < 3 && (
        <p>
          <button type="button" className="words" onClick={() => onChange([...tackles, newTackle])}>
            {tackles.length === 0 ? 'Add a tackle' : 'Add a tackle on its fall'}
          </button>
        </p>
      )}
    </>
  );
}

function partsSaid({ moving, fixed, endAt }: TackleDraft): string {
  const [movingSheaves, fixedSheaves] = [Number(moving), Number(fixed)];
  if (!Number.isInteger(movingSheaves) || !Number.isInteger(fixedSheaves)) return '';
  const way = rove({ movingSheaves, fixedSheaves, endAt });
  if (way.kind !== 'rove') return '';
  return `${way.parts === 1 ? '1 part' : `${way.parts} parts`} at the moving block; the fall comes off the one that ${way.pulledFrom === 'moving' ? 'moves' : 'stands'}.`;
}
