import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { failureText } from "../../shared/ports/host-fault.ts";
import { type GridHost, gridHost } from "../../workbench/grid-host.ts";
import { type HeadlessGrid, headlessGrid } from "../../workbench/headless.ts";
import { FailingCalls, type PlannedFailure } from "../support/failing.ts";
import { REAL_SETS } from "../support/real-sets.ts";

const PATIENCE = 900_000;
/** The pumps have neither lists nor charts. */
const LEAST_KINDS = 15;

let grid: HeadlessGrid;
let calls: FailingCalls;
let host: GridHost;

beforeAll(async () => {
  grid = headlessGrid();
  calls = new FailingCalls();
  const painter = calls.wrap({ draw: () => undefined, show: () => undefined }, "charts");
  const { api, inside, messages } = grid;
  host = gridHost({ api: calls.wrap(api, "grid"), inside: calls.wrap(inside, "inside"), messages }, painter);
  const own = {
    name: "Mine",
    columns: [9],
    styles: {},
    cells: [
      { at: "A1", v: 3 },
      { at: "A2", f: "A1*2" },
    ],
  };
  await host.addSheets({ wanted: ["Mine"], sheets: () => [{ ...own, names: { three: "A1" } }], records: ["<mine/>"] });
});
afterAll(() => grid.dispose());

/** The workbook whole: cells, names, rules, lists, sizes, the order of the sheets and the one shown. */
function snapshot(): string {
  const book = grid.api.getActiveWorkbook();
  const { styles: _, resources = [], ...saved } = book?.save() ?? { styles: {} };
  const held = resources.map(({ name, data }) => [name, withoutEmpty(JSON.parse(data || "{}"))]);
  const names = (book?.getSheets() ?? []).map((sheet) => grid.inside.namesOf(book?.getId() ?? "", sheet.getSheetId()));
  const active = book?.getActiveSheet().getSheetName();
  return JSON.stringify({ saved, held, names, active, records: host.records() });
}

/** The grid keeps an empty list for a sheet that is gone. */
function withoutEmpty(data: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  return Object.fromEntries(Object.entries(data).filter(([, part]) => JSON.stringify(part) !== "[]"));
}

/** One call of each kind, instead of which, or after which, it fails; `share` says how far along its kind. */
function failures(made: readonly string[], share: number): readonly PlannedFailure[] {
  const alike = new Map<string, number[]>();
  for (const [at, name] of made.entries()) {
    const places = alike.get(name) ?? [];
    places.push(at);
    alike.set(name, places);
  }
  return [...alike.values()].map((all, i) => ({
    call: all[Math.round(share * (all.length - 1))] as number,
    when: i % 2 === 0 ? "instead" : "after",
  }));
}

async function thrownBy(call: () => Promise<unknown>): Promise<unknown> {
  calls.calls.length = 0;
  return call().then(
    () => undefined,
    (thrown: unknown) => thrown,
  );
}

describe.each(REAL_SETS)("writing sheets into the grid: $name", ({ made, share }) => {
  it(
    "leaves the workbook as it was, whichever kind of call fails",
    async () => {
      const set = made();
      calls.fault = undefined;
      calls.calls.length = 0;
      await host.addSheets(set);
      const places = failures(calls.calls, share);
      expect(places.length).toBeGreaterThan(LEAST_KINDS);
      const before = snapshot();
      for (const fault of places) {
        calls.fault = fault;
        const thrown = await thrownBy(() => host.addSheets(set));
        const name = calls.calls[fault.call];
        calls.fault = undefined;
        const now = snapshot();
        expect(now === before, `${name} ${fault.when}`).toBe(true);
        expect(failureText(thrown), name).toMatch(
          /was made to fail\. Nothing was changed in the workbook\. Try it once more; .+\.$/,
        );
      }
    },
    PATIENCE,
  );
});
