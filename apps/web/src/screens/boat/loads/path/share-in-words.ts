/** `works at 43 % of what it may`; ten times as much and more is said as that: the figure then no longer matters. */
export function shareInWords(share: number): string {
  if (share > 10) return 'works at more than 10 times what it may';
  // what is over is never rounded down to what may be
  const percent = share > 1 ? Math.max(101, Math.round(100 * share)) : Math.round(100 * share);
  return `works at ${percent} % of what it may`;
}
