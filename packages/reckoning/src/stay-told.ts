import type { Book, Id, StayReading, StayRecord } from '#boat-book';
import {
  rigQuestions,
  type StayLoad,
  slackBySway_m,
  stayLoadByPull,
  stayLoadByStretch,
  stayLoadByTension,
  stiffness_N,
  takenUpByTurn_mm,
} from '#loads';
import { ask } from '#working';
import { answerTold } from './answer-told.ts';
import type { WorkingTold } from './circuits-told.ts';

/** One look at a stay, with what it says. */
export interface StayReadingTold {
  readonly id: Id;
  readonly reading: StayReading;
  readonly load: StayLoad;
  /** it hangs too long by this, with no tension; 0 where it is taut. [mm] */
  readonly loose_mm: number;
  /** how much longer it is, or its ends nearer each other, than at the reading before, its turns taken off; null: the first */
  readonly lost: { readonly mm: number; readonly low_mm: number; readonly high_mm: number } | null;
  /** what turns since the reading before were to bring if nothing but the wire gave, and what came; null: no turns */
  readonly turned: { readonly foretold_N: number; readonly came_N: number } | null;
  readonly working: readonly WorkingTold[];
  readonly cautions: readonly string[];
}

/** A stay with its readings, oldest first. */
export interface StayOfBook {
  readonly id: Id;
  readonly record: StayRecord;
  readonly readings: readonly StayReadingTold[];
}

/** What is to be done with the screw to come from the last reading to a tension. */
export interface TurnsTo {
  readonly tension_N: number;
  /** whole and parts of a turn, tightening; below zero easing; null: its screw is not known */
  readonly turns: number | null;
  readonly mm: number;
}

/** Every stay of the book with what its readings say. */
export function staysOfBook(book: Pick<Book, 'stays' | 'stayReadings'>): readonly StayOfBook[] {
  return Object.entries(book.stays).map(([id, record]) => {
    const found = Object.entries(book.stayReadings)
      .filter(([, { stay }]) => stay === id)
      .sort(([, a], [, b]) => (a.on < b.on ? -1 : a.on > b.on ? 1 : (a.order ?? 0) - (b.order ?? 0)));
    const readings: StayReadingTold[] = [];
    for (const [readingId, reading] of found)
      readings.push(readingTold(record, readingId, reading, readings.at(-1) ?? null));
    return { id, record, readings };
  });
}

/** Turns from how a stay was last found to a tension. */
export function turnsTo(record: StayRecord, from: StayReadingTold, tension_N: number): TurnsTo {
  const mm = tooLong_mm(record, from.load.tension_N, from.loose_mm) - tooLong_mm(record, tension_N, 0);
  return { tension_N, mm, turns: record.screw === null ? null : mm / takenUpByTurn_mm(record.screw) };
}

/** The tension it is to be set to; null: not said, or its breaking load is not known. [N] */
export function aim_N(record: StayRecord): number | null {
  const { breaking } = stayLoadByTension(record.laid, record.size_mm, { tension_N: 0, low_N: 0, high_N: 0 });
  return record.aim_pct === null || breaking === null ? null : (record.aim_pct / 100) * breaking.force_N;
}

/** What turns of the screw bring where nothing but the wire gives; null: its thread is not known. [N] */
export function turnsBring_N(record: StayRecord, turns: number): number | null {
  return record.screw === null
    ? null
    : (takenUp_mm(record, turns) * stiffness_N(record.laid, record.size_mm)) / (1000 * record.length_m);
}

/** The last readings before and after towing, where one after the other lie in that order; null: none do. */
export function towed(
  readings: readonly StayReadingTold[],
): { readonly before: StayReadingTold; readonly after: StayReadingTold } | null {
  const last = readings.findLastIndex(({ reading }) => reading.moment === 'after towing');
  const before = readings[last - 1];
  const after = readings[last];
  return last < 1 || before === undefined || after === undefined ? null : { before, after };
}

/**
 * What a stay has grown by over all its readings, or what holds it come nearer, with every turn of its screw taken off:
 * null where there are not two readings thirty days apart.
 */
export function creptSince({ record, readings }: StayOfBook): {
  readonly from: StayReadingTold;
  readonly to: StayReadingTold;
  readonly mm: number;
  readonly off_mm: number;
} | null {
  const [from, to] = [readings[0], readings.at(-1)];
  if (from === undefined || to === undefined) return null;
  if (Date.parse(to.reading.on) - Date.parse(from.reading.on) < 30 * 86_400_000) return null;
  const turned_mm = readings.slice(1).reduce((sum, { reading }) => sum + takenUp_mm(record, reading.turns), 0);
  const mm = tooLongOf_mm(record, to) - tooLongOf_mm(record, from) + turned_mm;
  return { from, to, mm, off_mm: (bandOf_mm(record, to) + bandOf_mm(record, from)) / 2 };
}

function readingTold(record: StayRecord, id: Id, reading: StayReading, last: StayReadingTold | null): StayReadingTold {
  const { load, loose_mm } = toldBy(record, reading);
  const asked = askedOf(record, reading, last);
  const foretold_N = turnsBring_N(record, reading.turns);
  const mm = tooLong_mm(record, load.tension_N, loose_mm);
  const lost_mm = last === null ? null : mm - tooLongOf_mm(record, last) + takenUp_mm(record, reading.turns);
  const off_mm =
    last === null
      ? 0
      : (elastic_mm(record, load.high_N) - elastic_mm(record, load.low_N) + bandOf_mm(record, last)) / 2;
  return {
    id,
    reading,
    load,
    loose_mm,
    lost: lost_mm === null ? null : { mm: lost_mm, low_mm: lost_mm - off_mm, high_mm: lost_mm + off_mm },
    turned:
      last === null || reading.turns === 0 || foretold_N === null
        ? null
        : { foretold_N, came_N: load.tension_N - last.load.tension_N },
    working: asked?.kind === 'answered' ? answerTold(asked) : [],
    cautions: asked?.kind === 'answered' ? asked.answer.cautions : [],
  };
}

function toldBy({ laid, size_mm, length_m }: StayRecord, { told }: StayReading): { load: StayLoad; loose_mm: number } {
  switch (told.kind) {
    case 'stretch':
      return { load: stayLoadByStretch(laid, size_mm, told.stretch_mm / 1000 / told.measured_m), loose_mm: 0 };
    case 'pull':
      return {
        load: stayLoadByPull(laid, size_mm, {
          length_m,
          pulledAt_m: told.pulledAt_m,
          pull_N: told.pull_N,
          aside_m: told.aside_mm / 1000,
        }),
        loose_mm: 0,
      };
    case 'sway':
      return {
        load: stayLoadByTension(laid, size_mm, { tension_N: 0, low_N: 0, high_N: 0 }),
        loose_mm: 1000 * slackBySway_m(length_m, told.sway_mm / 1000),
      };
  }
}

/** The question that the reading puts, with its answer. */
function askedOf(record: StayRecord, { told }: StayReading, last: StayReadingTold | null) {
  const wire = { laid: record.laid, size: record.size_mm };
  const put = (id: string, fields: Readonly<Record<string, string | number>>) =>
    ask(rigQuestions().find((each) => each.id === id)!, fields);
  switch (told.kind) {
    case 'stretch':
      return put('loads.stay-by-stretch', { ...wire, stretch: told.stretch_mm, measured: told.measured_m });
    case 'pull':
      return put('loads.stay-by-pull', {
        ...wire,
        length: record.length_m,
        'pulled-at': told.pulledAt_m,
        pull: told.pull_N,
        aside: told.aside_mm,
      });
    case 'sway':
      // without its thread there are no turns to be told of
      if (record.screw === null) return null;
      return put('loads.stay-slack', {
        ...wire,
        length: record.length_m,
        thread: record.screw.thread,
        ends: record.screw.ends,
        before: last?.load.tension_N ?? 0,
        sway: told.sway_mm,
      });
  }
}

/** How far a stay is from just taut: too long above zero, stretched below. [mm] */
const tooLong_mm = (record: StayRecord, tension_N: number, loose_mm: number) =>
  loose_mm - elastic_mm(record, tension_N);
const tooLongOf_mm = (record: StayRecord, { load, loose_mm }: StayReadingTold) =>
  tooLong_mm(record, load.tension_N, loose_mm);
const elastic_mm = ({ laid, size_mm, length_m }: StayRecord, tension_N: number) =>
  (1000 * length_m * tension_N) / stiffness_N(laid, size_mm);
const bandOf_mm = (record: StayRecord, { load }: StayReadingTold) =>
  elastic_mm(record, load.high_N) - elastic_mm(record, load.low_N);
const takenUp_mm = ({ screw }: StayRecord, turns: number) => (screw === null ? 0 : turns * takenUpByTurn_mm(screw));
