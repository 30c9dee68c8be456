/** Figures as loggers write them. */

/** What stands for ‘not read’. */
const none = /^(|-{1,3}|n\/?a|nan|null|none|overflow|ol|#n\/a|\?)$/i;

/**
 * A figure: a sign of either kind, a decimal point or comma, its unit behind it (`12.45 V`), powers of ten (`1.2e1`).
 * undefined: it is left empty or says that nothing was read; null: it is no figure.
 */
export function readFigureText(text: string, decimal: '.' | ','): number | null | undefined {
  const given = text.trim();
  if (none.test(given)) return undefined;
  let plain = given.replace('−', '-');
  if (decimal === ',') {
    if (/\.\d{3}(\D|$)/.test(plain)) plain = plain.replace(/\.(?=\d{3}(\D|$))/g, '');
    plain = plain.replace(',', '.');
  } else if (/\d,\d{3}(\D|$)/.test(plain)) plain = plain.replace(/,(?=\d{3}(\D|$))/g, '');
  const read = /^([+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)\s*(?:m?[VA]|volts?|amps?|°?[CF]|°)?$/i.exec(plain);
  if (!read) return null;
  const value = Number(read[1]);
  return Number.isFinite(value) ? value : null;
}
