import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { termsIn } from "../../../shared/help/reference/terms.ts";
import { USER_TERMS } from "../../../shared/help/reference/user-terms.ts";

/** Words that stood for a term of the trade once, and the term. */
const INSTEAD: readonly (readonly [banned: string, term: string])[] = [
  ["greatest", "maximum"],
  ["in hand", "margin, reserve or current"],
  ["anew", "again"],
  ["held against", "compared with"],
  ["pump on the duty", "selected pump"],
  ["chosen pump", "selected pump"],
  ["frequency converter", "variable-frequency drive"],
  ["per cent", "percent"],
  ["heading row", "header row"],
  ["asks for", "requires"],
];
const BANNED = new RegExp(`\\b(?:${INSTEAD.map(([word]) => word).join("|")})\\b`, "i");

/** What a table of the user's may be headed is read in any words. */
const READS = /shared\/pump-table\/columns\.ts$/;

/** Every text of a source that can be shown: one of more words than one. */
function textsIn(file: string): readonly string[] {
  const texts: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return;
    if (
      ts.isStringLiteralLike(node) ||
      ts.isTemplateHead(node) ||
      ts.isTemplateMiddle(node) ||
      ts.isTemplateTail(node)
    ) {
      if (node.text.includes(" ")) texts.push(node.text);
    }
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile(file, readFileSync(file, "utf8"), ts.ScriptTarget.Latest));
  return texts;
}

describe("one name for one thing", () => {
  const files = ["src", "shared", "taskpane", "workbench", "functions"]
    .flatMap((folder) => readdirSync(folder, { withFileTypes: true, recursive: true }))
    .map((entry) => join(entry.parentPath, entry.name))
    .filter((file) => file.endsWith(".ts") && !READS.test(file));

  it("no text says it by a word that a term has taken the place of", () => {
    expect(files.length).toBeGreaterThan(500);
    const wrong = files.flatMap((file) =>
      textsIn(file).flatMap((text) => {
        const [found] = BANNED.exec(text) ?? [];
        return found === undefined ? [] : [`${file}: “${found}” in “${text.slice(0, 80)}”`];
      }),
    );
    expect(wrong).toEqual([]);
  });

  it("no term is defined twice in the table, or by such a word", () => {
    const terms = termsIn(readFileSync("docs/terms.md", "utf8"));
    const names = terms.map((term) => term.names);
    expect(new Set(names).size).toBe(names.length);
    expect([...terms, ...USER_TERMS].filter(({ names: of, meaning }) => BANNED.test(`${of} ${meaning}`))).toEqual([]);
  });
});
