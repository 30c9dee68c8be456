/** A thing on the trailer as it is filled in, and the record it goes in as. */
import type { Book, CarriedRecord, Id, TrailerRecord } from '#boat-book';
import { massOfCarried } from '#reckoning';
import type { FormReading } from '../../../parts/read-form.ts';

/** Where its place is measured from: with a tape, from whatever is at hand. */
export type MeasuredFrom = 'axle forward' | 'axle aft' | 'ball' | 'stem';

export interface CarriedDraft {
  readonly name: string;
  readonly rides: CarriedRecord['rides'];
  readonly hoist: Id | '';
  readonly battery: Id | '';
  readonly low: string;
  readonly likely: string;
  readonly high: string;
  readonly massFrom: CarriedRecord['massFrom'] | '';
  readonly from: MeasuredFrom;
  readonly place: string;
  readonly give: string;
  readonly up: string;
  readonly movable: boolean;
  readonly aft: string;
  readonly forward: string;
  readonly aboard: boolean;
  readonly note: string;
}

export type CarriedFault =
  | 'name'
  | 'low'
  | 'likely'
  | 'high'
  | 'massFrom'
  | 'place'
  | 'give'
  | 'up'
  | 'aft'
  | 'forward';

const written = (value: number) => String(Number(value.toFixed(3)));

export function carriedDraft(book: Book, record: CarriedRecord | null): CarriedDraft {
  if (record === null)
    return {
      name: '',
      rides: 'boat',
      hoist: '',
      battery: '',
      low: '',
      likely: '',
      high: '',
      massFrom: '',
      from: 'axle forward',
      place: '',
      give: '',
      up: '',
      movable: false,
      aft: '',
      forward: '',
      aboard: true,
      note: '',
    };
  const { mass } = massOfCarried(book, record);
  const { moves, ahead_m } = record;
  return {
    name: record.name,
    rides: record.rides,
    hoist: record.hoist ?? '',
    battery: record.battery ?? '',
    low: written(mass.low_kg),
    likely: written(mass.likely_kg),
    high: written(mass.high_kg),
    massFrom: record.massFrom,
    from: ahead_m < 0 ? 'axle aft' : 'axle forward',
    place: written(Math.abs(ahead_m)),
    give: written(record.give_m),
    up: record.up_m === null ? '' : written(record.up_m),
    movable: moves !== null,
    aft: moves === null ? '' : written(ahead_m - moves.aftmost_m),
    forward: moves === null ? '' : written(moves.foremost_m - ahead_m),
    aboard: record.aboard,
    note: record.note,
  };
}

export function carriedOf(
  draft: CarriedDraft,
  book: Book,
  [trailer, { ballAhead_m, stemAhead_m }]: readonly [Id, TrailerRecord],
  form: FormReading<CarriedFault>,
): CarriedRecord {
  const kg = { min: 0, max: 5000, unit: 'kg' };
  const hoist = draft.hoist === '' ? undefined : book.boardHoists[draft.hoist];
  const typed = {
    low_kg: form.figure('low', draft.low, kg),
    likely_kg: form.figure('likely', draft.likely, kg),
    high_kg: form.figure('high', draft.high, kg),
  };
  if (typed.low_kg > typed.likely_kg)
    form.refuse('low', `At least ${draft.low} kg is more than the likely ${draft.likely} kg.`);
  if (typed.high_kg < typed.likely_kg)
    form.refuse('high', `At most ${draft.high} kg is less than the likely ${draft.likely} kg.`);
  const measured = form.figure('place', draft.place, { min: 0, max: 10, unit: 'm' });
  const ahead_m = Number(aheadOf(draft.from, measured, ballAhead_m, stemAhead_m ?? 0).toFixed(4));
  if (Math.abs(ahead_m) > 10) form.refuse('place', 'That is more than 10 m from the axle. Measure again.');
  const reach = { min: 0, max: 10, unit: 'm' };
  return {
    trailer,
    name: form.words('name', draft.name, 'Say what it is.'),
    rides: draft.rides,
    mass: typed,
    massFrom: hoist ? 'weighed' : form.chosen('massFrom', draft.massFrom, 'Say how its mass is known.'),
    ahead_m,
    give_m: form.figure('give', draft.give, { min: 0, max: 3, unit: 'm' }),
    up_m: form.figureOrNone('up', draft.up, { min: -1, max: 15, unit: 'm' }),
    moves: draft.movable
      ? {
          aftmost_m: Number((ahead_m - form.figure('aft', draft.aft, reach)).toFixed(4)),
          foremost_m: Number((ahead_m + form.figure('forward', draft.forward, reach)).toFixed(4)),
        }
      : null,
    aboard: draft.aboard,
    hoist: draft.hoist || null,
    battery: draft.battery || null,
    note: draft.note,
  };
}

function aheadOf(from: MeasuredFrom, measured_m: number, ballAhead_m: number, stemAhead_m: number): number {
  switch (from) {
    case 'axle forward':
      return measured_m;
    case 'axle aft':
      return -measured_m;
    case 'ball':
      return ballAhead_m - measured_m;
    case 'stem':
      return stemAhead_m - measured_m;
  }
}
