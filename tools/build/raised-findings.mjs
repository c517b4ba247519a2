import { existsSync, readFileSync } from "node:fs";
import { dirname, join, normalize, relative, sep } from "node:path";
import ts from "typescript";

const KINDS = ["safety", "limit", "check", "assumed", "error"];
const CODES = "src/basis/finding-code.ts";
const CATALOGUE = "shared/catalogue/catalogue.ts";
const CALL = "shared/catalogue/call.ts";

/**
 * Which findings each function of the catalogue can raise, read from the sources: the codes written in every
 * declaration that its entry leads to, with the kinds they are raised as. More may stand here than any call brings
 * about, never less, as long as codes are written out where they are raised.
 *
 * @param {string} root the folder of the project
 * @returns {{ readonly own: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>>, readonly common: Readonly<Record<string, readonly string[]>> }}
 *   by function and code the kinds; `common` is what reading any call can raise
 */
export function raisedFindings(root) {
  const sources = new Sources(root);
  const codes = sources.codes();
  const kindsAnywhere = new Map();
  const written = new Map();
  const codesOf = (declaration) => {
    if (!written.has(declaration)) written.set(declaration, sources.codesIn(declaration, codes));
    return written.get(declaration);
  };
  const reached = (file, name) => {
    const found = new Map();
    const add = (code, kinds) => {
      const all = found.get(code) ?? new Set();
      for (const kind of kinds) all.add(kind);
      found.set(code, all);
    };
    for (const { declaration, ...at } of sources.reachedFrom(file, name)) {
      for (const [code, kinds] of codesOf(declaration)) add(code, kinds);
      const other = kindsGivenAnew(declaration);
      if (other.length === 0) continue;
      for (const { declaration: below } of sources.reachedFrom(at.file, at.name)) {
        for (const [code] of codesOf(below)) add(code, other);
      }
    }
    for (const [code, kinds] of found) {
      const all = kindsAnywhere.get(code) ?? new Set();
      for (const kind of kinds) all.add(kind);
      kindsAnywhere.set(code, all);
    }
    return found;
  };
  const entries = sources.entries();
  const common = reached(CALL, "call");
  const own = new Map(entries.map(({ id, file, name }) => [id, reached(file, name)]));
  const kindsOf = (code, kinds) => {
    const known = kinds.size > 0 ? kinds : (kindsAnywhere.get(code) ?? new Set());
    return KINDS.filter((kind) => known.has(kind));
  };
  const asRecord = (found, without = new Map()) =>
    Object.fromEntries(
      [...found]
        .filter(([code]) => !without.has(code))
        .map(([code, kinds]) => [code, kindsOf(code, kinds)])
        .sort(([one], [other]) => (one < other ? -1 : 1)),
    );
  return {
    own: Object.fromEntries([...own].map(([id, found]) => [id, asRecord(found, common)])),
    common: asRecord(common),
  };
}

/** The modules of the project, each read once and taken apart into its top-level declarations. */
class Sources {
  #root;
  #modules = new Map();

  constructor(root) {
    this.#root = root;
  }

  /** Every code that src/basis/finding-code.ts declares. */
  codes() {
    const { file } = this.#module(CODES);
    const names = file.statements
      .filter(ts.isInterfaceDeclaration)
      .filter(({ name }) => name.text.endsWith("Findings"))
      .flatMap(({ members }) => members.map(({ name }) => name.text));
    return new Set(names);
  }

  /** The functions of the catalogue with the declaration of each. */
  entries() {
    const { imports, declarations } = this.#module(CATALOGUE);
    const listed = [...referencesIn(declarations.get("FUNCTIONS"))].filter((name) => imports.has(name));
    const entries = listed.map((name) => {
      const { from, imported } = imports.get(name);
      return { id: name, file: from, name: imported };
    });
    return [...entries, { id: "NOTES", file: imports.get("notesEntry").from, name: "notesEntry" }];
  }

  /** A declaration and all that it leads to. */
  reachedFrom(file, name) {
    const seen = new Set();
    const queue = [{ file, name }];
    const found = [];
    for (let next = queue.pop(); next !== undefined; next = queue.pop()) {
      const key = `${next.file} ${next.name}`;
      if (seen.has(key)) continue;
      seen.add(key);
      const { imports, declarations, references } = this.#module(next.file);
      const declaration = declarations.get(next.name);
      if (declaration === undefined) continue;
      found.push({ ...next, declaration });
      for (const each of references(next.name)) {
        if (declarations.has(each)) queue.push({ file: next.file, name: each });
        else if (imports.has(each)) {
          const { from, imported } = imports.get(each);
          queue.push({ file: from, name: imported });
        }
      }
    }
    return found;
  }

  /**
   * The codes written in a declaration, each with the kinds it is raised as: those in the object the code stands in,
   * in the function it is handed to, or else in the whole declaration.
   */
  codesIn(declaration, codes) {
    const found = new Map();
    const visit = (node) => {
      if (ts.isTypeNode(node)) return;
      if (ts.isStringLiteral(node) && codes.has(node.text) && !isCompared(node)) {
        const all = found.get(node.text) ?? new Set();
        for (const kind of [...kindsBeside(node), ...this.#kindsOfCalled(node)]) all.add(kind);
        found.set(node.text, all);
      }
      ts.forEachChild(node, visit);
    };
    visit(declaration);
    return [...found].map(([code, kinds]) => [code, kinds.size > 0 ? kinds : kindsIn(declaration)]);
  }

  /** The kinds in the function that a code is an argument of. */
  #kindsOfCalled({ parent }) {
    if (!ts.isCallExpression(parent) || !ts.isIdentifier(parent.expression)) return [];
    const { fileName } = parent.getSourceFile();
    const called = this.#module(fileName).declarations.get(parent.expression.text);
    return called === undefined ? [] : kindsIn(called);
  }

  #module(path) {
    const known = this.#modules.get(path);
    if (known !== undefined) return known;
    const full = join(this.#root, path);
    const text = existsSync(full) ? readFileSync(full, "utf8") : "";
    const file = ts.createSourceFile(path, path.endsWith(".ts") ? text : "", ts.ScriptTarget.Latest, true);
    const imports = new Map();
    const declarations = new Map();
    for (const statement of file.statements) {
      if (ts.isImportDeclaration(statement)) this.#takeImport(path, statement, imports);
      else if (ts.isVariableStatement(statement)) {
        for (const one of statement.declarationList.declarations) {
          for (const name of namesOf(one.name)) declarations.set(name, one);
        }
      } else if (statement.name !== undefined && !isType(statement)) declarations.set(statement.name.text, statement);
    }
    const kept = new Map();
    const references = (name) => {
      if (!kept.has(name)) kept.set(name, referencesIn(declarations.get(name)));
      return kept.get(name);
    };
    const module = { file, imports, declarations, references };
    this.#modules.set(path, module);
    return module;
  }

  #takeImport(path, { importClause, moduleSpecifier }, imports) {
    const wanted = moduleSpecifier.text;
    if (!wanted.startsWith(".") || importClause === undefined || importClause.isTypeOnly) return;
    const from = relative(this.#root, normalize(join(this.#root, dirname(path), wanted)))
      .split(sep)
      .join("/");
    for (const one of importClause.namedBindings?.elements ?? []) {
      if (!one.isTypeOnly) imports.set(one.name.text, { from, imported: (one.propertyName ?? one.name).text });
    }
  }
}

function isType(node) {
  return ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node);
}

/** The names that `const { a, b } = …` or `const a = …` declares. */
function namesOf(name) {
  if (ts.isIdentifier(name)) return [name.text];
  return name.elements.filter(ts.isBindingElement).flatMap((one) => namesOf(one.name));
}

/** Every name used in a declaration, but those of properties and types. */
function referencesIn(declaration) {
  const names = new Set();
  const visit = (node) => {
    if (ts.isTypeNode(node)) return;
    if (ts.isIdentifier(node)) {
      const { parent } = node;
      const isProperty =
        (ts.isPropertyAccessExpression(parent) && parent.name === node) ||
        (ts.isPropertyAssignment(parent) && parent.name === node);
      if (!isProperty) names.add(node.text);
      return;
    }
    ts.forEachChild(node, visit);
  };
  visit(declaration);
  return names;
}

/** Whether a code is asked about, or names a property, and so is not raised here. */
function isCompared(node) {
  const { parent } = node;
  if (ts.isCaseClause(parent)) return true;
  if (ts.isPropertyAssignment(parent) && parent.name === node) return true;
  if (!ts.isBinaryExpression(parent)) return false;
  const { kind } = parent.operatorToken;
  return kind === ts.SyntaxKind.EqualsEqualsEqualsToken || kind === ts.SyntaxKind.ExclamationEqualsEqualsToken;
}

/** The kinds in the object that a code stands in. */
function kindsBeside(node) {
  const property = node.parent;
  if (!ts.isPropertyAssignment(property) || !ts.isObjectLiteralExpression(property.parent)) return [];
  return property.parent.properties
    .filter((one) => ts.isPropertyAssignment(one) && one.name.text === "kind")
    .flatMap(({ initializer }) => [...kindsIn(initializer)]);
}

/** The kinds that a declaration gives to findings made elsewhere: `{ ...finding, kind: "check" }`. */
function kindsGivenAnew(declaration) {
  const found = new Set();
  const visit = (node) => {
    if (ts.isObjectLiteralExpression(node) && node.properties.some(ts.isSpreadAssignment)) {
      const kind = node.properties.find((one) => ts.isPropertyAssignment(one) && one.name.text === "kind");
      const hasCode = node.properties.some((one) => one.name?.text === "code");
      if (kind !== undefined && !hasCode) for (const one of kindsIn(kind.initializer)) found.add(one);
    }
    ts.forEachChild(node, visit);
  };
  visit(declaration);
  return [...found];
}

/** Every kind written in a piece of source, those of a parameter's type too. */
function kindsIn(node) {
  const found = new Set();
  const visit = (one) => {
    if (ts.isStringLiteral(one) && KINDS.includes(one.text)) found.add(one.text);
    ts.forEachChild(one, visit);
  };
  visit(node);
  return found;
}
