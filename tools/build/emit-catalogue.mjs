/**
 * A webpack loader that runs the catalogue while the add-in is built, and emits what Excel and the reader need of it:
 * functions.json and the help pages. Nothing of it stays in the bundle.
 */
export default function emitCatalogue(source) {
  return source;
}

export function pitch() {
  const done = this.async();
  const { base, layer } = this.getOptions();
  this.importModule(`${this.resourcePath}?run`, { layer }, (fault, catalogue) => {
    if (fault) {
      done(fault);
      return;
    }
    try {
      this.emitFile("functions.json", `${JSON.stringify(catalogue.functionMetadata(base), null, 1)}\n`);
      for (const [name, html] of Object.entries(catalogue.helpFiles())) this.emitFile(`help/${name}`, html);
      done(null, "export {};");
    } catch (problem) {
      done(problem);
    }
  });
}
