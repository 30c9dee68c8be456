import { describe, expect, it } from 'vitest';
import type { Book } from '#boat-book';
import { carryDown, sheetRows, standsInWords } from './day-sheet.ts';
import { jobs, plan, problem } from './testing/three-days.ts';

const saturday = problem.days[0]!;
const book = {
  jobs,
  zones: {},
  setUps: {},
  tools: { drill: { name: 'cordless drill', count: 1, keptAt: 'bench drawer' } },
  stores: { bush: { name: 'sheave pin, 8 mm', keptAt: '', onHand: false, expected: null, lead_days: null, note: '' } },
  steps: {
    drill: { cautions: ['Sanding dust: mask.'] },
    fill: { cautions: ['Epoxy: gloves.'] },
    rode1: { cautions: ['Sanding dust: mask.'] },
  },
} as unknown as Book;
const withThings = {
  ...problem,
  steps: problem.steps.map((step) =>
    step.id === 'drill' || step.id === 'pump1'
      ? { ...step, tools: [{ tool: 'drill', count: 1 }] }
      : step.id === 'sheave1'
        ? { ...step, stores: ['bush'] }
        : step,
  ),
};

describe('the day sheet', () => {
  const rows = sheetRows(problem, plan, book, saturday);

  it('has every step, change and quiet part of the day in order of time', () => {
    // 11 steps and 1 change on Saturday, setting out, one break, clearing up
    expect(rows).toHaveLength(15);
    const times = rows.map((row) => row.time);
    expect(times).toEqual([...times].sort());
    expect(rows[0]).toMatchObject({ kind: 'quiet', time: '08:00', name: 'set out, until 08:15' });
  });

  it('writes a caution out once and then says where it stands', () => {
    const cautions = rows.flatMap((row) => (row.kind === 'quiet' ? [] : row.cautions));
    expect(cautions).toEqual(['Sanding dust: mask.', 'Epoxy: gloves.', 'as at 10:40']);
  });

  it('marks danger, and says when each wait ends', () => {
    expect(rows.find((row) => row.key === 'rode1')).toMatchObject({ danger: true });
    expect(rows.find((row) => row.key === 'fill')).toMatchObject({
      waits: ['Epoxy hard enough to drill: until 07:10 on Sunday'],
    });
  });

  it('says how she stands at the start and at the end', () => {
    expect(standsInWords(problem, plan, saturday.from)).toBe('mast down, cover off');
    expect(standsInWords(problem, plan, saturday.to)).toBe('mast up, cover off');
  });

  it('lists what to carry down once, in order of use, and what is not there', () => {
    expect(carryDown(withThings, plan, book, saturday)).toEqual([
      { name: 'sheave pin, 8 mm', keptAt: '', absent: 'to get' },
      { name: 'cordless drill', keptAt: 'bench drawer', absent: null },
    ]);
  });
});
