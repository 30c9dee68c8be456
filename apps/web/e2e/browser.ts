import { type Browser, type BrowserContext, chromium } from 'playwright-core';
import { chromiumPath } from '../../../scripts/chromium.mjs';

const args = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Width of a phone in one hand, and of a laptop. [CSS px] */
export const phone = { width: 390, height: 844 };
export const laptop = { width: 1280, height: 900 };

/** A headless browser with nothing kept from before. */
export async function launchBrowser(): Promise<Browser> {
  return chromium.launch({ executablePath: required(), args });
}

/** A browser that keeps what it stores in a folder, to close and open again. */
export async function launchKeptBrowser(folder: string): Promise<BrowserContext> {
  return chromium.launchPersistentContext(folder, {
    executablePath: required(),
    args,
    viewport: phone,
    hasTouch: true,
  });
}

function required(): string {
  const path = chromiumPath();
  if (!path) throw new Error('no Chromium found: set CHROME_PATH, or run npm test, which installs one');
  return path;
}
