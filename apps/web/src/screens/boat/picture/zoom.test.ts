import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inFrame, moved, onDrawing, wholeOf, zoomed } from './zoom.ts';

const frame = { width: 358, top: -20, bottom: 480 };
const points = fc.record({
  x: fc.double({ min: 0, max: 358, noNaN: true }),
  y: fc.double({ min: -20, max: 480, noNaN: true }),
});

it('looked at as a whole, everything stands where it is drawn', () => {
  expect(inFrame(wholeOf(frame), frame, { x: 100, y: 50 })).toEqual({ x: 100, y: 50 });
});

it('a place of the frame and its place of the drawing are each other’s, however near', () => {
  fc.assert(
    fc.property(points, points, fc.double({ min: 1, max: 9, noNaN: true }), (at, point, factor) => {
      const zoom = zoomed(wholeOf(frame), frame, factor, at);
      const back = inFrame(zoom, frame, onDrawing(zoom, frame, point));
      expect(back.x).toBeCloseTo(point.x, 6);
      expect(back.y).toBeCloseTo(point.y, 6);
    }),
  );
});

it('what is under the fingers stays there while they part', () => {
  // twice as near, held at (100, 200): nothing outside the drawing comes in, so it is not pushed aside
  const before = wholeOf(frame);
  const after = zoomed(before, frame, 2, { x: 100, y: 200 });
  expect(inFrame(after, frame, onDrawing(before, frame, { x: 100, y: 200 }))).toEqual({ x: 100, y: 200 });
});

it('is never less than the whole, never nearer than eight times, and never looks past an edge', () => {
  fc.assert(
    fc.property(
      points,
      fc.double({ min: 0.01, max: 100, noNaN: true }),
      fc.integer({ min: -2000, max: 2000 }),
      (at, factor, by) => {
        const zoom = moved(zoomed(wholeOf(frame), frame, factor, at), frame, by, -by);
        expect(zoom.by).toBeGreaterThanOrEqual(1);
        expect(zoom.by).toBeLessThanOrEqual(8);
        expect(inFrame(zoom, frame, { x: 0, y: -20 }).x).toBeLessThanOrEqual(1e-6);
        expect(inFrame(zoom, frame, { x: 358, y: 480 }).y).toBeGreaterThanOrEqual(480 - 1e-6);
      },
    ),
  );
});
