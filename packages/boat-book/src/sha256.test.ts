import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sha256 } from './sha256.ts';

// FIPS 180-4 examples published by NIST (SHA256.pdf: one block, two blocks); from memory, and confirmed here by Node
test('the examples of the standard', () => {
  const of = (text: string) => sha256(new TextEncoder().encode(text));
  expect(of('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
  expect(of('abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq')).toBe(
    '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
  );
  expect(of('')).toBe('e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855');
});

test("the same as Node's own on anything, also a slice of a larger buffer", () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 300 }), fc.nat(70), (bytes, from) => {
      const slice = bytes.subarray(Math.min(from, bytes.length));
      expect(sha256(slice)).toBe(createHash('sha256').update(slice).digest('hex'));
    }),
  );
});
