/** One field: its name, what it is for, and what was wrong with what stands in it. */
import { type ReactNode, useId } from 'react';
import './fields.css';

export interface FieldProps {
  readonly label: string;
  /** of the figure, beside the label */
  readonly unit?: string;
  /** what was wrong and what would be right; null: nothing */
  readonly refused?: string | null | undefined;
  readonly note?: ReactNode;
}

interface Wiring {
  readonly id: string;
  readonly 'aria-describedby': string | undefined;
  readonly 'aria-invalid': true | undefined;
}

export function Field({
  label,
  unit,
  refused = null,
  note,
  children,
}: FieldProps & { readonly children: (wiring: Wiring) => ReactNode }) {
  const id = useId();
  const described = [note ? `${id}-note` : '', refused ? `${id}-refused` : ''].filter(Boolean).join(' ');
  return (
    <div className="field">
      <label htmlFor={id}>
        {label}
        {unit && <span className="field-unit"> {unit}</span>}
      </label>
      {note && (
        <p className="field-note" id={`${id}-note`}>
          {note}
        </p>
      )}
      {children({ id, 'aria-describedby': described || undefined, 'aria-invalid': refused ? true : undefined })}
      <Refused id={`${id}-refused`} text={refused} />
    </div>
  );
}

export function Refused({ id, text }: { readonly id?: string; readonly text: string | null | undefined }) {
  if (!text) return null;
  return (
    <p className="field-refused" id={id}>
      <span aria-hidden="true">▲ </span>
      {text}
    </p>
  );
}
