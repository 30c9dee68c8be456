/** A trailer as it is filled in, and the record it goes in as. */
import type { Book, LashingRecord, TrailerRecord } from '#boat-book';
import type { FormReading } from '../../../parts/read-form.ts';

export interface WheelDraft {
  readonly id: string;
  readonly wheel: string;
  readonly spare: boolean;
  readonly code: string;
  readonly tread: string;
}

export interface LashingDraft {
  readonly id: string;
  readonly name: string;
  readonly kind: LashingRecord['kind'];
  readonly holds: LashingRecord['holds'];
  readonly capacity: string;
  readonly above: string;
  readonly aside: string;
  readonly hull: string;
}

/** The figures of the papers, each its own field; in the order they are asked. */
export const paperFields = [
  { field: 'carBall_kg', label: 'Ball load, in the car’s papers', most: 500 },
  { field: 'barBall_kg', label: 'Ball load, on the tow bar’s plate', most: 500 },
  { field: 'couplingBall_kg', label: 'Ball load, stamped on the coupling', most: 500 },
  { field: 'gross_kg', label: 'Gross mass, on the trailer’s plate', most: 20_000 },
  { field: 'axle_kg', label: 'Axle load, on the axle’s plate', most: 20_000 },
  { field: 'train_kg', label: 'Car and trailer together', most: 40_000 },
  { field: 'carKerb_kg', label: 'The car’s kerb mass', most: 20_000 },
  { field: 'carLaden_kg', label: 'The car as laden on the day', most: 20_000 },
] as const;
type PaperField = (typeof paperFields)[number]['field'];

export type TrailerDraft = Readonly<Record<PaperField, string>> & {
  readonly name: string;
  readonly ballAhead: string;
  readonly axles: '1' | '2';
  readonly braked: 'yes' | 'no' | '';
  readonly low: string;
  readonly likely: string;
  readonly high: string;
  readonly emptyBy: TrailerRecord['emptyPlace']['kind'];
  readonly empty: string;
  readonly emptyGive: string;
  readonly stem: string;
  readonly wheelSize: string;
  readonly moveAft: string;
  readonly moveForward: string;
  readonly limitsRead: string;
  readonly advice: TrailerRecord['advice'];
  readonly tyresKnown: boolean;
  readonly tyreSize: string;
  readonly tyreCount: string;
  readonly loadIndex: string;
  readonly speed: string;
  readonly pressure: string;
  readonly asked: string;
  readonly wheels: readonly WheelDraft[];
  readonly towed: string;
  readonly friction: string;
  readonly post: string;
  readonly boardRests: 'rests' | 'hangs' | '';
  readonly lashings: readonly LashingDraft[];
  readonly note: string;
};

export type TrailerFault =
  | PaperField
  | 'name'
  | 'ballAhead'
  | 'braked'
  | 'low'
  | 'likely'
  | 'high'
  | 'empty'
  | 'emptyGive'
  | 'stem'
  | 'wheelSize'
  | 'moveAft'
  | 'moveForward'
  | 'tyreCount'
  | 'loadIndex'
  | 'speed'
  | 'pressure'
  | 'asked'
  | 'towed'
  | 'friction'
  | 'post'
  | `wheel ${number}`
  | `tread ${number}`
  | `lashing ${number}`
  | `capacity ${number}`
  | `above ${number}`
  | `aside ${number}`
  | `hull ${number}`;

const written = (value: number | null | undefined): string =>
  value === null || value === undefined ? '' : String(Number(value.toFixed(3)));

export function trailerDraft(record: TrailerRecord | null): TrailerDraft {
  const tyres = record?.tyres ?? null;
  const place = record?.emptyPlace;
  return {
    ...(Object.fromEntries(paperFields.map(({ field }) => [field, written(record?.[field])])) as Record<
      PaperField,
      string
    >),
    name: record?.name ?? 'The trailer',
    ballAhead: written(record?.ballAhead_m),
    axles: record?.axles === 2 ? '2' : '1',
    braked: record === null ? '' : record.braked ? 'yes' : 'no',
    low: written(record?.emptyMass.low_kg),
    likely: written(record?.emptyMass.likely_kg),
    high: written(record?.emptyMass.high_kg),
    emptyBy: place?.kind ?? 'ball weighed',
    empty: written(place?.kind === 'centre' ? place.ahead_m : place?.ball_kg),
    emptyGive: written(place?.kind === 'centre' ? place.give_m : place?.give_kg),
    stem: written(record?.stemAhead_m),
    wheelSize: written(record?.wheel_m),
    moveAft: written(record?.boatMoves?.aft_m),
    moveForward: written(record?.boatMoves?.forward_m),
    limitsRead: record?.limitsRead ?? '',
    advice: record?.advice ?? 'uk',
    tyresKnown: tyres !== null,
    tyreSize: tyres?.size ?? '',
    tyreCount: written(tyres?.count),
    loadIndex: written(tyres?.loadIndex),
    speed: tyres?.speed ?? '',
    pressure: written(tyres?.pressure_kPa),
    asked: written(tyres?.asked_kPa),
    wheels: (tyres?.wheels ?? []).map(({ wheel, spare, code, tread_mm }, n) => ({
      id: `wheel-${n}`,
      wheel,
      spare,
      code: code ?? '',
      tread: written(tread_mm),
    })),
    towed: written(record?.towed_km_h),
    friction: written(record?.friction),
    post: written(record?.post_N),
    boardRests: record?.boardRests === true ? 'rests' : record?.boardRests === false ? 'hangs' : '',
    lashings: (record?.lashings ?? []).map((lashing) => ({
      id: lashing.id,
      name: lashing.name,
      kind: lashing.kind,
      holds: lashing.holds,
      capacity: written(lashing.capacity_N),
      above: written(lashing.above_deg),
      aside: written(lashing.aside_deg),
      hull: written(lashing.hull_N),
    })),
    note: record?.note ?? '',
  };
}

/** @param today  the day the tyres were read, where anything about them was changed */
export function trailerOf(
  draft: TrailerDraft,
  record: TrailerRecord | null,
  today: string,
  form: FormReading<TrailerFault>,
): TrailerRecord {
  const kg = { min: 0, max: 5000, unit: 'kg' };
  const m = (max: number) => ({ min: -max, max, unit: 'm' });
  const emptyMass = {
    low_kg: form.figure('low', draft.low, kg),
    likely_kg: form.figure('likely', draft.likely, kg),
    high_kg: form.figure('high', draft.high, kg),
  };
  if (emptyMass.low_kg > emptyMass.likely_kg)
    form.refuse('low', `At least ${draft.low} kg is more than the likely ${draft.likely} kg.`);
  if (emptyMass.high_kg < emptyMass.likely_kg)
    form.refuse('high', `At most ${draft.high} kg is less than the likely ${draft.likely} kg.`);
  const aft = form.figureOrNone('moveAft', draft.moveAft, { min: 0, max: 3, unit: 'm' });
  const forward = form.figureOrNone('moveForward', draft.moveForward, { min: 0, max: 3, unit: 'm' });
  const limits = Object.fromEntries(
    paperFields.map(({ field, most }) => [
      field,
      form.figureOrNone(field, draft[field], { min: 1, max: most, unit: 'kg' }),
    ]),
  ) as Record<PaperField, number | null>;
  return {
    name: form.words('name', draft.name, 'Name it.'),
    zone: record?.zone ?? null,
    ballAhead_m: form.figure('ballAhead', draft.ballAhead, { min: 1, max: 10, unit: 'm' }),
    axles: draft.axles === '2' ? 2 : 1,
    braked: form.chosen('braked', draft.braked, 'Say whether it has brakes.') === 'yes',
    emptyMass,
    emptyPlace:
      draft.emptyBy === 'centre'
        ? {
            kind: 'centre',
            ahead_m: form.figure('empty', draft.empty, m(10)),
            give_m: form.figure('emptyGive', draft.emptyGive, { min: 0, max: 3, unit: 'm' }),
          }
        : {
            kind: 'ball weighed',
            ball_kg: form.figure('empty', draft.empty, { min: -200, max: 500, unit: 'kg' }),
            give_kg: form.figure('emptyGive', draft.emptyGive, { min: 0, max: 100, unit: 'kg' }),
          },
    stemAhead_m: form.figureOrNone('stem', draft.stem, m(10)),
    wheel_m: form.figureOrNone('wheelSize', draft.wheelSize, { min: 0.2, max: 1.2, unit: 'm' }),
    boatMoves: aft === null && forward === null ? null : { aft_m: aft ?? 0, forward_m: forward ?? 0 },
    ...limits,
    limitsRead: draft.limitsRead || null,
    advice: draft.advice,
    tyres: tyresOf(draft, record, today, form),
    towed_km_h: form.figureOrNone('towed', draft.towed, { min: 5, max: 200, unit: 'km/h' }),
    friction: form.figureOrNone('friction', draft.friction, { min: 0, max: 1, unit: '' }),
    post_N: form.figureOrNone('post', draft.post, { min: 0, max: 200_000, unit: 'N' }),
    boardRests: draft.boardRests === '' ? null : draft.boardRests === 'rests',
    lashings: draft.lashings.map((lashing, n) => lashingOf(lashing, n, form)),
    note: draft.note,
  };
}

function tyresOf(
  draft: TrailerDraft,
  record: TrailerRecord | null,
  today: string,
  form: FormReading<TrailerFault>,
): TrailerRecord['tyres'] {
  if (!draft.tyresKnown) return null;
  const speed = draft.speed.trim().toUpperCase();
  if (speed !== '' && !/^[A-Z][1-8]?$/.test(speed))
    form.refuse('speed', `'${draft.speed.trim()}' is no speed letter. Give the letter after the load index, as N.`);
  const tyres = {
    size: draft.tyreSize.trim(),
    count: form.figure('tyreCount', draft.tyreCount, { min: 1, max: 8, unit: 'tyres', whole: true }),
    loadIndex: form.figureOrNone('loadIndex', draft.loadIndex, { min: 20, max: 200, unit: '', whole: true }),
    speed: speed === '' ? null : speed,
    pressure_kPa: form.figureOrNone('pressure', draft.pressure, { min: 50, max: 1000, unit: 'kPa' }),
    asked_kPa: form.figureOrNone('asked', draft.asked, { min: 50, max: 1000, unit: 'kPa' }),
    wheels: draft.wheels.map(({ wheel, spare, code, tread }, n) => ({
      wheel: form.words(`wheel ${n}`, wheel, 'Say which wheel it is.'),
      spare,
      code: code.trim() === '' ? null : code.trim().slice(0, 20),
      tread_mm: form.figureOrNone(`tread ${n}`, tread, { min: 0, max: 20, unit: 'mm' }),
    })),
  };
  const { readOn, ...before } = record?.tyres ?? { readOn: today };
  return { ...tyres, readOn: JSON.stringify(before) === JSON.stringify(tyres) ? readOn : today };
}

function lashingOf(lashing: LashingDraft, n: number, form: FormReading<TrailerFault>): LashingRecord {
  const N = { min: 0, max: 200_000, unit: 'N' };
  return {
    id: lashing.id,
    name: form.words(`lashing ${n}`, lashing.name, 'Name the lashing.'),
    kind: lashing.kind,
    holds: lashing.holds,
    capacity_N: form.figureOrNone(`capacity ${n}`, lashing.capacity, { ...N, min: 1 }),
    above_deg: form.figure(`above ${n}`, lashing.above, { min: 0, max: 90, unit: '°' }),
    aside_deg: form.figure(`aside ${n}`, lashing.aside, { min: 0, max: 90, unit: '°' }),
    hull_N: form.figureOrNone(`hull ${n}`, lashing.hull, N),
  };
}

/** An id that no lashing of the list has. */
export function nextLashing(lashings: readonly LashingDraft[]): string {
  let n = lashings.length + 1;
  while (lashings.some(({ id }) => id === `lashing-${n}`)) n++;
  return `lashing-${n}`;
}

/** Whether a trailer has something standing on it that would go with it. */
export const stands = (book: Book, trailer: string): number =>
  Object.values(book.carried).filter((thing) => thing.trailer === trailer).length;
