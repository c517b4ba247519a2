import ts from "typescript";

/** What only help pages, functions.json and tests read: of an entry, of a parameter, of its default. */
const LEFT_OUT = [
  { isOne: (literal) => isEntry(literal), leave: new Set(["group", "summary", "method", "examples"]) },
  { isOne: (literal) => has(literal, "about"), leave: new Set(["about", "range"]) },
  { isOne: (literal) => has(literal, "value") && has(literal, "shown"), leave: new Set(["shown"]) },
];

/**
 * A webpack loader for the catalogue: leaves out of the add-in's scripts what only its help pages and functions.json
 * need. Those are made from the whole sources, in a run of the catalogue of their own.
 */
export default function withoutHelp(source) {
  const file = ts.createSourceFile(this.resourcePath, source, ts.ScriptTarget.Latest, true);
  const cuts = [];
  visit(file);
  return cuts.reduceRight((text, [from, to]) => text.slice(0, from) + text.slice(to), source);

  function visit(node) {
    if (ts.isObjectLiteralExpression(node)) {
      const { leave } = LEFT_OUT.find(({ isOne }) => isOne(node)) ?? { leave: new Set() };
      for (const property of node.properties) {
        if (property.name !== undefined && leave.has(property.name.text)) cut(property);
        else visit(property);
      }
    } else ts.forEachChild(node, visit);
  }

  /** A property with the comma after it. */
  function cut(property) {
    const comma = source.indexOf(",", property.end);
    const tail = comma >= 0 && source.slice(property.end, comma).trim() === "" ? comma + 1 : property.end;
    cuts.push([property.getStart(file), tail]);
  }
}

function isEntry({ parent }) {
  return ts.isCallExpression(parent) && ts.isIdentifier(parent.expression) && parent.expression.text === "defineEntry";
}

function has({ properties }, name) {
  return properties.some((property) => property.name?.text === name);
}
