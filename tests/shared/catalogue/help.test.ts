import { JSDOM } from "jsdom";
import { describe, expect, it } from "vitest";
import { CATALOGUE } from "../../../shared/catalogue/catalogue.ts";
import { parameterName } from "../../../shared/catalogue/entry.ts";
import { formulaText, syntaxOf } from "../../../shared/catalogue/help/formula-text.ts";
import { helpFiles } from "../../../shared/catalogue/help.ts";
import { citationText } from "../../../src/basis/citation.ts";
import { REPEATING, SAMPLES } from "../../support/sample-entries.ts";

const files = helpFiles();

function pageOf(name: string): Document {
  return new JSDOM(files[name]).window.document;
}

function textOf(document: Document): string {
  return (document.body.textContent ?? "").replace(/\s+/g, " ");
}

describe("the help pages", () => {
  it("are one a function, and an index that leads to each and to nothing else", () => {
    expect(Object.keys(files).toSorted()).toEqual(
      ["index.html", ...CATALOGUE.map(({ id }) => `${id}.html`)].toSorted(),
    );
    const links = [...pageOf("index.html").querySelectorAll("main a")].map((link) => link.getAttribute("href"));
    expect(links.toSorted()).toEqual(CATALOGUE.map(({ id }) => `${id}.html`).toSorted());
  });

  it("lead to what stands beside them: support, privacy, hosting and the notices", () => {
    const links = [...pageOf("index.html").querySelectorAll("footer a")].map((link) => link.getAttribute("href"));
    expect(links).toEqual(
      ["support.html", "privacy.html", "administrator.html", "THIRD-PARTY-NOTICES.txt"].map((file) => `../${file}`),
    );
  });

  it.each(CATALOGUE)("of $id tells all there is to tell", (entry) => {
    const document = pageOf(`${entry.id}.html`);
    const text = textOf(document);
    expect(document.querySelector("h1")?.textContent).toBe(`DUTY.${entry.id}`);
    expect(document.querySelector("pre")?.textContent).toBe(syntaxOf(entry));
    const names = [...document.querySelectorAll("dt")].map((term) => term.firstChild?.textContent?.trim());
    const own = entry.parameters.map(([key]) => parameterName(key));
    expect(names).toEqual(entry.unitless ? own : [...own, "units"]);
    for (const cites of entry.cites) expect(text).toContain(citationText(cites).replace(/\s+/g, " "));
    for (const example of entry.examples) {
      expect(text).toContain(formulaText(entry, example.args).replace(/\s+/g, " "));
      expect(text).toContain(String(example.answer).replace(/\s+/g, " "));
    }
    expect(text).toContain("licensed engineer");
    for (const link of document.querySelectorAll("a")) {
      expect(Object.keys(files)).toContain(link.getAttribute("href"));
    }
  });

  it("keep what is written from being taken for tags", () => {
    const [file] = Object.values(
      helpFiles([{ ...SAMPLES[0], summary: "Less < more & <script>alert(1)</script>" }]),
    ).slice(1);
    const { document } = new JSDOM(file).window;
    expect(document.querySelector("script")).toBeNull();
    expect(document.querySelector(".summary")?.textContent).toContain("<script>alert(1)</script>");
  });

  it("write calls as they are typed", () => {
    expect(syntaxOf(SAMPLES[0])).toBe("=DUTY.SUMOFHEADS(first head, [second head], [units])");
    expect(syntaxOf(REPEATING)).toBe("=DUTY.COUNTARGS(name, argument, …)");
    expect(
      formulaText(SAMPLES[1], [
        [
          ["a", 1, null],
          [true, 'b"c', { error: "#N/A" }],
        ],
        null,
        2,
      ]),
    ).toBe('=DUTY.SHAPEOF({"a",1,""; TRUE,"b""c",#N/A}, , 2)');
  });
});
