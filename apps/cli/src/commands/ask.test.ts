import { describe, expect, it } from 'vitest';
import { ask } from './ask.ts';

function run(...args: string[]) {
  const lines: string[] = [];
  const code = ask(args, (line) => lines.push(line));
  return { code, text: lines.join('\n').replaceAll('\u00a0', ' ') };
}

describe('fettle ask', () => {
  it('reproduces the worked example of the solar position report with its intermediate values', () => {
    // NREL/TP-560-34302 (2008), table A5.1, as carried in the handbook rows sky.spa.*
    const { code, text } = run(
      'sky.sun-position',
      ...['--at', '2003-10-17T12:30:30-07:00', '--latitude', '39.742476', '--longitude', '-105.1786'],
      ...['--elevation', '1830.14 m', '--pressure=820 hPa', '--air', '11 °C', '--delta-t', '67 s'],
    );
    expect(code).toBe(0);
    for (const line of ['L = ', '24.0182617 °', '23.4404645 °', '202.227408 °', '−9.31434009 °', '11.105902 °'])
      expect(text).toContain(line);
    expect(text).toMatch(/θ = .* 50\.111622 °/);
    expect(text).toMatch(/Φ = .* 194\.3402\d* °/);
    expect(text).toContain('Taken, because nothing was given\n  horizon-refraction 0.5667°');
  });

  it('gives the same as data', () => {
    const { code, text } = run('sky.dew-point', '--air', '20', '--humidity', '50', '--json');
    expect(code).toBe(0);
    const data = JSON.parse(text);
    expect(data.question).toBe('sky.dew-point');
    // handbook sky.dew.wmo.20.50
    expect(data.answer.results[0].value).toBeCloseTo(9.255174599, 8);
  });

  it('answers with a truth where the sun does not rise', () => {
    const { code, text } = run(
      'sky.sun-times',
      '--day',
      '2026-12-21',
      '--latitude',
      '75',
      '--longitude',
      '0',
      '--zone',
      'UTC',
    );
    expect(code).toBe(0);
    expect(text).toContain('the sun does not rise');
  });

  it('lists the questions and what each is given', () => {
    expect(run('--list').text).toMatch(/^sky\.sun-position +Where does the sun stand\?/);
    expect(run('sky.dew-point', '--fields').text).toContain('--humidity  relative humidity: 1 to 100 %');
  });

  it.each([
    [[], /no question given/],
    [['sky.sun'], /there is no question 'sky.sun' \(is it sky.sun-position or/],
    [['sky.dew-point', '--air'], /--air has no value after it/],
    [['sky.dew-point', '--air', '--json'], /--air has no value after it/],
    [['sky.dew-point', 'air', '20'], /'air' is not a field: write --field value/],
    [['sky.dew-point', '--air', '20', '--air', '21'], /--air is given twice/],
    [
      ['sky.dew-point', '--air', '20 kg', '--humidity', '140'],
      /--air: .*'kg' is not a unit[\s\S]*--humidity: .*140 is out of range; give 1 to 100 %/,
    ],
    [['--list', 'now'], /takes nothing after it/],
  ])('refuses %j', (args, wrong) => {
    const { code, text } = run(...args);
    expect(code).toBe(1);
    expect(text).toMatch(wrong);
  });
});
