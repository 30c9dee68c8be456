import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { questions } from '../apps/cli/src/questions.ts';
import { reference } from '../scripts/reference.ts';
import { handbookFolder, handbookHere, readme, runFolder, runKeptRows, runOthers } from './all-checks.ts';
import { tableLines } from './report.ts';
import { outsideRows } from './row.ts';
import { subjects } from './subjects.ts';

const results = runKeptRows();
const others = runOthers();

describe('rows from outside the project', () => {
  it('compares every row that is kept', () => {
    // counted in the files; a check that drops rows proves nothing
    const counted = Object.fromEntries(
      subjects.map((subject) => [
        subject,
        (JSON.parse(readFileSync(new URL(`./${subject}/rows.json`, import.meta.url), 'utf8')) as unknown[]).length,
      ]),
    );
    for (const [subject, rows] of Object.entries(counted))
      expect(results.filter(({ row }) => row.id.startsWith(`${subject}.`)).length).toBe(rows);
    expect(counted).toEqual({
      sky: 203,
      materials: 237,
      power: 183,
      wiring: 254,
      loads: 278,
      upkeep: 75,
      trailer: 85,
    });
  });

  it.each(tableLines(results).map((line) => [`${line.family}, ${line.kind}, ${line.provenance}`, line] as const))(
    '%s',
    (_, line) => {
      const wrong = results.filter(({ row, comparison }) => row.id.startsWith(`${line.family}.`) && !comparison.passed);
      expect(wrong.map(({ row, comparison }) => `${row.id}: ${comparison.got}, not ${comparison.wanted}`)).toEqual([]);
    },
  );

  it('has for every question a row from outside, or names it here', () => {
    const asked = new Set(results.map(({ row }) => row.question));
    const without = questions()
      .map(({ id }) => id)
      .filter((id) => !asked.has(id));
    // the first is held to another integration below, the second to its own law's rows, the third to properties: no outside
    // answer for weather made into spans is known
    expect(without).toEqual([
      'sky.suitable-spans',
      // made of sky.sun-position and sky.clear-sky-by-haze, which have rows; held to another's formulas below
      'sky.clear-sky',
      // held to published values and to properties beside them
      'sky.sun-and-sky',
      'sky.light-on-slope',
      'materials.cure-time',
      'materials.recoat-window',
      // an area over a spread, a cylinder: hand-worked beside them
      'materials.coats',
      'materials.plugs',
      // held to what named articles and the trade say of whole joints, and to properties beside it
      'materials.bedding-choice',
      // two growths and a length: hand-worked beside it
      'materials.joint-movement',
      // parts of a whole and the fewest that fit: hand-worked beside them
      'materials.hardener',
      'materials.batches',
      // held to another sky below
      'materials.night-surface',
      // the other way round of battery.rest-volts, held to it by a property, and to a measured curve in checks/battery
      'battery.rest-charge',
      // made of rested volts, which are, and a resistance
      'battery.card',
      // the sun outside the air against another program below, days against measured ones in checks/solar, and a panel, a
      // season’s days and what is kept to hand-worked cases beside them
      'solar.clear-day',
      'solar.season',
      'solar.panel',
      'solar.day',
      'solar.kept',
      // no night of a small boat was found published; the first three are worked out by another way below
      'power.draw',
      'power.endurance',
      'power.night',
      // held to hand-worked sizes and to properties beside it
      'power.sizing',
      // worked out step by step below
      'wiring.at-device',
      // chains of parts of the tables that have rows, held to hand-worked paths and to properties beside them
      'loads.path',
      'loads.fit',
      // followed sheave by sheave through both tackles below
      'loads.cascade',
      // its wire is held to the energy of a small turn below; tackles, winches and plates have rows
      'loads.board-hoist',
      // its plate is weighed slice by slice and its tackle and winch followed turn by turn below
      'loads.vertical-board',
      // shares of a shank; held to hand-worked joints, to a pin searched for along its depth below, and to the balance of a plate
      'loads.pilot-hole',
      'loads.fastening',
      'loads.bolt-pattern',
      'loads.filled-hole',
      // two lengths over their true ones; the print itself is measured where the card is printed
      'loads.gauge-card',
      // a pitch and a stiffness, both held to hand-worked figures beside them
      'loads.stay-by-turns',
      // held to its stretched parts in balance below
      'loads.stay-by-pull',
      // held to its stretch and to a hand-worked sway beside it
      'loads.stay-slack',
      // lengths between two places, hand-worked beside it
      'loads.mast-sideways',
      // held to the work of the leech below
      'loads.vang',
      // the calendar’s own sums, hand-worked beside it
      'dues.by-date',
      // played out by chance another way beside it
      'dues.by-use',
      // held to published bands of counts beside it
      'dues.use-rate',
      // a line through two points, hand-worked beside it
      'dues.wear',
    ]);
  });
});

describe('another program, another derivation', () => {
  it.each(others.map((other) => [`${other.what}, against ${other.against}`, other] as const))('%s', (_, other) => {
    expect(other.compared).toBeGreaterThan(100);
    expect(other.worst).toBeLessThanOrEqual(other.allowed);
  });
});

describe.skipIf(!handbookHere)(`the whole handbook${handbookHere ? '' : ' (skipped: no data)'}`, () => {
  it('has every row run or listed with its reason, and none failed', () => {
    const run = runFolder(handbookFolder);
    expect(run.unknown).toEqual([]);
    expect(run.unmapped).toEqual([]);
    expect(run.results.filter(({ comparison }) => !comparison.passed)).toEqual([]);
    const left = run.unasked.reduce((sum, { rows }) => sum + rows, 0);
    expect(run.results.length + left).toBe(outsideRows(handbookFolder).length);
  });
});

describe('what is written of the checks', () => {
  it('checks/README.md is what the checks say now', () => {
    expect(readFileSync(new URL('./README.md', import.meta.url), 'utf8')).toBe(readme(results, others));
  });
  it('docs/reference.md has every question as it is now', () => {
    expect(readFileSync(new URL('../docs/reference.md', import.meta.url), 'utf8')).toBe(reference(questions()));
  });
});
