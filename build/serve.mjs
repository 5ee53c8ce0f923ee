// Serves the built app to this machine only, with the same protections as the desktop window.
import { readFile } from 'node:fs/promises';
import http from 'node:http';
import path from 'node:path';

const HERE = '127.0.0.1';
const HEADERS = {
  'Content-Security-Policy':
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; connect-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  'X-Content-Type-Options': 'nosniff',
  'Cache-Control': 'no-store',
};
const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
};

/** Resolves to the address once it is served; a port that is taken gives way to a free one. */
export function serve(folder, port) {
  return new Promise((resolve, reject) => {
    const server = http.createServer((request, response) => answer(folder, request, response));
    server.on('error', (error) => {
      if (error.code === 'EADDRINUSE' && port !== 0) resolve(serve(folder, 0));
      else reject(error);
    });
    server.listen(port, HERE, () => resolve(`http://${HERE}:${server.address().port}/`));
  });
}

async function answer(folder, request, response) {
  const end = (status, body, headers = {}) => response.writeHead(status, { ...HEADERS, ...headers }).end(body);
  // A foreign name that resolves to this machine must not reach the app.
  if (!/^(127\.0\.0\.1|localhost)(:\d+)?$/.test(request.headers.host ?? '')) return end(421);
  if (request.method !== 'GET' && request.method !== 'HEAD') return end(405, undefined, { Allow: 'GET, HEAD' });
  const name = nameOf(request.url);
  if (name === null) return end(400);
  const file = path.join(folder, name === '/' ? 'index.html' : name);
  const inside = path.relative(folder, file);
  if (inside.startsWith('..') || path.isAbsolute(inside)) return end(403);
  try {
    const body = await readFile(file);
    end(200, request.method === 'HEAD' ? undefined : body, { 'Content-Type': TYPES[path.extname(file)] ?? 'application/octet-stream' });
  } catch {
    end(404);
  }
}

function nameOf(address) {
  try {
    return decodeURIComponent(address.split(/[?#]/, 1)[0]);
  } catch {
    return null;
  }
}
