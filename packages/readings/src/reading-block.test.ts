import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gapFrom_ms } from './ordered-readings.ts';
import { blockBytes, readBlock } from './reading-block.ts';
import type { ReadingColumns } from './reading-columns.ts';
import { thinned } from './thinned.ts';

const column = (count: number) =>
  fc.option(
    fc.array(fc.oneof(fc.float({ min: -100, max: 100, noDefaultInfinity: true }), fc.constant(Number.NaN)), {
      minLength: count,
      maxLength: count,
    }),
  );
const anyColumns: fc.Arbitrary<ReadingColumns> = fc
  .uniqueArray(fc.integer({ min: 1e12, max: 2e12 }), { maxLength: 40 })
  .chain((at) =>
    fc.tuple(fc.constant(at.sort((a, b) => a - b)), column(at.length), column(at.length), column(at.length)),
  )
  .map(([at, volts, current, air]) => {
    const floats = (values: number[] | null) => (values === null ? null : Float32Array.from(values));
    return { at: Float64Array.from(at), volts: floats(volts), current: floats(current), air: floats(air) };
  });

describe('a block of readings', () => {
  it('comes back as it was, and the same readings give the same bytes', () => {
    fc.assert(
      fc.property(anyColumns, (columns) => {
        const bytes = blockBytes(columns);
        const back = readBlock(bytes);
        expect(back).toEqual({ kind: 'block', columns });
        expect(back.kind === 'block' && blockBytes(back.columns)).toEqual(bytes);
        // at any place in a larger piece of memory, too
        const larger = new Uint8Array(bytes.length + 3);
        larger.set(bytes, 3);
        expect(readBlock(larger.subarray(3)).kind).toBe('block');
      }),
    );
  });

  it('lies as it is written down: head, times, columns, little-endian', () => {
    const bytes = blockBytes({ at: Float64Array.of(1), volts: Float32Array.of(12.5), current: null, air: null });
    // IEEE 754: 1 is 3ff0…, 12.5 is 41480000
    expect(Buffer.from(bytes).toString('hex')).toBe(
      `${Buffer.from('READINGS').toString('hex')}01000000010000000100000000000000000000000000f03f00004841`,
    );
  });

  it('that was cut, changed or is something else is refused and says why', () => {
    const bytes = blockBytes({ at: Float64Array.of(1, 2), volts: Float32Array.of(12, 13), current: null, air: null });
    const because = (given: Uint8Array) => {
      const read = readBlock(given);
      return read.kind === 'refused' ? read.because : 'read';
    };
    expect(because(bytes.slice(0, -1))).toMatch(/has 47 bytes where 2 readings take 48/);
    expect(because(Uint8Array.of())).toMatch(/begins with ‘READINGS’/);
    expect(because(bytes.with(8, 2))).toMatch(/version 2/);
    expect(because(blockBytes({ at: Float64Array.of(2, 2), volts: null, current: null, air: null }))).toMatch(
      /2. time/,
    );
    expect(
      because(
        blockBytes({
          at: Float64Array.of(1),
          volts: Float32Array.of(Number.POSITIVE_INFINITY),
          current: null,
          air: null,
        }),
      ),
    ).toMatch(/not all figures/);
    expect(because(bytes.with(15, 255))).toMatch(/bytes where/);
    expect(() => blockBytes({ at: Float64Array.of(1), volts: Float32Array.of(), current: null, air: null })).toThrow(
      /0 readings/,
    );
  });
});

describe('readings thinned for drawing', () => {
  const many = fc.record({
    steps: fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 3, maxLength: 400 }),
    pixels: fc.integer({ min: 1, max: 60 }),
    seed: fc.integer({ min: 1, max: 1000 }),
  });
  it('keep the least and the most of every column of pixels, and are few', () => {
    fc.assert(
      fc.property(many, ({ steps, pixels, seed }) => {
        let t = 0;
        const at = Float64Array.from(steps, (step) => (t += step));
        const values = Float32Array.from(steps, (_, i) => (i * seed * 7919) % 101);
        const [from, to] = [at[0]!, at.at(-1)! + 1];
        const line = thinned(at, values, from, to, pixels, Number.POSITIVE_INFINITY);
        expect(line.at.length).toBeLessThanOrEqual(4 * pixels);
        const pixelOf = (ms: number) => Math.floor((ms - from) / ((to - from) / pixels));
        for (let pixel = 0; pixel < pixels; pixel++) {
          const full = [...values].filter((_, i) => pixelOf(at[i]!) === pixel);
          const drawn = line.values.filter((_, i) => pixelOf(line.at[i]!) === pixel) as number[];
          if (full.length === 0) continue;
          expect([Math.min(...drawn), Math.max(...drawn)]).toEqual([Math.min(...full), Math.max(...full)]);
          expect([drawn[0], drawn.at(-1)]).toEqual([full[0], full.at(-1)]);
        }
        for (let i = 1; i < line.at.length; i++) expect(line.at[i]).toBeGreaterThan(line.at[i - 1]!);
      }),
    );
  });

  it('are broken where nothing was read, also within one column of pixels', () => {
    const at = Float64Array.of(0, 1, 2, 100, 101, 102);
    const values = Float32Array.of(1, 2, 3, 4, 5, 6);
    expect(thinned(at, values, 0, 103, 1, 10).values).toEqual([1, 3, null, 4, 6]);
    // with nothing in a place the line goes on to the next
    const some = Float32Array.of(1, Number.NaN, 3, 4, 5, 6);
    expect(thinned(at, some, 0, 102, 102, 10).values).toEqual([1, 3, null, 4, 5, 6]);
  });

  it('run on to the edge of what is seen', () => {
    const at = Float64Array.from({ length: 100 }, (_, i) => i * 1000);
    const values = Float32Array.from({ length: 100 }, (_, i) => i);
    const { at: drawn } = thinned(at, values, 10_500, 20_500, 100, gapFrom_ms(at));
    expect([drawn[0], drawn.at(-1)]).toEqual([10_000, 21_000]);
  });
});
