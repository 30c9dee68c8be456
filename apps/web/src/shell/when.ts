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
/** Nothing waits longer than this for a finger that goes on asking. [ms] */
const longest_ms = 1500;
let answering: ReturnType<typeof setTimeout> | undefined;
const waiting = new Set<() => void>();

function wasAsked(): void {
  clearTimeout(answering);
  answering = setTimeout(() => {
    answering = undefined;
    for (const then of [...waiting]) then();
  }, answering_ms);
}
// a test without a page is not asked
for (const type of ['pointerdown', 'pointerup', 'keydown'])
  globalThis.addEventListener?.(type, wasAsked, { capture: true, passive: true });

/** Does it at once; or, where something was just asked for, once that is answered: nothing changes under a finger. */
export function whenAnswered(then: () => void): void {
  if (answering === undefined) {
    then();
    return;
  }
  const once = () => {
    if (!waiting.delete(once)) return;
    clearTimeout(late);
    then();
  };
  const late = setTimeout(once, longest_ms);
  waiting.add(once);
}

/** Does it when the device has a moment, and nothing was asked of it just now. */
export function whenQuiet(then: () => void): void {
  const thenOrLater = () => whenAnswered(then);
  if (typeof requestIdleCallback === 'function') requestIdleCallback(thenOrLater, { timeout: 5_000 });
  else setTimeout(thenOrLater, 200);
}
