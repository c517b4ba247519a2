import { describe, expect, it } from "vitest";
import { CATALOGUE } from "../../../shared/catalogue/catalogue.ts";
import { parameterName } from "../../../shared/catalogue/entry.ts";
import { functionMetadata } from "../../../shared/catalogue/metadata.ts";
import type { SingleParameter } from "../../../shared/catalogue/parameter.ts";
import type { Cell } from "../../../shared/cells/cell.ts";
import { argumentTable } from "../../../shared/help/function-page.ts";
import { UNIT_SETS } from "../../../src/basis/quantities.ts";
import { cell, numberIn, remarks } from "../../support/cells.ts";

/** Every share argument of the catalogue. */
const SHARES = CATALOGUE.flatMap((entry) =>
  entry.parameters.flatMap(([key, parameter]) =>
    parameter.takes === "cell" && parameter.quantity === "percent"
      ? [{ name: `${entry.id} ${key}`, key, entry, parameter: parameter as SingleParameter<unknown> }]
      : [],
  ),
);

/** Shares of 0.2 % or 1 % are not thinkable of these. */
const NEVER_SMALL = [
  "SHAFTPOWER efficiency",
  "ACCEPTANCETEST guaranteedEfficiency",
  "WIRETOWATER motorEfficiency",
  "WIRETOWATER driveEfficiency",
  "FUELTOWATER driveEfficiency",
  "SLURRYDUTY waterEfficiency",
  "ENERGYCOST motorEfficiency",
  "ENERGYCOST driveEfficiency",
  "FUELCOST loadFactor",
  "GENERATORSIZE motorEfficiency",
  "FUELTANKHOURS usableShare",
  "FUELTANKSIZE usableShare",
];

/** The fraction a cell is read as, and whether a note says how it was read. */
function readingOf({ key, parameter }: (typeof SHARES)[number], given: Cell) {
  const read = parameter.read(given, { name: parameterName(key), unitSet: "US", units: UNIT_SETS.US });
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  const { value } = read;
  const fraction = typeof value === "object" && value !== null && "massFraction" in value ? value.massFraction : value;
  return { fraction, isNoted: read.findings.some(({ code }) => code === "share-read-as") };
}

describe("the one rule of shares in cells", () => {
  it("finds the arguments it is for", () => {
    expect(SHARES.length).toBeGreaterThan(25);
    const names = SHARES.map(({ name }) => name);
    expect(names).toEqual(expect.arrayContaining([...NEVER_SMALL, "SLURRYSG solidsByWeight", "PRIMINGMETHODS solids"]));
  });

  // The rule itself: a bare number up to 1 is a fraction, above 1 percent; a text says what it is.
  it.each<[Cell, number, "noted" | "plain"]>([
    [0.2, 0.2, "noted"],
    [1, 1, "noted"],
    ["0.2", 0.2, "noted"],
    ["0,2", 0.2, "noted"],
    ["20", 0.2, "noted"],
    [1.5, 0.015, "plain"],
    [20, 0.2, "plain"],
    ["20 %", 0.2, "plain"],
    ["20%", 0.2, "plain"],
    ["0.5 %", 0.005, "plain"],
    [0, 0, "plain"],
    ["0 %", 0, "plain"],
  ])("reads %j as %d, %s", (given, fraction, note) => {
    for (const share of SHARES) {
      const reading = readingOf(share, given);
      expect(reading.fraction, share.name).toBeCloseTo(fraction, 12);
      const isNoted = note === "noted" && (typeof given === "string" || !NEVER_SMALL.includes(share.name));
      expect(reading.isNoted, share.name).toBe(isNoted);
    }
  });

  it("keeps the sign, and notes no rate of interest that would be less than 0.1 %", () => {
    const [discount] = SHARES.filter(({ name }) => name === "LIFECYCLECOST discountRate");
    if (discount === undefined) throw new Error("no discount rate");
    expect(readingOf(discount, -0.02)).toEqual({ fraction: -0.02, isNoted: false });
    expect(readingOf(discount, -2)).toEqual({ fraction: expect.closeTo(-0.02, 12), isNoted: false });
    expect(readingOf(discount, -0.5)).toEqual({ fraction: -0.5, isNoted: true });
    expect(readingOf(discount, 0.1)).toEqual({ fraction: 0.1, isNoted: false });
    expect(readingOf(discount, 0.11)).toEqual({ fraction: 0.11, isNoted: true });
  });

  it("is said by the help of each, and by Excel's", () => {
    const described = new Map(functionMetadata("").functions.map(({ id, parameters }) => [id, parameters]));
    for (const { name, entry, key } of SHARES) {
      expect(argumentTable(entry), name).toContain("a number up to 1 is a fraction, above 1 percent");
      const place = entry.parameters.findIndex(([own]) => own === key);
      expect(described.get(entry.id)?.[place]?.description, name).toContain("a number up to 1 is a fraction");
    }
  });

  it("holds in a column as in a cell", () => {
    // By hand: 1 / (0.3/2.7 + 0.7) = 1.2328767; 1 / (0.003/2.7 + 0.997) = 1.0018925.
    const column = [[0.3], [30], ["30 %"], ["0.3 %"]];
    const rows = (cell("SLURRYSG", 2.7, column) as readonly (readonly number[])[]).flat();
    expect(rows).toEqual([1.2328767, 1.2328767, 1.2328767, 1.0018925].map((sg) => expect.closeTo(sg, 6)));
    expect(remarks("SLURRYSG", 2.7, column)).toEqual(["check share-read-as"]);
  });

  it("says both ways", () => {
    expect(cell("NOTES", "SLURRYSG", 2.7, 0.5)).toContain(
      "Solids by weight: 0.5 is read as 50 %; write “0.5 %” if that is meant",
    );
    expect(cell("NOTES", "SLURRYSG", 2.7, "20")).toContain("Solids by weight: 20 is read as 20 %.");
  });
});

describe("a percentage that a function answers", () => {
  it("of 1 % and less is handed on as a text", () => {
    // By hand: (2/2.65) / (2/2.65 + 98) = 0.764 %; (30/2.5) / (30/2.5 + 70) = 14.6 %.
    expect(numberIn("SOLIDSBYVOLUME", 2.65, 2)).toBeCloseTo(0.764, 3);
    expect(remarks("SOLIDSBYVOLUME", 2.65, 2)).toEqual(["check share-to-hand-on"]);
    expect(remarks("SOLIDSBYVOLUME", 2.5, 30)).toEqual([]);
    expect(remarks("SOLIDSBYVOLUME", 2.5, "0 %")).toEqual([]);
    expect(remarks("SLURRYMIXTURE", 2.65, 2)).toEqual(["check slurry-as-one-liquid", "check share-to-hand-on"]);
    expect(cell("NOTES", "SOLIDSBYVOLUME", 2.65, 2)).toContain('hand it on as a text, with & " %" behind it');
  });
});
