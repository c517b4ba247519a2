import { afterAll, describe, expect, it } from "vitest";
import { layOut } from "../../shared/calc-sheet/layout.ts";
import { workedDuty } from "../../shared/package/worked-duty.ts";
import { quotedSheetName } from "../../shared/ports/sheet-name.ts";
import { headlessGrid } from "../../workbench/headless.ts";
import { dutyOf } from "../support/duty-of.ts";

const grid = headlessGrid();
afterAll(() => grid.dispose());

describe("the lists of findings on a live sheet", () => {
  it("follow an input that is changed: what was taken, and a limit that breaks", async () => {
    const { plan, worked } = workedDuty(dutyOf({ altitude: "0" }));
    const set = layOut(plan, worked);
    const [name = "", ...others] = await grid.host.addSheets(set);
    const [sheet] = set.sheets([name, ...others]);
    const live = quotedSheetName(name);
    const rowOf = (text: string): number =>
      Number((sheet?.cells ?? []).find(({ at, v }) => v === text && /^B\d+$/.test(at))?.at.slice(1));
    const findings = rowOf("Findings");
    const confirm = rowOf("To confirm with the customer");
    const taken = (sheet?.cells ?? [])
      .filter(({ at, f }) => f === "delivery_pressure" && Number(/\d+/.exec(at)?.[0]) > confirm)
      .map(({ at }) => at)[0];
    const read = async (range: string) => (await grid.host.read([`${live}!${range}`]))[0] ?? [];
    expect(await read(`${taken}`)).toEqual([[0]]);

    await grid.host.write({ [`${live}!${sheet?.names?.["delivery_pressure"]}`]: 5 });
    expect(await read(`${taken}`)).toEqual([[5]]);

    // Water at 250 °F boils at any suction open to the atmosphere.
    await grid.host.write({ [`${live}!${sheet?.names?.["temperature"]}`]: 250 });
    const rows = await read(`B${findings + 1}:D${rowOf("References") - 1}`);
    const graver = rows.filter(([, kind]) => kind === "Error" || kind === "Limit" || kind === "Safety");
    expect(graver.length).toBeGreaterThan(0);
    expect(rows.slice(0, graver.length)).toEqual(graver);
    expect(graver.map(([, , text]) => String(text)).join(" ")).toMatch(/boils/);
  });
});
