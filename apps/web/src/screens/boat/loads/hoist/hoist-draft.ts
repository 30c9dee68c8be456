/** A board's hoist as it is filled in, and the record it goes in as. */
import type { BoardHoistRecord, Id, LineRecord, TackleRecord } from '#boat-book';
import {
  type BoardLine,
  endingsOf,
  isWire,
  lineSizes_mm,
  type Reeving,
  reevingOf,
  rove,
  type SheaveBearing,
} from '#loads';
import { bearingSaid, endingNames, lineNames, sentenceOf } from '#reckoning';
import type { Option } from '../../../../parts/choice-fields.tsx';
import type { FormReading } from '../../../../parts/read-form.ts';

export interface LineDraft {
  readonly of: BoardLine | '';
  readonly size: string;
  readonly ending: NonNullable<LineRecord['ending']> | '';
}

export interface TackleDraft {
  readonly moving: string;
  readonly fixed: string;
  readonly endAt: Reeving['endAt'];
  readonly bearing: SheaveBearing;
}

export interface HoistDraft {
  readonly name: string;
  readonly zone: Id | '';
  readonly length: string;
  readonly breadth: string;
  readonly density: string;
  readonly massKnown: 'weighed' | 'by its sizes' | '';
  readonly mass: string;
  readonly thickness: string;
  readonly moves: 'turns' | 'slides' | '';
  readonly massAlong: string;
  readonly massSquare: string;
  readonly attachedAlong: string;
  readonly attachedSquare: string;
  readonly leadAft: string;
  readonly leadUp: string;
  readonly down: string;
  readonly up: string;
  readonly travel: string;
  readonly topAboveWater: string;
  readonly offMiddle: string;
  readonly held: string;
  readonly wire: LineDraft;
  readonly leads: string;
  readonly leadBearing: SheaveBearing | '';
  readonly sheave: string;
  readonly tackles: readonly TackleDraft[];
  readonly cord: LineDraft;
  readonly wound: 'winch' | 'hand' | '';
  readonly gear: string;
  readonly handle: string;
  readonly drum: string;
  readonly width: string;
  readonly woundWhenDown: string;
  readonly note: string;
}

export type HoistFault =
  | Exclude<keyof HoistDraft, 'zone' | 'note' | 'tackles' | 'wire' | 'cord'>
  | 'wireOf'
  | 'wireSize'
  | 'cordOf'
  | 'cordSize'
  | 'tackle0'
  | 'tackle1'
  | 'tackle2';

export const bearingOptions: readonly Option<SheaveBearing>[] = (['ball', 'plain', 'old'] as const).map((value) => ({
  value,
  name: bearingSaid(value),
}));

export const lineOptions: readonly Option<BoardLine>[] = (Object.keys(lineNames) as BoardLine[]).map((value) => ({
  value,
  name: lineNames[value],
}));
export const cordOptions = lineOptions.filter(({ value }) => !isWire(value));

export const endingOptions = (of: BoardLine | ''): readonly Option<NonNullable<LineRecord['ending']>>[] =>
  of === '' ? [] : endingsOf(of).map((value) => ({ value, name: endingNames[value] }));

/** Densities that are offered, as handbooks have them (recalled). */
export const densities: readonly Option<string>[] = [
  { value: '7200', name: 'cast iron, 7200 kg/m³' },
  { value: '7850', name: 'steel, 7850 kg/m³' },
  { value: '8000', name: 'stainless steel, 8000 kg/m³' },
  { value: '2700', name: 'aluminium, 2700 kg/m³' },
  { value: '11340', name: 'lead, 11340 kg/m³' },
  { value: '1850', name: 'glass laminate, 1850 kg/m³' },
  { value: '600', name: 'plywood, 600 kg/m³' },
];

/** The list with one of its own where the book has another. */
export function densityOptions(density: string): readonly Option<string>[] {
  const own = density !== '' && !densities.some(({ value }) => value === density);
  return own ? [{ value: density, name: `${density} kg/m³` }, ...densities] : densities;
}

const mm = (length_m: number) => String(Number((1000 * length_m).toFixed(1)));

const lineDraft = (line: LineRecord | null): LineDraft => ({
  of: line?.of ?? '',
  size: line ? String(line.size_mm) : '',
  ending: line?.ending ?? '',
});

/** A tackle to begin with: two parts. */
export const newTackle: TackleDraft = { ...tackleText(reevingOf(2)), bearing: 'plain' };

function tackleText({ movingSheaves, fixedSheaves, endAt }: Reeving) {
  return { moving: String(movingSheaves), fixed: String(fixedSheaves), endAt };
}

/** What stands in the form: for a new hoist nothing is filled in that it hangs on. */
export function hoistDraft(record: BoardHoistRecord | null): HoistDraft {
  const moves = record?.moves;
  const turns = moves?.kind === 'turns' ? moves : null;
  const slides = moves?.kind === 'slides' ? moves : null;
  const mass = record?.plate.mass;
  return {
    name: record?.name ?? 'The board’s hoist',
    zone: record?.zone ?? '',
    length: record ? mm(record.plate.length_m) : '',
    breadth: record ? mm(record.plate.breadth_m) : '',
    density: record ? String(record.plate.density_kg_m3) : '',
    massKnown: mass?.kind ?? '',
    mass: mass?.kind === 'weighed' ? String(mass.mass_kg) : '',
    thickness: mass?.kind === 'by its sizes' ? String(mass.thickness_mm) : '',
    moves: moves?.kind ?? '',
    massAlong: turns ? mm(turns.massAlong_m) : '',
    massSquare: turns ? mm(turns.massSquare_m) : '',
    attachedAlong: turns ? mm(turns.attachedAlong_m) : '',
    attachedSquare: turns ? mm(turns.attachedSquare_m) : '',
    leadAft: turns ? mm(turns.leadAft_m) : '',
    leadUp: turns ? mm(turns.leadUp_m) : '',
    down: turns ? String(turns.down_deg) : '',
    up: turns ? String(turns.up_deg) : '',
    travel: slides ? mm(slides.travel_m) : '',
    topAboveWater: slides ? mm(slides.topAboveWater_m) : '',
    offMiddle: slides ? mm(slides.offMiddle_m) : '',
    held: slides ? mm(slides.held_m) : '',
    wire: lineDraft(record?.wire ?? null),
    leads: record ? String(record.leads.count) : '',
    leadBearing: record?.leads.bearing ?? '',
    sheave: record?.leads.sheave_mm?.toString() ?? '',
    tackles: (record?.tackles ?? []).map((tackle) => ({ ...tackleText(tackle), bearing: tackle.bearing })),
    cord: lineDraft(record?.cord ?? null),
    wound: record === null ? '' : record.winch ? 'winch' : 'hand',
    gear: record?.winch ? String(record.winch.gear) : '',
    handle: record?.winch ? String(record.winch.handle_mm) : '',
    drum: record?.winch ? String(record.winch.drum_mm) : '',
    width: record?.winch ? String(record.winch.width_mm) : '',
    woundWhenDown: record?.winch ? String(record.winch.woundWhenDown_m) : '',
    note: record?.note ?? '',
  };
}

type Form = FormReading<HoistFault>;

/** The record of a draft; what cannot be read in it is refused in the form. */
export function hoistOf(draft: HoistDraft, form: Form): BoardHoistRecord {
  const length = (field: HoistFault & keyof HoistDraft, min: number, max: number) =>
    metres(form.figure(field, draft[field] as string, { min, max, unit: 'mm' }));
  const massKnown = form.chosen('massKnown', draft.massKnown, 'Say whether it was weighed.');
  const moved = form.chosen('moves', draft.moves, 'Say whether it turns or slides.');
  const wound = form.chosen('wound', draft.wound, 'Say what the last line comes to.');
  const count = form.figure('leads', draft.leads, { min: 0, max: 6, unit: 'blocks', whole: true });
  const hoist: BoardHoistRecord = {
    name: form.words('name', draft.name, 'Give it a name.'),
    zone: draft.zone || null,
    plate: {
      length_m: length('length', 100, 4000),
      breadth_m: length('breadth', 20, 2000),
      density_kg_m3: Number(form.chosen('density', draft.density, 'Choose what it is made of.')),
      mass:
        massKnown === 'weighed'
          ? { kind: 'weighed', mass_kg: form.figure('mass', draft.mass, { min: 0.5, max: 500, unit: 'kg' }) }
          : {
              kind: 'by its sizes',
              thickness_mm:
                massKnown === 'by its sizes'
                  ? form.figure('thickness', draft.thickness, { min: 1, max: 200, unit: 'mm' })
                  : Number.NaN,
            },
    },
    moves:
      moved === 'slides'
        ? {
            kind: 'slides',
            travel_m: length('travel', 50, 3000),
            topAboveWater_m: length('topAboveWater', -3000, 3000),
            offMiddle_m: length('offMiddle', -1000, 1000),
            held_m: length('held', 50, 3000),
          }
        : moved === 'turns'
          ? turning(draft, form, length)
          : { kind: 'slides', travel_m: Number.NaN, topAboveWater_m: 0, offMiddle_m: 0, held_m: 0 },
    wire: lineOf(draft.wire, form, 'wireOf', 'wireSize'),
    leads: {
      count,
      bearing: count === 0 ? 'plain' : form.chosen('leadBearing', draft.leadBearing, 'Say how its sheaves run.'),
      sheave_mm: count === 0 ? null : form.figureOrNone('sheave', draft.sheave, { min: 5, max: 300, unit: 'mm' }),
    },
    tackles: draft.tackles.map((tackle, i) => tackleOf(tackle, form, `tackle${i}` as 'tackle0')),
    cord: draft.tackles.length === 0 ? null : lineOf(draft.cord, form, 'cordOf', 'cordSize'),
    winch:
      wound === 'winch'
        ? {
            gear: form.figure('gear', draft.gear, { min: 1, max: 20, unit: 'to 1' }),
            handle_mm: form.figure('handle', draft.handle, { min: 50, max: 600, unit: 'mm' }),
            drum_mm: form.figure('drum', draft.drum, { min: 10, max: 400, unit: 'mm' }),
            width_mm: form.figure('width', draft.width, { min: 5, max: 300, unit: 'mm' }),
            woundWhenDown_m: form.figure('woundWhenDown', draft.woundWhenDown, { min: 0, max: 20, unit: 'm' }),
          }
        : null,
    note: draft.note.trim(),
  };
  if (form.sound() && hoist.moves.kind === 'turns' && hoist.moves.up_deg >= hoist.moves.down_deg)
    form.refuse('up', `It is not above ${hoist.moves.down_deg}°, all the way down: give less than that.`);
  return hoist;
}

const metres = (length_mm: number): number => Number((length_mm / 1000).toFixed(4));

function turning(
  draft: HoistDraft,
  form: Form,
  length: (field: HoistFault & keyof HoistDraft, min: number, max: number) => number,
): Extract<BoardHoistRecord['moves'], { readonly kind: 'turns' }> {
  return {
    kind: 'turns',
    massAlong_m: length('massAlong', 10, 4000),
    massSquare_m: length('massSquare', -1000, 1000),
    attachedAlong_m: length('attachedAlong', -1000, 4000),
    attachedSquare_m: length('attachedSquare', -1000, 1000),
    leadAft_m: length('leadAft', -2000, 4000),
    leadUp_m: length('leadUp', 0, 4000),
    down_deg: form.figure('down', draft.down, { min: 10, max: 110, unit: '°' }),
    up_deg: form.figure('up', draft.up, { min: -20, max: 60, unit: '°' }),
  };
}

function lineOf(draft: LineDraft, form: Form, of: 'wireOf' | 'cordOf', size: 'wireSize' | 'cordSize'): LineRecord {
  const line = form.chosen(of, draft.of, 'Choose what it is.');
  return {
    of: line,
    size_mm: form.figure(size, draft.size, { min: 0.5, max: 24, unit: 'mm' }),
    ending: draft.ending !== '' && draft.of !== '' && endingsOf(draft.of).includes(draft.ending) ? draft.ending : null,
  };
}

function tackleOf(draft: TackleDraft, form: Form, field: 'tackle0'): TackleRecord {
  const limits = { min: 0, max: 4, unit: 'sheaves', whole: true };
  const reeving: Reeving = {
    movingSheaves: form.figure(field, draft.moving, limits),
    fixedSheaves: form.figure(field, draft.fixed, limits),
    endAt: draft.endAt,
  };
  const way = form.faults[field] === undefined ? rove(reeving) : null;
  if (way?.kind === 'does not reeve') form.refuse(field, `${sentenceOf(way.wrong)} ${sentenceOf(way.right)}`);
  return { ...reeving, bearing: draft.bearing };
}

/** Sizes that tables have of a line, said beside its field; empty where none is chosen. */
export function sizesNote(of: BoardLine | ''): string {
  return of === '' ? '' : `What it bears is known of ${lineSizes_mm(of).map(String).join(', ')} mm.`;
}
