import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { protocol } from 'electron';

// The page comes over a scheme of our own: a page over file: could read the whole disk, one over http: needs a server.

const PROTOCOL = 'app:';
const HOST = 'ratiowright';
const ROOT = path.join(import.meta.dirname, '../renderer');
export const START_PAGE = `${PROTOCOL}//${HOST}/`;

/** The page's own policy says the same but for the last part, which only a header can say. */
const POLICY =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; connect-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
};

/** Whether an address is a page of ours: scheme and host, never the start of the text. */
export function isOurs(address: string): boolean {
  if (!URL.canParse(address)) return false;
  const { protocol: scheme, host } = new URL(address);
  return scheme === PROTOCOL && host === HOST;
}

/** Must run before the system is ready. */
export function registerScheme(): void {
  protocol.registerSchemesAsPrivileged([
    { scheme: PROTOCOL.slice(0, -1), privileges: { standard: true, secure: true, supportFetchAPI: true } },
  ]);
}

export function serveApp(): void {
  protocol.handle(PROTOCOL.slice(0, -1), serve);
}

async function serve(request: Request): Promise<Response> {
  if (request.method !== 'GET') return respond(405, null, { Allow: 'GET' });
  const file = isOurs(request.url) ? fileOf(new URL(request.url).pathname) : null;
  if (file === null) return respond(403, null);
  try {
    return respond(200, await readFile(file), { 'Content-Type': TYPES[path.extname(file)] ?? 'application/octet-stream' });
  } catch {
    return respond(404, null);
  }
}

/** The file an address names; null where it lies outside the folder of the page. */
function fileOf(address: string): string | null {
  const name = decoded(address);
  if (name === null) return null;
  const file = path.join(ROOT, name === '/' ? 'index.html' : name);
  const inside = path.relative(ROOT, file);
  return inside.startsWith('..') || path.isAbsolute(inside) ? null : file;
}

function decoded(address: string): string | null {
  try {
    return decodeURIComponent(address);
  } catch {
    return null;
  }
}

function respond(status: number, body: Buffer<ArrayBuffer> | null, headers: Record<string, string> = {}): Response {
  return new Response(body, { status, headers: { ...headers, 'Content-Security-Policy': POLICY, 'X-Content-Type-Options': 'nosniff' } });
}
