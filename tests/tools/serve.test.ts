import { mkdir, mkdtemp, rm, symlink, writeFile } from "node:fs/promises";
import { createServer, type IncomingHttpHeaders, request } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gunzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { serve, serveNear } from "../../tools/serve.mjs";

interface Answer {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly bytes: Buffer;
  readonly body: string;
  readonly type: string;
  readonly to: string;
}

/** Asked as written, without the tidying that fetch does to "..". */
function ask(address: string, path: string, method = "GET", headers: Record<string, string> = {}): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const { hostname, port } = new URL(address);
    request({ hostname, port, path, method, headers }, (response) => {
      const pieces: Buffer[] = [];
      response.on("data", (piece: Buffer) => pieces.push(piece));
      response.on("end", () => {
        const bytes = Buffer.concat(pieces);
        resolve({
          status: response.statusCode ?? 0,
          headers: response.headers,
          bytes,
          body: bytes.toString("utf8"),
          type: response.headers["content-type"] ?? "",
          to: response.headers.location ?? "",
        });
      });
    })
      .on("error", reject)
      .end();
  });
}

describe("the file server", () => {
  let folder: string;
  let server: Awaited<ReturnType<typeof serve>>;
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), "served-"));
    await mkdir(join(folder, "site", "deep"), { recursive: true });
    await writeFile(join(folder, "secret.txt"), "secret");
    await writeFile(join(folder, "site-secret.txt"), "secret");
    await writeFile(join(folder, "site", "deep", "index.html"), "<p>m³/h</p>");
    await writeFile(join(folder, "site", "a.js"), "1");
    await writeFile(join(folder, "site", "long.0123abcd.js"), "1;\n".repeat(2000));
    await writeFile(join(folder, "site", "functions.json"), "{}");
    await writeFile(join(folder, "site", "taskpane.html"), "<p>pane</p>");
    await symlink(join(folder, "secret.txt"), join(folder, "site", "link.txt"));
    server = await serve(join(folder, "site"), 0);
  });
  afterAll(async () => {
    await server.close();
    await rm(folder, { recursive: true });
  });

  const get = (path: string, method = "GET", headers: Record<string, string> = {}): Promise<Answer> =>
    ask(server.address, path, method, headers);

  it("listens on this machine alone", () => expect(new URL(server.address).hostname).toBe("127.0.0.1"));

  it("serves files as UTF-8, and a folder's index", async () => {
    expect(await get("/deep/")).toMatchObject({ status: 200, type: "text/html; charset=utf-8", body: "<p>m³/h</p>" });
    expect(await get("/a.js?x=1")).toMatchObject({ status: 200, type: "text/javascript; charset=utf-8", body: "1" });
    expect(await get("/deep")).toMatchObject({ status: 301, to: "/deep/" });
    expect(await get("/a.js", "HEAD")).toMatchObject({ status: 200, body: "" });
  });

  it.each([
    { path: "/../secret.txt", status: 403 },
    { path: "/%2e%2e/secret.txt", status: 403 },
    { path: "/..%2fsecret.txt", status: 403 },
    { path: "/../site-secret.txt", status: 403 },
    { path: "/link.txt", status: 403 },
    { path: "/missing.html", status: 404 },
    { path: "/", status: 404 },
    { path: "/%00", status: 400 },
    { path: "/%", status: 400 },
    { path: "/..%5csecret.txt", status: 400 },
    { path: "http://evil.example/a.js", status: 400 },
  ])("refuses $path", async ({ path, status }) => {
    const answer = await get(path);
    expect(answer.status).toBe(status);
    expect(answer.body).not.toContain("secret");
  });

  it("changes nothing", async () => expect((await get("/a.js", "PUT")).status).toBe(405));

  it.each([
    "//evil.example/..%2fdeep",
    "//evil.example/%2e%2e/deep",
    "/%2fevil.example/..%2fdeep",
    "/\\evil.example/deep",
  ])("leads nowhere else: %s", async (path) => expect(await get(path)).toMatchObject({ status: 400, to: "" }));

  it("leads to where a folder is, however it was asked for", async () => {
    expect(await get("/a%2f..%2fdeep/..%2fdeep")).toMatchObject({ status: 301, to: "/deep/" });
    expect(await get("/deep/..%2fdeep")).toMatchObject({ status: 301, to: "/deep/" });
  });

  it("answers under its own names alone", async () => {
    const { port } = new URL(server.address);
    for (const host of ["evil.example", `evil.example:${port}`, "127.0.0.1:1"]) {
      expect(await get("/a.js", "GET", { Host: host }), host).toMatchObject({ status: 421, body: "421\n" });
    }
    expect((await get("/a.js", "GET", { Host: `localhost:${port}` })).status).toBe(200);
  });

  it("forbids framing, foreign bases and forms to every page, but lets Excel on the web frame the pane", async () => {
    const policyOf = async (path: string): Promise<string> =>
      String((await get(path)).headers["content-security-policy"]);
    expect(await policyOf("/deep/")).toBe("frame-ancestors 'none'; base-uri 'none'; form-action 'none'");
    const pane = await policyOf("/taskpane.html");
    expect(pane).toMatch(/^frame-ancestors 'self' https:.*; base-uri 'none'; form-action 'none'$/);
    expect(pane).toContain("https://*.officeapps.live.com");
  });

  it("says how long each file may be kept, and that its type is to be believed", async () => {
    const kept = async (path: string): Promise<unknown> => (await get(path)).headers["cache-control"];
    expect(await kept("/long.0123abcd.js")).toBe("public, max-age=31536000, immutable");
    for (const path of ["/a.js", "/deep/", "/taskpane.html", "/functions.json"]) {
      expect(await kept(path), path).toBe("no-cache");
    }
    for (const path of ["/a.js", "/missing", "/taskpane.html"]) {
      expect((await get(path)).headers["x-content-type-options"], path).toBe("nosniff");
    }
  });

  it("gives functions.json to pages elsewhere, and nothing else", async () => {
    expect((await get("/functions.json")).headers["access-control-allow-origin"]).toBe("*");
    expect((await get("/taskpane.html")).headers).not.toHaveProperty("access-control-allow-origin");
  });

  it("compresses what is long, for those who can read it", async () => {
    const plain = await get("/long.0123abcd.js");
    expect(plain.headers).not.toHaveProperty("content-encoding");
    const packed = await get("/long.0123abcd.js", "GET", { "Accept-Encoding": "gzip, deflate" });
    expect(packed.headers["content-encoding"]).toBe("gzip");
    expect(packed.bytes.length).toBeLessThan(plain.bytes.length / 10);
    expect(gunzipSync(packed.bytes).equals(plain.bytes)).toBe(true);
    await writeFile(join(folder, "site", "long.0123abcd.js"), "2;\n".repeat(2001));
    const changed = await get("/long.0123abcd.js", "GET", { "Accept-Encoding": "gzip" });
    expect(gunzipSync(changed.bytes).toString("utf8")).toBe("2;\n".repeat(2001));
  });

  it("sends a file once while it is the same", async () => {
    const { etag } = (await get("/a.js")).headers;
    expect(await get("/a.js", "GET", { "If-None-Match": String(etag) })).toMatchObject({ status: 304, body: "" });
    expect((await get("/a.js", "GET", { "If-None-Match": '"other"' })).body).toBe("1");
  });
});

describe("a port that is taken", () => {
  const other = createServer();
  let port = 0;
  beforeAll(async () => {
    await new Promise<void>((resolve) => other.listen(0, "127.0.0.1", resolve));
    ({ port } = other.address() as AddressInfo);
  });
  afterAll(() => new Promise((resolve) => other.close(resolve)));

  it("is refused by its code", async () => {
    await expect(serve("assets", port)).rejects.toMatchObject({ code: "EADDRINUSE" });
  });

  it("is told, and one after it is used", async () => {
    const said: string[] = [];
    const served = await serveNear("assets", port, (text) => said.push(text));
    const used = Number(new URL(served.address).port);
    expect(used).toBeGreaterThan(port);
    expect(said).toEqual([`Port ${port} is taken by another program; port ${used} is used.`]);
    expect((await ask(served.address, "/icon-32.png")).status).toBe(200);
    await served.close();
  });
});
