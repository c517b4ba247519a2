import ts from "typescript";

/** What only help pages and tests read of an entry. */
const HELP_ONLY = new Set(["method", "examples"]);

/**
 * A webpack loader for the entries of the catalogue: leaves out of the add-in's scripts what only its help pages
 * need. Those are made from the whole entries, in a run of the catalogue of their own.
 */
export default function withoutHelp(source) {
  const file = ts.createSourceFile(this.resourcePath, source, ts.ScriptTarget.Latest, true);
  const cuts = [];
  visit(file);
  return cuts.reduceRight((text, [from, to]) => text.slice(0, from) + text.slice(to), source);

  function visit(node) {
    if (ts.isCallExpression(node) && node.expression.getText(file) === "defineEntry") {
      const [spec] = node.arguments;
      if (spec !== undefined && ts.isObjectLiteralExpression(spec)) cutFrom(spec);
      return;
    }
    ts.forEachChild(node, visit);
  }

  function cutFrom({ properties }) {
    for (const property of properties) {
      if (property.name === undefined || !HELP_ONLY.has(property.name.getText(file))) continue;
      const comma = source.indexOf(",", property.end);
      const tail = source.slice(property.end, comma).trim() === "" && comma >= 0 ? comma + 1 : property.end;
      cuts.push([property.getStart(file), tail]);
    }
  }
}
