/** Serves dist/ (or another folder) on localhost, as any static host would.
 *  `node .ci/serve.mjs [PORT [FOLDER]]`. */
import { createReadStream, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

const dist = fileURLToPath(new URL('../dist/', import.meta.url));

const types = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.jpg': 'image/jpeg',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.pdf': 'application/pdf',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
};

function fileFor(folder, url) {
  const path = normalize(decodeURIComponent(new URL(url, 'http://localhost').pathname));
  const file = join(folder, path.endsWith('/') ? `${path}index.html` : path);
  return file.startsWith(folder) && statSync(file).isFile() ? file : null;
}

/** Resolves with the address once it listens; port 0 takes any free one. */
export function serve(port, folder = dist) {
  const server = createServer((request, response) => {
    let file = null;
    try {
      file = fileFor(folder, request.url ?? '/');
    } catch {
      // Not there, or not a path at all: 404 below.
    }
    if (file === null) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, {
      'content-type': types[extname(file)] ?? 'application/octet-stream',
      'content-length': statSync(file).size,
      'cache-control': file.includes('/assets/') ? 'max-age=31536000, immutable' : 'no-cache',
      'x-content-type-options': 'nosniff',
    });
    createReadStream(file).pipe(response);
  });
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => {
      resolve({ server, address: `http://localhost:${server.address().port}/` });
    });
  });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { address } = await serve(
    Number(process.argv[2] ?? 4173),
    process.argv[3] && `${resolve(process.argv[3])}/`,
  );
  console.log(address);
}
