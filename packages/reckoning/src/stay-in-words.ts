import type { StayRecord } from '#boat-book';
import { shareSays } from '#loads';
import { showNumber } from '#units';
import { aim_N, creptSince, type StayOfBook, type StayReadingTold, towed, turnsBring_N, turnsTo } from './stay-told.ts';
import { dayInWords, sentence } from './when-in-words.ts';

/** A stay in whole sentences. */
export interface StayWords {
  /** `1x19, 4 mm, 6.2 m from pin to pin` */
  readonly label: string;
  /** how it was last found; the first thing to read */
  readonly now: string;
  /** what is to be done or looked at, the gravest first */
  readonly next: readonly { readonly gravity: 'worsens' | 'plain'; readonly words: string }[];
}

/** More than this beyond what is read, and a stay is said to have grown. [mm] */
const assumedTelling_mm = 1;

export function stayInWords(stay: StayOfBook): StayWords {
  const { record, readings } = stay;
  const last = readings.at(-1);
  return {
    label: `${record.laid}, ${record.size_mm} mm, ${showNumber(record.length_m, 2)} m from pin to pin`,
    now:
      last === undefined
        ? 'Nothing has been read of it yet.'
        : `${dayOfYear(last.reading.on)}, ${last.reading.moment}: ${foundInWords(last)}`,
    next: last === undefined ? [] : [...afterTowing(stay), ...crept(stay), ...toAim(stay, last)],
  };
}

/** How it was found at one reading: `about 1310 N (1260 to 1350), 10 % of its breaking load: …`. */
export function foundInWords({ load, loose_mm, reading }: StayReadingTold): string {
  if (reading.told.kind === 'sway' || load.tension_N < 1)
    return loose_mm > 0
      ? `slack: its middle moves ${reading.told.kind === 'sway' ? showNumber(reading.told.sway_mm, 0) : '0'} mm to either side, so it is ${showNumber(loose_mm, 1)} mm too long.`
      : 'slack, only just.';
  const band = `(${newtons(load.low_N)} to ${newtons(load.high_N)})`;
  const share =
    load.share_pct === null
      ? 'No table of ours has its breaking load'
      : `${showNumber(load.share_pct.value, 0)} % of its breaking load when new: ${shareSays(load.share_pct.value)}`;
  return `about ${newtons(load.tension_N)} N ${band}, ${load.share_pct === null ? `${share.charAt(0).toLowerCase()}${share.slice(1)}` : share}.`;
}

/**
 * What is to be read next, before it is read: as it was, or after turns of its screw between nothing and all that the wire
 * would take up; null: the screw's thread is not known. @param turns since the last reading, tightening
 */
export function foretoldInWords(record: StayRecord, { load, loose_mm }: StayReadingTold, turns: number): string | null {
  if (turns === 0)
    return loose_mm > 0
      ? 'Foretold, if nothing has moved: slack, as it was.'
      : `Foretold, if nothing has moved: ${newtons(load.low_N)} to ${newtons(load.high_N)} N.`;
  const most_N = turnsBring_N(record, turns);
  if (most_N === null) return null;
  const ends = [load.tension_N, Math.max(0, load.tension_N + most_N)].sort((a, b) => a - b);
  return `Foretold: ${newtons(ends[0]!)} to ${newtons(ends[1]!)} N, by how much mast and hull give.`;
}

/** What came of turns and what it lost since the reading before; null: nothing to say. */
export function sinceInWords({ lost, turned, reading }: StayReadingTold): string | null {
  if (turned !== null) {
    const came = turned.came_N;
    const share = (100 * came) / turned.foretold_N;
    const turns = `${turnsInWords(Math.abs(reading.turns))} ${reading.turns > 0 ? 'tighter' : 'easier'} foretold at most ${signed(turned.foretold_N)} N`;
    if (came * reading.turns <= 0)
      return `${turns}, and ${signed(came)} N came: something else gave or moved. Look at terminals, mast step and chainplates.`;
    return share > 115
      ? `${turns}, and ${signed(came)} N came: more than the wire can take up, so a reading or a turn is wrong.`
      : `${turns}, and ${signed(came)} N came: ${showNumber(share, 0)} %; the rest went into mast, hull and terminals.`;
  }
  if (lost === null) return null;
  if (lost.low_mm > 0.2)
    return `${showNumber(lost.mm, 1)} mm (${showNumber(lost.low_mm, 1)} to ${showNumber(lost.high_mm, 1)}) slacker than at the reading before.`;
  if (lost.high_mm < -0.2)
    return `${showNumber(-lost.mm, 1)} mm (${showNumber(-lost.high_mm, 1)} to ${showNumber(-lost.low_mm, 1)}) tauter than at the reading before.`;
  return 'As at the reading before, as near as can be read.';
}

function afterTowing(stay: StayOfBook): StayWords['next'] {
  const pair = towed(stay.readings);
  if (pair === null || pair.after !== stay.readings.at(-1)) return [];
  const { mm, turns } = turnsTo(stay.record, pair.after, pair.before.load.tension_N);
  const screw = turns === null ? '' : ` ${turnsInWords(Math.abs(turns))} ${turns > 0 ? 'tighter' : 'easier'}`;
  if (Math.abs(mm) < 0.3) return [{ gravity: 'plain', words: 'After towing it is as it was before.' }];
  const back =
    turns === null
      ? 'Put its screw’s thread in, and the turns to bring it back are told.'
      : `At least${screw} brings it back to ${newtons(pair.before.load.tension_N)} N.`;
  return [
    {
      gravity: mm > assumedTelling_mm ? 'worsens' : 'plain',
      words: `After towing it is ${showNumber(Math.abs(mm), 1)} mm ${mm > 0 ? 'slacker' : 'tauter'} than before. ${back}${mm > assumedTelling_mm ? ' Look first whether a split pin or lock nut has gone, and at the mast step.' : ''}`,
    },
  ];
}

function crept(stay: StayOfBook): StayWords['next'] {
  const found = creptSince(stay);
  if (found === null) return [];
  const span = `From ${dayOfYear(found.from.reading.on)} to ${dayOfYear(found.to.reading.on)}`;
  const band = `${showNumber(found.mm, 1)} mm (${showNumber(found.mm - found.off_mm, 1)} to ${showNumber(found.mm + found.off_mm, 1)})`;
  if (found.mm - found.off_mm > assumedTelling_mm)
    return [
      {
        gravity: 'worsens',
        words: `${span} it has grown by ${band}, its turns taken off: look for a strand gone at a terminal, a chainplate that moves, a mast step that sinks.`,
      },
    ];
  return [{ gravity: 'plain', words: `${span} it has not grown by more than can be read, its turns taken off.` }];
}

function toAim({ record }: StayOfBook, last: StayReadingTold): StayWords['next'] {
  const aim = aim_N(record);
  if (aim === null || last.reading.moment === 'after towing') return [];
  const { mm, turns } = turnsTo(record, last, aim);
  if (Math.abs(mm) < 0.2) return [{ gravity: 'plain', words: `It is at the ${record.aim_pct} % it is set to.` }];
  const way = turns === null ? `${showNumber(Math.abs(mm), 1)} mm` : `at least ${turnsInWords(Math.abs(turns))}`;
  return [
    {
      gravity: 'plain',
      words: sentence(
        `${way} ${mm > 0 ? 'tighter' : 'easier'} for the ${record.aim_pct} % it is set to, ${newtons(aim)} N.`,
      ),
    },
  ];
}

/** To the nearest ten. */
const newtons = (value: number) => showNumber(10 * Math.round(value / 10), 0);
const signed = (value: number) => `${value > 0 ? '+' : ''}${newtons(value)}`;
/** `24 October 2026` */
const dayOfYear = (day: string) => `${dayInWords(day).replace(/^\S+ /, '')} ${day.slice(0, 4)}`;

/** `half a turn`, `1 turn`, `2.5 turns`: to the nearest quarter, as a hand can. */
export function turnsInWords(turns: number): string {
  const quarters = Math.max(1, Math.round(4 * turns));
  const named: Readonly<Record<number, string>> = {
    1: 'a quarter of a turn',
    2: 'half a turn',
    3: 'three quarters of a turn',
    4: '1 turn',
  };
  return named[quarters] ?? `${showNumber(quarters / 4, quarters % 4 === 0 ? 0 : quarters % 2 === 0 ? 1 : 2)} turns`;
}
