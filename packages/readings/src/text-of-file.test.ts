import { expect, it } from 'vitest';
import { mostFile_bytes, textOfFile } from './text-of-file.ts';

const bytes = (text: string) => new TextEncoder().encode(text);

it('knows a table and sentences apart', () => {
  expect(textOfFile(bytes('time,volts\n2026-05-02 10:00,12.4\n'))).toMatchObject({ kind: 'table', notes: [] });
  expect(textOfFile(bytes('$GPZDA,160012.71,11,03,2004,-1,00*7D\r\n'))).toMatchObject({ kind: 'sentences' });
});

it('refuses by name what holds no readings', () => {
  const wrong = (given: Uint8Array) => {
    const read = textOfFile(given);
    return read.kind === 'refused' ? `${read.wrong} ${read.right}` : read.kind;
  };
  expect(wrong(new Uint8Array())).toMatch(/empty: it has 0 bytes/);
  expect(wrong(bytes('\r\n \r\n'))).toMatch(/nothing but empty lines/);
  expect(wrong(new Uint8Array(mostFile_bytes + 1))).toMatch(/60 MB.*cut it into parts/);
  // APPNOTE 6.3 §4.3.7, ISO 32000-1 §7.5.2, ISO/IEC 15948 §5.2, RFC 1952 §2.3.1
  expect(wrong(Uint8Array.of(0x50, 0x4b, 3, 4, 20))).toMatch(/packed file.*save the sheet as CSV/);
  expect(wrong(bytes('%PDF-1.7'))).toMatch(/PDF/);
  expect(wrong(Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 13, 10))).toMatch(/picture/);
  expect(wrong(Uint8Array.of(0x1f, 0x8b, 8))).toMatch(/unpack it/);
  expect(wrong(Uint8Array.of(65, 0, 66, 1, 67))).toMatch(/not text/);
  expect(wrong(bytes('<!doctype html><p>'))).toMatch(/web page/);
  expect(wrong(bytes('{"volts": [12]}'))).toMatch(/JSON/);
});

it('reads letters of UTF-16 and of Western Europe', () => {
  const text = 'Zeit;Größe °C\n';
  // RFC 2781 §3.2: little-endian, with its mark
  const wide = Uint8Array.from([
    0xff,
    0xfe,
    ...[...text].flatMap((c) => [c.charCodeAt(0) & 255, c.charCodeAt(0) >> 8]),
  ]);
  expect(textOfFile(wide)).toMatchObject({ kind: 'table', text });
  const narrow = Uint8Array.from([...text].map((c) => c.charCodeAt(0)));
  expect(textOfFile(narrow)).toMatchObject({ kind: 'table', text, notes: [expect.stringMatching(/Windows-1252/)] });
});
