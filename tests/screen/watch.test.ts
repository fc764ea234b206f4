import { readFileSync, renameSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Ended, freshFolder, projectFile, started } from '../cli/gorewright.ts';
import { browser, noBrowser } from './browser.ts';

const SPEC = readFileSync(projectFile('templates/six-gores.yaml'), 'utf8');

interface Watching {
  readonly address: URL;
  readonly file: string;
  readonly stop: () => Promise<Ended>;
}

/** Starts `watch` on a spec of its own, and waits for the address that it prints. */
async function watching(spec: string): Promise<Watching> {
  const folder = freshFolder();
  const file = join(folder, 'gown.yaml');
  writeFileSync(file, spec);
  const { child, ended } = started(['watch', 'gown.yaml'], folder);
  const address = await new Promise<string>((resolve, reject) => {
    let said = '';
    child.stdout!.on('data', (data) => {
      said += data;
      if (said.includes('\n')) resolve(said.trim());
    });
    child.on('close', () => reject(new Error('it ended by itself')));
  });
  const stop = () => {
    child.kill('SIGINT');
    return ended;
  };
  return { address: new URL(address), file, stop };
}

interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly body: string;
}

function ask(
  address: URL,
  path: string,
  options: { method?: string; headers?: Record<string, string> } = {},
) {
  return new Promise<Answer>((resolve, reject) => {
    const asked = request({ host: '127.0.0.1', port: address.port, path, ...options }, (response) => {
      let body = '';
      response.on('data', (data) => (body += data));
      response.on('end', () => resolve({ status: response.statusCode!, headers: response.headers, body }));
    });
    asked.on('error', reject);
    asked.end();
  });
}

/** Asks until the page says it; the test's own limit ends the waiting. */
async function until(address: URL, says: (body: string) => boolean): Promise<string> {
  for (;;) {
    const { body } = await ask(address, address.pathname);
    if (says(body)) return body;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

describe('watch shows the gown, and shows it to nobody else', () => {
  let one: Watching;
  beforeAll(async () => {
    one = await watching(SPEC);
  }, 60_000);
  afterAll(async () => {
    const { status, stderr } = await one.stop();
    expect(status).toBe(0);
    expect(stderr).not.toMatch(/fault|at .*\.js|^gorewright:/m);
  }, 60_000);

  it('listens on the loopback address, under a path of 144 random bits', () => {
    expect(one.address.hostname).toBe('127.0.0.1');
    expect(one.address.pathname).toMatch(/^\/[\w-]{24}\/$/);
  });

  it('first the pattern, then the lays and papers', async () => {
    await until(one.address, (body) => body.includes('id="pattern"'));
    const page = await until(one.address, (body) => body.includes('id="lays"'));
    for (const [, name] of page.matchAll(/<a href="([^#"]+)"/g)) {
      const { status } = await ask(one.address, `${one.address.pathname}${name}`);
      expect(status, name).toBe(200);
    }
  });

  it.each([
    ['another path', { path: '/' }],
    ['a path that begins alike', { path: (own: string) => own.slice(0, -3) }],
    ['a name of the host from elsewhere', { headers: { host: 'gowns.example' } }],
    ['a page from elsewhere', { headers: { origin: 'http://gowns.example' } }],
    ['a way out of the folder', { path: (own: string) => `${own}..%2f..%2fetc%2fpasswd` }],
    ['a name that cannot be decoded', { path: (own: string) => `${own}%ff` }],
  ] as [string, { path?: string | ((own: string) => string); headers?: Record<string, string> }][])(
    'says nothing to %s',
    async (_what, { path, headers }) => {
      const own = one.address.pathname;
      const asked = path === undefined ? own : typeof path === 'string' ? path : path(own);
      const { status, body } = await ask(one.address, asked, headers === undefined ? {} : { headers });
      expect(status).toBe(404);
      expect(body).toBe('');
    },
  );

  it('takes nothing in, and lets no other page frame it or read it', async () => {
    expect((await ask(one.address, one.address.pathname, { method: 'POST' })).status).toBe(405);
    const { headers } = await ask(one.address, one.address.pathname);
    expect(headers['access-control-allow-origin']).toBeUndefined();
    expect(headers).toMatchObject({
      'x-frame-options': 'DENY',
      'cross-origin-resource-policy': 'same-origin',
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
      'cache-control': 'no-store',
    });
  });

  it('a save that spoils the spec shows what is wrong, the last good gown beneath; the next one mends it', async () => {
    await until(one.address, (body) => body.includes('id="pattern"'));
    writeFileSync(one.file, SPEC.replace(/^gown: .*$/m, 'gawn: Mistyped'));
    const broken = await until(one.address, (body) => body.includes('role="alert"'));
    expect(broken).toContain('gawn');
    const line = SPEC.split('\n').findIndex((text) => text.startsWith('gown:')) + 1;
    expect(broken.slice(broken.indexOf('role="alert"'))).toContain(`gown.yaml:${line}:1<`);
    expect(broken).toContain('id="pattern"');
    // As editors do: another file is written and renamed over it.
    writeFileSync(`${one.file}.new`, SPEC.replace(/^gown: .*$/m, 'gown: Mended'));
    renameSync(`${one.file}.new`, one.file);
    const mended = await until(one.address, (body) => body.includes('Mended'));
    expect(mended).not.toContain('role="alert"');
  });

  it('of saves while it is still at work the last one stays in view, to the end', async () => {
    for (const name of ['Early', 'Later', 'Last']) {
      writeFileSync(one.file, SPEC.replace(/^gown: .*$/m, `gown: ${name}`));
      // The first two are overtaken: one in its first picture, one in its lays.
      if (name !== 'Last') await until(one.address, (body) => body.includes(`<title>${name}`));
    }
    const whole = await until(one.address, (body) => body.includes('id="lays"'));
    expect(whole).toContain('<title>Last');
  });
});

it('a spec that is wrong from the first shows that, and the gown once it is right', async () => {
  const { address, file, stop } = await watching('format: 1\n');
  await until(address, (body) => body.includes('role="alert"') && !body.includes('id="pattern"'));
  writeFileSync(file, SPEC);
  await until(address, (body) => body.includes('id="pattern"') && !body.includes('role="alert"'));
  expect((await stop()).status).toBe(0);
});

it('a spec that cannot be read ends it with one clear line', async () => {
  const { child, ended } = started(['watch', 'nowhere.yaml'], freshFolder());
  const { status, stderr } = await ended;
  expect(status).toBe(3);
  expect(stderr.trim().split('\n')).toHaveLength(1);
  expect(child.killed).toBe(false);
});

describe.skipIf(noBrowser)('in a real browser', () => {
  it('the page that is open changes with the file, and makes no fault', async () => {
    const { address, file, stop } = await watching(SPEC);
    const context = await browser();
    const page = await context.newPage();
    const faults: string[] = [];
    page.on('pageerror', (error) => faults.push(error.message));
    page.on('console', (message) => message.type() === 'error' && faults.push(message.text()));
    await page.goto(address.href);
    await page.waitForSelector('#lays');
    // Zoomed in, a point of the ruler set, a layer off, and scrolled down to the pattern: as it is left, it comes again.
    await page.locator('.viewer [data-do=in]').click();
    await page.locator('.viewer [data-do=measure]').click();
    const drawing = page.locator('.viewer .drawing');
    await drawing.press('ArrowRight');
    await drawing.press('Enter');
    await page.locator('.viewer [data-layer]').first().uncheck();
    await page.evaluate("document.querySelector('#pattern').scrollIntoView()");
    const left = async () => ({
      box: await page.locator('.viewer svg').getAttribute('viewBox'),
      isFirstOn: await page.locator('.viewer [data-layer]').first().isChecked(),
      said: await page.locator('.viewer output').textContent(),
      pattern: await page.evaluate(
        "Math.round(document.querySelector('#pattern').getBoundingClientRect().top)",
      ),
    });
    const before = await left();
    expect(before.isFirstOn).toBe(false);
    expect(before.said).not.toBe('');
    writeFileSync(file, SPEC.replace(/^gown: .*$/m, 'gown: Renamed'));
    await page.locator('h1', { hasText: 'Renamed' }).waitFor();
    expect(await left()).toEqual(before);
    // And once more, as the lays come back above what follows.
    await page.waitForSelector('#lays');
    expect(await left()).toEqual(before);
    // The icon that browsers ask for by themselves is at an address that is not ours to answer.
    expect(faults.filter((one) => !/favicon|404/.test(one))).toEqual([]);
    await context.close();
    expect((await stop()).status).toBe(0);
  });
});
