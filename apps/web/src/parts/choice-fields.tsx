/** Fields that are chosen from. */
import { useId } from 'react';
import { Field, type FieldProps, Refused } from './field.tsx';

export interface Option<V extends string> {
  readonly value: V;
  readonly name: string;
}

/** One of many, by the device's own list. */
export function ChoiceField<V extends string>({
  value,
  onChange,
  options,
  none,
  ...field
}: FieldProps & {
  readonly value: V | '';
  readonly onChange: (value: V | '') => void;
  readonly options: readonly Option<V>[];
  /** what choosing nothing is called; without it something must be chosen */
  readonly none?: string;
}) {
  return (
    <Field {...field}>
      {(wiring) => (
        <select {...wiring} value={value} onChange={(event) => onChange(event.target.value as V | '')}>
          {none !== undefined && <option value="">{none}</option>}
          {none === undefined && value === '' && (
            <option value="" disabled>
              choose
            </option>
          )}
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.name}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}

/** One of a few, all in sight. */
export function PickField<V extends string>({
  label,
  value,
  onChange,
  options,
  refused,
  quiet = false,
}: FieldProps & {
  readonly value: V | '';
  readonly onChange: (value: V) => void;
  readonly options: readonly Option<V>[];
  /** the label is for screen readers only */
  readonly quiet?: boolean;
}) {
  const name = useId();
  return (
    <fieldset className="field">
      <legend className={quiet ? 'unseen' : undefined}>{label}</legend>
      <div className="field-picks">
        {options.map((option) => (
          <label key={option.value} className="field-pick">
            <input
              type="radio"
              name={name}
              value={option.value}
              checked={option.value === value}
              onChange={() => onChange(option.value)}
            />
            <span>{option.name}</span>
          </label>
        ))}
      </div>
      <Refused text={refused} />
    </fieldset>
  );
}

export function TickField({
  label,
  value,
  onChange,
  note,
}: {
  readonly label: string;
  readonly value: boolean;
  readonly onChange: (value: boolean) => void;
  readonly note?: string;
}) {
  return (
    <label className="field-tick">
      <input type="checkbox" checked={value} onChange={(event) => onChange(event.target.checked)} />
      <span>
        {label}
        {note && <span className="field-note"> {note}</span>}
      </span>
    </label>
  );
}

/** Any number of a list. */
export function ManyField<V extends string>({
  label,
  values,
  onChange,
  options,
  empty,
}: {
  readonly label: string;
  readonly values: readonly V[];
  readonly onChange: (values: readonly V[]) => void;
  readonly options: readonly Option<V>[];
  /** said where there is nothing to choose from */
  readonly empty: string;
}) {
  return (
    <fieldset className="field">
      <legend>{label}</legend>
      {options.length === 0 && <p className="field-note">{empty}</p>}
      <div className="field-many">
        {options.map(({ value, name }) => (
          <TickField
            key={value}
            label={name}
            value={values.includes(value)}
            onChange={(on) => onChange(on ? [...values, value] : values.filter((other) => other !== value))}
          />
        ))}
      </div>
    </fieldset>
  );
}
