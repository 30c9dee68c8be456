import { describe, expect, it } from 'vitest';
import { hourAfter, type LoadTestDraft, readLoadTest } from './load-test-draft.ts';

const draft: LoadTestDraft = {
  load: 'watts',
  watts: '12',
  day: '2026-05-02',
  start: { clock: '22:30', volts: '12,80' },
  rested: true,
  lines: [
    { clock: '23:30', volts: '12.6' },
    { clock: '00:30', volts: '12.5' },
    { clock: '01:30', volts: '' },
  ],
  air: '',
  note: ' old lamp ',
};
const now = Date.parse('2026-05-03T08:00:00Z');
const read = (parts: Partial<LoadTestDraft>, at = now) =>
  readLoadTest({ ...draft, ...parts }, { nominal_V: 12 }, 'house', 'UTC', at);

describe('a load test that was filled in', () => {
  it('goes past midnight, passes over an empty line, and keeps what was on', () => {
    const found = read({});
    if (found.kind === 'refused') throw new Error(JSON.stringify(found.faults));
    expect(found.fields).toMatchObject({ battery: 'house', circuit: null, watts: 12, note: 'old lamp' });
    expect(found.fields.readings.map(({ at, volts, circumstance }) => [at, volts, circumstance])).toEqual([
      ['2026-05-02T22:30:00.000Z', 12.8, 'rested'],
      ['2026-05-02T23:30:00.000Z', 12.6, 'under load'],
      ['2026-05-03T00:30:00.000Z', 12.5, 'under load'],
    ]);
    const lamp = read({ load: 'anchor-light', watts: '', rested: false });
    if (lamp.kind === 'refused') throw new Error(JSON.stringify(lamp.faults));
    expect(lamp.fields).toMatchObject({ circuit: 'anchor-light', watts: null });
    expect(lamp.fields.readings.map(({ on, panelDark }) => [on, panelDark])).toEqual([
      [[], null],
      [['anchor-light'], true],
      [['anchor-light'], true],
    ]);
  });

  it('is refused by name with what would be right', () => {
    const refused = (parts: Partial<LoadTestDraft>, at = now) => {
      const found = read(parts, at);
      return found.kind === 'refused' ? found.faults : {};
    };
    expect(refused({ load: '' })).toEqual({ load: 'Choose what drew.' });
    expect(refused({ watts: '0' }).watts).toMatch(/0.1 to 10000 W/);
    expect(refused({ lines: [{ clock: '23:30', volts: '1.26' }] })['volts 0']).toMatch(/8 to 16.5 V/);
    expect(refused({ lines: [{ clock: '', volts: '12.6' }] })['clock 0']).toMatch(/no time here/);
    expect(refused({ lines: [] })['volts 0']).toMatch(/no reading under load/);
    expect(refused({}, Date.parse('2026-05-03T00:00:00Z'))['clock 1']).toMatch(/still to come/);
    // each line before the last one is the next day's: a slip of the clock
    const slip = [
      { clock: '21:30', volts: '12.6' },
      { clock: '21:00', volts: '12.5' },
    ];
    expect(refused({ lines: slip }, now + 7 * 86_400_000)['clock 1']).toMatch(/more than 24 hours/);
  });

  it('offers the next line an hour on', () => {
    expect([hourAfter('22:30'), hourAfter('23:15'), hourAfter('')]).toEqual(['23:30', '00:15', '']);
  });
});
