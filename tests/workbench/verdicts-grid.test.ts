import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { SIGNED } from "../../shared/calc-sheet/verdicts/verdict-items.ts";
import type { FieldKey } from "../../shared/duty/fields.ts";
import { SAMPLE_DUTIES } from "../../shared/duty/samples.ts";
import { shownVerdicts } from "../../shared/package/verdicts.ts";
import { quotedSheetName } from "../../shared/ports/sheet-name.ts";
import type { SheetSpec } from "../../shared/ports/sheet-spec.ts";
import { headlessGrid } from "../../workbench/headless.ts";
import { dutyOf, dutyText, QUARRY } from "../support/duty-of.ts";
import { setOfDuty } from "../support/laid-out.ts";

const SAND = (SAMPLE_DUTIES.find(({ duty }) => duty.fields.medianSize) ?? { duty: QUARRY }).duty;
const DUTIES = { quarry: QUARRY, sand: SAND } as const;

/** Changes of one input cell each, as it is named on the sheet, that move a verdict. */
const CHANGES: readonly (readonly [of: keyof typeof DUTIES, key: FieldKey, name: string, value: number])[] = [
  ["quarry", "frictionMargin", "friction_margin", 30],
  ["quarry", "npshMargin", "npsh_margin", 20],
  ["quarry", "sourceLevel", "source_level", 96],
  ["quarry", "temperature", "temperature", 150],
  ["quarry", "deliveryLevel", "delivery_level", 177],
  ["quarry", "altitude", "altitude", 9000],
  ["sand", "flow", "flow", 60],
  ["sand", "deliveryLevel", "delivery_level", 45],
  ["sand", "temperature", "temperature", 60],
];

const grid = headlessGrid();
/** Of each duty, its sheet. */
const sheets = new Map<string, SheetSpec>();
beforeAll(async () => {
  for (const [name, duty] of Object.entries(DUTIES)) {
    const set = setOfDuty(duty);
    const [sheet] = set.sheets(await grid.host.addSheets(set));
    if (sheet !== undefined) sheets.set(name, sheet);
  }
});
afterAll(() => grid.dispose());

/** Sign, state and sentence of each verdict, as the head of a sheet prints them. */
async function printed(name: string): Promise<readonly (readonly unknown[])[]> {
  const sheet = sheets.get(name);
  const on = quotedSheetName(sheet?.name ?? "");
  const states = Object.entries(sheet?.names ?? {})
    .filter(([key]) => key.startsWith("verdict_on"))
    .map(([, ref]) => ref);
  const rowOf = (at: string): number => Number(/\d+/.exec(at)?.[0]);
  const live = (sheet?.cells ?? []).filter(({ f }) => f !== undefined).map(({ at }) => at);
  const refs = states.flatMap((state) => [state, live.find((at) => at !== state && rowOf(at) === rowOf(state))]);
  const cells = (await grid.host.read(refs.map((ref) => `${on}!${ref}`))).map((range) => range?.[0]?.[0]);
  return states.map((_, i) => cells.slice(2 * i, 2 * i + 2));
}

function expected(of: keyof typeof DUTIES, fields: Partial<Record<FieldKey, string>>): readonly (readonly unknown[])[] {
  return shownVerdicts(dutyOf(fields, DUTIES[of])).map(({ state, text }) => [SIGNED[state], text]);
}

describe("the verdicts at the head of a sheet", () => {
  it.each(Object.keys(DUTIES) as (keyof typeof DUTIES)[])("are those of the pane: %s", async (of) => {
    expect(await printed(of)).toEqual(expected(of, {}));
  });

  it.each(CHANGES)("of the %s follow a change of %s", async (of, key, name, value) => {
    const ref = `${quotedSheetName(sheets.get(of)?.name ?? "")}!${name}`;
    const [[[before]]] = (await grid.host.read([ref])) as [[[number]]];
    await grid.host.write({ [ref]: value });
    const found = await printed(of);
    await grid.host.write({ [ref]: before });
    const wanted = expected(of, { [key]: String(value) });
    expect(found).toEqual(wanted);
    expect(wanted).not.toEqual(expected(of, {}));
  });

  it("follow a change back", async () => {
    for (const of of Object.keys(DUTIES) as (keyof typeof DUTIES)[])
      expect(await printed(of)).toEqual(expected(of, {}));
  });
});

describe("a duty on the sheet and in words", () => {
  it("has the same verdicts whichever unit set its figures are typed in", () => {
    const typed = dutyText({ flow: "1200 gpm" }, QUARRY);
    expect(shownVerdicts(dutyOf({}, typed))).toEqual(shownVerdicts(dutyOf({}, QUARRY)));
  });
});
