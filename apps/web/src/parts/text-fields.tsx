/** Fields that are typed into. Each holds what was typed; reading it is the form's, when it is kept. */
import { type Ref, useId } from 'react';
import { Field, type FieldProps } from './field.tsx';

interface Typed extends FieldProps {
  readonly value: string;
  readonly onChange: (text: string) => void;
}

const ofSpeech = {
  lang: 'en',
  autoCapitalize: 'sentences',
  autoComplete: 'off',
  autoCorrect: 'off',
  spellCheck: true,
} as const;

export function TextField({
  value,
  onChange,
  rows,
  suggest,
  take,
  spoken = false,
  ...field
}: Typed & {
  /** more than one line */
  readonly rows?: number;
  /** words to choose from; others may be typed */
  readonly suggest?: readonly string[];
  readonly take?: Ref<HTMLTextAreaElement>;
  /** plain talk, mostly dictated: the device may spell it, but changes no word of the trade into another */
  readonly spoken?: boolean;
}) {
  const list = useId();
  return (
    <Field {...field}>
      {(wiring) =>
        rows ? (
          <textarea
            {...wiring}
            ref={take}
            rows={rows}
            {...(spoken ? ofSpeech : {})}
            value={value}
            onChange={(event) => onChange(event.target.value)}
          />
        ) : (
          <>
            <input
              {...wiring}
              type="text"
              value={value}
              list={suggest ? list : undefined}
              onChange={(event) => onChange(event.target.value)}
            />
            {suggest && (
              <datalist id={list}>
                {suggest.map((word) => (
                  <option key={word} value={word} />
                ))}
              </datalist>
            )}
          </>
        )
      }
    </Field>
  );
}

/** A figure with its unit beside it. Text, so that a comma or a half-typed minus is not thrown away. */
export function NumberField({
  value,
  onChange,
  unit,
  whole,
  ...field
}: Typed & { readonly unit: string; readonly whole?: boolean }) {
  return (
    <Field {...field} unit={unit}>
      {(wiring) => (
        <input
          {...wiring}
          className="field-figure"
          type="text"
          inputMode={whole ? 'numeric' : 'decimal'}
          autoComplete="off"
          value={value}
          onChange={(event) => onChange(event.target.value)}
        />
      )}
    </Field>
  );
}

export function DayField({ value, onChange, ...field }: Typed) {
  return (
    <Field {...field}>
      {(wiring) => (
        <input
          {...wiring}
          className="field-figure"
          type="date"
          min="1900-01-01"
          max="2199-12-31"
          value={value}
          onChange={(event) => onChange(event.target.value)}
        />
      )}
    </Field>
  );
}

export function ClockField({ value, onChange, ...field }: Typed) {
  return (
    <Field {...field}>
      {(wiring) => (
        <input
          {...wiring}
          className="field-figure"
          type="time"
          value={value}
          onChange={(event) => onChange(event.target.value)}
        />
      )}
    </Field>
  );
}
