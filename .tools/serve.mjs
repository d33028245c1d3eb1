/** A small static file server for the built site, as any plain host would serve it, also below a sub-path. */
import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, resolve, sep } from 'node:path';

const types = {
  '.css': 'text/css; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.pdf': 'application/pdf',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.wav': 'audio/wav',
  '.webmanifest': 'application/manifest+json',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
  '.xml': 'application/xml; charset=utf-8',
};

/** What an address names: a file, a folder that lacks its closing slash, or nothing. */
function find(folder, path) {
  const file = resolve(folder, '.' + path);
  if (file !== folder && !file.startsWith(folder + sep)) return {};
  if (!existsSync(file)) return {};
  if (!statSync(file).isDirectory()) return path.endsWith('/') ? {} : { file };
  if (!path.endsWith('/')) return { redirect: path + '/' };
  const index = join(file, 'index.html');
  return existsSync(index) ? { file: index } : {};
}

function pathOf(url) {
  try {
    return decodeURIComponent(new URL(url, 'http://localhost').pathname);
  } catch {
    return undefined;
  }
}

function answer(folder, base, request, response) {
  const path = pathOf(request.url);
  if (path?.startsWith(base)) {
    const { file, redirect } = find(folder, path.slice(base.length - 1));
    if (redirect) {
      response.writeHead(301, { location: base.slice(0, -1) + encodeURI(redirect) }).end();
      return;
    }
    if (file) return send(response, 200, file);
  }
  const missing = join(folder, '404.html');
  if (existsSync(missing)) return send(response, 404, missing);
  response.writeHead(404, { 'content-type': 'text/plain' }).end('Not found');
}

function send(response, status, file) {
  const type = types[extname(file)] ?? 'application/octet-stream';
  response.writeHead(status, { 'content-type': type, 'content-length': statSync(file).size });
  createReadStream(file).pipe(response);
}

/** A sub-path with a slash at both ends: `sub` -> `/sub/`. */
function normalBase(base = '/') {
  return `/${base}/`.replace(/\/+/g, '/');
}

function listen(server, host, port) {
  return new Promise((done, failed) => {
    server.once('error', failed);
    server.listen(port, host, () => {
      server.off('error', failed);
      done(server.address().port);
    });
  });
}

/**
 * Serves `folder` below `base`; a taken port gives the next one, port 0 any free one.
 * @param {{ folder: string, base?: string, host?: string, port?: number }} options
 * @returns {Promise<{ url: string, port: number, close: () => Promise<void> }>}
 */
export async function serve({ folder, base = '/', host = '127.0.0.1', port = 0 }) {
  const at = normalBase(base);
  const server = createServer((request, response) =>
    answer(resolve(folder), at, request, response),
  );
  for (let wanted = port; ; wanted += 1) {
    try {
      const taken = await listen(server, host, wanted);
      const close = () =>
        new Promise((done) => {
          server.close(() => done());
          server.closeAllConnections();
        });
      const name = host === '0.0.0.0' || host === '::' ? 'localhost' : host;
      return { url: `http://${name}:${taken}${at}`, port: taken, close };
    } catch (error) {
      if (error.code !== 'EADDRINUSE' || wanted === 0 || wanted >= 65535) throw error;
    }
  }
}
