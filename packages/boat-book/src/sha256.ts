/**
 * SHA-256 (FIPS 180-4), in plain steps. The platform's own is asynchronous, and a package knows no platform; this one
 * hashes some 50 MB a second, enough for a book.
 */

const roundConstants = new Uint32Array(64);
const firstState = new Uint32Array(8);

/** FIPS 180-4 §4.2.2 and §5.3.3: fractional parts of the cube and square roots of the first primes. */
function fillConstants(): void {
  const primes: number[] = [];
  for (let n = 2; primes.length < 64; n++) if (primes.every((p) => n % p !== 0)) primes.push(n);
  primes.forEach((p, i) => {
    roundConstants[i] = fractionBits(p, 3);
    if (i < 8) firstState[i] = fractionBits(p, 2);
  });
}

/** The first 32 bits of the fractional part of the `degree`th root of `n`, exactly. */
function fractionBits(n: number, degree: 2 | 3): number {
  // the whole number x with x^degree ≤ n·2^(32·degree): the root, shifted left by 32 bits
  const target = BigInt(n) << BigInt(32 * degree);
  let x = 0n;
  for (let bit = 1n << 37n; bit > 0n; bit >>= 1n) {
    const y = x | bit;
    if (y ** BigInt(degree) <= target) x = y;
  }
  return Number(x & 0xffffffffn);
}
fillConstants();

const turned = (x: number, n: number): number => (x >>> n) | (x << (32 - n));

/** The SHA-256 of `bytes`, as 64 hexadecimal figures. */
export function sha256(bytes: Uint8Array): string {
  const state = Uint32Array.from(firstState);
  const w = new Uint32Array(64);
  const whole = bytes.length - (bytes.length % 64);
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (let at = 0; at < whole; at += 64) mixBlock(state, w, view, at);

  const rest = bytes.length - whole;
  const tail = new Uint8Array(rest < 56 ? 64 : 128);
  tail.set(bytes.subarray(whole));
  tail[rest] = 0x80;
  const tailView = new DataView(tail.buffer);
  tailView.setBigUint64(tail.length - 8, BigInt(bytes.length) * 8n);
  for (let at = 0; at < tail.length; at += 64) mixBlock(state, w, tailView, at);
  return Array.from(state, (word) => word.toString(16).padStart(8, '0')).join('');
}

/** FIPS 180-4 §6.2.2, with its letters. */
function mixBlock(state: Uint32Array, w: Uint32Array, block: DataView, at: number): void {
  for (let t = 0; t < 16; t++) w[t] = block.getUint32(at + 4 * t);
  for (let t = 16; t < 64; t++) {
    const a = w[t - 15]!;
    const b = w[t - 2]!;
    const s0 = turned(a, 7) ^ turned(a, 18) ^ (a >>> 3);
    const s1 = turned(b, 17) ^ turned(b, 19) ^ (b >>> 10);
    w[t] = (w[t - 16]! + s0 + w[t - 7]! + s1) | 0;
  }
  let [a, b, c, d, e, f, g, h] = state as unknown as [number, number, number, number, number, number, number, number];
  for (let t = 0; t < 64; t++) {
    const t1 =
      (h + (turned(e, 6) ^ turned(e, 11) ^ turned(e, 25)) + ((e & f) ^ (~e & g)) + roundConstants[t]! + w[t]!) | 0;
    const t2 = ((turned(a, 2) ^ turned(a, 13) ^ turned(a, 22)) + ((a & b) ^ (a & c) ^ (b & c))) | 0;
    h = g;
    g = f;
    f = e;
    e = (d + t1) | 0;
    d = c;
    c = b;
    b = a;
    a = (t1 + t2) | 0;
  }
  [a, b, c, d, e, f, g, h].forEach((word, i) => {
    state[i] = state[i]! + word;
  });
}
