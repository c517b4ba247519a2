import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { raisedFindings } from "./raised-findings.mjs";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const TERMS = join(ROOT, "docs", "terms.md");

/**
 * A webpack loader that runs the catalogue while the add-in is built, and emits what Excel and the reader need of it:
 * functions.json and the help pages. Nothing of it stays in the bundle.
 */
export default function emitCatalogue(source) {
  return source;
}

export function pitch() {
  const done = this.async();
  this.addDependency(TERMS);
  const { base, layer } = this.getOptions();
  this.importModule(`${this.resourcePath}?run`, { layer }, (fault, catalogue) => {
    if (fault) {
      done(fault);
      return;
    }
    try {
      this.emitFile("functions.json", `${JSON.stringify(catalogue.functionMetadata(base), null, 1)}\n`);
      const help = catalogue.helpFiles({ raised: raisedFindings(ROOT), terms: readFileSync(TERMS, "utf8") });
      for (const [name, text] of Object.entries(help)) this.emitFile(`help/${name}`, text);
      done(null, "export {};");
    } catch (problem) {
      done(problem);
    }
  });
}
