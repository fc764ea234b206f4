import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { freshFolder, projectFile } from '../cli/gorewright.ts';
import { browser, noBrowser } from './browser.ts';
import { wholePage } from './whole-page.ts';

const LANTERN = readFileSync(projectFile('examples/lantern.yaml'), 'utf8');
/** Little to lay and to hang, where it is the name that is tried. */
const PENCIL = readFileSync(projectFile('templates/pencil.yaml'), 'utf8');
const PUFFIN = readFileSync(projectFile('examples/puffin.yaml'), 'utf8');

describe('the page of a gown is one file that needs no other', () => {
  let page: string;
  beforeAll(async () => {
    page = await wholePage(LANTERN);
  });

  it('names nothing to be fetched, and forbids it', () => {
    // Namespaces of SVG are names, not addresses.
    const addresses = page.match(/\b(?:https?:)?\/\/[\w.]+/g)?.filter((one) => !one.includes('www.w3.org'));
    expect(addresses ?? []).toEqual([]);
    expect(page).not.toMatch(/<(?:link|img|iframe|object|embed|base)\b|\bsrc=|@import|url\(/);
    expect(page).toContain("default-src 'none'");
  });

  it('is under 400 kB', () => {
    expect(Buffer.byteLength(page)).toBeLessThan(400_000);
  });

  it('has every slot filled', () => {
    const read = page.replace(/<script>[\s\S]*<\/script>/, '');
    expect(read).not.toMatch(/\{\{|undefined|NaN|\[object/);
  });
});

/** Names that would break out of a page, turn its text round, or burst its lines. */
const NAMES = {
  'with markup in it': '</title><script>document.title="taken"</script><img src=x onerror=alert(1)>"\'&',
  'of 300 characters': 'Lantern'.repeat(43).slice(0, 300),
  'from right to left': 'פנס שושנה',
};

const SIZES = { phone: [390, 844], tablet: [820, 1180], desk: [1440, 900] } as const;

describe.skipIf(noBrowser)('in a real browser, with the network off', () => {
  let context: BrowserContext;
  beforeAll(async () => {
    context = await browser();
    await context.setOffline(true);
  });
  afterAll(() => context.close());

  async function opened(
    text: string,
    size: readonly [number, number],
  ): Promise<{ page: Page; faults: string[] }> {
    const file = join(freshFolder(), 'gown.html');
    writeFileSync(file, text);
    const page = await context.newPage();
    const faults: string[] = [];
    page.on('pageerror', (error) => faults.push(error.message));
    page.on('console', (message) => message.type() === 'error' && faults.push(message.text()));
    page.on('request', (request) => request.url().startsWith('file:') || faults.push(request.url()));
    await page.setViewportSize({ width: size[0], height: size[1] });
    await page.goto(pathToFileURL(file).href);
    return { page, faults };
  }

  it.each(Object.entries(SIZES))('nothing sticks out on a %s', async (_name, size) => {
    const { page, faults } = await opened(await wholePage(LANTERN), size);
    const width = await page.evaluate('document.documentElement.scrollWidth');
    expect(width).toBeLessThanOrEqual(size[0]);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('a lay across a wide cloth that takes little of it is shown whole, on a screen and on a page', async () => {
    const { page } = await opened(await wholePage(LANTERN), SIZES.desk);
    const lay = page.locator('.lay svg').first();
    await lay.evaluate((svg) => {
      for (const [name, value] of Object.entries({
        viewBox: '0 0 280 1400',
        width: '280mm',
        height: '1400mm',
      }))
        svg.setAttribute(name, value);
    });
    expect((await lay.boundingBox())!.height).toBeLessThan(SIZES.desk[1]);
    await page.emulateMedia({ media: 'print' });
    // What an A4 page has between margins of 1 cm, at 96 to the inch.
    expect((await lay.boundingBox())!.height).toBeLessThan((277 * 96) / 25.4);
    await page.close();
  });

  it.each(Object.entries(NAMES))('a name %s is shown as it is written', async (_name, name) => {
    const spec = PENCIL.replace(/^gown: .*$/m, `gown: ${JSON.stringify(name)}`);
    const { page, faults } = await opened(await wholePage(spec), SIZES.phone);
    expect(await page.locator('h1').textContent()).toBe(name);
    expect(await page.title()).toBe(name);
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(390);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('a ruler between two points says their distance, in the units of the spec', async () => {
    for (const [spec, mm, unit] of [
      [LANTERN, 10, 'cm'],
      [PUFFIN, 25.4, 'in'],
    ] as const) {
      const { page } = await opened(await wholePage(spec), SIZES.desk);
      await page.click('[data-do=measure]');
      await page.locator('.viewer .drawing').scrollIntoViewIfNeeded();
      const box = (await page.locator('.viewer .drawing svg').boundingBox())!;
      // Where the drawing lies in its frame, worked out from its viewBox alone.
      const [, , width, height] = (await page.locator('.viewer svg').getAttribute('viewBox'))!
        .split(' ')
        .map(Number);
      const scale = Math.min(box.width / width!, box.height / height!);
      const across = 200 * scale;
      const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
      await page.mouse.click(x, y);
      await page.mouse.click(x + across, y);
      const said = await page.locator('.viewer output').textContent();
      const [figure, own] = said!.split(' ');
      expect(own).toBe(unit);
      // A pointer stands on whole pixels or parts of them: within two pixels.
      expect(Math.abs(Number(figure) * mm - 200)).toBeLessThan(2 / scale + mm / 10);
      await page.close();
    }
  });

  it('the ruler works by keys alone: from the middle, a twelfth of the width each step', async () => {
    const { page } = await opened(await wholePage(LANTERN), SIZES.desk);
    const [, , width] = (await page.locator('.viewer svg').getAttribute('viewBox'))!.split(' ').map(Number);
    await page.locator('.viewer .drawing').focus();
    for (const key of ['m', 'Enter', 'ArrowRight', 'ArrowRight', 'ArrowRight', 'Enter'])
      await page.keyboard.press(key);
    const said = await page.locator('.viewer output').textContent();
    expect(Number(said!.split(' ')[0])).toBeCloseTo((3 * width!) / 12 / 10, 1);
    await page.close();
  });

  it('zooms in and comes back to the whole', async () => {
    const { page } = await opened(await wholePage(LANTERN), SIZES.desk);
    const box = () => page.locator('.viewer svg').getAttribute('viewBox');
    const whole = await box();
    await page.locator('.viewer .drawing').focus();
    await page.keyboard.press('+');
    const [, , width] = (await box())!.split(' ').map(Number);
    expect(width).toBeCloseTo(Number(whole!.split(' ')[2]) / 1.25, 3);
    await page.keyboard.press('0');
    expect(await box()).toBe(whole!.split(' ').map(Number).join(' '));
    await page.close();
  });

  it('a layer that is switched off takes its own pieces with it, and no other', async () => {
    const { page } = await opened(await wholePage(LANTERN), SIZES.desk);
    const shown = () =>
      page.$$eval('.viewer .piece', (pieces) =>
        pieces
          .map((piece) => piece as unknown as { style: { display: string }; dataset: { layers: string } })
          .filter((piece) => piece.style.display !== 'none')
          .map((piece) => piece.dataset.layers),
      );
    const all = await shown();
    await page.uncheck('[data-layer=shell]');
    const rest = await shown();
    expect(rest).toEqual(all.filter((layers) => layers.split(' ').some((layer) => layer !== 'shell')));
    expect(rest.length).toBeLessThan(all.length);
    await page.close();
  });

  it('every piece of a lay is named under the pointer', async () => {
    const { page } = await opened(await wholePage(LANTERN), SIZES.desk);
    const lay = page.locator('.lay').first();
    const placed = await lay.locator('.placed').all();
    // Nine panels of the lining, the front in one.
    expect(placed.length).toBeGreaterThanOrEqual(9);
    for (const piece of placed) {
      await piece.dispatchEvent('pointerover');
      const said = await lay.locator('output').textContent();
      const { gore, copy, mirrored } = (await piece.evaluate((node) => ({
        ...(node as unknown as { dataset: Record<string, string> }).dataset,
      }))) as Record<string, string>;
      expect(said!.split(', ')[0]).toBe(gore);
      expect(said).toContain(`copy ${copy}`);
      expect(said!.includes('mirrored')).toBe(mirrored === 'true');
    }
    await page.close();
  });

  it.each(['light', 'dark'] as const)(
    'its words stand out in the %s: 4.5 to 1 (WCAG 2.2, 1.4.3)',
    async (colorScheme) => {
      const { page } = await opened(await wholePage(LANTERN), SIZES.desk);
      await page.emulateMedia({ colorScheme });
      const colours = (of: string) =>
        page.$eval(
          'body',
          (body, name) => {
            const style = (globalThis as unknown as { getComputedStyle(of: unknown): Record<string, string> })
              .getComputedStyle;
            const at =
              (body as unknown as { querySelector(of: string): unknown }).querySelector(name) ?? body;
            return [style(at).color!, style(body).backgroundColor!];
          },
          of,
        );
      for (const of of ['body', 'h2', '.soft', 'th', 'figcaption', 'a', '.finding b', 'footer']) {
        const [ink, paper] = (await colours(of)).map(luminance) as [number, number];
        expect((Math.max(ink, paper) + 0.05) / (Math.min(ink, paper) + 0.05), of).toBeGreaterThan(4.5);
      }
      await page.close();
    },
  );

  it('is told to a screen reader: every section has a heading, every control, picture and region a name', async () => {
    const { page } = await opened(await wholePage(LANTERN), SIZES.phone);
    const levels = await page.$$eval('h1, h2, h3', (heads) =>
      heads.map((head) => Number((head as unknown as { tagName: string }).tagName[1])),
    );
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    for (const [i, level] of levels.entries()) expect(level - (levels[i - 1] ?? 0)).toBeLessThanOrEqual(1);
    const sections = await page.locator('main section').count();
    expect(await page.locator('main section > h2:first-child').count()).toBe(sections);
    for (const role of ['img', 'button', 'checkbox', 'link', 'navigation', 'application', 'group'] as const) {
      const all = await page.getByRole(role).count();
      expect(all, role).toBeGreaterThan(0);
      // Drawings hold their own letters, so that their frames are what is named.
      const named =
        role === 'img'
          ? page.locator('[role=img]:not([aria-label=""])')
          : page.getByRole(role, { name: /\S/ });
      expect(await named.count(), role).toBe(role === 'img' ? await page.locator('[role=img]').count() : all);
    }
    await page.close();
  });

  it('can be read without its script', async () => {
    const { page } = await opened(
      (await wholePage(LANTERN)).replace(/<script>[\s\S]*<\/script>/, ''),
      SIZES.phone,
    );
    expect(await page.locator('.viewer svg').isVisible()).toBe(true);
    expect(await page.locator('[data-do=measure]').isVisible()).toBe(false);
    await page.close();
  });
});

/** Of a colour as a browser computes it (WCAG 2.2, relative luminance). */
function luminance(colour: string): number {
  const [r, g, b] = colour
    .match(/\d+/g)!
    .map((part) => Number(part) / 255)
    .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}
