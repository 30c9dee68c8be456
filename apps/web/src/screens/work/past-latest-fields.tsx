/** What happens past the latest time for the next coat, for a step of a job and of a recipe. */
import { PickField } from '../../parts/choice-fields.tsx';
import { NumberField } from '../../parts/text-fields.tsx';

interface PastLatest {
  readonly past: 'forbidden' | 'abrade';
  /** minutes */
  readonly abrade: string;
}

export function PastLatestFields({
  past,
  abrade,
  refused,
  onChange,
}: PastLatest & {
  readonly refused: string | undefined;
  readonly onChange: (part: Partial<PastLatest>) => void;
}) {
  return (
    <>
      <PickField
        label="Past the latest"
        value={past}
        onChange={(next) => onChange({ past: next })}
        options={[
          { value: 'forbidden', name: 'it may not be done' },
          { value: 'abrade', name: 'it must be abraded first' },
        ]}
      />
      {past === 'abrade' && (
        <NumberField
          label="Abrading takes"
          unit="min"
          whole
          value={abrade}
          onChange={(next) => onChange({ abrade: next })}
          refused={refused}
        />
      )}
    </>
  );
}
