import { beforeEach, describe, expect, it } from "vitest";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { failureText } from "../../../shared/ports/host-fault.ts";
import type { SheetSet } from "../../../shared/ports/sheet-set.ts";
import { addSheets } from "../../../taskpane/excel/add-sheets.ts";
import { excelFault } from "../../../taskpane/excel/excel-fault.ts";
import { setOfDuty } from "../../support/laid-out.ts";
import { type PlannedFault, WorkbookHost } from "../../support/workbook-host.ts";

const NO_WAIT = [0, 0];
/** Some hundreds of sheets are begun and taken away, on a machine that may be busy, ms. */
const PATIENCE = 300_000;
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

async function written(set: SheetSet): Promise<void> {
  // Both further looks are needed.
  host.busy = 2 * set.wanted.length;
  host.syncs.length = 0;
  host.kinds.length = 0;
  await addSheets(set, NO_WAIT);
}

describe.each(SAMPLE_DUTIES.map((sample, i) => ({ ...sample, share: i / (SAMPLE_DUTIES.length - 1) })))(
  "writing the sheets of a duty: $name",
  ({ duty, share }) => {
    it(
      "leaves the workbook as it was, whichever kind of call fails",
      async () => {
        const set = setOfDuty(duty);
        // The same sheets stand there already, and their record.
        await written(set);
        const places = placesIn(host.kinds, share);
        expect(host.kinds).toHaveLength(5);
        expect(new Set(host.kinds.flat()).size).toBeGreaterThan(30);
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
  },
);
