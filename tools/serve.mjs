// A small server for a folder of built files. It listens on this machine alone and reads nothing outside the folder.
import { createReadStream } from "node:fs";
import { realpath, stat } from "node:fs/promises";
import { createServer } from "node:http";
import { extname, join, sep } from "node:path";

const TYPES = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".mjs": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".map": "application/json; charset=utf-8",
  ".svg": "image/svg+xml; charset=utf-8",
  ".txt": "text/plain; charset=utf-8",
  ".xml": "application/xml; charset=utf-8",
  ".png": "image/png",
  ".ico": "image/x-icon",
  ".woff2": "font/woff2",
  ".xlsx": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
};

/**
 * Serves a folder on 127.0.0.1. Port 0 takes any free one.
 *
 * @param {string} folder
 * @param {number} [port]
 * @returns {Promise<{ readonly address: string, readonly close: () => Promise<void> }>}
 */
export async function serve(folder, port = 0) {
  const root = await realpath(folder);
  const server = createServer((request, response) => {
    answer(root, request, response).catch(() => refuse(response, 500));
  });
  await new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, "127.0.0.1", resolve);
  });
  return {
    address: `http://127.0.0.1:${server.address().port}`,
    close: () =>
      new Promise((resolve, reject) => {
        server.close((error) => (error === undefined ? resolve() : reject(error)));
        server.closeAllConnections();
      }),
  };
}

async function answer(root, request, response) {
  if (request.method !== "GET" && request.method !== "HEAD") return refuse(response, 405);
  let path;
  try {
    path = decodeURIComponent((request.url ?? "/").split(/[?#]/)[0]);
  } catch {
    return refuse(response, 400);
  }
  if (path.includes("\0")) return refuse(response, 400);
  // A link inside the folder may point out of it, hence the real path.
  const file = await realpath(join(root, path)).catch(() => undefined);
  if (file === undefined) return refuse(response, 404);
  if (file !== root && !file.startsWith(root + sep)) return refuse(response, 403);
  const facts = await stat(file);
  if (!facts.isDirectory()) return send(file, facts.size, request, response);
  if (!path.endsWith("/")) {
    response.writeHead(301, { location: `${encodeURI(path)}/` }).end();
    return;
  }
  const index = join(file, "index.html");
  const indexFacts = await stat(index).catch(() => undefined);
  if (indexFacts === undefined) return refuse(response, 404);
  return send(index, indexFacts.size, request, response);
}

function send(file, size, request, response) {
  response.writeHead(200, {
    "content-type": TYPES[extname(file).toLowerCase()] ?? "application/octet-stream",
    "content-length": size,
    "cache-control": "no-cache",
    "x-content-type-options": "nosniff",
  });
  if (request.method === "HEAD") response.end();
  else
    createReadStream(file)
      .on("error", () => response.destroy())
      .pipe(response);
}

function refuse(response, status) {
  if (!response.headersSent) response.writeHead(status, { "content-type": "text/plain; charset=utf-8" });
  response.end(`${status}\n`);
}
