import { describe, expect, it } from 'vitest';
import type { Book } from '#boat-book';
import { sheetRows, standsInWords } from './day-sheet.ts';
import { jobs, plan, problem } from './testing/three-days.ts';

const saturday = problem.days[0]!;
const book = {
  jobs,
  zones: {},
  setUps: {},
  steps: {
    drill: { cautions: ['Sanding dust: mask.'] },
    fill: { cautions: ['Epoxy: gloves.'] },
    rode1: { cautions: ['Sanding dust: mask.'] },
  },
} as unknown as Book;
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
});
