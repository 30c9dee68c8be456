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

/** Does it when the device has a moment. */
export function whenQuiet(then: () => void): void {
  if (typeof requestIdleCallback === 'function') requestIdleCallback(then, { timeout: 5_000 });
  else setTimeout(then, 200);
}
