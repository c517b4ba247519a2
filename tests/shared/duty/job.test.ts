import { describe, expect, it } from "vitest";
import { titleBlock } from "../../../shared/calc-sheet/sections/basis.ts";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import { fieldsOf } from "../../../shared/duty/fields.ts";
import { paperOf } from "../../../shared/duty/paper.ts";
import { dutyFrom, loadDuty, saveDuty } from "../../../shared/duty/saved.ts";
import { dutyOf, dutyText } from "../../support/duty-of.ts";
import { sheetsOf } from "../../support/laid-out.ts";
import { WIDE_PNG } from "../../support/pictures.ts";

const HISTORY = [
  { revision: "A", date: "2026-10-02", by: "A.B.", change: "For quotation" },
  { revision: "B", date: "2026-11-29", by: "C.D.", change: "=flow raised" },
];

describe("the paper of a duty", () => {
  it.each([
    ["US", "", "Letter"],
    ["SI", "", "A4"],
    ["US", "auto", "Letter"],
    ["SI", "Auto", "A4"],
    ["US", "a4", "A4"],
    ["SI", "letter", "Letter"],
  ] as const)("in %s units with “%s” is %s", (unitSet, paper, wanted) => {
    expect(paperOf(dutyOf({ paper }, { unitSet }))).toBe(wanted);
  });

  it("is that of the printed sheet", () => {
    for (const paper of ["A4", "Letter"] as const) {
      for (const { print } of sheetsOf(dutyText({ paper })).all) expect(print?.paper).toBe(paper);
    }
  });

  it("is refused in words where it is another", () => {
    const { findings } = decodeDuty(dutyText({ paper: "A3" }));
    expect(findings.get("paper")).toMatchObject([{ code: "choice-unknown", given: "A3" }]);
  });
});

describe("the revision history of a duty", () => {
  it("is kept in its saved form, and older files open without it", () => {
    const typed = dutyText({}, { revisions: HISTORY });
    const loaded = loadDuty(saveDuty(typed));
    expect(loaded.ok && loaded.value).toEqual(typed);
    const older = loadDuty(saveDuty(dutyText()));
    expect(older.ok && "revisions" in older.value).toBe(false);
  });

  it("is refused with a row that lacks a box, by its place", () => {
    const saved = JSON.parse(saveDuty(dutyText({}, { revisions: HISTORY })));
    delete saved.revisions[1].by;
    const found = dutyFrom(saved);
    expect(found.findings[0]?.facts).toEqual({ reason: "its “revisions.1.by” is missing or not as expected" });
  });

  it("is read without its blank rows", () => {
    const blank = { revision: "", date: " ", by: "", change: "" };
    expect(dutyOf({}, { revisions: [blank, ...HISTORY] }).revisions).toEqual(HISTORY);
  });
});

describe("the title block", () => {
  it("holds every text of the job as it was typed, and the history", () => {
    const keys = fieldsOf("job").filter((key) => key !== "paper");
    const typed = Object.fromEntries(keys.map((key, i) => [key, `${"=+-@"[i % 4]}${key}`]));
    const block = titleBlock(dutyOf(typed, { revisions: HISTORY }));
    expect(block.map((item) => item.kind === "text" && item.text)).toEqual([
      ...keys.map((key) => typed[key]),
      "2026-10-02, A.B., For quotation",
      "2026-11-29, C.D., =flow raised",
    ]);
    expect(block.slice(-2).map((item) => item.kind === "text" && item.label)).toEqual(["Revision A", "Revision B"]);
  });

  it("begins with the logo, on the sheet of the duty alone, high enough for it", () => {
    const [duty, ...others] = sheetsOf(dutyText({ firm: "A & B" }, { logo: WIDE_PNG })).all;
    const { rowHeights, cells, print } = duty as NonNullable<typeof duty>;
    expect(duty?.pictures).toEqual([
      { at: "A3:B3", type: "png", base64: WIDE_PNG, widthPx: 120, heightPx: 48, altText: "Logo of A & B" },
    ]);
    expect(rowHeights?.[3]).toBe(48);
    expect(cells.filter(({ at }) => /^[A-Z]+3$/.test(at))).toEqual([]);
    expect(print?.area.startsWith("A1:")).toBe(true);
    expect(others.flatMap(({ pictures = [] }) => pictures)).toEqual([]);
    expect(sheetsOf(dutyText()).all.some((sheet) => "pictures" in sheet)).toBe(false);
  });

  it("keeps a place for who checked and who approved, and none for a firm not stated", () => {
    const labels = titleBlock(dutyOf()).map((item) => item.kind === "text" && item.label);
    expect(labels).toEqual([
      "Project",
      "Customer",
      "Item",
      "Reference",
      "Revision",
      "Date",
      "Prepared by",
      "Checked by",
      "Approved by",
    ]);
  });
});
