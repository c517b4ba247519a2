import { describe, expect, it } from "vitest";
import { earlierRevisions, excluded, titleBlock } from "../../../shared/calc-sheet/sections/summary/job.ts";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import { fieldsOf } from "../../../shared/duty/fields.ts";
import { paperOf } from "../../../shared/duty/paper.ts";
import { dutyFrom, loadDuty, saveDuty } from "../../../shared/duty/saved.ts";
import { boxOf } from "../../../shared/ports/a1.ts";
import type { PictureSpec } from "../../../shared/ports/sheet-spec.ts";
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
  it("holds every text of the job as it was typed, and the history, the latest first", () => {
    const keys = fieldsOf("job").filter((key) => key !== "paper");
    const typed = Object.fromEntries(keys.map((key, i) => [key, `${"=+-@"[i % 4]}${key}`]));
    const duty = dutyOf(typed, { revisions: HISTORY });
    const { firm, facts, signed, revisions } = titleBlock(duty);
    const excludedText = excluded(duty).flatMap((item) => (item.kind === "text" ? [item] : []));
    const boxes = [firm, ...facts.flat(), ...signed.flatMap(({ boxes: own }) => own), ...excludedText];
    const held = Object.fromEntries(boxes.flatMap((box) => (box === undefined ? [] : [[box.key, box.text]])));
    expect(held).toEqual(typed);
    expect(revisions).toEqual(["B, 2026-11-29, C.D.: =flow raised", "A, 2026-10-02, A.B.: For quotation"]);
  });

  it("holds the last three revisions, those before them on the page after", () => {
    const four = ["A", "B", "C", "D"].map((revision) => ({ revision, date: "", by: "", change: "as asked" }));
    const duty = dutyOf({}, { revisions: four });
    expect(titleBlock(duty).revisions).toEqual(["D: as asked", "C: as asked", "B: as asked"]);
    const earlier = earlierRevisions(duty).flatMap((item) => (item.kind === "statement" ? [item.text] : []));
    expect(earlier).toEqual(["A: as asked"]);
    expect(earlierRevisions(dutyOf())).toEqual([]);
  });

  it("has the logo at the right of the firm, on the sheet of the duty alone, as high as its row", () => {
    const [duty, ...others] = sheetsOf(dutyText({ firm: "A & B" }, { logo: WIDE_PNG })).all;
    const { rowHeights, cells, print, pictures = [] } = duty as NonNullable<typeof duty>;
    const [{ at, ...picture }] = pictures as [PictureSpec];
    expect(picture).toEqual({ type: "png", base64: WIDE_PNG, widthPx: 120, heightPx: 48, altText: "Logo of A & B" });
    const { top, bottom, left } = boxOf(at);
    const firm = cells.find(({ v }) => v === "A & B");
    expect(boxOf(firm?.at ?? "")).toMatchObject({ top, left: 0 });
    expect(bottom).toBe(top);
    expect(rowHeights?.[top + 1]).toBeGreaterThanOrEqual(30);
    const filled = cells.filter(({ at }) => boxOf(at).top === top).map(({ at }) => boxOf(at).left);
    expect(Math.max(...filled)).toBeLessThan(left);
    expect(print?.area.startsWith("A1:")).toBe(true);
    expect(others.flatMap(({ pictures = [] }) => pictures)).toEqual([]);
    expect(sheetsOf(dutyText()).all.some((sheet) => "pictures" in sheet)).toBe(false);
  });

  it("keeps a place for who checked and who approved, and none for a firm not stated", () => {
    const { firm, facts, signed } = titleBlock(dutyOf());
    expect(firm).toBeUndefined();
    expect(facts.flat().map((one) => one?.label)).toEqual([
      "Project",
      "Revision",
      "Customer",
      "Date",
      "Item",
      "Status",
      "Reference",
      undefined,
    ]);
    expect(signed.map(({ label }) => label)).toEqual(["Prepared", "Checked", "Approved"]);
  });
});
