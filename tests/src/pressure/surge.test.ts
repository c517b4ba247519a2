import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { amount, type Result } from "../../../src/basis/result.ts";
import { liquidNamed } from "../../../src/liquid/liquid-name.ts";
import { pipeNamed } from "../../../src/pipework/pipe-name.ts";
import { liquidBulkModulus } from "../../../src/pressure/liquid-bulk-modulus.ts";
import { wallMaterialOf, wallOf } from "../../../src/pressure/pipe-wall.ts";
import { lineStop, surge } from "../../../src/pressure/surge.ts";
import { type Restraint, waveSpeed } from "../../../src/pressure/wave-speed.ts";
import { numberOf, type PublishedCase, publishedCases, relativeError } from "../../support/published-cases.ts";

const PSI = 6894.757293168361;
const FOOT = 0.3048;

function good<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.findings));
  return result.value;
}

function codesOf({ findings }: Result<unknown>): readonly string[] {
  return findings.map(({ kind, code }) => `${kind} ${code}`);
}

function expected(of: PublishedCase, name: string): number {
  return of.expected[name]?.value as number;
}

const CASES = publishedCases("10-surge");

describe("published wave speeds and surges", () => {
  it("are all here", () => {
    expect(CASES.map(({ id }) => id)).toEqual(
      ["001", "002", "003", "008", "009", "012", "013"].map((n) => `10-surge-${n}`),
    );
  });

  it.each(CASES.filter(({ inputs }) => inputs["wall"] === "rigid"))("$id: $source", (of) => {
    const density = numberOf(of, "rho");
    const speed = good(waveSpeed({ density, bulkModulus: numberOf(of, "K") * 1e9, restraint: "expansion joints" }));
    expect(Math.abs(speed - 1291)).toBeLessThan(0.5);
    expect(relativeError(speed, expected(of, "a"))).toBeLessThan(1e-9);
    const velocity = numberOf(of, "Q") / ((Math.PI / 4) * numberOf(of, "D") ** 2);
    expect(relativeError((density * speed * velocity) / 1e6, expected(of, "dp"))).toBeLessThan(1e-9);
  });

  it.each(CASES.filter(({ inputs }) => inputs["DR"] !== undefined))("$id: $source", (of) => {
    const ratio = numberOf(of, "DR");
    const bulkModulus = numberOf(of, "K") * PSI;
    // The handbook states the speed in the liquid alone, 4660 ft/s, which makes its density.
    const density = bulkModulus / (numberOf(of, "a0") * FOOT) ** 2;
    const wall = { bore: ratio - 2, thickness: 1, modulus: numberOf(of, "E") * PSI, poisson: 0.4 };
    const speed = good(waveSpeed({ density, bulkModulus, wall, restraint: "expansion joints" }));
    expect(relativeError(speed / FOOT, expected(of, "a"))).toBeLessThan(1e-6);
    expect(relativeError(speed / FOOT / (2.31 * 32.2), expected(of, "dp"))).toBeLessThan(1e-6);
  });

  it.each(CASES.filter(({ inputs }) => inputs["material"] !== undefined))("$id: $source", (of) => {
    const text = String(of.inputs["restraint"]);
    const restraint: Restraint = text.startsWith("anchored throughout") ? "anchored throughout" : "expansion joints";
    const density = numberOf(of, "rho");
    const wall = {
      bore: numberOf(of, "D"),
      thickness: numberOf(of, "e"),
      modulus: numberOf(of, "E"),
      poisson: numberOf(of, "poisson"),
    };
    const speed = good(waveSpeed({ density, bulkModulus: numberOf(of, "K"), wall, restraint }));
    expect(relativeError(speed, expected(of, "a"))).toBeLessThan(1e-8);
    const velocityChange = numberOf(of, "dV");
    expect(relativeError((density * speed * velocityChange) / 1e5, expected(of, "dp_Joukowsky"))).toBeLessThan(1e-8);
    const stop = good(
      lineStop({
        length: numberOf(of, "L"),
        waveSpeed: speed,
        velocityChange,
        stopTime: numberOf(of, "closure"),
        density,
      }),
    );
    expect(relativeError(stop.returnTime, expected(of, "T_return"))).toBeLessThan(1e-8);
    expect(stop.isSudden).toBe(of.expected["fast_closure"]?.value);
  });
});

describe("wave speed", () => {
  const wall = { bore: 0.1, thickness: 0.005, modulus: 2e9, poisson: 0.4 };
  const base = { density: 1000, bulkModulus: 2.19e9, restraint: "expansion joints" } as const;

  it("of a thick wall has a form of its own", () => {
    // D/e = 5: c = 2/5 × 1.4 + 5/6 = 1.393333; a = 1479.865/√(1 + 1.393333 × 2.19/2 × 5) = 504.69
    const thick = { ...wall, thickness: 0.02 };
    expect(good(waveSpeed({ ...base, wall: thick }))).toBeCloseTo(1479.865 / Math.sqrt(1 + 1.3933333 * 1.095 * 5), 2);
    // D/e = 10 is thin still: a = 1479.865/√(1 + 1.095 × 10)
    const thin = { ...wall, thickness: 0.01 };
    expect(good(waveSpeed({ ...base, wall: thin }))).toBeCloseTo(1479.865 / Math.sqrt(11.95), 2);
  });

  it("is maximum in a rigid pipe, and greater the less a line may lengthen", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.009, noNaN: true }),
        fc.double({ min: 1e8, max: 2e11, noNaN: true }),
        (thickness, modulus) => {
          const pipe = { ...wall, thickness, modulus };
          const speed = (restraint: Restraint) => good(waveSpeed({ ...base, wall: pipe, restraint }));
          expect(speed("expansion joints")).toBeLessThan(speed("anchored throughout"));
          expect(speed("anchored throughout")).toBeLessThan(good(waveSpeed(base)));
          expect(speed("expansion joints")).toBeLessThan(speed("anchored upstream"));
        },
      ),
    );
  });

  it.each([
    [{ density: 0 }],
    [{ bulkModulus: -1 }],
    [{ wall: { ...wall, thickness: 0 } }],
    [{ wall: { ...wall, poisson: 0.6 } }],
    [{ wall: { ...wall, modulus: Number.NaN } }],
  ])("is refused for %o", (change) => {
    expect(waveSpeed({ ...base, ...change }).ok).toBe(false);
  });

  it("out of the usual draws a caution", () => {
    expect(codesOf(waveSpeed({ ...base, wall: { ...wall, modulus: 1e6 } }))).toEqual(["check wave-speed-unusual"]);
    expect(codesOf(waveSpeed({ ...base, density: 900 }))).toEqual(["check wave-speed-unusual"]);
    expect(codesOf(waveSpeed(base))).toEqual([]);
  });
});

describe("the wall of a pipe", () => {
  it.each([
    ["6in sch40", "steel"],
    ["6in STD", "steel"],
    ["6in sch10S", "stainless steel"],
    ["DN150 EN10220 168.3x4.5", "steel"],
    ["6in PVC sch80", "PVC"],
    ["10in HDPE DR17", "HDPE"],
    ["6in ductile iron cl350", "ductile iron"],
    ["4in copper L", "copper"],
    ["6in layflat", undefined],
    ["6in suction hose", undefined],
    ["ID 154.1 mm rough 0.045 mm", undefined],
    ["OD 168.3 mm wall 4.5 mm steel", "steel"],
    ["OD 168.3 mm wall 4.5 mm stainless steel", "stainless steel"],
    ["OD 168.3 mm wall 4.5 mm old cast iron", "cast iron"],
    ["OD 168.3 mm wall 9 mm plastic", "PVC"],
    ["OD 168.3 mm wall 4.5 mm smooth hose", undefined],
  ] as const)("of %s is %s", (name, material) => {
    expect(wallMaterialOf(good(pipeNamed(name)))).toBe(material);
  });

  it("is rigid where it is not known, with a caution, and its modulus cautioned where it is", () => {
    const measured = wallOf(good(pipeNamed("ID 154.1 mm steel")));
    expect(good(measured)).toBeUndefined();
    expect(codesOf(measured)).toEqual(["check surge-rigid-wall"]);
    const known = wallOf(good(pipeNamed("6in sch40")));
    expect(good(known)?.thickness).toBeCloseTo(0.28 * 0.0254, 12);
    expect(good(known)?.modulus).toBe(207e9);
    expect(codesOf(known)).toEqual(["assumed surge-modulus-taken"]);
  });
});

describe("the bulk modulus of a liquid", () => {
  const at = (name: string, kelvin: number) => liquidBulkModulus(good(liquidNamed(name)), kelvin);

  it("of water is 2.19 GPa at 20 °C and goes with temperature", () => {
    expect(good(at("water", 293.15)) / 1e9).toBeCloseTo(2.19, 9);
    expect(good(at("water", 333.15)) / 1e9).toBeCloseTo(2.19 * 1.081, 9);
    // half way between 20 and 30 °C
    expect(good(at("water", 298.15)) / 1e9).toBeCloseTo((2.19 * (1 + 1.035)) / 2, 9);
    expect(at("water", 273.15).ok).toBe(true);
    expect(at("water", 473.15).ok).toBe(true);
    expect(at("water", 474).ok).toBe(false);
    expect(at("water", 293.15).findings).toEqual([]);
  });

  it.each([
    ["sea water", 2.37],
    ["ethylene glycol 40 %", 3.2],
    ["SG 1.12, 3.5 cP", 2.19],
  ])("of %s is %d GPa, with a caution", (name, gigapascal) => {
    const found = at(name, 293.15);
    expect(good(found) / 1e9).toBeCloseTo(gigapascal, 9);
    expect(found.findings[0]?.found).toEqual(amount("stress", good(found)));
    expect(codesOf(found)).toEqual(["assumed surge-liquid-modulus-taken"]);
  });
});

describe("surge", () => {
  const liquid = { density: 998.2, dynamicViscosity: 1e-3 };
  const pipe = good(pipeNamed("6in sch40"));

  it("is proportional to the change of velocity", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 40, noNaN: true }), (velocityChange) => {
        const one = good(surge({ velocityChange, pipe, liquid, bulkModulus: 2.19e9 }));
        const two = good(surge({ velocityChange: 2 * velocityChange, pipe, liquid, bulkModulus: 2.19e9 }));
        expect(two.pressureChange).toBeCloseTo(2 * one.pressureChange, 3);
        expect(two.waveSpeed).toBe(one.waveSpeed);
      }),
    );
  });

  it("says what it is, and gives the anchored figure beside it", () => {
    const result = surge({ velocityChange: 1, pipe, liquid, bulkModulus: 2.19e9 });
    expect(codesOf(result)).toEqual([
      "assumed surge-modulus-taken",
      "check surge-anchored-higher",
      "check surge-is-a-screen",
    ]);
    const anchored = result.findings[1]?.found?.value as number;
    expect(anchored).toBeGreaterThan(good(result).pressureChange);
    expect(anchored).toBeLessThan(1.1 * good(result).pressureChange);
  });

  it("is refused for a negative or absurd change of velocity", () => {
    expect(surge({ velocityChange: -1, pipe, liquid, bulkModulus: 2.19e9 }).ok).toBe(false);
    expect(surge({ velocityChange: 101, pipe, liquid, bulkModulus: 2.19e9 }).ok).toBe(false);
  });

  it("of a slow even stop is that of a rigid column", () => {
    // 1000 kg/m³ × 500 m × 2 m/s / 10 s = 100 kPa; return time 2 × 500/1000 = 1 s
    const stop = good(lineStop({ length: 500, waveSpeed: 1000, velocityChange: 2, stopTime: 10, density: 1000 }));
    expect(stop).toEqual({ returnTime: 1, isSudden: false, slowPressureChange: 1e5 });
    const sudden = { length: 500, waveSpeed: 1000, velocityChange: 2, stopTime: 1, density: 1000 };
    expect(good(lineStop(sudden)).isSudden).toBe(true);
    expect(lineStop({ ...sudden, stopTime: 0 }).ok).toBe(false);
  });
});
