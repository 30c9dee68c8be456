/** A figure moved along a line, for what a drawing or a sentence shows at once: with the thumb, or with the arrow keys. */
import { useId } from 'react';
import './slider-field.css';

export function SliderField({
  label,
  said,
  value,
  min,
  max,
  step,
  onChange,
}: {
  readonly label: string;
  /** the figure with its unit, as it is read out: `14 knots` */
  readonly said: string;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  readonly onChange: (value: number) => void;
}) {
  const id = useId();
  return (
    <div className="field slider">
      <label htmlFor={id}>
        {label} <span className="slider-said">{said}</span>
      </label>
      <input
        id={id}
        type="range"
        min={min}
        max={max}
        step={step}
        value={value}
        aria-valuetext={said}
        onChange={(event) => onChange(event.target.valueAsNumber)}
      />
    </div>
  );
}
