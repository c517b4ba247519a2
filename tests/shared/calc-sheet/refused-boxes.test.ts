import { describe, expect, it } from "vitest";
import { PACKAGE_SECTIONS } from "../../../shared/calc-sheet/duty-plan.ts";
import { type Argument, isCellError, isRange } from "../../../shared/cells/cell.ts";
import { type Decoded, decodeDuty } from "../../../shared/duty/decode.ts";
import { FIELDS, type FieldKey } from "../../../shared/duty/fields.ts";
import { shownSection } from "../../../shared/package/shown-section.ts";
import { shownVerdicts } from "../../../shared/package/verdicts.ts";
import { workedDuty } from "../../../shared/package/worked-duty.ts";
import { type Fields, QUARRY } from "../../support/duty-of.ts";

function quarryWith(fields: Fields): Decoded & { readonly cells: ReadonlyMap<string, Argument> } {
  const decoded = decodeDuty({ ...QUARRY, fields: { ...QUARRY.fields, ...fields } });
  return { ...decoded, cells: workedDuty(decoded.duty).worked.cells };
}

/** All that the cells hold and the pane's steps say of the duty. */
function everything({ duty, cells }: ReturnType<typeof quarryWith>): string {
  const shown = PACKAGE_SECTIONS.map(({ id }) => shownSection(duty, id));
  return JSON.stringify([[...cells], shown]);
}

function driverOf({ duty }: Decoded): string | undefined {
  return shownVerdicts(duty).find(({ subject }) => subject === "driver")?.state;
}

function expectRefused({ findings, isComplete }: Decoded, key: FieldKey): void {
  const errors = [...findings].filter(([, list]) => list.some(({ kind }) => kind === "error"));
  expect(errors.map(([place]) => place)).toEqual([key]);
  expect(isComplete).toBe(false);
}

function expectWaiting(cells: ReadonlyMap<string, Argument>, key: FieldKey, ...handles: readonly string[]): void {
  for (const handle of handles) {
    const cell = cells.get(handle);
    const waitsFor = cell !== undefined && !isRange(cell) && isCellError(cell) ? cell.waitsFor : cell;
    expect([handle, waitsFor]).toEqual([handle, FIELDS[key].label]);
  }
}

/** What the sample shows warm, as printed, to half of its last digit: total head, NPSH available, power needed. */
const WARM = [
  [96.58, 0.005],
  [19.1, 0.05],
  [50.29, 0.005],
] as const;

function holds(cells: ReadonlyMap<string, Argument>, [figure, within]: (typeof WARM)[number]): boolean {
  const all = [...cells.values()].flatMap((cell) => (isRange(cell) ? cell.flat() : [cell]));
  return all.some((cell) => typeof cell === "number" && Math.abs(cell - figure) <= within);
}

describe("a liquid too cold to be pumped", () => {
  it("is refused at its box, and no figure of the warm liquid stands beside the new flow", () => {
    // Water freezes at 32 °F. How right the figures of the sample are is tested elsewhere; here they only must be gone.
    const warm = quarryWith({});
    for (const figure of WARM) expect([figure, holds(warm.cells, figure)]).toEqual([figure, true]);
    const cold = quarryWith({ temperature: "15", flow: "2400" });
    expectRefused(cold, "temperature");
    for (const figure of WARM) expect([figure, holds(cold.cells, figure)]).toEqual([figure, false]);
    expectWaiting(cold.cells, "temperature", "totalHead", "npshAvailable", "operatingFlow", "operatingPower");
    // Levels are no matter of the liquid: 174 − 98 = 76 ft, and the lift 110 − 98 = 12 ft.
    expect(cold.cells.get("staticHead")).toBeCloseTo(76, 9);
    expect(cold.cells.get("suctionLift")).toBeCloseTo(12, 9);
  });

  it("is worked out again once it is warm", () => {
    // By hand: losses in turbulent pipe go with the flow to a power of 1.8 to 2. At twice the flow the 20.58 ft of 1200
    // gpm, 96.58 − 76, come to 3.48 to 4 times as much: 147.6 to 158.4 ft in all.
    const { cells } = quarryWith({ temperature: "60", flow: "2400" });
    expect(cells.get("totalHead")).toBeGreaterThan(147.6);
    expect(cells.get("totalHead")).toBeLessThan(158.4);
    // Air at 850 ft 14.25 psi, 32.90 ft of water, less vapour 0.59 ft and lift 12 ft: 20.3 ft, of which 19.1 ft are left
    // over 1.2 ft of suction losses at 1200 gpm; over 3.48 to 4 times as much, 15.4 to 16.2 ft.
    expect(cells.get("npshAvailable")).toBeGreaterThan(15.4);
    expect(cells.get("npshAvailable")).toBeLessThan(16.2);
  });
});

describe("a service factor below 1", () => {
  // The greatest power of the sample is some 46 hp. A tenth of it is less than an engine of 10 hp gives.
  it.each(["0.1", "10 %"])("%s is refused at its box, and no verdict on the driver stands", (serviceFactor) => {
    for (const driver of ["engine", "motor"]) {
      const duty = quarryWith({ driver, serviceFactor, ...(driver === "engine" && { engineRating: "10" }) });
      expectRefused(duty, "serviceFactor");
      expectWaiting(duty.cells, "serviceFactor", "powerNeeded", ...(driver === "engine" ? [] : ["motorRating"]));
      // An engine of 10 hp is too small whatever the margin; a motor waits for it.
      expect(driverOf(duty)).toBe(driver === "engine" ? "fail" : "open");
    }
  });

  it("at 1.1 the same engine is too small", () => {
    // 46 hp × 1.1 is five times what an engine of 10 hp gives.
    expect(driverOf(quarryWith({ engineRating: "10" }))).toBe("fail");
  });
});

describe("a margin that is none", () => {
  it("of NPSH, −5 ft, is refused at its box and meets nothing", () => {
    const duty = quarryWith({ npshMargin: "-5", npshRequired: "22" });
    expectRefused(duty, "npshMargin");
    expectWaiting(duty.cells, "npshMargin", "operatingNpshMarginKept", "operatingNpshVerdict", "liftByNpsh");
    expect(everything(duty)).not.toContain("keeps the margin");
    // 19.0 ft available less 12.5 ft of the curve: 6.5 ft, below a margin of 7 ft.
    expect(quarryWith({ npshMargin: "7" }).cells.get("operatingNpshVerdict")).toBe("BELOW THE MARGIN");
  });

  it.each(["-50", "0.1"])(
    "on losses, %s, is refused at its box, and no head to select for stands",
    (frictionMargin) => {
      // 20.58 ft of losses: −50 % would take 10.3 ft off, to 86.3 ft; 0.1 meant as a tenth would add 2.06 ft, to 98.64 ft.
      const duty = quarryWith({ frictionMargin });
      expectRefused(duty, "frictionMargin");
      expectWaiting(duty.cells, "frictionMargin", "marginHead", "ratedHead", "headOverDuty");
      expect(everything(duty)).not.toContain("meets the duty");
      expect(duty.cells.get("totalHead")).toBeCloseTo(96.58, 1);
    },
  );

  it("of accessory losses, 0.05 meant as a share, is refused at its box", () => {
    const duty = quarryWith({ accessoryLosses: "0.05" });
    expectRefused(duty, "accessoryLosses");
    expectWaiting(duty.cells, "accessoryLosses", "enginePower", "engineGreatestLoad");
    expect(driverOf(duty)).toBe("open");
  });
});

describe("a casing that stands less than nothing", () => {
  it("is refused at its box, and nothing holds", () => {
    const duty = quarryWith({ casingWorkingPressure: "-5" });
    expectRefused(duty, "casingWorkingPressure");
    expectWaiting(duty.cells, "casingWorkingPressure", "greatestPressure", "packageTest");
    expect(everything(duty)).not.toMatch(/Passes: casing[^"]*psig/);
  });
});
