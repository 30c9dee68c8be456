import { existsSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lookAtSentences, readSentences, timeOf } from './nmea-readings.ts';
import { checksumOf, readSentence } from './nmea-sentence.ts';

const limits = { volts: [8, 16.5], now: Date.UTC(2026, 10, 25) } as const;
const line = (body: string) => `$${body}*${checksumOf(body)}`;

describe('the checksum of NMEA 0183', () => {
  const file = new URL('../../../../shared/handbook/interchange.json', import.meta.url);
  const there = existsSync(file);
  // rows interchange.nmea.ck.*: the standard's examples as printed in several places
  it.skipIf(!there)(`is that of the handbook’s rows${there ? '' : ' (skipped: no data)'}`, () => {
    const rows = JSON.parse(readFileSync(file, 'utf8')) as {
      id: string;
      unit: string;
      inputs: string;
      expected: string;
    }[];
    const sums = rows.filter(({ id, unit }) => id.startsWith('interchange.nmea.ck.') && unit === 'hex');
    expect(sums).toHaveLength(7);
    for (const { inputs, expected, id } of sums) expect(checksumOf(inputs), id).toBe(expected);
  });

  // printed beside the sentences in descriptions of the standard; from memory
  it.each([
    '$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47',
    '$GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W*6a',
    '!AIVDM,1,1,,B,177KQJ5000G?tO`K>RA1wUbN0TKH,0*5C',
    '$HCXDR,A,171,D,PITCH,A,-37,D,ROLL,G,367,,MAGX,G,2420,,MAGY,G,-8984,,MAGZ*41',
    '$GPZDA,160012.71,11,03,2004,-1,00*7D',
  ])('is right for %s', (sentence) => {
    expect(readSentence(sentence).kind).toBe('sentence');
  });

  it('is refused where it is wrong or left out', () => {
    expect(readSentence('$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*42')).toMatchObject({
      kind: 'refused',
      wrong: 'the checksum says 42, and the sentence adds up to 47',
    });
    expect(readSentence('$IIXDR,U,12.54,V,HOUSE')).toMatchObject({
      kind: 'refused',
      wrong: expect.stringMatching(/no checksum/),
    });
    expect(readSentence('12:00 hello')).toMatchObject({ kind: 'refused' });
  });

  it('finds any one letter that was changed', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 8, max: 16, noNaN: true }),
        fc.nat(),
        fc.integer({ min: 1, max: 94 }),
        (volts, place, by) => {
          const body = `IIXDR,U,${volts.toFixed(3)},V,HOUSE`;
          const at = place % body.length;
          const other = String.fromCharCode(33 + ((body.charCodeAt(at) - 33 + by) % 94));
          fc.pre(other !== body[at] && !'*$!\\'.includes(other));
          const damaged = `$${body.slice(0, at)}${other}${body.slice(at + 1)}*${checksumOf(body)}`;
          expect(readSentence(damaged).kind).toBe('refused');
        },
      ),
    );
  });
});

describe('the time in a sentence', () => {
  it('is that of ZDA and of RMC, and years from 80 on are of the last century', () => {
    expect(timeOf('ZDA', '160012.71,11,03,2004,-1,00'.split(','))).toBe(Date.parse('2004-03-11T16:00:12.710Z'));
    // handbook interchange.nmea.date: 230394 is 1994-03-23
    expect(timeOf('RMC', '123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W'.split(','))).toBe(
      Date.parse('1994-03-23T12:35:19Z'),
    );
  });
  it('is none before a fix', () => {
    expect(timeOf('RMC', '123519,V,,,,,,,230394,,'.split(','))).toBeNull();
    expect(timeOf('ZDA', ',,,,,'.split(','))).toBeNull();
    expect(timeOf('ZDA', '250000,11,03,2004,,'.split(','))).toBeNull();
  });
});

describe('a file of sentences', () => {
  const file = [
    line('IIXDR,U,12.61,V,HOUSE'),
    line('GPZDA,100000.00,02,05,2026,00,00'),
    line('IIXDR,U,12.60,V,HOUSE,C,18.5,C,CABIN'),
    line('IIXDR,I,1.2,A,HOUSE'),
    line('IIXDR,U,12.80,V,ENGINE'),
    line('GPGGA,100030,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,'),
    line('GPRMC,100100,A,4807.038,N,01131.000,E,0.1,084.4,020526,003.1,W'),
    line('IIXDR,U,12.58,V,HOUSE,C,18.4,C,CABIN').replace('12.58', '12.59'),
    line('IIXDR,U,12.57,V,HOUSE'),
    line('IIXDR,P,1.01,B,BARO'),
    '',
  ].join('\r\n');

  it('shows its transducers', () => {
    const look = lookAtSentences(file);
    expect(look).toMatchObject({ kind: 'sentences', times: 2, sentences: 9 });
    expect(
      look.kind === 'sentences' &&
        look.transducers.map(({ of, name, count, least, most }) => [of, name, count, least, most]),
    ).toEqual([
      ['volts', 'HOUSE', 3, 12.57, 12.61],
      ['air', 'CABIN', 1, 18.5, 18.5],
      ['current', 'HOUSE', 1, 1.2, 1.2],
      ['volts', 'ENGINE', 1, 12.8, 12.8],
    ]);
  });

  it('gives the readings of those chosen, and tells what it refuses', () => {
    const plan = { volts: 'HOUSE', current: { name: 'HOUSE', positive: 'out of the battery' }, air: 'CABIN' } as const;
    const { columns, faults, rows } = readSentences(file, plan, limits);
    expect([...columns.at]).toEqual([Date.parse('2026-05-02T10:00:00Z'), Date.parse('2026-05-02T10:01:00Z')]);
    expect([...columns.volts!]).toEqual([Math.fround(12.6), Math.fround(12.57)]);
    expect([...columns.current!]).toEqual([Math.fround(1.2), Number.NaN]);
    expect([...columns.air!]).toEqual([18.5, Number.NaN]);
    expect(rows).toBe(5);
    expect(faults.told.map(({ row, wrong }) => [row, wrong])).toEqual([
      [1, 'no time was said before it'],
      [8, expect.stringMatching(/the checksum says/)],
    ]);
  });

  it('is refused where nothing in it measures volts or says the time', () => {
    expect(lookAtSentences(line('GPZDA,100000.00,02,05,2026,00,00'))).toMatchObject({
      wrong: expect.stringMatching(/none measures volts/),
    });
    expect(lookAtSentences(line('IIXDR,U,12.61,V,HOUSE'))).toMatchObject({
      wrong: expect.stringMatching(/none says the date/),
    });
    expect(lookAtSentences('$GPZDA,1*00')).toMatchObject({ wrong: expect.stringMatching(/right checksum/) });
  });

  it('reads the example it gives', () => {
    const look = lookAtSentences(line('GPZDA,100000.00,02,05,2026,00,00'));
    const example = look.kind === 'refused' ? /\$\S+/.exec(look.right)?.[0] : undefined;
    expect(readSentence(example!).kind).toBe('sentence');
  });
});
