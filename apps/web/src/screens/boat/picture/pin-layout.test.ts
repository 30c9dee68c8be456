import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Pin, type PlacedPin, placedPins, type Sky } from './pin-layout.ts';

const pins = (width: number, height: number) =>
  fc.array(
    fc.record({
      id: fc.uuid(),
      x: fc.integer({ min: 4, max: width - 4 }),
      y: fc.integer({ min: height * 0.7, max: height }),
      aloft: fc.constant(false),
      lines: fc.array(
        fc.constantFrom('Bow roller: new pin', 'Hatch seal', 'Rubbing strake: two screws are loose', 'Tiller'),
        {
          minLength: 1,
          maxLength: 3,
        },
      ),
    }),
    { minLength: 1, maxLength: 8 },
  );

/** about what the face has at 14 px */
const measure = (text: string) => text.length * 7.2;

const overlaps = (a: PlacedPin['box'], b: PlacedPin['box']) =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

describe.each([
  ['a phone, mast up', { width: 358, mastX: 210, flagsAbove: 320, hangsBelow: 520, measure }],
  ['a phone, mast down', { width: 358, mastX: null, flagsAbove: 60, hangsBelow: 240, measure }],
  ['a laptop, mast up', { width: 760, mastX: 440, flagsAbove: 520, hangsBelow: 900, measure }],
] satisfies [string, Sky][])('names on the drawing: %s', (_, sky) => {
  it('lie over no other, whatever is pinned where', () => {
    fc.assert(
      fc.property(pins(sky.width, sky.hangsBelow - 40), (given: Pin[]) => {
        const placed = placedPins(given, sky);
        expect(placed).toHaveLength(given.length);
        for (const [i, a] of placed.entries())
          for (const b of placed.slice(i + 1)) expect(overlaps(a.box, b.box), `${a.id} over ${b.id}`).toBe(false);
      }),
    );
  });

  it('say every word of every line', () => {
    fc.assert(
      fc.property(pins(sky.width, sky.hangsBelow - 40), (given: Pin[]) => {
        for (const placed of placedPins(given, sky)) {
          const pin = given.find(({ id }) => id === placed.id);
          const said = placed.lines.map(({ text }) => text).join(' ');
          expect(said).toBe(pin?.lines.join(' '));
        }
      }),
    );
  });
});

describe('names aloft', () => {
  const aloft = (id: string, y: number): Pin => ({ id, x: 210, y, aloft: true, lines: ['Masthead lamp: new joint'] });

  it('stand forward of the mast where there is room, one over the other', () => {
    const sky: Sky = { width: 760, mastX: 440, flagsAbove: 320, hangsBelow: 520, measure };
    const [a, b] = placedPins([aloft('a', 20), aloft('b', 24)], sky);
    expect(a!.box.x).toBeGreaterThan(440);
    expect(a!.box.y).toBeGreaterThanOrEqual(b!.box.y + b!.box.height);
  });

  it('stand aft of it on a phone, clear of the mast and over the flags', () => {
    const sky: Sky = { width: 358, mastX: 210, flagsAbove: 320, hangsBelow: 520, measure };
    const flag: Pin = { id: 'f', x: 20, y: 400, aloft: false, lines: ['Rudder blade: fill'] };
    const placed = placedPins([aloft('a', 300), flag], sky);
    const [flown, beside] = placed;
    expect(beside!.box.x + beside!.box.width).toBeLessThan(210);
    expect(beside!.box.y + beside!.box.height).toBeLessThanOrEqual(flown!.box.y);
  });
});
