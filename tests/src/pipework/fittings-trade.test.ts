import { describe, expect, it } from "vitest";
import { branchLoss } from "../../../src/pipework/branch-fitting.ts";
import { fittingNamed } from "../../../src/pipework/fitting-name.ts";
import { fullyRoughFactor } from "../../../src/pipework/friction-factor.ts";
import type { Pipe } from "../../../src/pipework/pipe.ts";
import { pipeNamed } from "../../../src/pipework/pipe-name.ts";
import { TRADE_FITTINGS, TRADE_LENGTHS } from "../../../src/tables/fittings-trade.ts";
import { pipeOf } from "../../support/pipes.ts";
import { figureOf, publishedRows } from "../../support/published-rows.ts";

const rows = publishedRows("fittings-trade");
const SIX = pipeOf(0.154, 0, { nominalInches: 6 });

function loss(name: string, pipe: Pipe = SIX) {
  const found = fittingNamed(name);
  if (!found.ok) throw new Error(`${name}: ${JSON.stringify(found.findings)}`);
  const k = found.value.lossCoefficient(pipe);
  if (!k.ok) throw new Error(`${name}: ${JSON.stringify(k.findings)}`);
  return { k: k.value, codes: k.findings.map(({ code }) => code), facts: k.findings[0]?.facts, fitting: found.value };
}

/** What each row is called here; a row with another name than the table's, or with a word about what was tested. */
const NAMES: Readonly<Record<string, string>> = {
  "straight-through diaphragm": "diaphragm straight",
  "duckbill check, outfall": "duckbill outfall",
  "duckbill check, in line": "duckbill in line",
  "ball check, sewage": "ball check",
  "ball check, lift type": "ball check lift type",
  "swing check, tested range": "swing check tested",
  "tilting check, tested range": "tilting check tested",
  "double-door check": "dual-plate check tested",
  "butterfly, tested range": "butterfly tested",
  "wye 45, one inlet only": "wye one inlet",
  "magnetic flow meter": "magmeter",
  "turbine or propeller meter": "propeller meter",
  "basket strainer, in line, clean": "basket strainer",
  "suction basket, clean": "strainer",
  "foot valve with strainer, hinged": "foot valve",
  "camlock pair, full bore": "camlock",
  "quick-coupling joint, steel lever": "quick-connect steel",
  "quick-coupling joint, aluminium": "quick-connect aluminium",
  "PVC fabricated reducer": "PVC reducer fabricated",
  "PVC fabricated increaser": "PVC increaser fabricated",
  "mitred bend 90, one weld": "mitre 90 tested",
  "HDPE fabricated bend 90, 3-5 segments": "HDPE bend 90 fabricated",
  "HDPE butt-fusion bead": "HDPE weld bead",
};

const LEG = /^(wye 45|tee 90) (joining|dividing), (branch|run), ([\d.]+)/;

describe("fittings of the trade", () => {
  it("has every row of one figure, K or L/D", () => {
    expect(rows).toHaveLength(60);
    const held = rows.filter((row) => row["basis"] !== "rule" && !LEG.test(row["fitting"] ?? ""));
    expect(held).toHaveLength(30);
    for (const row of held) {
      const name = NAMES[row["fitting"] as string] ?? (row["fitting"] as string);
      const tabled = figureOf(row, "value");
      const { k, codes } = loss(name);
      if (row["basis"] === "K") expect(k, name).toBeCloseTo(tabled, 9);
      else expect(k / fullyRoughFactor(SIX.bore), name).toBeCloseTo(tabled, 9);
      const isOfPractice = [...TRADE_FITTINGS, ...TRADE_LENGTHS].some((one) => one.name === name);
      if (isOfPractice) expect(codes, name).toEqual(["fitting-assumed"]);
    }
  });

  it("says its range, as the table gives it", () => {
    for (const row of rows) {
      const name = NAMES[row["fitting"] as string] ?? (row["fitting"] as string);
      const one = [...TRADE_FITTINGS, ...TRADE_LENGTHS].find((known) => known.name === name);
      if (one === undefined || row["basis"] === "rule") continue;
      expect(one.range, name).toContain(Number(row["high"]).toString());
      if (row["low"] !== row["high"]) expect(one.range, name).toContain(Number(row["low"]).toString());
    }
  });

  // Technical Paper 410 (2009), computed with an open library; printed example: branch −0.042, run 0.325 at 100 of 400 gpm.
  it("has every leg of tees and wyes", () => {
    const legs = rows.flatMap((row) => {
      const match = LEG.exec(row["fitting"] as string);
      return match === null ? [] : [{ row, parts: match.slice(1) as [string, string, string, string] }];
    });
    expect(legs).toHaveLength(22);
    for (const { row, parts } of legs) {
      const [body, way, leg, share] = parts;
      const name = `${body} ${way} ${leg} ${Number(share) * 100} %`;
      expect(Math.abs(loss(name).k - figureOf(row, "value")), name).toBeLessThanOrEqual(0.0051);
    }
    expect(loss("tee joining branch 25 %").k).toBeCloseTo(-0.042, 3);
    expect(loss("tee joining run 1/4").k).toBeCloseTo(0.325, 6);
  });

  // As printed beside the rules: branch half the header's diameter.
  it.each([
    ["manifold take-off 25 % ID 77 mm", 2],
    ["manifold take-off 50 % ID 77 mm", 5],
    ["wye 45 dividing branch 25 % ID 77 mm", 0.54],
    ["wye 45 dividing branch 33 % ID 77 mm", 0.76],
    ["wye 45 dividing branch 50 % ID 77 mm", 1.85],
    ["manifold inlet 25 % ID 77 mm", 0.88],
    ["manifold inlet 33 % ID 77 mm", 1.85],
    ["manifold inlet 50 % ID 77 mm", 4.5],
    ["wye joining branch 25 % ID 77 mm", 0.52],
    ["wye joining branch 33 % ID 77 mm", 1.23],
    ["wye joining branch 50 % ID 77 mm", 3.09],
  ])("%s has K %d in the header", (name, k) => expect(Math.abs(loss(name).k - k)).toBeLessThan(0.03));

  it("takes the greater of the two rules between narrow and equal branches", () => {
    const at = (areaRatio: number) => branchLoss({ angle: 90, way: "dividing", leg: "branch", share: 0.5, areaRatio });
    expect(at(0.7)).toBeCloseTo(1 + (0.5 / 0.7) ** 2, 9);
    expect(at(1)).toBeCloseTo(1.075 ** 2, 9);
  });

  // As printed beside the rules; b is the narrow diameter over the pipe's.
  it.each([
    [`magmeter ID ${0.75 * 154} mm`, 0.37],
    [`flow meter ID ${(0.67 * 154).toFixed(2)} mm`, 0.85],
    [`magmeter ID ${0.5 * 154} mm`, 4.6],
  ])("%s has K %d of the line", (name, k) => expect(Math.abs(loss(name).k / k - 1)).toBeLessThan(0.03));

  it("a hose shank of 92 in 100 mm has K 0.14 on the hose", () => {
    expect(loss("hose shank ID 92 mm", pipeOf(0.1)).k).toBeCloseTo(0.14, 2);
  });

  // [0.5 (1 − b²) + (1 − b²)²]/b⁴ + 0.2/b⁴ with b = 1/2: (0.375 + 0.5625 + 0.2) × 16.
  it("a reduced pinch valve is an abrupt change and back, and its sleeve", () => {
    expect(loss("pinch valve ID 77 mm").k).toBeCloseTo(1.1375 * 16, 9);
  });

  it("a basket half blocked loses four times as much", () => {
    expect(loss("basket strainer 50 % blocked").k).toBeCloseTo(12, 9);
    expect(loss("suction strainer 50 % blocked").k).toBeCloseTo(6, 9);
  });

  it("a duckbill at the outfall holds the exit, one in the line does not", () => {
    expect([loss("duckbill").fitting.isExit, loss("duckbill in line").fitting.isExit]).toEqual([true, false]);
  });
});

function bore(name: string): Pipe {
  const found = pipeNamed(name);
  if (!found.ok) throw new Error(name);
  return found.value;
}

describe("reducer by two nominal sizes", () => {
  it("is that of the two pipes by name, from either end", () => {
    for (const [pipe, short, long] of [
      ["8in sch40", "reducer 10x8", "reducer from 10in sch40"],
      ["10in sch40", "reducer 10 x 8", "reducer to 8in sch40"],
      ["10in sch40", "increaser 8x10", "expander from 8in sch40"],
      ["DN200 sch40", "reducer DN250 x DN200", "reducer from DN250 sch40"],
      ["DN200 sch40", "reducer 250x200", "reducer from DN250 sch40"],
      ["12in HDPE DR17", 'reducer 12" x 10"', "reducer to 10in HDPE DR17"],
      ["315mm HDPE SDR17", "reducer 315x250", "reducer to 250mm HDPE SDR17"],
      ["4in suction hose", "reducer 4x3", "reducer to 3in suction hose"],
      ["2-1/2in sch40", "reducer 3 x 2-1/2", "reducer from 3in sch40"],
    ] as const) {
      expect(loss(short, bore(pipe)).k, `${pipe} ${short}`).toBeCloseTo(loss(long, bore(pipe)).k, 12);
    }
  });

  it("is refused in a pipe of neither size", () => {
    const found = fittingNamed("reducer 10x8");
    const k = found.ok ? found.value.lossCoefficient(bore("6in sch40")) : found;
    expect(k.findings).toMatchObject([{ code: "size-change-elsewhere", kind: "error", given: "6in sch40" }]);
  });

  it("an eccentric one is as one of one and a half times its angle", () => {
    const pipe = bore("8in sch40");
    expect(loss("eccentric reducer from 10in sch40 20 deg", pipe).k).toBeCloseTo(
      loss("concentric reducer from 10in sch40 30 deg", pipe).k,
      12,
    );
  });

  it("with its sizes before it is the same", () => {
    const pipe = bore("8in sch40");
    for (const text of ["10x8 reducer", '10" x 8" reducer', "10x8 conc. reducer"]) {
      expect(loss(text, pipe).k, text).toBe(loss("reducer 10x8", pipe).k);
    }
    expect(loss("8x10 increaser", bore("10in sch40")).k).toBe(loss("increaser 8x10", bore("10in sch40")).k);
  });
});

describe("a bend of small angle", () => {
  // f_T of 8 in steel is 0.014 in the table of Technical Paper 410: K of 16 f_T at 45° 0.22, and half and a quarter of it.
  it("loses a half or a quarter of an elbow of 45°, as assumed", () => {
    const pipe = bore("8in sch40");
    expect(loss("elbow 45", pipe).k).toBeCloseTo(0.224, 2);
    expect(loss("22.5 bend", pipe).k).toBeCloseTo(0.112, 2);
    expect(loss("11.25 bend", pipe).k).toBeCloseTo(0.056, 2);
    const found = fittingNamed("22.5 bend");
    const coefficient = found.ok ? found.value.lossCoefficient(pipe) : found;
    expect(coefficient.findings).toMatchObject([{ code: "fitting-assumed", kind: "assumed" }]);
  });
});
