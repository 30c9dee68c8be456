/** What the keeper says stands in the columns of a table, before it is read. */
import type { TableLook, TablePlan, TimeForm } from '#readings';

type Column = string;
type Flow = 'out of the battery' | 'into the battery';

export interface TableDraft {
  readonly time: Column | '';
  readonly clock: Column | '';
  readonly form: TimeForm | '';
  readonly zone: string;
  readonly volts: Column | '';
  readonly voltsUnit: 'V' | 'mV';
  readonly current: Column | '';
  readonly currentUnit: 'A' | 'mA';
  readonly positive: Flow | '';
  readonly air: Column | '';
  readonly airUnit: '°C' | '°F';
  readonly decimal: '.' | ',';
  readonly headRows: string;
}

/** What the first look proposes; what it could not tell is left open. */
export function draftFrom(look: TableLook, zone: string): TableDraft {
  const { columns, timeForm, units, decimal, headRows } = look;
  const at = (what: TableLook['columns'][number]['guess']) => {
    const n = columns.findIndex(({ guess }) => guess === what);
    return n < 0 ? '' : String(n);
  };
  return {
    time: at('time'),
    clock: at('clock'),
    form: timeForm ?? '',
    zone,
    volts: at('volts'),
    voltsUnit: units.volts,
    current: at('current'),
    currentUnit: units.current,
    positive: '',
    air: at('air'),
    airUnit: units.air,
    decimal,
    headRows: String(headRows),
  };
}

export type DraftFaults = Partial<
  Record<'time' | 'form' | 'volts' | 'current' | 'air' | 'positive' | 'headRows', string>
>;

export type DraftPlan =
  | { readonly kind: 'plan'; readonly plan: TablePlan; readonly faults: DraftFaults }
  | { readonly kind: 'open'; readonly faults: DraftFaults };

/**
 * The plan a draft comes to; `open` where too little is said to try it. What is not said of the current’s way alone is a fault,
 * but the rest can be tried.
 */
export function planFrom(draft: TableDraft, look: TableLook): DraftPlan {
  const headRows = Number(draft.headRows);
  const faults: DraftFaults = {
    ...(draft.time === '' && { time: 'Choose the column with the time.' }),
    ...(draft.form === '' && { form: 'Choose how they are written: day and month first both could be.' }),
    ...(draft.volts === '' && { volts: 'Choose the column with the volts.' }),
    ...(draft.current !== '' && draft.positive === '' && { positive: 'Choose which way it flows.' }),
    ...(!(Number.isInteger(headRows) && headRows >= 0 && headRows <= 200) && {
      headRows: `‘${draft.headRows}’ is no number of rows. Give one from 0 to 200.`,
    }),
  };
  const { form } = draft;
  if (draft.time === '' || form === '' || draft.volts === '' || faults.headRows) return { kind: 'open', faults };
  return {
    kind: 'plan',
    faults,
    plan: {
      separator: look.separator,
      headRows,
      decimal: draft.decimal,
      time: {
        column: Number(draft.time),
        clockColumn: draft.clock === '' ? null : Number(draft.clock),
        form,
        zone: draft.zone,
      },
      volts: { column: Number(draft.volts), unit: draft.voltsUnit },
      current:
        draft.current === ''
          ? null
          : {
              column: Number(draft.current),
              unit: draft.currentUnit,
              positive: draft.positive === '' ? 'out of the battery' : draft.positive,
            },
      air: draft.air === '' ? null : { column: Number(draft.air), unit: draft.airUnit },
    },
  };
}
