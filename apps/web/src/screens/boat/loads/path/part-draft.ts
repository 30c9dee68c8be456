/** A part of a load path as it is filled in, and the record it goes in as. Sizes that cannot be got at are left empty. */
import type { Id, PathPartRecord } from '#boat-book';
import { type PartOfPath, type PartState, signsFor } from '#loads';
import type { FormReading } from '../../../../parts/read-form.ts';

export type PartKind = PartOfPath['kind'];
type OfKind<K extends PartKind> = Extract<PartOfPath, { readonly kind: K }>;
export type Sign = NonNullable<PartState['signs']>[number];
/** looked at and found so, or not looked at */
type Seen = 'yes' | 'no' | 'not looked at';

export interface PartDraft {
  readonly kind: PartKind | '';
  readonly name: string;
  /** the part it comes after, or `first` */
  readonly stands: Id;
  /** the thickness, diameter or thread the part goes by */
  readonly size: string;
  readonly fibre: OfKind<'rope'>['fibre'] | '';
  readonly passes: string;
  readonly laid: OfKind<'wire'>['laid'] | '';
  readonly wireMake: OfKind<'wire'>['make'];
  readonly grade: NonNullable<OfKind<'chain'>['grade']> | 'no mark' | '';
  readonly chainMetal: OfKind<'chain'>['metal'] | '';
  readonly shackleMake: OfKind<'shackle'>['make'] | '';
  readonly metal: OfKind<'thimble'>['metal'] | '';
  readonly ending: OfKind<'ending'>['ending'] | '';
  readonly what: OfKind<'fitting'>['what'] | '';
  readonly pin: string;
  readonly jaw: string;
  /** clear width of what something goes through: an end link, a thimble, an eye */
  readonly opening: string;
  readonly thickness: string;
  readonly sheave: string;
  readonly line: string;
  readonly turn: string;
  /** against coming undone: moused, split-pinned, locked */
  readonly secured: Seen;
  readonly how: OfKind<'fastenings'>['how'] | '';
  readonly count: string;
  readonly into: OfKind<'fastenings'>['into'] | '';
  readonly backing: OfKind<'fastenings'>['backing'] | '';
  readonly pulled: OfKind<'fastenings'>['pulled'] | '';
  readonly ratio: string;
  readonly hand: OfKind<'hand'>['how'] | '';
  readonly mark: string;
  readonly markUnit: 'kN' | 'kg' | 't';
  readonly markedAs: NonNullable<PartState['marked']>['as'] | '';
  readonly markedBy: string;
  readonly looked: Exclude<Seen, 'no'>;
  readonly signs: readonly Sign[];
  readonly since: string;
  readonly juryRig: Id | '';
}

export type PartFault = Exclude<keyof PartDraft, 'signs' | 'name' | 'stands'>;

/** Kilonewtons in what a strength is marked in; of a mass the weight of it. */
const markUnit_kN: Readonly<Record<PartDraft['markUnit'], number>> = { kN: 1, kg: 9.80665e-3, t: 9.80665 };

const text = (value: number | null | undefined) => value?.toString() ?? '';
const seenOf = (value: boolean | null): Seen => (value === null ? 'not looked at' : value ? 'yes' : 'no');

const emptyPart: Omit<PartDraft, 'stands'> = {
  kind: '',
  name: '',
  size: '',
  fibre: '',
  passes: '',
  laid: '',
  wireMake: '316',
  grade: '',
  chainMetal: '',
  shackleMake: '',
  metal: '',
  ending: '',
  what: '',
  pin: '',
  jaw: '',
  opening: '',
  thickness: '',
  sheave: '',
  line: '',
  turn: '',
  secured: 'not looked at',
  how: '',
  count: '',
  into: '',
  backing: '',
  pulled: '',
  ratio: '',
  hand: '',
  mark: '',
  markUnit: 'kN',
  markedAs: '',
  markedBy: '',
  looked: 'not looked at',
  signs: [],
  since: '',
  juryRig: '',
};

/** the place of a part that nothing comes before */
export const first = 'first';

/** What stands in the form; of a new part nothing is filled in but where it goes. */
export function partDraft(record: PathPartRecord | null, stands: Id = first): PartDraft {
  if (record === null) return { ...emptyPart, stands };
  return {
    ...emptyPart,
    stands,
    kind: record.kind,
    name: record.name,
    mark: text(record.marked?.force_kN),
    markedAs: record.marked?.as ?? '',
    markedBy: record.marked?.by ?? '',
    looked: record.signs === null ? 'not looked at' : 'yes',
    signs: record.signs ?? [],
    since: record.since ?? '',
    juryRig: record.juryRig ?? '',
    ...sizesDraft(record),
  };
}

function sizesDraft(part: PartOfPath): Partial<PartDraft> {
  switch (part.kind) {
    case 'rope':
      return { fibre: part.fibre, size: text(part.size_mm) };
    case 'lashing':
      return { fibre: part.fibre, size: text(part.size_mm), passes: text(part.passes) };
    case 'wire':
      return { laid: part.laid, size: text(part.size_mm), wireMake: part.make };
    case 'chain':
      return {
        grade: part.grade ?? 'no mark',
        size: text(part.size_mm),
        chainMetal: part.metal,
        opening: text(part.inside_mm),
      };
    case 'shackle':
      return {
        shackleMake: part.make,
        size: text(part.size_mm),
        pin: text(part.pin_mm),
        jaw: text(part.jaw_mm),
        secured: seenOf(part.moused),
      };
    case 'thimble':
      return { size: text(part.size_mm), metal: part.metal, opening: text(part.opening_mm) };
    case 'ending':
      return { ending: part.ending };
    case 'block':
      return {
        sheave: text(part.sheave_mm),
        line: text(part.line_mm),
        turn: text(part.turn_deg),
        metal: part.metal,
      };
    case 'fitting':
      return {
        what: part.what,
        metal: part.metal,
        opening: text(part.eye_mm),
        thickness: text(part.thickness_mm),
      };
    case 'pin':
      return { size: text(part.size_mm), metal: part.metal, secured: seenOf(part.secured) };
    case 'rigging screw':
      return {
        size: text(part.thread_mm),
        metal: part.metal,
        pin: text(part.pin_mm),
        jaw: text(part.jaw_mm),
        secured: seenOf(part.locked),
      };
    case 'fastenings':
      return {
        how: part.how,
        count: text(part.count),
        size: text(part.size_mm),
        metal: part.metal,
        into: part.into,
        thickness: text(part.thickness_mm),
        backing: part.backing,
        pulled: part.pulled,
      };
    case 'winch':
      return { ratio: text(part.ratio) };
    case 'hand':
      return { hand: part.how };
  }
}

/** The part of a draft; what cannot be read is refused in the form. */
export function partOf(draft: PartDraft, id: Id, form: FormReading<PartFault>): PathPartRecord {
  const mark = form.figureOrNone('mark', draft.mark, {
    min: 0.001 / markUnit_kN[draft.markUnit],
    max: 1000 / markUnit_kN[draft.markUnit],
    unit: draft.markUnit,
  });
  const part = sizedPart(draft, form);
  return {
    ...part,
    id,
    name: draft.name.trim(),
    since: form.dayOrNone('since', draft.since),
    juryRig: draft.juryRig || null,
    marked:
      mark === null
        ? null
        : {
            force_kN: Number((mark * markUnit_kN[draft.markUnit]).toPrecision(6)),
            as: form.chosen('markedAs', draft.markedAs, 'Say whether the mark is a working or a breaking load.'),
            by: form.words('markedBy', draft.markedBy, 'Say who says so: the mark on it, its maker’s sheet, a test.'),
          },
    // what was ticked before it was said to be of another kind does not stay
    signs: draft.looked === 'yes' ? draft.signs.filter((sign) => signsFor(part.kind).includes(sign)) : null,
  };
}

function sizedPart(draft: PartDraft, form: FormReading<PartFault>): PartOfPath {
  const size_mm = () => form.figure('size', draft.size, { min: 0.5, max: 200, unit: 'mm' });
  const measured = (field: 'pin' | 'jaw' | 'opening' | 'thickness' | 'sheave' | 'line') =>
    form.figureOrNone(field, draft[field], { min: 0.1, max: 1000, unit: 'mm' });
  const metal = () => form.chosen('metal', draft.metal, 'Choose what it is made of.');
  const secured = draft.secured === 'not looked at' ? null : draft.secured === 'yes';
  const kind = form.chosen('kind', draft.kind, 'Choose what it is.');
  switch (kind) {
    case 'rope':
      return { kind, fibre: form.chosen('fibre', draft.fibre, 'Choose what it is laid of.'), size_mm: size_mm() };
    case 'lashing':
      return {
        kind,
        fibre: form.chosen('fibre', draft.fibre, 'Choose what its cord is laid of.'),
        size_mm: size_mm(),
        passes: form.figure('passes', draft.passes, { min: 1, max: 50, unit: 'times', whole: true }),
      };
    case 'wire':
      return {
        kind,
        laid: form.chosen('laid', draft.laid, 'Choose how it is laid: count its strands at an end.'),
        size_mm: size_mm(),
        make: draft.wireMake,
      };
    case 'chain': {
      const grade = form.chosen('grade', draft.grade, 'Choose what is stamped on it, or that it has no mark.');
      return {
        kind,
        grade: grade === 'no mark' ? null : grade,
        size_mm: size_mm(),
        metal: form.chosen('chainMetal', draft.chainMetal, 'Choose what it is made of.'),
        inside_mm: measured('opening'),
      };
    }
    case 'shackle':
      return {
        kind,
        make: form.chosen('shackleMake', draft.shackleMake, 'Choose its kind: figures of one never serve another.'),
        size_mm: size_mm(),
        pin_mm: measured('pin'),
        jaw_mm: measured('jaw'),
        moused: secured,
      };
    case 'thimble':
      return { kind, size_mm: size_mm(), metal: metal(), opening_mm: measured('opening') };
    case 'ending':
      return { kind, ending: form.chosen('ending', draft.ending, 'Choose the knot, splice or terminal.') };
    case 'block':
      return {
        kind,
        sheave_mm: measured('sheave'),
        line_mm: measured('line'),
        turn_deg: form.figureOrNone('turn', draft.turn, { min: 0, max: 180, unit: '°' }),
        metal: metal(),
      };
    case 'fitting':
      return {
        kind,
        what: form.chosen('what', draft.what, 'Choose what it is.'),
        metal: metal(),
        eye_mm: measured('opening'),
        thickness_mm: measured('thickness'),
      };
    case 'pin':
      return { kind, size_mm: size_mm(), metal: metal(), secured };
    case 'rigging screw':
      return {
        kind,
        thread_mm: size_mm(),
        metal: metal(),
        pin_mm: measured('pin'),
        jaw_mm: measured('jaw'),
        locked: secured,
      };
    case 'fastenings':
      return {
        kind,
        how: form.chosen('how', draft.how, 'Choose screws or bolts.'),
        count: form.figure('count', draft.count, { min: 1, max: 100, unit: '', whole: true }),
        size_mm: size_mm(),
        metal: metal(),
        into: form.chosen('into', draft.into, 'Choose what they go into.'),
        thickness_mm: measured('thickness'),
        backing: form.chosen('backing', draft.backing, 'Choose what is behind.'),
        pulled: form.chosen('pulled', draft.pulled, 'Choose which way it is pulled.'),
      };
    case 'winch':
      return { kind, ratio: form.figureOrNone('ratio', draft.ratio, { min: 1, max: 200, unit: 'to 1' }) };
    case 'hand':
      return { kind, how: form.chosen('hand', draft.hand, 'Choose what the hand does.') };
  }
}
