import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";

export interface BundleSize {
  readonly name: string;
  readonly bytes: number;
  readonly gzipped: number;
}

/** What the name of a built script or style carries of its content. */
const OF_CONTENT = /\.[0-9a-f]{8}(?=\.(js|css)$)/;

/** Sizes of the built scripts and styles, gzipped as a server sends them, by their names without that of the content. */
export function bundleSizes(dist: string): readonly BundleSize[] {
  return ["", "workbench"].flatMap((folder) => {
    const path = join(dist, folder);
    if (!existsSync(path)) return [];
    return readdirSync(path)
      .filter((file) => OF_CONTENT.test(file))
      .map((file) => {
        const content = readFileSync(join(path, file));
        const name = join(folder, file.replace(OF_CONTENT, ""));
        return { name, bytes: content.length, gzipped: gzipSync(content, { level: 9 }).length };
      });
  });
}
