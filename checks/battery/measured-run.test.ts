import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { dischargeOf, type MeasuredRun, measuredFile, measuredFiles } from './measured-run.ts';

const kept = fileURLToPath(new URL('./data', import.meta.url));
const shared = fileURLToPath(new URL('../../../shared/data/battery', import.meta.url));
const here = existsSync(shared);

const given_Ah = ({ hours, amps }: MeasuredRun, from = 0, to = hours.length - 1) => {
  let sum = 0;
  for (let i = from + 1; i <= to; i++) sum += ((amps[i]! + amps[i - 1]!) / 2) * (hours[i]! - hours[i - 1]!);
  return sum;
};
const runs = measuredFiles(kept).filter((each): each is MeasuredRun => each.kind === 'run');

describe('measured runs', () => {
  // ampere-hours as integrated by those who put the data together, trapezoids
  it.each([
    ['agm17ah_2017-03-25', 19.8, 0.05],
    ['agm17ah_2017-03-27', 19.7, 0.05],
    ['agm17ah_2017-03-30', 19.0, 0.05],
    ['lfp2ah_25degC_Co20', 2.0745, 0.0001],
    ['lfp2ah_25degC_1C', 1.9434, 0.0001],
  ] as const)('%s gave %f Ah', (name, wanted, allowed) => {
    const run = runs.find(({ file }) => file.startsWith(name))!;
    expect(Math.abs(given_Ah(run) - wanted)).toBeLessThanOrEqual(allowed);
  });

  it('are known by their columns, kind and size by their names, single cells put in series', () => {
    expect(
      runs.map(({ file, chemistry, nominal_Ah, inSeries }) => [file.slice(0, 8), chemistry, nominal_Ah, inSeries]),
    ).toEqual([
      ['agm17ah_', 'agm', 17, 1],
      ['agm17ah_', 'agm', 17, 1],
      ['agm17ah_', 'agm', 17, 1],
      ['lfp2ah_2', 'lifepo4', 2, 4],
      ['lfp2ah_2', 'lifepo4', 2, 4],
      ['lfp_bank', 'lifepo4', 500, 1],
    ]);
  });

  it('are let down to the cut-off in one discharge, pauses included', () => {
    for (const run of runs) {
      const found = dischargeOf(run);
      if (run.nominal_Ah === 500) {
        expect(found).toEqual({ none: 'it does not come to 10 V under load' });
        continue;
      }
      if ('none' in found) throw new Error(found.none);
      expect(run.volts[found.last]!).toBeLessThanOrEqual(run.chemistry === 'agm' ? 10.8 : 10);
      expect(run.volts[found.first]!).toBeGreaterThan(12.5);
      expect(found.out_Ah.at(-1)!).toBeCloseTo(given_Ah(run, found.first, found.last), 9);
    }
  });

  it('out of a file that cannot be read are named with the reason', () => {
    expect(measuredFile('thing_17ah.csv', 'time,voltage,current,temperature\n')).toMatchObject({
      kind: 'skipped',
      because: 'its name says no kind of battery (agm, gel, flooded, lfp)',
    });
    expect(measuredFile('agm17ah.csv', 'a,b,c\n1,2,3\n')).toMatchObject({
      because: 'its columns are not known: a, b, c',
    });
    expect(measuredFile('agm.csv', 'time,voltage,current,temperature\n')).toMatchObject({
      because: 'its name gives no size (17ah, 2ah)',
    });
    expect(measuredFile('agm17ah.csv', '')).toMatchObject({ because: 'it is empty' });
    expect(measuredFile('agm17ah.csv', 'time,voltage,current,temperature\n2020-01-01 00:00:00,x,1,\n')).toMatchObject({
      because: 'it has fewer than ten rows with time, volts and current',
    });
  });

  it('have the sign of their form: positive is out of the battery in all', () => {
    const rows = (form: (i: number) => string) => Array.from({ length: 12 }, (_, i) => form(i)).join('\n');
    const charge = measuredFile(
      'agm100ah.csv',
      `time_s,ambient_C,current_A,voltage_V,battery_C\n${rows((i) => `${i * 15},20,31,12.5,25`)}`,
    );
    expect(charge).toMatchObject({ kind: 'run', battery_C: 25 });
    expect((charge as MeasuredRun).amps[3]).toBe(-31);
    const bank = measuredFile(
      'lfp_5ah.csv',
      `time_utc,voltage,current\n${rows((i) => `2026-07-16 14:21:${10 + i}.5+00:00,13.1,-8`)}`,
    );
    expect((bank as MeasuredRun).amps[3]).toBe(8);
    expect((bank as MeasuredRun).hours[11]).toBeCloseTo(11 / 3600, 9);
    const curve = measuredFile('lfp1.2ah_pseudo.csv', `soc,ocv_V\n${rows((i) => `${i / 11},${3 + i / 30}`)}`);
    expect(curve).toMatchObject({ kind: 'rest curve', chemistry: 'lifepo4' });
  });
});

describe.skipIf(!here)(`the whole data folder${here ? '' : ' (skipped: no data)'}`, () => {
  it('is read or named, and what is kept here is the same', () => {
    const all = measuredFiles(shared);
    expect(all.length).toBeGreaterThanOrEqual(7);
    for (const run of runs) {
      const same = all.find(({ file }) => file === run.file) as MeasuredRun;
      expect(same.volts).toEqual(run.volts);
    }
  });
});
