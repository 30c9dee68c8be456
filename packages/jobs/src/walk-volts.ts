import { numberPattern, spokenNumber } from './spoken-numbers.ts';
import type { ProposedReading } from './walk-round.ts';

const digit = '(?:oh|nought|zero|one|two|three|four|five|six|seven|eight|nine)';
/** 12.4, 12,65 V, twelve point six five, eleven nine */
const figure = new RegExp(
  `(?<![a-zß-ɏ0-9.,])(\\d{1,2}[.,]\\d{1,2}|${numberPattern} (?:point|dot|decimal|comma) (?:${digit}|\\d+)(?: ${digit})?|(?:ten|eleven|twelve|thirteen|fourteen) (?:${digit}|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?: ${digit})?)(?! ?(?:mm|cm|m|min|minutes?|h|hours?|amps?|ah|a|bar|kg|litres?|days?|weeks?|metres?|inch(?:es)?)(?![a-zß-ɏ]))(?![0-9])`,
  'gi',
);
const ofBattery =
  /(?<![a-zß-ɏ])(?:batter(?:y|ies)|batts?|volts?|voltage|voltmeter|multimeter|meter|v)(?![a-zß-ɏ])|\d ?v(?![a-zß-ɏ])/i;

/**
 * The battery's volts told in a sentence: of two figures the last, which puts the first right. Null where none is told,
 * or it is no battery's of 6, 12 or 24 V. A figure of a battery at rest needs nothing on *and* no sun on the panel.
 */
export function voltsTold(sentence: string): Pick<ProposedReading, 'volts' | 'circumstance' | 'panelDark'> | null {
  if (!ofBattery.test(sentence)) return null;
  const told = [...sentence.matchAll(figure)].map(([words]) => voltsOf(words.toLowerCase())).filter(isBatterys);
  const volts = told.at(-1);
  if (volts === undefined) return null;
  const words = sentence.toLowerCase();
  const dark = /panel[^.]*(?:dark|covered|off|disconnected|shaded)|before (?:sun ?rise|dawn)|(?:still|was) dark/.test(
    words,
  );
  const off =
    /nothing (?:switched |turned )?on|everything (?:switched |turned )?off|all off|no loads?|rested|loads off/.test(
      words,
    );
  const charge =
    /charg(?:er|ing)(?: \w+){0,2} (?:on|in|going)|on charge|(?:still )?charging|engine (?:on|running)|motor running|panel in (?:full )?sun/.test(
      words,
    );
  const load =
    /(?:light|lights|lamp|fridge|radio|pump|heater|plotter)s?(?: \w+)? (?:was|were|is|are|still)? ?on\b|under load|with the [\w ]+ on\b/.test(
      words,
    );
  return {
    volts,
    circumstance: charge
      ? 'on charge'
      : load
        ? 'under load'
        : off && (dark || /rested/.test(words))
          ? 'rested'
          : 'not said',
    panelDark: dark ? true : null,
  };
}

const isBatterys = (volts: number | null): volts is number =>
  volts !== null && ((volts >= 5 && volts <= 7.6) || (volts >= 9.5 && volts <= 15.5) || (volts >= 19 && volts <= 31));

function voltsOf(words: string): number | null {
  if (/^\d/.test(words) && /^[\d.,]+$/.test(words)) return Number(words.replace(',', '.'));
  const [whole, ...rest] = words.split(/ (?:point|dot|decimal|comma) /);
  const parts = rest.length > 0 ? rest[0]!.split(' ') : words.split(' ').slice(1);
  const before = rest.length > 0 ? spokenNumber(whole!) : spokenNumber(words.split(' ')[0]!);
  const after = parts.map((part) =>
    /^(?:oh|nought)$/.test(part) ? 0 : /^\d+$/.test(part) ? part : spokenNumber(part),
  );
  if (before === null || after.some((part) => part === null)) return null;
  const [first, second] = after.map(Number);
  // 'twelve sixty five' says tens and ones, 'twelve six five' figure by figure
  const figures = first! >= 10 && second !== undefined ? String(first! + second) : after.join('');
  return Number(`${before}.${figures}`);
}
