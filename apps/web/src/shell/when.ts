/** Work that can wait, put after what the keeper waits for. */

/**
 * Does it once what is drawn now has been painted. A page that is not looked at paints nothing, and waits for nothing.
 *
 * @returns what calls it off
 */
export function afterPaint(then: () => void): () => void {
  let task: ReturnType<typeof setTimeout> | undefined;
  const soon = () => {
    task = setTimeout(then, 0);
  };
  const frame = document.visibilityState === 'hidden' ? soon() : requestAnimationFrame(soon);
  return () => {
    if (frame !== undefined) cancelAnimationFrame(frame);
    clearTimeout(task);
  };
}

/** So long after a finger or a key asked for something, the device is at work on it, however idle it looks. [ms] */
const answering_ms = 700;
let asked_ms = Number.NEGATIVE_INFINITY;

// a test without a page is not asked
for (const type of ['pointerdown', 'pointerup', 'keydown'])
  globalThis.addEventListener?.(
    type,
    (event) => {
      asked_ms = event.timeStamp;
    },
    { capture: true, passive: true },
  );

/** Does it at once; or, where something was just asked for, once that is answered: nothing changes under a finger. */
export function whenAnswered(then: () => void): void {
  const wait_ms = asked_ms + answering_ms - performance.now();
  if (wait_ms > 0) setTimeout(() => whenAnswered(then), wait_ms);
  else then();
}

/** Does it when the device has a moment, and nothing was asked of it just now. */
export function whenQuiet(then: () => void): void {
  const thenOrLater = () => whenAnswered(then);
  if (typeof requestIdleCallback === 'function') requestIdleCallback(thenOrLater, { timeout: 5_000 });
  else setTimeout(thenOrLater, 200);
}
