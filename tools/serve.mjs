// A small server for a folder of built files. It listens on this machine alone and reads nothing outside the folder.
import { readFile, realpath, stat } from "node:fs/promises";
import { createServer } from "node:http";
import { extname, join, relative, sep } from "node:path";
import { promisify } from "node:util";
import { gzip } from "node:zlib";
import { headersOf } from "./site/headers.mjs";

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

/** Nothing is gained by compressing what is small, or compressed as it is. */
const LEAST_COMPRESSED = 1000;
const compressed = promisify(gzip);

/** How many ports after the one wanted are tried. */
const NEXT_PORTS = 20;

/**
 * Serves a folder on 127.0.0.1. Port 0 takes any free one. A port that is taken throws an error with the code
 * EADDRINUSE.
 *
 * @param {string} folder
 * @param {number} [port]
 * @returns {Promise<{ readonly address: string, readonly close: () => Promise<void> }>}
 */
export async function serve(folder, port = 0) {
  const root = await realpath(folder);
  const site = { root, packed: new Map(), hosts: new Set() };
  const server = createServer((request, response) => {
    answer(site, request, response).catch(() => refuse(response, 500));
  });
  await new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, "127.0.0.1", resolve);
  });
  const { port: taken } = server.address();
  for (const name of ["127.0.0.1", "localhost"]) site.hosts.add(`${name}:${taken}`);
  return {
    address: `http://127.0.0.1:${taken}`,
    close: () =>
      new Promise((resolve, reject) => {
        server.close((error) => (error === undefined ? resolve() : reject(error)));
        server.closeAllConnections();
      }),
  };
}

/**
 * Serves a folder on the port wanted, or on the next free one where another program has that, and says so.
 *
 * @param {string} folder
 * @param {number} wanted
 * @param {(text: string) => void} say
 */
export async function serveNear(folder, wanted, say) {
  for (let port = wanted; ; port += 1) {
    try {
      const served = await serve(folder, port);
      if (port !== wanted) say(`Port ${wanted} is taken by another program; port ${port} is used.`);
      return served;
    } catch (fault) {
      if (fault.code !== "EADDRINUSE" || port >= Math.min(wanted + NEXT_PORTS, 65_535)) throw fault;
    }
  }
}

async function answer(site, request, response) {
  // A page elsewhere may have its own name lead to this machine; it is not answered under that name.
  if (!site.hosts.has(request.headers.host ?? "")) return refuse(response, 421);
  if (request.method !== "GET" && request.method !== "HEAD") return refuse(response, 405);
  let path;
  try {
    path = decodeURIComponent((request.url ?? "/").split(/[?#]/)[0]);
  } catch {
    return refuse(response, 400);
  }
  if (/\0|\\/.test(path) || !/^\/(?!\/)/.test(path)) return refuse(response, 400);
  // A link inside the folder may point out of it, hence the real path.
  const file = await realpath(join(site.root, path)).catch(() => undefined);
  if (file === undefined) return refuse(response, 404);
  if (file !== site.root && !file.startsWith(site.root + sep)) return refuse(response, 403);
  if (!(await stat(file)).isDirectory()) return send(site, file, request, response);
  if (!path.endsWith("/")) {
    // Where the folder is, not what was asked for: that may name another host.
    const location = `/${relative(site.root, file).split(sep).map(encodeURIComponent).join("/")}/`;
    response.writeHead(301, { location }).end();
    return;
  }
  const index = await realpath(join(file, "index.html")).catch(() => undefined);
  if (index === undefined) return refuse(response, 404);
  if (!index.startsWith(site.root + sep)) return refuse(response, 403);
  return send(site, index, request, response);
}

async function send({ root, packed }, file, request, response) {
  const { size, mtimeMs } = await stat(file);
  const type = TYPES[extname(file).toLowerCase()] ?? "application/octet-stream";
  const etag = `"${size.toString(36)}-${Math.round(mtimeMs).toString(36)}"`;
  const headers = {
    ...headersOf(relative(root, file).split(sep).join("/")),
    "Content-Type": type,
    ETag: etag,
    Vary: "Accept-Encoding",
  };
  if (request.headers["if-none-match"] === etag) {
    response.writeHead(304, headers).end();
    return;
  }
  const isPacked =
    size >= LEAST_COMPRESSED &&
    /^text\/|[/+](json|xml)\b/.test(type) &&
    /\bgzip\b/.test(request.headers["accept-encoding"] ?? "");
  const body = isPacked ? await packedFile(packed, file, etag) : await readFile(file);
  response.writeHead(200, {
    ...headers,
    ...(isPacked ? { "Content-Encoding": "gzip" } : {}),
    "Content-Length": body.length,
  });
  response.end(request.method === "HEAD" ? undefined : body);
}

/** A file compressed, kept until the file is another. */
async function packedFile(packed, file, etag) {
  const kept = packed.get(file);
  if (kept?.etag === etag) return kept.body;
  const body = await compressed(await readFile(file), { level: 6 });
  packed.set(file, { etag, body });
  return body;
}

function refuse(response, status) {
  if (!response.headersSent) {
    response.writeHead(status, { "Content-Type": "text/plain; charset=utf-8", "X-Content-Type-Options": "nosniff" });
  }
  response.end(`${status}\n`);
}
