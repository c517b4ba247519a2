import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { CATALOGUE } from "../../shared/catalogue/catalogue.ts";
import { meantFunctions, respelt } from "../../shared/catalogue/meant-function.ts";
import { type HeadlessGrid, headlessGrid } from "../../workbench/headless.ts";

let grid: HeadlessGrid;
beforeAll(() => {
  grid = headlessGrid();
});
afterAll(() => grid.dispose());

const sheet = () => {
  const found = grid.api.getActiveWorkbook()?.getActiveSheet();
  if (found === undefined || found === null) throw new Error("no sheet");
  return found;
};
const formulaAt = (at: string): string => sheet().getRange(at).getFormula();

describe("the selected cell of the grid", () => {
  it("is known by sheet and address", async () => {
    sheet().getRange("C7").activate();
    expect(await grid.host.selection.cell()).toBe("Sheet1!C7");
    sheet().setName("Two words");
    expect(await grid.host.selection.cell()).toBe("'Two words'!C7");
    sheet().setName("Sheet1");
  });

  it("takes a formula in one step, which undo takes out", async () => {
    expect(await grid.host.selection.enter("Sheet1!C7", '=DUTY.VELOCITY(1200, "8in sch40")', false)).toBe(true);
    // 1200 gpm is 2.6736 ft³/s, and 8 in schedule 40 has 7.981 in inside (ASME B36.10M): 7.696 ft/s.
    expect(sheet().getRange("C7").getValue()).toBeCloseTo(7.696, 2);
    await grid.api.getActiveWorkbook()?.undo();
    expect(await grid.host.read(["Sheet1!C7"])).toEqual([[[null]]]);
    await grid.api.getActiveWorkbook()?.redo();
    await grid.host.settled(5000);
    expect(formulaAt("C7")).toContain("DUTY.VELOCITY");
  });

  it("is left as it is where it holds anything, until it may be replaced", async () => {
    for (const held of ["text", 0, "=1+1"]) {
      sheet().getRange("D2").setValue(held);
      await grid.host.settled(5000);
      expect(await grid.host.selection.enter("Sheet1!D2", "=1+2", false), String(held)).toBe(false);
    }
    expect(formulaAt("D2")).toBe("=1+1");
    expect(await grid.host.selection.enter("Sheet1!D2", "=1+2", true)).toBe(true);
    expect(formulaAt("D2")).toBe("=1+2");
  });

  it("is left as it is where another cell's answer fills it", async () => {
    await grid.host.selection.enter("Sheet1!F1", "={1;2;3}", false);
    expect(await grid.host.selection.enter("Sheet1!F3", "=1", false)).toBe(false);
  });
});

describe("a name that the grid does not know", () => {
  it("is told from its own functions and ours", () => {
    const { isFunction } = grid.inside;
    expect(["SUM", "PRICE", "DUTY.TDH"].map(isFunction)).toEqual([true, true, true]);
    expect(["TDH", "FRICTIONHEAD", "DUTY.THD"].map(isFunction)).toEqual([false, false, false]);
    expect(CATALOGUE.filter(({ id }) => isFunction(id))).toEqual([]);
  });

  it("shows #NAME?, and the figure once it is written as it was meant", async () => {
    const typed = '=ROUND(VELOCITY(1200, "8in sch40"), 1)';
    await grid.host.selection.enter("Sheet1!H1", typed, false);
    const [[[before] = []] = []] = await grid.host.read(["Sheet1!H1"]);
    expect(before).toMatchObject({ error: "#NAME?" });
    await grid.host.selection.enter("Sheet1!H1", respelt(typed, meantFunctions(typed, grid.inside.isFunction)), true);
    expect(await grid.host.read(["Sheet1!H1"])).toEqual([[[7.7]]]);
  });
});
