import { existsSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium } from 'playwright-core';

const CHROMIUM = ['/usr/bin/chromium', '/usr/bin/chromium-browser'].find((path) => existsSync(path));

/** Tests that need a real browser are left out by name where there is none; `.ci/run` installs it. */
export const noBrowser = CHROMIUM === undefined;

/** A browser that goes nowhere by itself. How long it may wait for a page is the test's own limit, on a slow machine too. */
export async function browser(): Promise<BrowserContext> {
  const context = await chromium.launchPersistentContext(mkdtempSync(join(tmpdir(), 'gorewright-browser-')), {
    executablePath: CHROMIUM!,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
  context.setDefaultTimeout(0);
  return context;
}
