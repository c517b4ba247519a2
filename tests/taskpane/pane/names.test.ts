import { describe, expect, it } from "vitest";
import { pieceAt, withFitting, withPiece } from "../../../taskpane/pane/fitting-piece.ts";
import { pipesFor } from "../../../taskpane/pane/known-names.ts";
import { matching, nameList } from "../../../taskpane/pane/names.ts";

describe("matching names", () => {
  const list = nameList(["16in sch40", "6in sch40", "6in sch40S", "6in HDPE DR17", "DN150 sch40", "elbow 90 long"]);

  it.each([
    { typed: "6 sch40", found: ["6in sch40", "6in sch40S", "16in sch40"] },
    { typed: "6in sch40", found: ["6in sch40", "6in sch40S", "16in sch40"] },
    { typed: "SCH40  6", found: ["6in sch40", "6in sch40S", "16in sch40"] },
    { typed: "dr17", found: ["6in HDPE DR17"] },
    { typed: "dn 150", found: ["DN150 sch40"] },
    { typed: "90 elb", found: ["elbow 90 long"] },
    { typed: "copper", found: [] },
  ])("finds $found for “$typed”", ({ typed, found }) => {
    expect(matching(list, typed).names).toEqual(found);
  });

  it("shows no more than asked for and counts the rest", () => {
    const { names, more } = matching(pipesFor("US"), "", 50);
    expect(names).toHaveLength(50);
    expect(more).toBe(pipesFor("US").names.length - 50);
  });

  it("offers the sizes of the unit set first", () => {
    expect(matching(pipesFor("US"), "sch40").names[0]).toMatch(/in sch40$/);
    expect(matching(pipesFor("SI"), "sch40").names[0]).toMatch(/^DN\d+ sch40$/);
  });
});

describe("the fitting at the caret", () => {
  it.each([
    { text: "", caret: 0, count: "", name: "" },
    { text: "2 elbow 90 long, 1 ga", caret: 21, count: "1", name: "ga" },
    { text: "2 elb, 1 gate", caret: 5, count: "2", name: "elb" },
    { text: "2 elb, 1 gate", caret: 6, count: "1", name: "gate" },
    { text: "gate;3 x tee", caret: 12, count: "3", name: "tee" },
    { text: "90 elb", caret: 6, count: "", name: "90 elb" },
    { text: "2 90 elb", caret: 8, count: "2", name: "90 elb" },
  ])("is “$count” “$name” in “$text” at $caret", ({ text, caret, count, name }) => {
    expect(pieceAt(text, caret)).toMatchObject({ count, name });
  });

  it.each([
    { text: "", caret: 0, result: "1 gate" },
    { text: "ga", caret: 2, result: "1 gate" },
    { text: "3 ga", caret: 4, result: "3 gate" },
    { text: "2 elbow 90 long, ga", caret: 19, result: "2 elbow 90 long, 1 gate" },
    { text: "2 ga, 1 exit", caret: 4, result: "2 gate, 1 exit" },
  ])("becomes a whole one: “$result”", ({ text, caret, result }) => {
    expect(withPiece(text, caret, "gate")).toBe(result);
  });

  it.each([
    { text: "", result: "1 gate" },
    { text: "2 elbow 90 long", result: "2 elbow 90 long, 1 gate" },
    { text: "2 elbow 90 long, ", result: "2 elbow 90 long, 1 gate" },
  ])("is followed by another: “$result”", ({ text, result }) => {
    expect(withFitting(text, "gate")).toBe(result);
  });
});
