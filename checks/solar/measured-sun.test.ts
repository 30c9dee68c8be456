import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { asked, judgeFolder, judgeSun } from './judge-suns.ts';
import { type MeasuredSun, measuredSun, measuredSuns } from './measured-sun.ts';
import { stationsToldIn } from './stations.ts';
import { fileHolds, folderInLines } from './suns-in-lines.ts';

const kept = fileURLToPath(new URL('./data', import.meta.url));
const shared = fileURLToPath(new URL('../../../shared/data/solar', import.meta.url));
const here = existsSync(shared);
const place = { latitude_deg: 40, longitude_deg: -105, elevation_m: 1800, skyTold: null };
const read = (file: string, text: string, at: typeof place | null = place): MeasuredSun => {
  const found = measuredSun(file, text, at);
  if (found.kind === 'skipped') throw new Error(found.because);
  return found;
};
const kWh = ({ global, step_min }: MeasuredSun) =>
  global.reduce((sum, each) => sum + (each > 0 ? (each * step_min) / 60_000 : 0), 0);
const rows = (count: number, row: (i: number) => string) => Array.from({ length: count }, (_, i) => row(i)).join('\n');
const two = (n: number) => String(n).padStart(2, '0');

describe('the forms of measured sun', () => {
  it('SURFRAD: place from its head, bad quality missing, minutes up to their time in UTC', () => {
    const text = ` Somewhere\n   40.10  105.20 1700 m version 1\n${rows(
      20,
      (i) => ` 2020 100  4  9 18 ${i}  18.000 40.00  ${600 + i}.0 ${i === 3 ? 1 : 0}  10.0 0  800.0 0  100.0 0`,
    )}`;
    const sun = read('a.dat', text, null);
    expect(sun.place).toMatchObject({ latitude_deg: 40.1, longitude_deg: -105.2, elevation_m: 1700 });
    expect(sun.at[0]).toBe(Date.parse('2020-04-09T17:59:30Z'));
    expect(sun.step_min).toBe(1);
    expect(sun.global[3]).toBeNaN();
    expect([sun.global[4], sun.beam![4], sun.sky![4]]).toEqual([604, 800, 100]);
  });

  it('SRML: codes in the head, 2400 is midnight after, flag 99 is missing', () => {
    const text = `94255\t2018\t1000\t0\t2010\t0\n${rows(13, (i) => `31\t${i === 12 ? 2400 : 1200 + 5 * i}\t${300 + i}\t${i === 1 ? 99 : 12}\t0\t12`)}`;
    const sun = read('EUPO.txt', text, null);
    expect(sun.place.latitude_deg).toBe(44.05);
    expect(sun.global[1]).toBeNaN();
    expect(sun.at[0]! + 2.5 * 60_000).toBe(Date.parse('2018-01-31T20:00:00Z'));
    expect(sun.at[12]! + 2.5 * 60_000).toBe(Date.parse('2018-02-01T08:00:00Z'));
    expect(measuredSun('x.txt', '94255\t2018\t7008\t0\n1\t1\t5\t12', place)).toMatchObject({
      because: 'it has no column of the sun on a level surface (code 1000)',
    });
  });

  it('typical year: hours that end at their time, by the clock of its head, −9900 missing', () => {
    const head =
      '700000,"SOME PLACE",XX,-9.0,55.300,-160.500,7\nDate (MM/DD/YYYY),Time (HH:MM),ETR (W/m^2),GHI (W/m^2),TotCld (tenths)\n';
    const text = head + rows(24, (i) => `01/01/1997,${two(i + 1)}:00,0,${i === 12 ? -9900 : 10 * i},${i % 10}`);
    const sun = read('b.csv', text, null);
    expect(sun).toMatchObject({ typicalYear: true, step_min: 60, beam: null });
    expect(sun.at[0]).toBe(Date.parse('1997-01-01T09:30:00Z'));
    expect(sun.at[23]).toBe(Date.parse('1997-01-02T08:30:00Z'));
    expect(sun.global[12]).toBeNaN();
    expect(sun.cloud_tenths![7]).toBe(7);
  });

  it('named columns: date and clock, day of year, stamps; sums and modelled columns are passed over', () => {
    const dated = read(
      'c.txt',
      `DATE (MM/DD/YYYY),MST,Global PSP (Accumulated) [kWhr/m^2],Global PSP [W/m^2]\n${rows(20, (i) => `10/14/2018,12:${two(i)},99999,${i === 2 ? -7999 : 500 + i}`)}`,
    );
    expect(dated.at[0]! + 30_000).toBe(Date.parse('2018-10-14T19:00:00Z'));
    expect(dated.global[1]).toBe(501);
    expect(dated.global[2]).toBeNaN();
    const byDay = read(
      'd.txt',
      `,Year,DOY,CST,Direct Normal [W/m^2],Global Horizontal [W/m^2]\n${rows(20, (i) => `x,2019,319,${1230 + i},${700 + i},${400 + i}`)}`,
    );
    expect(byDay.at[0]! + 30_000).toBe(Date.parse('2019-11-15T18:30:00Z'));
    expect([byDay.global[5], byDay.beam![5]]).toEqual([405, 705]);
    const stamped = (zone: string) =>
      read(
        'irradiance_rmis.csv',
        `,pvlib_ghi,irradiance_ghi__7,irradiance_dni__8,irradiance_dhi__9,irradiance_poa__10\n${rows(20, (i) => `2021-04-0${1 + Math.floor(i / 12)} ${two(12 + Math.floor(i / 12))}:${two((5 * i) % 60)}:00${zone},1,${i},2,3,4`)}`,
      );
    expect(stamped('').at[0]! + 2.5 * 60_000).toBe(Date.parse('2021-04-01T19:00:00Z'));
    expect(stamped('-07:00').at[0]).toBe(stamped('').at[0]);
    expect(stamped('').step_min).toBe(5);
    expect([stamped('').global[4], stamped('').beam![4], stamped('').sky![4]]).toEqual([4, 2, 3]);
    const plain = read('bms_ghi_day.csv', `Date Time,value\n${rows(20, (i) => `1/20/2022 9:${two(i)},${i}`)}`);
    expect(plain.at[0]! + 30_000).toBe(Date.parse('2022-01-20T16:00:00Z'));
    const chosen = read(
      'g.csv',
      `DATE (MM/DD/YYYY),LST,Global UV-A [W/m^2],Global PAR [umol/s/m^2],Global CMP22 (vent/cor) [W/m^2]\n${rows(20, (i) => `01/20/2022,09:${two(i)},1,2,${i}`)}`,
    );
    expect(chosen.global[7]).toBe(7);
    expect(chosen.at[0]).toBe(plain.at[0]);
    expect(measuredSun('e.csv', 'time,temp\n1,2\n', place)).toMatchObject({ because: 'its form is not known' });
    expect(
      measuredSun('f.csv', `Time UTC,UTC,ghi\n${rows(20, (i) => `2021-01-01T10:${two(i)}Z,,1`)}`, null),
    ).toMatchObject({
      because: expect.stringContaining('where it stood is not known'),
    });
  });

  it('places are read from the tables of a README', () => {
    const told = stationsToldIn(
      '| `a.dat`, b.txt | a bay | 33.50 S, 151.20 E, 12 m (m) | 1 May | overcast |\ntext 1 N, 2 E, 3 m',
    );
    expect([...told.keys()]).toEqual(['a.dat', 'b.txt']);
    expect(told.get('a.dat')).toEqual({
      latitude_deg: -33.5,
      longitude_deg: 151.2,
      elevation_m: 12,
      skyTold: 'overcast',
    });
  });
});

describe('a day judged', () => {
  const clear = measuredSuns(kept).find((each): each is MeasuredSun => each.kind === 'sun')!;
  const changed = (of: (value: number, i: number) => number): MeasuredSun => ({
    ...clear,
    global: clear.global.map(of),
    beam: null,
    sky: null,
  });

  it('measured clear is found clear and within what is asked', () => {
    const [day] = judgeSun(clear).days;
    expect(day!.sky).toMatchObject({ clear: true });
    expect(Math.abs(day!.off_pct)).toBeLessThanOrEqual(asked.clear_pct);
    expect(Math.abs(day!.beamOff_pct!)).toBeLessThan(8);
    expect(fileHolds(judgeSun(clear))).toBe(true);
  });

  it('a tenth too bright is still clear, and is not as asked: nothing is scaled to the day but the finding', () => {
    const bright = judgeSun(changed((value) => 1.12 * value));
    expect(bright.days[0]!.sky.clear).toBe(true);
    expect(fileHolds(bright)).toBe(false);
    expect(folderInLines({ files: [bright], left: [] }).join('\n')).toContain('not as asked: over 8 % off');
  });

  it('broken by cloud is found broken, and overcast overcast; a band beside the truth does not hold', () => {
    const broken = judgeSun(changed((value, i) => value * (Math.floor(i / 20) % 2 === 0 ? 1 : 0.3)));
    expect(broken.days[0]!).toMatchObject({ told: 'broken', inBand: true, holds: true });
    const grey = judgeSun(changed((value) => 0.28 * value));
    expect(grey.days[0]!).toMatchObject({ told: 'overcast', inBand: true, holds: true });
    const dark = judgeSun(changed((value) => 0.02 * value));
    expect(dark.days[0]!).toMatchObject({ told: 'overcast', inBand: false, holds: false });
  });

  it('with a few rows missing is judged over the others, with many left out', () => {
    const few = judgeSun(changed((value, i) => (i % 20 === 0 ? Number.NaN : value)));
    expect(Math.abs(few.days[0]!.off_pct)).toBeLessThanOrEqual(asked.clear_pct);
    const many = judgeSun(changed((value, i) => (i % 3 === 0 ? Number.NaN : value)));
    expect(many).toMatchObject({ days: [], leftOut: 1 });
  });
});

describe('the page', () => {
  it.skipIf(!here)(`says what came of the folder beside the project${here ? '' : ' (skipped: no data)'}`, () => {
    const judged = judgeFolder(shared);
    const page = readFileSync(new URL('./README.md', import.meta.url), 'utf8');
    for (const line of folderInLines(judged)) expect(page).toContain(line);
    expect(judged.files.every(fileHolds)).toBe(true);
    // as integrated by those who put the data together, kWh/m²
    for (const [part, wanted, allowed] of [
      ['surfrad', 3.4, 0.01],
      ['SRML', 0.74, 0.005],
      ['midc', 3.09, 0.005],
      ['tmy3', 829, 0.5],
    ] as const)
      expect(
        Math.abs(kWh(judged.files.find(({ file }) => file.startsWith(part))!.source) - wanted),
      ).toBeLessThanOrEqual(allowed);
  });
});
