import { existsSync, readFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join } from "node:path";

/** Types by ending: those that the page for administrators names. */
const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".txt": "text/plain; charset=utf-8",
  ".png": "image/png",
};

/** A plain server: files of a folder, types by their endings, and the headers it was told to send with each path. */
export function plainServer(
  folder: string,
  headersOf: (path: string) => Readonly<Record<string, string>> | undefined,
): Server {
  return createServer((request, response) => {
    const asked = decodeURIComponent(new URL(request.url ?? "/", "http://plain.test").pathname).slice(1);
    const path = asked.endsWith("/") ? `${asked}index.html` : asked;
    const file = join(folder, path);
    if (!existsSync(file)) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, { "Content-Type": TYPES[extname(path)] ?? "application/octet-stream", ...headersOf(path) });
    response.end(readFileSync(file));
  });
}

/** Its address once it listens. */
export function listening(server: Server): Promise<string> {
  return new Promise((resolve) => {
    server.listen(0, "127.0.0.1", () => resolve(`http://127.0.0.1:${(server.address() as AddressInfo).port}`));
  });
}
