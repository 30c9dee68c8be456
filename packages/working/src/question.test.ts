import { describe, expect, it } from 'vitest';
import { inBase } from '#units';
import {
  amount,
  ask,
  assuming,
  choice,
  count,
  day,
  fieldSchema,
  instant,
  length,
  number,
  question,
  series,
  temperature,
  timeZone,
} from './index.ts';

const doubled = question({
  id: 'test.doubled',
  title: 'Twice as long?',
  fields: {
    part: length('mm', 1, 500, 'length of the part'),
    times: assuming(count(1, 9, 'how many times'), 2, '2', 'twice is asked most'),
  },
  conflict: ({ part, times }) =>
    part * times > 1 ? { where: 'times', wrong: 'longer than the bench', right: 'give at most 1 m in all' } : null,
  answer: ({ part, times }) => ({
    kind: 'found',
    results: [{ symbol: 'l', meaning: 'length', value: part * times, unit: 'm' }],
    working: [],
    sources: [],
    limits: [],
    cautions: [],
  }),
});

describe('asking a question', () => {
  it('reads what was typed in the unit it was typed in', () => {
    const asked = ask(doubled, { part: '2 in', times: '3' });
    expect(asked.kind === 'answered' && asked.answer.results[0]?.value).toBeCloseTo(6 * 0.0254, 12);
  });

  it('takes a bare number in the unit of the field', () => {
    const asked = ask(doubled, { part: 8, times: 1 });
    expect(asked.kind === 'answered' && asked.answer.results[0]?.value).toBeCloseTo(0.008, 12);
  });

  it('says what stood in for what was not given', () => {
    const asked = ask(doubled, { part: '8' });
    expect(asked.kind === 'answered' && asked.assumed).toEqual([
      { field: 'times', shown: '2', because: 'twice is asked most' },
    ]);
  });

  it('names everything that is wrong at once, where it is, and what would be right', () => {
    expect(ask(doubled, { part: '8 kg', times: '2.5', colour: 'red' })).toEqual({
      kind: 'refused',
      faults: [
        { where: 'colour', wrong: "test.doubled has no field 'colour'", right: 'its fields are: part, times' },
        {
          where: 'part',
          wrong: "length of the part: 'kg' is not a unit of length",
          right: 'write it in mm, cm, m, km, in, ft, nmi, as in 8 mm, 1.2 m or 5/16 in',
        },
        {
          where: 'times',
          wrong: "how many times: '2.5' is not a whole number from 1 to 9",
          right: 'give one, as in 1',
        },
      ],
    });
    expect(ask(doubled, {})).toMatchObject({ kind: 'refused', faults: [{ where: 'part' }] });
    expect(ask(doubled, { part: 501 })).toMatchObject({
      kind: 'refused',
      faults: [{ wrong: 'length of the part: 501 is out of range', right: 'give 1 to 500 mm' }],
    });
    expect(ask(doubled, { part: 500, times: 3 })).toMatchObject({ kind: 'refused', faults: [{ where: 'times' }] });
    for (const wrong of [null, Number.NaN, Number.POSITIVE_INFINITY, [], {}, true, ''])
      expect(ask(doubled, { part: wrong }).kind, String(wrong)).toBe('refused');
  });

  it('gives a schema that takes and refuses the same, in the same words', () => {
    const schema = fieldSchema(doubled.fields.part);
    expect(schema.safeParse('1 cm')).toEqual({ success: true, data: inBase('length', 1, 'cm') });
    const refused = schema.safeParse('1 kg');
    expect(refused.success).toBe(false);
    expect(refused.error?.issues[0]?.message).toContain("'kg' is not a unit of length");
  });
});

describe('fields', () => {
  it.each([
    [series('temperature', '°C', -10, 40, { least: 1, most: 4 }, 'air'), '20 18, 15', [20, 18, 15]],
    [series('temperature', '°F', 0, 100, { least: 1, most: 4 }, 'air'), [32], [0]],
    [temperature('°C', -10, 40, 'air'), '50 °F', 10],
    [amount('duration', 'min', 0, 600, 'time'), '1 h 30', 90],
    [number('kJ/mol', 1, 300, 'energy'), '58,5', 58.5],
    [
      choice(
        [
          { id: 'WMO', title: '' },
          { id: 'other', title: '' },
        ],
        'whose',
      ),
      ' wmo ',
      'WMO',
    ],
    [day('day'), '2026-05-01', '2026-05-01'],
    [instant('moment'), '2026-05-01T12:30+02:00', Date.parse('2026-05-01T10:30Z')],
    [timeZone('zone'), 'Europe/Berlin', 'Europe/Berlin'],
  ] as const)('reads %#', (field, raw, value) => {
    const reading = field.read(raw);
    expect(reading.kind).toBe('read');
    if (reading.kind !== 'read') return;
    if (Array.isArray(value))
      for (const [i, each] of (reading.value as readonly number[]).entries()) expect(each).toBeCloseTo(value[i], 9);
    else if (typeof value === 'number') expect(reading.value).toBeCloseTo(value, 9);
    else expect(reading.value).toBe(value);
  });

  it.each([
    [series('temperature', '°C', -10, 40, { least: 1, most: 4 }, 'air'), '20 x 15', /number 2, 'x'/],
    [series('temperature', '°C', -10, 40, { least: 2, most: 4 }, 'air'), '20', /1 numbers given/],
    [instant('moment'), '2026-05-01T12:30', /not a moment/],
    [instant('moment'), '2026-02-30T12:30Z', /not a moment/],
    [instant('moment'), '2026-02-03T25:30Z', /no such time/],
    [day('day'), '2026-02-30', /not a day there is/],
    [timeZone('zone'), 'nowhere', /not a time zone/],
    [choice([{ id: 'a', title: '' }], 'which'), 'b', /there is no 'b'/],
    [number('', 0, 1, 'share'), '', /not a number/],
    [number('', 0, 1, 'share'), 2, /out of range/],
  ] as const)('refuses %#', (field, raw, wrong) => {
    const reading = field.read(raw);
    expect(reading.kind).toBe('not clear');
    if (reading.kind === 'not clear') expect(reading.wrong).toMatch(wrong);
  });
});
