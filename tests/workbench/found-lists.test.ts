import { afterAll, describe, expect, it } from "vitest";
import { layOut } from "../../shared/calc-sheet/layout.ts";
import { workedDuty } from "../../shared/package/worked-duty.ts";
import { boxOf } from "../../shared/ports/a1.ts";
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
    const headOf = (text: string): number =>
      boxOf((sheet?.cells ?? []).find(({ v, style }) => v === text && style === "section")?.at ?? "").top;
    const taken = (sheet?.cells ?? [])
      .filter(({ at, f }) => f === "delivery_pressure" && boxOf(at).top > headOf("To confirm with the customer"))
      .map(({ at }) => at)[0];
    const read = async (range: string) => (await grid.host.read([`${live}!${range}`]))[0] ?? [];
    expect(await read(`${taken}`)).toEqual([[0]]);

    await grid.host.write({ [`${live}!${sheet?.names?.["delivery_pressure"]}`]: 5 });
    expect(await read(`${taken}`)).toEqual([[5]]);

    // Water at 250 °F boils at any suction open to the atmosphere.
    await grid.host.write({ [`${live}!${sheet?.names?.["temperature"]}`]: 250 });
    const first = headOf("Findings") + 2;
    const [[gravest], [more]] = (await read(`B${first}:B${first + 1}`)) as [[unknown], [unknown]];
    expect(gravest).toMatch(/^(Error|Safety|Limit), /);
    // As many rows as there were findings when it was written.
    expect(more).toBe("More has come up: it stands in the list of the workings.");
    const [, workings = "", list = ""] =
      /ISERROR\(([^()]*!)\$A\$(\d+)\)/.exec((sheet?.cells ?? []).find(({ at }) => at === `B${first}`)?.f ?? "") ?? [];
    const rows = (await grid.host.read([`${workings}A${Number(list) + 1}:C${Number(list) + 40}`]))[0] ?? [];
    const kinds = rows.map(([kind]) => kind);
    const isGrave = (kind: unknown): boolean => kind === "Error" || kind === "Limit" || kind === "Safety";
    expect(kinds.findLastIndex(isGrave)).toBe(kinds.filter(isGrave).length - 1);
    const grave = rows.filter(([kind]) => isGrave(kind)).flat();
    expect(grave.join(" ")).toMatch(/boils/);
  });
});
