import { expect, it } from 'vitest';
import { boat } from '../corpus/boat.ts';
import { primeReader } from './prime-reader.ts';
import { readWalkRound } from './read-walk-round.ts';

it('primes in small steps, and what is read after is read as before', () => {
  const page = 'The forehatch leaks. I shall put a new seal in, forty minutes. Battery 12.4 volts.';
  const before = readWalkRound(page, boat);
  expect([...primeReader(boat)].length).toBeGreaterThan(20);
  expect(readWalkRound(page, boat)).toEqual(before);
  expect(before.proposals.map(({ kind }) => kind)).toEqual(['job', 'reading']);
});
