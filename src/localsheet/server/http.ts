import { createReadStream, existsSync, realpathSync, statSync } from 'node:fs';
import type { IncomingMessage, Server, ServerResponse } from 'node:http';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { SITE_FOLDER } from './site';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.txt': 'text/plain; charset=utf-8',
  '.map': 'application/json',
  '.xlsx': 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
};

/** Nothing from elsewhere, nothing to elsewhere. Styles: the embedded engine sets some inline. */
const CSP = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "connect-src 'self'",
  "frame-src 'self'",
  "worker-src 'self' blob:",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'self'",
].join('; ');
const HEADERS = {
  'Content-Security-Policy': CSP,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cache-Control': 'no-cache',
};

function fileFor(root: string, path: string): string | undefined {
  const wanted = path.endsWith('/') ? `${path}index.html` : path;
  const [folder, rest] = wanted.startsWith('/templates/')
    ? [join(root, 'templates'), wanted.slice('/templates'.length)]
    : [join(root, SITE_FOLDER), wanted];
  const full = normalize(join(folder, rest));
  if (full !== folder && !full.startsWith(folder + sep)) return undefined;
  if (!existsSync(full) || !statSync(full).isFile()) return undefined;
  // A link may lead anywhere on this machine; what it leads to must lie in the folder too.
  return realpathSync(full).startsWith(realpathSync(folder) + sep) ? full : undefined;
}

/**
 * The names this server answers to. A page from elsewhere may make its own name mean this machine and then read
 * everything here as its own; it cannot change the name it asks under.
 */
export const isOwnHost = (host: string | undefined): boolean =>
  /^(localhost|127\.0\.0\.1|\[::1\])(:\d{1,5})?$/i.test(host ?? '');

function send(request: IncomingMessage, response: ServerResponse, file: string): void {
  const type = TYPES[extname(file)] ?? 'application/octet-stream';
  const tag = `"${statSync(file).mtimeMs.toString(36)}"`;
  if (request.headers['if-none-match'] === tag) {
    response.writeHead(304, HEADERS).end();
    return;
  }
  const headers = { ...HEADERS, 'Content-Type': type, ETag: tag };
  response.writeHead(200, { ...headers, 'Content-Length': statSync(file).size });
  createReadStream(file).pipe(response);
}

const answer =
  (root: string) =>
  (request: IncomingMessage, response: ServerResponse): void => {
    if (!isOwnHost(request.headers.host)) {
      response
        .writeHead(421, { ...HEADERS, 'Content-Type': 'text/plain' })
        .end('Spawnbook answers to localhost only.');
      return;
    }
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      response.writeHead(405, HEADERS).end();
      return;
    }
    let path = '/';
    try {
      path = decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname);
    } catch {
      response.writeHead(400, HEADERS).end();
      return;
    }
    const file = fileFor(root, path);
    if (!file) {
      response.writeHead(404, { ...HEADERS, 'Content-Type': 'text/plain' }).end('Not here.');
      return;
    }
    send(request, response, file);
  };

export interface Running {
  readonly port: number;
  readonly url: string;
  close(): Promise<void>;
}

const listen = (server: Server, port: number): Promise<boolean> =>
  new Promise((resolve, reject) => {
    const onError = (error: NodeJS.ErrnoException): void => {
      if (error.code === 'EADDRINUSE') resolve(false);
      else reject(error);
    };
    server.once('error', onError);
    // Only this machine: a farm's numbers are not for the neighbours.
    server.listen(port, '127.0.0.1', () => {
      server.off('error', onError);
      resolve(true);
    });
  });

const TRIES = 20;
/** Serves the local sheet on the wished port or the next free one; port 0 takes any. */
export async function serve(root: string, port: number): Promise<Running> {
  for (let i = 0; i < TRIES; i++) {
    const server = createServer(answer(root));
    if (!(await listen(server, port === 0 ? 0 : port + i))) continue;
    const address = server.address();
    const actual = typeof address === 'object' && address ? address.port : port + i;
    return {
      port: actual,
      url: `http://localhost:${actual}/`,
      close: () =>
        new Promise((resolve) => {
          server.close(() => {
            resolve();
          });
          server.closeAllConnections();
        }),
    };
  }
  throw new Error(
    `The ports ${port} to ${port + TRIES - 1} are all taken. Stop another program or give one: npm start -- --port 5200`,
  );
}
