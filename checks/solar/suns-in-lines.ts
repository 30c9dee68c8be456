/** What came of measured suns, as tables. */
import { markdownTable } from '../markdown-table.ts';
import { asked, type DayJudged, type FileJudged, type FolderJudged } from './judge-suns.ts';

/** Files of more days than this are told month by month. */
const mostDaysTold = 10;
/** Cloudy days of many must lie in their bands, which are of 9 in 10. [%] A count of few may fall short by chance. */
const insideOfMany_pct = 85;

const one = (value: number | null) => (value === null ? '' : value.toFixed(1));
const two = (value: number) => value.toFixed(2);
const share = (of: number, all: number) => (all === 0 ? '' : `${of} of ${all}`);

/** Whether a file is as asked: each of few days, or of many days all clear ones and the cloudy ones as often as a band of 9 in 10 must. */
export function fileHolds({ days }: FileJudged): boolean {
  if (days.length <= mostDaysTold) return days.every(({ holds }) => holds);
  const clear = days.filter(({ sky }) => sky.clear);
  const cloudy = days.filter(({ sky }) => !sky.clear);
  return (
    clear.filter(({ holds }) => holds).length * 100 >= insideOfMany_pct * clear.length &&
    cloudy.filter(({ inBand }) => inBand).length * 100 >= insideOfMany_pct * cloudy.length &&
    mean(cloudy, ({ ofSpread }) => ofSpread) <= asked.ofSpread
  );
}

export function folderInLines({ files, left }: FolderJudged): string[] {
  const few = files.filter(({ days }) => days.length <= mostDaysTold);
  const many = files.filter(({ days }) => days.length > mostDaysTold);
  return [
    ...fewInLines(few),
    ...many.flatMap(manyInLines),
    ...(left.length > 0 ? [...left.map(({ file, because }) => `- ${file}: ${because}`), ''] : []),
  ];
}

function fewInLines(files: readonly FileJudged[]): string[] {
  const days = files.flatMap((each) => each.days.map((day) => ({ each, day })));
  const lines =
    days.length === 0
      ? []
      : [
          ...markdownTable(
            [
              { head: 'file' },
              { head: 'day' },
              { head: 'found to be' },
              { head: 'measured, kWh/m²', right: true },
              { head: 'a clear day by the model', right: true },
              { head: 'off, %', right: true },
              { head: 'beam off, %', right: true },
              { head: 'sky off, %', right: true },
              { head: 'band, kWh/m²', right: true },
              { head: 'of the month’s spread', right: true },
              { head: '' },
            ],
            days.map(({ each, day }) => [
              each.file,
              day.day,
              day.sky.clear ? 'clear' : day.told,
              two(day.measured_kWh),
              two(day.clearDay_kWh),
              day.sky.clear ? one(day.off_pct) : '',
              day.sky.clear ? one(day.beamOff_pct) : '',
              day.sky.clear ? one(day.skyOff_pct) : '',
              day.sky.clear ? '' : `${two(day.low_kWh)} to ${two(day.high_kWh)}`,
              day.sky.clear ? '' : `${two(day.ofSpread)} of ${two(day.spread_kWh)}`,
              verdict(day),
            ]),
          ),
          '',
        ];
  const leftOut = files.filter((each) => each.leftOut > 0);
  for (const each of leftOut) lines.push(`- ${each.file}: ${each.leftOut} days left out, too little of them measured`);
  for (const { file, source } of files)
    if (source.place.skyTold !== null) lines.push(`- ${file}: its folder says ‘${source.place.skyTold}’`);
  if (lines.at(-1)?.startsWith('-')) lines.push('');
  return lines;
}

const verdict = (day: DayJudged) => {
  if (day.holds) return 'as asked';
  if (day.sky.clear) return `not as asked: over ${asked.clear_pct} % off`;
  return day.inBand ? 'not as asked: band too wide' : 'not as asked: beside its band';
};

function manyInLines(judged: FileJudged): string[] {
  const { file, days, leftOut, source } = judged;
  const row = (name: string, of: readonly DayJudged[]) => {
    const clear = of.filter(({ sky }) => sky.clear);
    const cloudy = of.filter(({ sky }) => !sky.clear);
    const offs = clear.map(({ off_pct }) => off_pct);
    const beams = clear.flatMap(({ beamOff_pct }) => beamOff_pct ?? []);
    return [
      name,
      String(of.length),
      two(mean(of, ({ measured_kWh }) => measured_kWh)),
      two(mean(of, ({ likely_kWh }) => likely_kWh)),
      share(clear.filter(({ holds }) => holds).length, clear.length),
      offs.length === 0 ? '' : one(Math.max(...offs.map(Math.abs))),
      beams.length === 0 ? '' : one(mean(beams, (each) => each)),
      share(cloudy.filter(({ inBand }) => inBand).length, cloudy.length),
      cloudy.length === 0 ? '' : two(mean(cloudy, ({ ofSpread }) => ofSpread)),
      cloudy.length === 0 ? '' : share(cloudy.filter((day) => day.ofSpread <= asked.ofSpread).length, cloudy.length),
    ];
  };
  const months = [...new Set(days.map(({ day }) => day.slice(0, 7)))].sort((a, b) =>
    source.typicalYear ? a.slice(5).localeCompare(b.slice(5)) : a.localeCompare(b),
  );
  return [
    `${file}: ${days.length} days${leftOut > 0 ? `, ${leftOut} left out because the file’s ends or joins cut them or too little was measured` : ''}. ${fileHolds(judged) ? 'As asked.' : 'Not as asked.'}`,
    '',
    ...markdownTable(
      [
        { head: 'month' },
        { head: 'days', right: true },
        { head: 'measured, kWh/m² a day', right: true },
        { head: 'likely', right: true },
        { head: `clear, within ${asked.clear_pct} %`, right: true },
        { head: 'farthest off, %', right: true },
        { head: 'beam off, %', right: true },
        { head: 'cloudy, in the band', right: true },
        { head: 'band of the spread', right: true },
        { head: 'no wider than half', right: true },
      ],
      [
        ...months.map((month) =>
          row(
            month,
            days.filter(({ day }) => day.startsWith(month)),
          ),
        ),
        row('all', days),
      ],
    ),
    '',
  ];
}

function mean<T>(list: readonly T[], of: (each: T) => number): number {
  return list.reduce((sum, each) => sum + of(each), 0) / list.length;
}
