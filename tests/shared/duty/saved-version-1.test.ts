import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import { dutyFrom } from "../../../shared/duty/saved.ts";
import harbourBypass from "./version-1/harbour-bypass.json" with { type: "json" };
import quarrySump from "./version-1/quarry-sump.json" with { type: "json" };
import sandTailings from "./version-1/sand-tailings.json" with { type: "json" };
import washHeader from "./version-1/wash-header.json" with { type: "json" };

// A duty of version 1 keeps its figures: they are held against what the program of version 1 gave. That is no outside
// source but the law of the migration; total head and NPSH available of two of them are worked out by hand besides.

const opened = (saved: unknown) => {
  const found = dutyFrom(saved);
  if (!found.ok) throw new Error(JSON.stringify(found.findings));
  expect(found.findings).toEqual([]);
  return decodeDuty(found.value);
};
const several = (saved: typeof quarrySump | typeof sandTailings, count: string, arrangement = "parallel") => ({
  ...saved,
  pump: { ...saved.pump, count, arrangement },
});
const worked = (saved: unknown) => workOut(dutyPlan(opened(saved).duty)).cells;

const KEYS = [
  "totalHead",
  "ratedHead",
  "npshAvailable",
  "operatingFlow",
  "operatingHead",
  "operatingEfficiency",
  "operatingPower",
  "operatingNpshRequired",
  "operatingNpshAvailable",
  "greatestPressure",
  "driverPower",
] as const;

/** In the unit set of each duty; of the two without a pump the first three alone. */
const FORMER: readonly (readonly [string, unknown, ...number[]])[] = [
  [
    "quarry",
    quarrySump,
    ...[96.58043338489249, 98.63847672338173, 19.103436105650875, 1235.3179899756794, 97.73616067050041],
    ...[76.45382035191727, 39.89702898542631, 12.493762070800381, 19.033436609843026, 69.15013640212634],
    45.71406753705115,
  ],
  [
    "quarry, two side by side",
    several(quarrySump, "2"),
    ...[96.58043338489249, 98.63847672338173, 19.103436105650875, 1644.0535861750634, 113.30705400535471],
    ...[70.62178385217864, 66.64075988227198, 9.47561743973206, 18.081978895994773, 69.15013640212634],
    45.71406753705115,
  ],
  [
    "quarry, three side by side",
    several(quarrySump, "3"),
    ...[96.58043338489249, 98.63847672338173, 19.103436105650875, 1777.534245225962, 119.2626005228763],
    ...[58.778651579288606, 91.11887299657477, 8.31402380984438, 17.714977896857963, 69.15013640212634],
    45.71406753705115,
  ],
  ["wash header", washHeader, 38.20308293001803, 38.20308293001803, 11.782185480728423],
  ["harbour", harbourBypass, 11.543888134541074, 11.721082541268128, 5.433686226425693],
  [
    "tailings",
    sandTailings,
    ...[31.955222983559864, 32.802984132737855, 11.00756217145255, 197.5431323374917, 34.4416626723912],
    ...[62.8463203701873, 33.65254397298999, 4.125353067609116, 10.84125836833379, 5.82136136538968],
    40.14295834068841,
  ],
  [
    "tailings, two side by side",
    several(sandTailings, "2"),
    ...[31.955222983559864, 32.802984132737855, 11.00756217145255, 243.6830272608375, 39.74806347215284],
    ...[56.88420523164823, 52.92992418366174, 3.1147137543402543, 10.557658149299618, 5.82136136538968],
    40.14295834068841,
  ],
];

describe("a duty of version 1 in the program of today", () => {
  it.each(FORMER)("gives the figures of before: %s", (_, saved, ...figures) => {
    const cells = worked(saved);
    for (const [i, former] of figures.entries()) {
      const key = KEYS[i] as string;
      expect(
        Math.abs((cells.get(key) as number) / (former as number) - 1),
        `${key} ${cells.get(key)}`,
      ).toBeLessThanOrEqual(1e-9);
    }
  });

  it("runs off the end of its curves in series as before, with the head of before left over", () => {
    const found = worked(several(quarrySump, "2", "series"));
    expect(found.get("operatingFlow")).toMatchObject({ message: expect.stringContaining("still has 62.0 ft") });
    expect(found.get("greatestPressure")).toBeCloseTo(138.30027280425267, 9);
    const tailings = worked(several(sandTailings, "2", "series"));
    expect(tailings.get("operatingFlow")).toMatchObject({ message: expect.stringContaining("still has 21.5 m") });
    expect(tailings.get("greatestPressure")).toBeCloseTo(11.32938532549118, 9);
  });

  // By hand: Colebrook-White by fixed point, 0.045 mm; Crane TP-410 K = L/D f_T and fixed K; bores of ASME B36.10M;
  // water at 45 °C and sea water at 15 °C of the IAPWS and ITTC tables; standard atmosphere at 320 m.
  const g = 9.80665;
  const friction = (reynolds: number, roughness: number): number => {
    let x = 8;
    for (let i = 0; i < 50; i += 1) x = -2 * Math.log10(roughness / 3.7 + (2.51 * x) / reynolds);
    return x ** -2;
  };
  const lost = (flow: number, bore: number, length: number, K: number, viscosity: number): number => {
    const velocity = flow / ((Math.PI / 4) * bore ** 2);
    const f = friction((velocity * bore) / viscosity, 0.045e-3 / bore);
    return (((f * length) / bore + K) * velocity ** 2) / (2 * g);
  };
  const fT = (bore: number): number => 0.25 / Math.log10((0.0018 * 0.0254) / 3.7 / bore) ** 2;
  const [DN150, DN200, DN250] = [0.15405, 0.2027, 0.2545];
  const near = (found: unknown, byHand: number): void =>
    expect(Math.abs((found as number) / byHand - 1), `${found} for ${byHand}`).toBeLessThanOrEqual(3e-4);

  it("has the total head and NPSH available of a hand calculation: wash header", () => {
    const [density, viscosity, vapour] = [990.21, 0.596e-3 / 990.21, 9595];
    const suction = lost(0.05, DN200, 8, 0.5 + (8 + 14) * fT(DN200), viscosity);
    const discharge =
      lost(0.05, DN150, 65, (100 + 45 + 70) * fT(DN150), viscosity) +
      lost(0.05, DN150, 12, 60 * fT(DN150) + 1, viscosity);
    const cells = worked(washHeader);
    near(cells.get("totalHead"), 7.5 + 2.5e5 / density / g + suction + discharge);
    const air = 101_325 * (1 - 2.25577e-5 * 320) ** 5.25588;
    near(cells.get("npshAvailable"), (air - vapour) / density / g + 2.9 - suction);
  });

  it("has the total head and NPSH available of a hand calculation: harbour", () => {
    const [density, viscosity, vapour] = [1025.97, 1.1883e-6, 1671];
    const suction = lost(0.095, DN250, 9, 0.78 + 14 * fT(DN250), viscosity);
    const discharge = lost(0.095, DN250, 240, (100 + 8 + 96) * fT(DN250) + 1, viscosity);
    const cells = worked(harbourBypass);
    near(cells.get("totalHead"), 8 + suction + discharge);
    near(cells.get("npshAvailable"), (101_325 - vapour) / density / g - 4.2 - suction);
  });

  it("says aloud what it doubts now: one suction and one check valve for two pumps", () => {
    const { duty, findings } = opened(several(quarrySump, "2"));
    expect(findings.get("suctionLine.0.share")).toMatchObject([{ code: "suction-common-to-pumps", kind: "check" }]);
    expect(findings.get("dischargeLine.0.share")).toMatchObject([
      { code: "check-valve-common-to-pumps", kind: "check" },
      { code: "share-of-all-assumed", kind: "assumed" },
    ]);
    const said = [...workOut(dutyPlan(duty)).cells].filter(([key]) => /^found\.\d+\.where$/.test(key));
    const places = said.map(([, where]) => where);
    expect(places).toEqual(expect.arrayContaining(["Suction line, row 1", "Discharge line, row 1"]));
  });

  it("doubts nothing new of one pump, nor of pumps in series", () => {
    for (const saved of [quarrySump, several(quarrySump, "2", "series"), sandTailings]) {
      const places = [...opened(saved).findings.keys()].filter((place) => place.endsWith(".share"));
      expect(places).toEqual([]);
    }
  });
});
