import { describe, expect, it } from 'vitest';
import type { Book, StoreRecord } from '#boat-book';
import { startSearch } from '#workplan';
import { type CarryStop, carryDown } from './carry-down.ts';
import { problemFrom } from './problem-from.ts';
import { job, jobDay, smallBook, step, weather } from './testing/small-book.ts';

const store = (name: string, keptAt: string, parts: Partial<StoreRecord> = {}): StoreRecord => ({
  name,
  keptAt,
  onHand: true,
  expected: null,
  note: '',
  lead_days: null,
  ...parts,
});

const tool = (name: string, keptAt: string) => ({ name, keptAt, count: 2 });
const uses = (...tools: readonly string[]) => tools.map((each) => ({ tool: each, count: 1 }));

function stopsOf(parts: Partial<Book>, now = '2026-05-05T11:00:00Z'): CarryStop[] {
  const book = smallBook({
    jobs: { bed: job('Rebed the cleat') },
    jobDays: { sat: jobDay('2026-05-09') },
    weather: { w: weather('2026-05-09') },
    tools: {
      driver: tool('screwdriver', 'bench drawer'),
      drill: tool('drill', 'shed'),
      gun: tool('sealant gun', 'paint box'),
      knife: tool('knife', ''),
    },
    ...parts,
  });
  const matter = problemFrom(book, { now });
  if (matter.kind !== 'problem') throw new Error(matter.words);
  const search = startSearch(matter.problem, { seed: 1 });
  search.advance(20);
  return carryDown(matter.problem, search.outcome().plan, book, matter.problem.days[0]!);
}

const inShort = (stops: readonly CarryStop[]) =>
  stops.map(({ keptAt, things }) => [keptAt, ...things.map(({ name }) => name)]);

describe('the carry-down list', () => {
  it('stands in order of first use, each thing once, with what it is for', () => {
    const stops = stopsOf({
      steps: {
        off: step('bed', 1, 'Take it off', { tools: uses('driver') }),
        drill: step('bed', 2, 'Drill out', { tools: uses('drill') }),
        on: step('bed', 3, 'Screw it on', { tools: uses('driver', 'gun'), stores: ['sealant'] }),
      },
      stores: { sealant: store('Sealant', 'paint box') },
    });
    expect(inShort(stops)).toEqual([
      ['bench drawer', 'screwdriver'],
      ['shed', 'drill'],
      ['paint box', 'sealant gun', 'Sealant'],
    ]);
    expect(stops[0]!.things[0]).toMatchObject({ uses: ['Take it off', 'Screw it on'], key: 'tool driver' });
  });

  it('puts together what is kept together only where that loses no order', () => {
    const stops = stopsOf({
      steps: {
        // all first used in the same minute: the two from the paint box go together
        one: step('bed', 1, 'Mask', { tools: uses('gun', 'drill'), stores: ['tape'] }),
        // the next from the shed comes later, and stays there
        two: step('bed', 2, 'Drill', { stores: ['bit'] }),
        three: step('bed', 3, 'Fill', { stores: ['filler', 'dust'] }),
      },
      stores: {
        tape: store('Tape', 'paint box'),
        bit: store('Drill bit', 'shed'),
        filler: store('Filler', 'paint box'),
        dust: store('Dust mask', 'shed'),
      },
    });
    expect(inShort(stops)).toEqual([
      ['paint box', 'sealant gun', 'Tape'],
      // the shed is where the last thing came from, so the dust mask, used in the same minute as the filler, is next
      ['shed', 'drill', 'Drill bit', 'Dust mask'],
      ['paint box', 'Filler'],
    ]);
    const order = stops.flatMap(({ things }) => things.map(({ first }) => first));
    expect([...order].sort((a, b) => a - b)).toEqual(order);
  });

  it('says where no place is written down, what is not there yet, and what is mixed', () => {
    const stops = stopsOf({
      steps: { on: step('bed', 1, 'Glue', { tools: uses('knife'), stores: ['cleat'], mix: 'epoxy' }) },
      stores: { cleat: store('Cleat', 'shed', { onHand: false, expected: '2026-05-08' }) },
      mixes: { epoxy: { name: 'Epoxy', mixing_min: 5, potLife_min: 30 } },
    });
    expect(stops).toMatchObject([
      { keptAt: null, things: [{ name: 'knife' }, { name: 'Epoxy', kind: 'mix' }] },
      { keptAt: 'shed', things: [{ name: 'Cleat', absent: { expected: '2026-05-08' } }] },
    ]);
  });

  it('leaves out what only steps already done used, and keeps what is in hand', () => {
    const stops = stopsOf(
      {
        steps: {
          off: step('bed', 1, 'Take it off', {
            tools: uses('driver'),
            progress: { kind: 'done', started: '2026-05-09T08:15:00Z', finished: '2026-05-09T08:45:00Z' },
          }),
          drill: step('bed', 2, 'Drill out', {
            tools: uses('drill'),
            progress: {
              kind: 'under way',
              started: '2026-05-09T08:45:00Z',
              expected: '2026-05-09T09:30:00Z',
              hands: ['keeper'],
            },
          }),
          on: step('bed', 3, 'Seal', { tools: uses('gun') }),
        },
      },
      '2026-05-09T09:00:00Z',
    );
    expect(inShort(stops)).toEqual([
      ['shed', 'drill'],
      ['paint box', 'sealant gun'],
    ]);
  });
});
