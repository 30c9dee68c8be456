/** What every journey can ask of a page: that no one is shut out of it, and how long its print is. */
import axe from 'axe-core';
import type { Page } from 'playwright-core';

/**
 * What axe finds serious or critical on a page as it stands, a line each; of some rules only, where they are named.
 * axe is put into a page once and asked for faults only: asked for all it passed, it takes three times as long.
 */
export async function seriousFaults(page: Page, onlyRules?: readonly string[]): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe.source);
  return page.evaluate(async (rules) => {
    const { violations } = await (window as unknown as { axe: typeof axe }).axe.run({
      resultTypes: ['violations'],
      preload: false,
      ...(rules && { runOnly: { type: 'rule' as const, values: [...rules] } }),
    });
    return violations
      .filter(({ impact }) => impact === 'serious' || impact === 'critical')
      .map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`);
  }, onlyRules);
}

/** Pages of a PDF, counted by its page objects. */
export function pagesOf(pdf: Uint8Array): number {
  return (
    Buffer.from(pdf)
      .toString('latin1')
      .match(/\/Type\s*\/Page(?!s)/g)?.length ?? 0
  );
}
