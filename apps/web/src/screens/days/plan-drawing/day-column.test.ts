import { describe, expect, it } from 'vitest';
import { jobs, plan, problem } from '../testing/three-days.ts';
import { insetsOf, nameLine, nameSize } from './block-size.ts';
import { type DayColumn, dayColumn } from './day-column.ts';
import { lineCount, roughMeasure } from './text-size.ts';
import { endedSince, overnightInWords } from './wait-bars.ts';

const columnOf = (day: number, width = 390): DayColumn =>
  dayColumn({
    problem,
    plan,
    book: { jobs, steps: {} },
    day: problem.days[day]!,
    width,
    measure: roughMeasure,
    now: null,
  });

describe('a day of the drawing', () => {
  it.each([0, 1, 2].flatMap((day) => [340, 390, 480].map((width) => [day, width] as const)))(
    'keeps blocks apart, inside the column, and high enough for their whole name: day %i at %i px',
    (day, width) => {
      const { blocks, scale } = columnOf(day, width);
      expect(blocks.length).toBeGreaterThan(0);
      for (const a of blocks) {
        expect(a.left).toBeGreaterThan(0);
        expect(a.left + a.width).toBeLessThanOrEqual(width);
        expect(a.top + a.height).toBeLessThanOrEqual(scale.height + 1);
        expect(a.height).toBeGreaterThanOrEqual(
          lineCount(a.name, nameSize, a.width - insetsOf(a.width), roughMeasure) * nameLine,
        );
        for (const b of blocks) {
          if (a === b) continue;
          const beside = a.left + a.width <= b.left || b.left + b.width <= a.left;
          const above = a.top + a.height <= b.top + 0.01 || b.top + b.height <= a.top + 0.01;
          expect(beside || above, `${a.name} and ${b.name}`).toBe(true);
        }
      }
    },
  );

  it('has a lane for a hand only on the day the hand is there', () => {
    expect(columnOf(0).lanes.map((lane) => lane.name)).toEqual(['keeper', 'a neighbour']);
    expect(columnOf(1).lanes.map((lane) => lane.name)).toEqual(['keeper']);
  });

  it('draws work of two hands across both lanes', () => {
    const { blocks, lanes } = columnOf(0);
    const mast = blocks.find((block) => block.name === 'Raise the mast')!;
    expect(mast.left).toBe(lanes[0]!.left);
    expect(mast.left + mast.width).toBe(lanes[1]!.left + lanes[1]!.width);
  });

  it('starts a set-up at a dot, carries it overnight by an arrow, and ends it at a ring', () => {
    // the mast goes up on Saturday at 10:10 and down on Sunday at 13:20; the cover is off from the start
    const line = (day: number) => columnOf(day).setUps.find((s) => s.stretch.name === 'mast up');
    expect(line(0)).toMatchObject({ dot: true, arrow: true, ring: false });
    expect(line(1)).toMatchObject({ dot: false, arrow: false, ring: true });
    expect(line(2)).toBeUndefined();
    expect(columnOf(0).setUps.find((s) => s.stretch.name === 'cover off')).toMatchObject({ dot: false, arrow: true });
  });

  it('runs a wait out at the foot of one day and says when it is over at the head of the next', () => {
    const saturday = columnOf(0);
    expect(saturday.waits.find((w) => w.title.startsWith('epoxy'))).toMatchObject({ goesOn: true, comesIn: false });
    expect(saturday.waits.find((w) => w.title.startsWith('varnish'))).toMatchObject({ goesOn: false });
    expect(overnightInWords(problem, plan, saturday.to)?.ends).toEqual([
      'epoxy hard enough to drill: over at 07:10 on Sunday',
    ]);
    expect(endedSince(problem, plan, saturday.to, problem.days[1]!.from)).toEqual([
      'epoxy hard enough to drill: over at 07:10',
    ]);
  });

  it('shades the night and names the sunset', () => {
    // sunset 21:18, the day goes on to 22:30
    expect(columnOf(2).night).toMatchObject([{ name: 'sunset 21:18' }]);
    expect(columnOf(0).night).toEqual([]);
  });

  it('keeps wait bars that overlap in time beside each other', () => {
    const { waits } = columnOf(0);
    for (const a of waits)
      for (const b of waits) if (a !== b && a.top < b.bottom && b.top < a.bottom) expect(a.left).not.toBe(b.left);
  });

  it('shows what was ticked that day though the plan has no more to do with it', () => {
    const ticked = {
      job: 'pump',
      title: 'Look for the break in the wire',
      keeper: true,
      progress: { kind: 'done', started: '2027-06-12T06:20:00Z', finished: '2027-06-12T06:50:00Z' },
    } as never;
    const { blocks } = dayColumn({
      problem,
      plan,
      book: { jobs, steps: { ticked } },
      day: problem.days[0]!,
      width: 390,
      measure: roughMeasure,
      now: null,
    });
    // 06:20 UTC is 08:20 in the zone of the plan
    expect(blocks.find((b) => b.key === 'ticked')).toMatchObject({ state: 'done', from: 500, to: 530 });
  });
});
