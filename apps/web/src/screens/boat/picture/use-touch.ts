/** Fingers, wheel and keys on the picture: two fingers zoom, one moves it when it is near, a tap is a tap. */
import { type KeyboardEvent, type PointerEvent, useRef, useState } from 'react';
import { type Frame, moved, wholeOf, type Zoom, zoomed } from './zoom.ts';

/** fingers shake: a touch that moved less than this is a tap. [px] */
const shake = 8;
const keyStep = 60;

export function useTouch(frame: Frame) {
  const [near, setNear] = useState<Zoom | null>(null);
  const zoom = near ?? wholeOf(frame);
  const fingers = useRef(new Map<number, { x: number; y: number }>());
  const dragged = useRef(false);
  const began = useRef({ x: 0, y: 0 });
  const set = (next: Zoom) => setNear(next.by === 1 ? null : next);
  const placeIn = (event: PointerEvent<Element>) => {
    const box = event.currentTarget.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top + frame.top };
  };
  return {
    zoom,
    nearer: () => set(zoomed(zoom, frame, 1.6)),
    further: () => set(zoomed(zoom, frame, 1 / 1.6)),
    onPointerDown(event: PointerEvent<Element>) {
      if (fingers.current.size === 0) dragged.current = false;
      began.current = placeIn(event);
      fingers.current.set(event.pointerId, began.current);
    },
    onPointerMove(event: PointerEvent<Element>) {
      const before = fingers.current.get(event.pointerId);
      if (!before) return;
      const now = placeIn(event);
      const other = [...fingers.current].find(([id]) => id !== event.pointerId)?.[1];
      if (other) {
        dragged.current = true;
        const [was, is] = [before, now].map((point) => Math.hypot(point.x - other.x, point.y - other.y));
        set(zoomed(zoom, frame, is! / Math.max(1, was!), { x: (now.x + other.x) / 2, y: (now.y + other.y) / 2 }));
      } else {
        if (zoom.by === 1) return;
        if (!dragged.current && Math.hypot(now.x - before.x, now.y - before.y) < shake) return;
        dragged.current = true;
        event.currentTarget.setPointerCapture(event.pointerId);
        set(moved(zoom, frame, now.x - before.x, now.y - before.y));
      }
      fingers.current.set(event.pointerId, now);
    },
    /** true: it was a tap */
    onPointerUp(event: PointerEvent<Element>): boolean {
      const last = fingers.current.delete(event.pointerId) && fingers.current.size === 0;
      const { x, y } = placeIn(event);
      return last && !dragged.current && Math.hypot(x - began.current.x, y - began.current.y) < shake;
    },
    onPointerCancel(event: PointerEvent<Element>) {
      fingers.current.delete(event.pointerId);
    },
    /** true: the key was one of the picture's */
    key(event: KeyboardEvent): boolean {
      const by = { ArrowLeft: [1, 0], ArrowRight: [-1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[event.key];
      if (event.key === '+' || event.key === '=') set(zoomed(zoom, frame, 1.6));
      else if (event.key === '-') set(zoomed(zoom, frame, 1 / 1.6));
      else if (event.key === '0') setNear(null);
      else if (by && zoom.by > 1) set(moved(zoom, frame, by[0]! * keyStep, by[1]! * keyStep));
      else return false;
      event.preventDefault();
      return true;
    },
  };
}
