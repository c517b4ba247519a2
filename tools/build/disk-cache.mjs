import { join } from "node:path";
import { ROOT } from "../setup.mjs";

/** What webpack keeps on disk from one build to the next; another configuration or `version` starts afresh. */
export function diskCache(name, configuration, version = "") {
  return {
    type: "filesystem",
    name,
    version,
    cacheDirectory: join(ROOT, ".cache", "webpack"),
    buildDependencies: { config: [configuration] },
  };
}
