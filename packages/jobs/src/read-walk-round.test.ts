/** Plain sense of our own about what a keeper would take from what is said; no outside source. */
import { describe, expect, it } from 'vitest';
import { boat } from '../corpus/boat.ts';
import { readWalkRound } from './read-walk-round.ts';

const kinds = (page: string) => readWalkRound(page, boat).proposals.map(({ kind }) => kind);
const stores = (page: string) =>
  readWalkRound(page, boat).proposals.flatMap((one) => (one.kind === 'store' ? [one.name] : []));

describe('a page of talk', () => {
  it.each([
    'The winch handle pocket is stiff but still works. The log is scratched, that is just the surface.',
    'The hatch is crazed, it was crazed when I bought her.',
    'The man at the next mooring says replace the shrouds. They are only four years old, so no.',
    'I am asked each year when I shall varnish the tiller.',
  ])('proposes nothing from %s', (page) => {
    expect(kinds(page)).toEqual([]);
  });

  it.each([
    ['The ladder foot is missing.', ['job']],
    ['stern light dead', ['job']],
    ['The rudder is loose. The hatch leaks. Bilge pump does not run.', ['job', 'job', 'job']],
    ['The winch is fine. The sun was out.', []],
    ['The forehatch leaks. It gets a new seal before June, forty minutes.', ['job']],
    ['The left trailer tyre has a bulge. It gets changed before she goes anywhere, half an hour.', ['job']],
  ] as const)('takes %s', (page, expected) => {
    expect(kinds(page)).toEqual(expected);
  });

  it.each([
    [
      'Shopping: seizing wire, a tin of varnish and some longer screws.',
      ['Seizing wire', 'Tin of varnish', 'Longer screws'],
    ],
    ['We need two hose clips and a metre of hose.', ['Two hose clips', 'Metre of hose']],
    ['Lower pintle is worn, want a bush in there, forty minutes.', ['Bush']],
    ['We need milk and a sleep.', []],
  ] as const)('tells the things to get apart in %s', (page, expected) => {
    expect(stores(page)).toEqual(expected);
  });

  it('takes a rubber band round what is broken for a fix that holds for now', () => {
    expect(kinds('The cover for the engine has a broken clip. Big rubber band round it.')).toContain('jury rig');
  });

  it('parts talk without stops where the next thing is said something of', () => {
    const page =
      'right so the anchor shackle has no wire through the pin mouse that five minutes and then the rudder blade is chipped at the bottom edge so fill that and sand it half an hour and the cockpit drain is slow poke a rod down it ten minutes';
    expect(kinds(page)).toEqual(['job', 'job', 'job']);
  });

  it('is less sure of what is wrong with no word of what is to be done, the more a page says so of all else', () => {
    const told = 'The pump leaks, new seal, forty minutes. The halyard is frayed, replace it, twenty minutes. ';
    expect(kinds(`${told.repeat(3)}There was a scratch on the cabin table, my brother and his boots.`)).toHaveLength(
      kinds(told.repeat(3)).length,
    );
  });
});
