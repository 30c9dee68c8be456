/**
 * Property tests draw from this seed, so that a run can be had again and a failure is the same for everybody.
 * `PROPERTY_SEED=random npm test` draws anew and prints the seed of what fails; any whole number does too.
 */
import fc from 'fast-check';

const asked = process.env.PROPERTY_SEED ?? '20261125';
if (asked !== 'random') {
  const seed = Number(asked);
  if (!Number.isInteger(seed)) throw new RangeError(`PROPERTY_SEED must be a whole number or 'random', got '${asked}'`);
  fc.configureGlobal({ ...fc.readConfigureGlobal(), seed });
}
