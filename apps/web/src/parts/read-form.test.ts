import { describe, expect, it } from 'vitest';
import { formReading, readFigure } from './read-form.ts';

const minutes = { min: 1, max: 600, unit: 'min', whole: true };
const degrees = { min: -60, max: 60, unit: '°C' };

describe('a typed figure', () => {
  it('takes a comma, a point, a typographic minus and a space between thousands', () => {
    expect(readFigure(' 12,5 ', degrees)).toEqual({ kind: 'figure', value: 12.5 });
    expect(readFigure('12.5', degrees)).toEqual({ kind: 'figure', value: 12.5 });
    expect(readFigure('−4', degrees)).toEqual({ kind: 'figure', value: -4 });
    expect(readFigure('1 200', { min: 0, max: 5000, unit: 'kg' })).toEqual({ kind: 'figure', value: 1200 });
  });

  it.each(['', '  ', 'ten', '1e3', '0x10', '1.2.3', '--4', 'Infinity', '5 min'])('refuses %j', (text) => {
    expect(readFigure(text, minutes).kind).toBe('refused');
  });

  it('says the range and the unit when it refuses', () => {
    expect(readFigure('700', minutes)).toEqual({
      kind: 'refused',
      why: '700 is out of range. Give a figure from 1 to 600 min.',
    });
    expect(readFigure('2,5', minutes)).toMatchObject({ why: expect.stringMatching(/not a whole number/) });
  });
});

describe('reading a form', () => {
  it('keeps the first fault of a field and is sound only without any', () => {
    const form = formReading<'name' | 'date' | 'wind'>();
    expect(form.words('name', '  bow roller ', 'Name it.')).toBe('bow roller');
    expect(form.sound()).toBe(true);
    expect(form.figureOrNone('wind', '', { min: 0, max: 60, unit: 'kn' })).toBeNull();
    form.day('date', '2027-02-30');
    form.refuse('date', 'a second fault');
    expect(form.faults).toEqual({ date: "'2027-02-30' is not a date." });
    expect(form.sound()).toBe(false);
  });

  it('has no default for an empty figure', () => {
    const form = formReading<'wind'>();
    expect(form.figure('wind', '', { min: 0, max: 60, unit: 'kn' })).toBeNaN();
    expect(form.faults.wind).toBe('There is no figure here. Give one from 0 to 60 kn.');
  });
});
