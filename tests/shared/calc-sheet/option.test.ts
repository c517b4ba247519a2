import { describe, expect, it } from "vitest";
import { constant, ifText, part, tableOf } from "../../../shared/calc-sheet/expression.ts";
import { formulaOf } from "../../../shared/calc-sheet/formula.ts";
import { optionCells } from "../../../shared/calc-sheet/option.ts";
import type { OptionItem } from "../../../shared/calc-sheet/plan.ts";
import { rankedOptions } from "../../../shared/calc-sheet/sections/ranked-options.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";

const option: OptionItem = {
  kind: "option",
  key: "first",
  name: constant("belts"),
  verdict: constant("with care"),
  remarks: [
    { label: "For", text: constant("speed by sheaves") },
    { label: "Against", text: constant("") },
    { label: "Check", text: constant("side pull") },
  ],
};

const at = {
  cell: (key: string) => key,
  range: (table: string) => table,
  column: (table: string, of: string) => `${table}.${of}`,
  part: () => ({ first: "$X$1", cell: "$X$2" }),
};

describe("an option of a ranked list", () => {
  it("says one remark after the other and leaves out what has no text", () => {
    const plan = { tag: "P-101", title: "Duty", unitSet: "US", items: [option] } as const;
    const { cells } = workOut(plan);
    expect(cells.get("firstName")).toBe("belts");
    expect(cells.get("firstVerdict")).toBe("with care");
    expect(cells.get("first")).toBe("For: speed by sheaves – Check: side pull");
  });

  it("begins with the next remark where the first turns out to have no text", () => {
    const text = ifText(constant("not suited"), "not suited", constant(""), constant("casing"));
    const remarks = [{ label: "For", text }, ...option.remarks.slice(1)];
    const plan = { tag: "P-101", title: "Duty", unitSet: "US", items: [{ ...option, remarks }] } as const;
    expect(workOut(plan).cells.get("first")).toBe("Check: side pull");
  });

  it("says the same as a formula", () => {
    const live = {
      ...option,
      remarks: [
        { label: "For", text: constant("a") },
        { label: "Check", text: part({ key: "list", columns: [{ key: "name" }, { key: "text" }] }, "text", 0) },
      ],
    };
    const { expression } = optionCells(live).remarks;
    const cell = "IF(ISERROR($X$1),$X$1,$X$2)";
    expect(formulaOf(expression, at, "US")).toBe(`IF("a"="","","For: "&"a")&IF(${cell}="",""," – Check: "&${cell})`);
  });
});

describe("a long ranked list", () => {
  it("names each row by letters alone, past Z too, and is headed once", () => {
    const list = tableOf("ways", { way: null, verdict: null });
    const options = rankedOptions(list, "way", "Best first", 28, () => [], 1);
    expect(options.map(({ key }) => key.replace("waysLine", ""))).toEqual([
      ..."BCDEFGHIJKLMNOPQRSTUVWXYZ",
      "AA",
      "AB",
      "AC",
    ]);
    expect(options.map(({ heading }) => heading).filter((text) => text !== undefined)).toEqual(["Best first"]);
    expect(options[25]?.name).toEqual(part(list, "way", 26));
  });
});
