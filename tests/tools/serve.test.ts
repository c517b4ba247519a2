import { mkdir, mkdtemp, rm, symlink, writeFile } from "node:fs/promises";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { serve } from "../../tools/serve.mjs";

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
    await symlink(join(folder, "secret.txt"), join(folder, "site", "link.txt"));
    server = await serve(join(folder, "site"), 0);
  });
  afterAll(async () => {
    await server.close();
    await rm(folder, { recursive: true });
  });

  /** As written, without the tidying that fetch does to "..". */
  const get = (path: string, method = "GET"): Promise<{ status: number; type: string; body: string; to: string }> =>
    new Promise((resolve, reject) => {
      const { hostname, port } = new URL(server.address);
      request({ hostname, port, path, method }, (response) => {
        let body = "";
        response.setEncoding("utf8");
        response.on("data", (piece: string) => {
          body += piece;
        });
        response.on("end", () =>
          resolve({
            status: response.statusCode ?? 0,
            type: response.headers["content-type"] ?? "",
            to: response.headers.location ?? "",
            body,
          }),
        );
      })
        .on("error", reject)
        .end();
    });

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
  ])("refuses $path", async ({ path, status }) => {
    const answer = await get(path);
    expect(answer.status).toBe(status);
    expect(answer.body).not.toContain("secret");
  });

  it("changes nothing", async () => expect((await get("/a.js", "PUT")).status).toBe(405));
});
