/** Work that can wait, put after what the keeper waits for. */

/** Does it once what is drawn now has been painted. A page that is not looked at paints nothing, and waits for nothing. */
export function afterPaint(then: () => void): void {
  if (document.visibilityState === 'hidden') setTimeout(then, 0);
  else requestAnimationFrame(() => setTimeout(then, 0));
}

/** Does it when the device has a moment. */
export function whenQuiet(then: () => void): void {
  if (typeof requestIdleCallback === 'function') requestIdleCallback(then, { timeout: 5_000 });
  else setTimeout(then, 200);
}
