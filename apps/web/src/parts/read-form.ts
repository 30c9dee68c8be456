/**
 * Reads what was typed into a form, field by field. What cannot be read is refused under the field's own name with
 * what was wrong and what would be right; nothing is filled in for the keeper.
 */
import { isClock, isDay } from '#units';

export interface Limits {
  readonly min: number;
  readonly max: number;
  readonly unit: string;
  readonly whole?: boolean;
}

export type Faults<Field extends string> = Partial<Readonly<Record<Field, string>>>;

export interface FormReading<Field extends string> {
  readonly faults: Faults<Field>;
  /** true where nothing was refused */
  readonly sound: () => boolean;
  /** the figure; NaN where it was refused */
  readonly figure: (field: Field, text: string, limits: Limits) => number;
  /** the figure, or null where the field was left empty */
  readonly figureOrNone: (field: Field, text: string, limits: Limits) => number | null;
  readonly words: (field: Field, text: string, wanted: string) => string;
  readonly day: (field: Field, text: string) => string;
  readonly dayOrNone: (field: Field, text: string) => string | null;
  readonly clock: (field: Field, text: string) => string;
  readonly chosen: <V extends string>(field: Field, value: V | '', wanted: string) => V;
  readonly refuse: (field: Field, why: string) => void;
}

export function formReading<Field extends string>(): FormReading<Field> {
  const faults: Partial<Record<Field, string>> = {};
  const refuse = (field: Field, why: string) => {
    faults[field] ??= why;
  };
  const figure = (field: Field, text: string, limits: Limits) => {
    const read = readFigure(text, limits);
    if (read.kind === 'figure') return read.value;
    refuse(field, read.why);
    return Number.NaN;
  };
  const day = (field: Field, text: string) => {
    if (!isDay(text)) refuse(field, text === '' ? 'There is no date here. Choose one.' : `'${text}' is not a date.`);
    return text;
  };
  return {
    faults,
    refuse,
    figure,
    day,
    sound: () => Object.keys(faults).length === 0,
    figureOrNone: (field, text, limits) => (text.trim() === '' ? null : figure(field, text, limits)),
    words(field, text, wanted) {
      if (text.trim() === '') refuse(field, `This is empty. ${wanted}`);
      return text.trim();
    },
    dayOrNone: (field, text) => (text === '' ? null : day(field, text)),
    clock(field, text) {
      if (!isClock(text)) refuse(field, 'There is no time here. Give one from 00:00 to 23:59.');
      return text;
    },
    chosen<V extends string>(field: Field, value: V | '', wanted: string) {
      if (value === '') refuse(field, wanted);
      return value as V;
    },
  };
}

/** A figure as people type it: a comma or a point, a minus of either kind, spaces between thousands. */
export function readFigure(
  text: string,
  { min, max, unit, whole = false }: Limits,
): { readonly kind: 'figure'; readonly value: number } | { readonly kind: 'refused'; readonly why: string } {
  const range = `${min} to ${max}${unit ? ` ${unit}` : ''}`;
  const plain = text
    .trim()
    .replace(/[\u00a0\u202f ]/g, '')
    .replace('\u2212', '-')
    .replace(',', '.');
  if (plain === '') return { kind: 'refused', why: `There is no figure here. Give one from ${range}.` };
  if (!/^-?(\d+\.?\d*|\.\d+)$/.test(plain))
    return { kind: 'refused', why: `'${text.trim()}' is not a figure. Give one from ${range}.` };
  const value = Number(plain);
  if (whole && !Number.isInteger(value))
    return { kind: 'refused', why: `${text.trim()} is not a whole number. Give one from ${range}.` };
  if (value < min || value > max)
    return { kind: 'refused', why: `${text.trim()} is out of range. Give a figure from ${range}.` };
  return { kind: 'figure', value };
}
