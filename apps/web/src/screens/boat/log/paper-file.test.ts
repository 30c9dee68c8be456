import { expect, test } from 'vitest';
import { lookedPaper } from './paper-file.ts';

const bytes = (text: string) => new TextEncoder().encode(text);

test('a paper is known by what stands in it, whatever its name says', () => {
  // the first bytes as the formats have them: ISO 32000-1 7.5.2, ITU-T T.81 B.1, PNG (W3C) 5.2
  expect(lookedPaper('scan.doc', bytes('%PDF-1.7\n'))).toMatchObject({ kind: 'paper', type: 'application/pdf' });
  expect(lookedPaper('a', Uint8Array.of(0xff, 0xd8, 0xff, 0xe0))).toMatchObject({ type: 'image/jpeg' });
  expect(lookedPaper('b', Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a))).toMatchObject({
    type: 'image/png',
  });
  expect(lookedPaper('notes', bytes('Hull number 12\nÄußeres'))).toMatchObject({ type: 'text/plain' });
});

test('what is none is refused by its name, with why', () => {
  const because = (file: string, content: Uint8Array) => {
    const looked = lookedPaper(file, content);
    return looked.kind === 'refused' ? looked.because : 'taken';
  };
  expect(because('policy.pdf', new Uint8Array())).toBe('‘policy.pdf’ was not taken: it is empty.');
  expect(because('huge.pdf', new Uint8Array(20_000_001))).toMatch(/‘huge.pdf’.*21 MB.*at most 20 MB/);
  for (const [file, content] of [
    ['page.pdf', bytes('<!doctype html><script>1</script>')],
    ['drawing.png', bytes('<svg onload="x()"/>')],
    ['run.jpg', Uint8Array.of(0x4d, 0x5a, 0x90, 0x00, 0x03)],
    ['broken.txt', Uint8Array.of(0x41, 0xff, 0xfe, 0x00)],
  ] as const)
    expect(because(file, content), file).toMatch(/is not a PDF, a JPEG or PNG picture, or plain text/);
});
