import { readFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "../setup.mjs";
import { administratorPage } from "../site/administrator.mjs";
import { privacyPage } from "../site/privacy.mjs";
import { supportPage } from "../site/support.mjs";
import { manifestProblems } from "./check-manifest.mjs";

/**
 * Adds to a build what stands beside the scripts: the pages for administrators, of privacy and of support, the
 * licence, and functions.js under the name that the manifest has for every version. At the end it holds the manifest
 * against what was built.
 */
export class SiteFiles {
  #hosting;

  /** @param {import("./hosting.mjs").Hosting} hosting */
  constructor(hosting) {
    this.#hosting = hosting;
  }

  /** @param {import("webpack").Compiler} compiler */
  apply(compiler) {
    const { Compilation, WebpackError, sources } = compiler.webpack;
    compiler.hooks.thisCompilation.tap("SiteFiles", (compilation) => {
      const pages = {
        "administrator.html": administratorPage(this.#hosting),
        "privacy.html": privacyPage(this.#hosting),
        "support.html": supportPage(this.#hosting),
        "LICENSE.txt": readFileSync(join(ROOT, "LICENSE"), "utf8"),
      };
      compilation.hooks.processAssets.tap(
        { name: "SiteFiles", stage: Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL },
        () => {
          for (const [name, text] of Object.entries(pages)) compilation.emitAsset(name, new sources.RawSource(text));
        },
      );
      // Names and contents are final by now.
      compilation.hooks.processAssets.tap({ name: "SiteFiles", stage: Compilation.PROCESS_ASSETS_STAGE_REPORT }, () => {
        const file = (path) => compilation.getAsset(path)?.source.buffer();
        const script = compilation.entrypoints
          .get("functions")
          ?.getFiles()
          .find((name) => name.endsWith(".js"));
        if (script !== undefined && script !== "functions.js") {
          // Not minified anew: that would make other bytes of it.
          compilation.emitAsset("functions.js", new sources.RawSource(file(script)), { minimized: true });
        }
        // A build with errors of its own lacks files for their sake.
        const manifest = file("manifest.xml");
        if (manifest === undefined || compilation.errors.length > 0) return;
        for (const problem of manifestProblems(manifest.toString("utf8"), { base: this.#hosting.base, file })) {
          compilation.errors.push(new WebpackError(`manifest.xml: ${problem}`));
        }
      });
    });
  }
}
