import { get } from 'node:http';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { PageServer } from '../../src/cli/page-server.ts';

let server: PageServer;
beforeAll(async () => {
  server = await PageServer.open();
});
afterAll(() => server.close());

/** What is said at once to a page that asks for news. */
function firstSaid(news: string): Promise<string> {
  return new Promise((resolve, reject) => {
    const asked = get(`${server.address}${news}`, (response) =>
      response.once('data', (data) => {
        resolve(String(data));
        asked.destroy();
      }),
    );
    asked.on('error', reject);
  });
}

it('a page that asks for news only after the next one is shown hears of that at once', async () => {
  const show = () => {
    const news = server.newsOfNext();
    server.show({ page: news, files: new Map() });
    return news;
  };
  const first = show();
  expect(await firstSaid(first)).not.toContain('data:');
  const second = show();
  expect(second).not.toBe(first);
  expect(await firstSaid(first)).toBe('data: new\n\n');
  expect(await firstSaid(second)).not.toContain('data:');
});
