import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";

export interface BundleSize {
  readonly name: string;
  readonly bytes: number;
  readonly gzipped: number;
}

/** Sizes of the built scripts and styles, gzipped as a server sends them. */
export function bundleSizes(dist: string): readonly BundleSize[] {
  return ["", "workbench"].flatMap((folder) => {
    const path = join(dist, folder);
    if (!existsSync(path)) return [];
    return readdirSync(path)
      .filter((file) => /\.(js|css)$/.test(file))
      .map((file) => {
        const content = readFileSync(join(path, file));
        return { name: join(folder, file), bytes: content.length, gzipped: gzipSync(content, { level: 9 }).length };
      });
  });
}
