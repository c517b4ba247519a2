import { beforeEach, describe, expect, it } from "vitest";
import { failureText } from "../../../shared/ports/host-fault.ts";
import type { SheetSet } from "../../../shared/ports/sheet-set.ts";
import { addSheets } from "../../../taskpane/excel/add-sheets.ts";
import { excelFault } from "../../../taskpane/excel/excel-fault.ts";
import { randomPlaces } from "../../support/random-places.ts";
import { REAL_SETS } from "../../support/real-sets.ts";
import { type PlannedFault, WorkbookHost } from "../../support/workbook-host.ts";

const NO_WAIT = [0, 0];
/** Some hundreds of sheets are begun and taken away, on a machine that may be busy, ms. */
const PATIENCE = 900_000;
/** Places at random in each set, beside one of each kind. */
const PLACES = 50;
const SEED = 20261129;
let host: WorkbookHost;

beforeEach(() => {
  host = new WorkbookHost();
  Object.assign(globalThis, {
    Excel: host.Excel,
    Office: { context: { requirements: { isSetSupported: () => true } } },
  });
  const own = host.sheet("Sheet1");
  Object.assign(own.cells, { A1: "mine", A2: 3, A3: "=A2*2" });
  Object.assign(own.names, { three: "A2" });
});

/**
 * Each round trip lost on its way there and on its way back, and one action of each kind in it refused.
 *
 * @param share how far along its kind the action stands: 0 the first, 1 the last
 */
function placesIn(kinds: readonly (readonly string[])[], share: number): readonly PlannedFault[] {
  return kinds.flatMap((actions, i): readonly PlannedFault[] => {
    const alike = new Map<string, number[]>();
    for (const [at, kind] of actions.entries()) {
      const places = alike.get(kind) ?? [];
      places.push(at);
      alike.set(kind, places);
    }
    const refused = [...alike.values()].map((all) => all[Math.round(share * (all.length - 1))] as number);
    return [{ sync: i + 1, at: "before" }, ...refused.map((at) => ({ sync: i + 1, at })), { sync: i + 1, at: "after" }];
  });
}

/** Actions at random, of all that were carried out. */
function placesAnywhere(kinds: readonly (readonly string[])[], seed: number): readonly PlannedFault[] {
  const all = kinds.flatMap((actions, i) => actions.map((_, at): PlannedFault => ({ sync: i + 1, at })));
  return randomPlaces(all.length, PLACES, seed).map((place) => all[place] as PlannedFault);
}

async function written(set: SheetSet): Promise<void> {
  // Both further looks are needed.
  host.busy = 2 * set.wanted.length;
  host.syncs.length = 0;
  host.kinds.length = 0;
  await addSheets(set, NO_WAIT);
}

describe.each(REAL_SETS)("writing sheets: $name", ({ made, share }) => {
  it(
    "leaves the workbook as it was, whichever kind of call fails, and wherever",
    async () => {
      const set = made();
      // The same sheets stand there already, and their record.
      await written(set);
      const places = [...placesIn(host.kinds, share), ...placesAnywhere(host.kinds, SEED + Math.round(100 * share))];
      const calculates = set.sheets(set.wanted).some(({ cells }) => cells.some(({ f }) => f !== undefined));
      expect(host.kinds).toHaveLength(calculates ? 5 : 3);
      expect(places.length).toBeGreaterThan(PLACES + (calculates ? 40 : 15));
      host.protected.add("Sheet1");
      const before = host.snapshot();
      expect(host.xmlParts).toHaveLength(set.records?.length ?? 0);
      for (const place of places) {
        host.fault = place;
        const fault = await written(set).then(
          () => undefined,
          (thrown: unknown) => thrown,
        );
        host.fault = undefined;
        expect(host.snapshot() === before, JSON.stringify(place)).toBe(true);
        expect(failureText(excelFault(fault)), JSON.stringify(place)).toMatch(
          /^Excel stopped: .+\. Nothing was changed in the workbook\. Try it once more; .+\.$/,
        );
      }
    },
    PATIENCE,
  );
});
