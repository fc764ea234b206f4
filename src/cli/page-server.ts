import { randomBytes, timingSafeEqual } from 'node:crypto';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { MachineFault, systemCode } from './fault.ts';

/** The page, and the files that it links to, as they are shown now. */
export interface Shown {
  readonly page: string;
  readonly files: ReadonlyMap<string, string | Uint8Array>;
}

/** Where a page asks for news, below its own address, with its number. */
const NEWS = 'news-';

/**
 * Shows a page on this machine alone: on the loopback address, at a port that the system picks, under a path that
 * nobody can guess. A page from elsewhere that a browser has open can neither find it nor read it: requests must name
 * the loopback address as their host, no answer may be framed, and nothing is ever taken in.
 */
export class PageServer {
  /** What to open in a browser. */
  readonly address: string;
  private shown: Shown = { page: '', files: new Map() };
  private count = 0;
  private readonly listeners = new Set<ServerResponse>();

  private constructor(
    private readonly server: Server,
    private readonly port: number,
    private readonly secret: string,
  ) {
    this.address = `http://${HOST}:${port}/${secret}/`;
    server.on('request', (request, response) => this.answer(request, response));
  }

  /** @throws MachineFault where no port can be had */
  static async open(): Promise<PageServer> {
    const server = createServer({ requestTimeout: 10_000, headersTimeout: 5_000 });
    await new Promise<void>((resolve, reject) => {
      server.once('error', (error) =>
        reject(
          new MachineFault(
            `could not show the page on the loopback address (${systemCode(error)})`,
            'See whether something forbids local connections, or use draft and open gown.html.',
          ),
        ),
      );
      server.listen(0, HOST, resolve);
    });
    return new PageServer(
      server,
      (server.address() as AddressInfo).port,
      randomBytes(18).toString('base64url'),
    );
  }

  /** Where the page that is shown next asks for news. */
  newsOfNext(): string {
    return `${NEWS}${this.count + 1}`;
  }

  /** Shows this from now on, and tells every page that is open. */
  show(shown: Shown): void {
    this.shown = shown;
    this.count++;
    for (const response of this.listeners) response.write(NEW);
  }

  async close(): Promise<void> {
    for (const response of this.listeners) response.end();
    this.server.closeAllConnections();
    await new Promise<void>((resolve) => this.server.close(() => resolve()));
  }

  private answer(request: IncomingMessage, response: ServerResponse): void {
    for (const [name, value] of HEADERS) response.setHeader(name, value);
    const path = this.pathBelow(request);
    if (path === undefined) return void response.writeHead(404).end();
    if (request.method !== 'GET' && request.method !== 'HEAD')
      return void response.writeHead(405, { allow: 'GET, HEAD' }).end();
    if (path.startsWith(NEWS)) return void this.listen(response, path === `${NEWS}${this.count}`);
    const file = path === '' ? this.shown.page : this.shown.files.get(path);
    if (file === undefined) return void response.writeHead(404).end();
    response.setHeader('content-type', typeOf(path));
    // The page brings a policy of its own; a drawing opened by itself runs nothing and loads nothing.
    if (path !== '') response.setHeader('content-security-policy', DRAWING_POLICY);
    response.writeHead(200).end(request.method === 'HEAD' ? undefined : file);
  }

  /** What is asked for below the secret; undefined for everything that is not ours to answer. */
  private pathBelow({ url = '', headers }: IncomingMessage): string | undefined {
    const hosts = [`${HOST}:${this.port}`, `localhost:${this.port}`];
    if (headers.host === undefined || !hosts.includes(headers.host)) return undefined;
    if (headers.origin !== undefined && !hosts.some((host) => headers.origin === `http://${host}`))
      return undefined;
    const [, secret = '', rest] = /^\/([^/?#]*)\/([^?#]*)$/.exec(url) ?? [];
    if (rest === undefined || !isSame(secret, this.secret)) return undefined;
    return decoded(rest);
  }

  /** A page that was loaded before the last one was shown, and asks after it, would otherwise stay as it is. */
  private listen(response: ServerResponse, isOfLast: boolean): void {
    response.writeHead(200, { 'content-type': 'text/event-stream' });
    response.write(isOfLast ? ': \n\n' : NEW);
    this.listeners.add(response);
    response.on('close', () => this.listeners.delete(response));
  }
}

/** The event that there is another page. */
const NEW = 'data: new\n\n';

const HOST = '127.0.0.1';

const HEADERS = [
  ['cache-control', 'no-store'],
  ['x-content-type-options', 'nosniff'],
  ['x-frame-options', 'DENY'],
  ['referrer-policy', 'no-referrer'],
  ['cross-origin-resource-policy', 'same-origin'],
  ['cross-origin-opener-policy', 'same-origin'],
] as const;

const DRAWING_POLICY = "default-src 'none'; style-src 'unsafe-inline'; sandbox";

const TYPES: Readonly<Record<string, string>> = {
  '': 'text/html; charset=utf-8',
  html: 'text/html; charset=utf-8',
  svg: 'image/svg+xml',
  pdf: 'application/pdf',
  csv: 'text/csv; charset=utf-8',
  json: 'application/json',
};

function typeOf(path: string): string {
  const ending = path.includes('.') ? path.slice(path.lastIndexOf('.') + 1) : path;
  return TYPES[ending] ?? 'application/octet-stream';
}

function isSame(a: string, b: string): boolean {
  const [one, other] = [Buffer.from(a), Buffer.from(b)];
  return one.length === other.length && timingSafeEqual(one, other);
}

function decoded(path: string): string | undefined {
  try {
    return decodeURIComponent(path);
  } catch {
    return undefined;
  }
}
