/** A comparison with something that is not a table of rows: another program's answers, or a derivation of another kind. */
export interface OtherCheck {
  readonly subject: string;
  readonly what: string;
  readonly kind: 'another program' | 'derived twice';
  readonly against: string;
  readonly compared: number;
  readonly unit: string;
  readonly mean: number;
  readonly worst: number;
  readonly allowed: number;
  /** the reason for what remains */
  readonly why: string;
}

/** The errors of a comparison, added up as they come. */
export function errorsOf(
  stated: Omit<OtherCheck, 'compared' | 'mean' | 'worst'>,
  errors: readonly number[],
): OtherCheck {
  const sizes = errors.map(Math.abs);
  return {
    ...stated,
    compared: sizes.length,
    mean: sizes.reduce((sum, size) => sum + size, 0) / sizes.length,
    // a NaN must not pass for no error
    worst: sizes.some(Number.isNaN) ? Number.POSITIVE_INFINITY : Math.max(0, ...sizes),
  };
}

/** Numbers from 0 up to 1 that come the same for the same seed (a 32-bit mixing generator). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
