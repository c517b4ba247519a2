import { JSDOM } from "jsdom";
import { describe, expect, it } from "vitest";
import { CATALOGUE } from "../../../shared/catalogue/catalogue.ts";
import { parameterName, withUnits } from "../../../shared/catalogue/entry.ts";
import { formulaText, syntaxOf } from "../../../shared/help/formula-text.ts";
import { sentencesOf } from "../../../shared/help/function-page.ts";
import { pageHtml } from "../../../shared/help/html.ts";
import { citationText } from "../../../src/basis/citation.ts";
import { HELP_FILES, HELP_PAGES } from "../../support/help.ts";
import { REPEATING, SAMPLES } from "../../support/sample-entries.ts";

const documents = new Map(HELP_PAGES.map(({ file }) => [file, new JSDOM(HELP_FILES[file]).window.document] as const));

/** Made by the build for whoever hosts it. */
const BESIDE = ["support.html", "privacy.html", "administrator.html", "THIRD-PARTY-NOTICES.txt"].map(
  (file) => `../${file}`,
);

function pageOf(file: string): Document {
  const found = documents.get(file);
  if (found === undefined) throw new Error(`no page ${file}`);
  return found;
}

function textOf(within: Element | null | undefined): string {
  return (within?.textContent ?? "").replace(/\s+/g, " ");
}

describe("every help page", () => {
  it.each(HELP_PAGES.map(({ file }) => file))("%s has a language, a title, one h1 and headings in order", (file) => {
    const document = pageOf(file);
    expect(document.documentElement.lang).toBe("en-GB");
    expect(document.title.length).toBeGreaterThan(3);
    const levels = [...document.querySelectorAll("h1, h2, h3, h4")].map(({ tagName }) => Number(tagName[1]));
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    expect(levels[0]).toBe(1);
    levels.slice(1).forEach((level, i) => {
      expect(level - (levels[i] as number), `after heading ${i + 1}`).toBeLessThanOrEqual(1);
    });
    expect(textOf(document.body)).toContain("licensed engineer");
  });

  it.each(HELP_PAGES.map(({ file }) => file))("%s leads to pages and places that there are", (file) => {
    const links = [...pageOf(file).querySelectorAll("a")].map((link) => link.getAttribute("href") ?? "");
    expect(links.length).toBeGreaterThan(3);
    const astray = links.filter((link) => {
      if (BESIDE.includes(link)) return false;
      const [page = "", place] = link.split("#");
      const target = documents.get(page === "" ? file : page);
      return target === undefined || (place !== undefined && target.getElementById(place) === null);
    });
    expect(astray).toEqual([]);
  });

  it.each(HELP_PAGES.map(({ file }) => file))("%s holds nothing its own policy refuses", (file) => {
    const document = pageOf(file);
    expect(document.querySelector("[style], style, script:not([src])")).toBeNull();
    const attributes = [...document.querySelectorAll("*")].flatMap((element) => element.getAttributeNames());
    expect(attributes.filter((name) => name.startsWith("on"))).toEqual([]);
    const ids = [...document.querySelectorAll("[id]")].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it("stands on the index, apart from the index", () => {
    const links = new Set(
      [...pageOf("index.html").querySelectorAll("main a")].map((link) => link.getAttribute("href")),
    );
    const missing = HELP_PAGES.filter(({ file, kind }) => kind !== "index" && !links.has(file)).map(({ file }) => file);
    expect(missing).toEqual([]);
  });

  it("of the index leads to what the build puts beside it: support, privacy, hosting and the notices", () => {
    const links = [...pageOf("index.html").querySelectorAll("footer a")].map((link) => link.getAttribute("href"));
    expect(links).toEqual(BESIDE);
  });

  it("has figures and words in it, and no hole", () => {
    for (const { file } of HELP_PAGES) {
      expect(textOf(pageOf(file).body), file).not.toMatch(/\bundefined\b|\bNaN\b|\[object |1e308/);
    }
  });
});

describe("the page of a function", () => {
  it.each(CATALOGUE)("$id shows a trade example with its answer before all else", ({ id }) => {
    const sections = [...pageOf(`${id}.html`).querySelectorAll("main > section")];
    expect(sections[0]?.id).toBe("examples");
    const examples = [...(sections[0]?.querySelectorAll(".example") ?? [])];
    expect(examples.length).toBeGreaterThanOrEqual(1);
    for (const example of examples) {
      expect(textOf(example.querySelector("code"))).toContain(`=DUTY.${id}(`);
      expect(textOf(example.querySelector(".answer")).trim().length).toBeGreaterThan(0);
    }
  });

  it.each(CATALOGUE)("$id tells its arguments, its method, its checks and its sources", (entry) => {
    const document = pageOf(`${entry.id}.html`);
    expect(textOf(document.querySelector("h1"))).toBe(`DUTY.${entry.id}`);
    expect(document.querySelector("pre.syntax")?.textContent).toBe(syntaxOf(entry));
    const rows = [...document.querySelectorAll("#arguments tbody tr")];
    const own = entry.parameters.map(([key]) => parameterName(key));
    expect(rows.map((row) => textOf(row.querySelector("th")))).toEqual(withUnits(entry, own, "units"));
    const ranges = entry.parameters.map(([, { range = "" }]) => range.replace(/\s+/g, " "));
    withUnits(entry, ranges, "").forEach((range, i) => {
      expect(textOf(rows[i])).toContain(range);
    });
    expect(sentencesOf(entry.method).join(" ")).toBe(entry.method.trim().replace(/\s+/g, " "));
    const sources = textOf(document.querySelector("#sources"));
    for (const cites of entry.cites) expect(sources).toContain(citationText(cites).replace(/\s+/g, " "));
    const checks = textOf(document.querySelector("#checked"));
    for (const example of entry.examples) {
      expect(checks).toContain(formulaText(entry, example.args).replace(/\s+/g, " "));
      expect(checks).toContain(String(example.answer).replace(/\s+/g, " "));
    }
  });

  it.each(CATALOGUE)("$id leads to other functions", ({ id }) => {
    const links = [...pageOf(`${id}.html`).querySelectorAll("#see a")].map((link) => link.getAttribute("href"));
    expect(links.length).toBeGreaterThan(0);
    expect(links).not.toContain(`${id}.html`);
  });

  it("shows the example of the trade as it is asked and answered", () => {
    const page = textOf(pageOf("FRICTIONHEAD.html").querySelector("#examples"));
    expect(page).toContain("1,200 US gpm in 1,800 ft of 10 in HDPE DR17");
    expect(page).toContain('=DUTY.FRICTIONHEAD(1200, "10in HDPE DR17", 1800)');
    // By Hazen–Williams with the C of 150 that handbooks give new polyethylene: 4.52 (1200/150)^1.852 / 9.41^4.8655, in psi
    // a foot, is 16.0 ft in 1,800 ft; common practice, no source.
    const feet = Number(/([\d.]+) ft/.exec(page.split("1800)")[1] ?? "")?.[1]);
    expect(feet).toBeGreaterThan(15.5);
    expect(feet).toBeLessThan(16.5);
  });

  it("sets an array of cells where it would stand on a sheet", () => {
    const document = pageOf("LINEHEAD.html");
    expect(textOf(document.querySelector("#examples code"))).toBe("=DUTY.LINEHEAD(1200, A1:C2)");
    expect(textOf(document.querySelector("#examples caption"))).toBe("Cells A1:C2");
  });

  it("leads from the name of a function in its texts to its page", () => {
    const links = [...pageOf("FRICTIONHEAD.html").querySelectorAll("#method a")].map((link) => link.textContent);
    expect(links).toEqual(expect.arrayContaining(["FRICTIONFACTOR", "HAZENHEAD", "FITTINGHEAD", "LINEHEAD"]));
  });
});

describe("a page as text", () => {
  it("keeps what is written from being taken for tags", () => {
    const title = "Less < more & <script>alert(1)</script>";
    const { document } = new JSDOM(pageHtml({ file: "x.html", kind: "task", title, summary: title, main: "" })).window;
    expect(document.querySelectorAll("script")).toHaveLength(1);
    expect(document.querySelector("h1")?.textContent).toBe(title);
  });

  it("writes calls as they are typed", () => {
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
    expect(formulaText(SAMPLES[1], [{ at: "A1:C2" }])).toBe("=DUTY.SHAPEOF(A1:C2)");
  });

  it("parts a method into sentences, not at initials", () => {
    expect(sentencesOf("By C. F. Colebrook. See fig. 3 of it. Up to 2.4 m/s. “So.” And on.")).toEqual([
      "By C. F. Colebrook.",
      "See fig. 3 of it.",
      "Up to 2.4 m/s.",
      "“So.”",
      "And on.",
    ]);
  });
});
