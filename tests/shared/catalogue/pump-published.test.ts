import { describe, expect, it } from "vitest";
import type { Argument, Cell } from "../../../shared/cells/cell.ts";
import { acceptanceBands, acceptanceGradeNamed, smallPumpBands } from "../../../src/pump/acceptance.ts";
import { curveCrossing } from "../../../src/pump/curve-crossing.ts";
import type { HeadCurve } from "../../../src/pump/head-curve.ts";
import { viscousCorrection } from "../../../src/pump/viscous-correction.ts";
import { cell, numberIn, refusal } from "../../support/cells.ts";
import { expectAsPrinted, expectPublished } from "../../support/expect-published.ts";
import { numberOf, type PublishedCase, publishedCases, relativeError, textOf } from "../../support/published-cases.ts";

// Sources beside each case in tests/published/hydraulics-8-*.csv and hydraulics-11-power.csv. What is left out:
// - the Steffen interpolant (H_steffen, eta_steffen): the product draws PCHIP alone;
// - 8-affinity-005, P2: worked with the trade's 3960, held here to the 0.04 % by which that differs;
// - 8-viscosity-006, P: worked with the 367 of the standard, held here to the 0.21 % by which that differs;
// - 8-viscosity-009 to 012: corrected by the chart withdrawn in 2004, whose factors are given; SHAFTPOWER is held to their
//   power, as it is printed;
// - tau_P of the acceptance grades, which the table has and no band uses.

type Rows = readonly (readonly Cell[])[];

/** The list of numbers of an input such as "Q". */
function listOf({ inputs }: PublishedCase, name: string): readonly number[] {
  return inputs[name] as unknown as readonly number[];
}

function caseOf(topic: string, id: string): PublishedCase {
  const found = publishedCases(topic).find((one) => one.id === id);
  if (found === undefined) throw new Error(`there is no case ${id}`);
  return found;
}

function handled(topic: string, ids: readonly string[]): void {
  expect(publishedCases(topic).map(({ id }) => id)).toEqual(ids);
}

describe("8-curve-fit", () => {
  it.each(publishedCases("8-curve-fit"))("$id", (one) => {
    const flows = listOf(one, "Q");
    const at = numberOf(one, "Q_eval");
    if ("H" in one.inputs) {
      const curve = [["flow", "head"], ...flows.map((flow, i) => [flow, listOf(one, "H")[i] as number])];
      expectPublished(numberIn("PUMPHEAD", curve, at), "H_pchip", one);
    } else {
      // Any falling head will do for the efficiency.
      const rows = flows.map((flow, i) => [flow, 1000 - flow, listOf(one, "eta")[i] as number]);
      const curve = [["flow", "head", "efficiency"], ...rows];
      expectPublished(numberIn("PUMPEFFICIENCY", curve, at), "eta_pchip", one);
    }
  });
});

describe("8-affinity", () => {
  it("leaves no case out", () =>
    handled("8-affinity", ["8-affinity-003", "8-affinity-004", "8-affinity-005", "8-affinity-007"]));

  it.each(["8-affinity-003", "8-affinity-004"])("%s", (id) => {
    const one = caseOf("8-affinity", id);
    const [flow, head, power] = [numberOf(one, "Q1"), numberOf(one, "H1"), numberOf(one, "P1")];
    // One point of a curve whose others are made up.
    const curve = [
      ["flow", "head", "power"],
      [0, 1.3 * head, 0.6 * power],
      [flow, head, power],
      [1.3 * flow, 0.7 * head, 1.1 * power],
    ];
    const ratio = numberOf(one, "n2") / numberOf(one, "n1");
    const there = (one.expected["Q2"] as { value: number }).value;
    expectPublished(flow * ratio, "Q2", one);
    expectPublished(numberIn("PUMPHEAD", curve, there, ratio), "H2", one);
    expectPublished(numberIn("PUMPPOWER", curve, there, ratio), "P2", one);
    expect(numberIn("SPEEDRATIO", curve, there, (one.expected["H2"] as { value: number }).value)).toBeCloseTo(ratio, 9);
  });

  it("8-affinity-005", () => {
    const one = caseOf("8-affinity", "8-affinity-005");
    const flow = numberOf(one, "Q1");
    const speed = numberOf(one, "n1");
    const head = ((speed * Math.sqrt(flow)) / numberOf(one, "Ns_US")) ** (4 / 3);
    expect(relativeError(numberIn("SPECIFICSPEED", speed, flow, head), 2000)).toBeLessThanOrEqual(1e-12);
    expectPublished(head, "H1", one);
    const curve = [
      ["flow", "head", "efficiency"],
      [0, 1.3 * head, 0],
      [flow, head, numberOf(one, "efficiency")],
      [1.3 * flow, 0.7 * head, 0.7],
    ];
    const ratio = numberOf(one, "n2") / speed;
    const there = (one.expected["Q2"] as { value: number }).value;
    expectPublished(numberIn("PUMPHEAD", curve, there, ratio), "H2", one);
    const power = numberIn("PUMPPOWER", curve, there, ratio);
    expect(relativeError(power, (one.expected["P2"] as { value: number }).value)).toBeLessThanOrEqual(4e-4);
  });

  it("8-affinity-007", () => {
    const one = caseOf("8-affinity", "8-affinity-007");
    const [flow, head] = [numberOf(one, "Q1"), numberOf(one, "H1")];
    const curve = [
      [0, 1.3 * head],
      [flow, head],
      [1.3 * flow, 0.7 * head],
    ];
    const ratio = numberOf(one, "D2") / numberOf(one, "D1");
    const there = (one.expected["Q2"] as { value: number }).value;
    expectPublished(numberIn("PUMPHEAD", curve, there, null, ratio), "H2", one);
    expect(numberIn("TRIMRATIO", curve, there, (one.expected["H2"] as { value: number }).value)).toBeCloseTo(ratio, 12);
  });
});

describe("8-specific-speed", () => {
  it.each(publishedCases("8-specific-speed"))("$id", (one) => {
    const speed = textOf(one, "n");
    if ("n_s" in one.expected) {
      expectPublished(numberIn("SPECIFICSPEED", speed, textOf(one, "Q"), textOf(one, "H"), "SI"), "n_s", one);
      return;
    }
    if ("Ns_US" in one.expected) {
      expectPublished(numberIn("SPECIFICSPEED", speed, textOf(one, "Q"), textOf(one, "H")), "Ns_US", one);
      expectPublished(numberIn("SUCTIONSPECIFICSPEED", speed, textOf(one, "Q"), textOf(one, "NPSHr")), "Nss_US", one);
      return;
    }
    const head = `${numberOf(one, "H_BEP_total") / numberOf(one, "stages")} ft`;
    const perEye = numberOf(one, "Q_BEP_total") / ((one.inputs["double_suction"] as unknown as boolean) ? 2 : 1);
    expectPublished(numberIn("SPECIFICSPEED", speed, textOf(one, "Q_BEP_total"), head), "Ns_total_flow_HI", one);
    expectPublished(numberIn("SPECIFICSPEED", speed, `${perEye} gpm`, head), "Ns_per_eye", one);
    const si = numberIn("SPECIFICSPEED", speed, textOf(one, "Q_BEP_total"), head, "METRIC");
    expectPublished(si, "n_s_SI_total", one);
    // ω_s = (2π/60) n √Q / (g H)^0.75
    expectPublished((si * 2 * Math.PI) / 60 / 9.80665 ** 0.75, "omega_s_dimensionless", one);
  });
});

describe("8-operating-point", () => {
  it("leaves no case out", () => {
    const ids = ["001", "002", "005", "006", "011", "012", "013"].map((end) => `8-operating-point-${end}`);
    handled("8-operating-point", ids);
  });

  interface PipeSystem {
    readonly Hs_ft: number;
    readonly D_in: number;
    readonly L_ft: number;
    readonly eps_ft: number;
    readonly K: number;
    readonly nu_m2s: number;
  }

  /** The system of a case as SYSTEMCURVE spills it; the suction line is given next to no length. */
  function spilledSystem({ inputs }: PublishedCase): Rows {
    const { Hs_ft, D_in, L_ft, eps_ft, K, nu_m2s } = inputs["system"] as unknown as PipeSystem;
    const pipe = `ID ${D_in} in rough ${eps_ft * 12} in`;
    const liquid = `998.2 kg/m3, ${nu_m2s * 1e6} cSt`;
    const lines: Argument[] = [[[pipe, "1e-9 ft", ""]], [[pipe, L_ft, `K ${K}`]]];
    return cell("SYSTEMCURVE", Hs_ft, ...lines, 1200, 200, null, liquid) as Rows;
  }

  it.each([1, 2, 5, 6].map((n) => caseOf("8-operating-point", `8-operating-point-00${n}`)))("$id", (one) => {
    const { Q_gpm, H_ft } = one.inputs["curve"] as unknown as { Q_gpm: readonly number[]; H_ft: readonly number[] };
    const curve = Q_gpm.map((flow, i) => [flow, H_ft[i] as number]);
    const pumps = (one.inputs["pumps_in_parallel"] ?? null) as number | null;
    const speed = (one.inputs["speed_ratio"] ?? null) as number | null;
    const [, values] = cell("OPERATINGPOINT", curve, spilledSystem(one), speed, null, pumps) as Rows;
    expectPublished(values?.[0] as number, pumps === null ? "Q" : "Q_total", one);
    expectPublished(values?.[1] as number, "H", one);
  });

  const tabled = (head: (flow: number) => number, most: number, steps: number): Rows =>
    Array.from({ length: steps + 1 }, (_, i) => [(most * i) / steps, head((most * i) / steps)]);

  it("8-operating-point-011", () => {
    const pump = tabled((q) => 30 + 0.2 * q - 0.004 * q * q, 90, 90);
    const system = tabled((q) => 34 + 0.0005 * q * q, 90, 10);
    expect(refusal("OPERATINGPOINT", pump, system, null, null, null, null, null, null, null, "SI")).toMatch(
      /cannot reach the system head/,
    );
    expect(caseOf("8-operating-point", "8-operating-point-011").expected["intersections"]?.value).toBe(0);
  });

  it.each([
    { id: "8-operating-point-012", pumps: 1 },
    { id: "8-operating-point-013", pumps: 2 },
  ])("$id: the closed form to double precision, and through a table of 100 rows", ({ id, pumps }) => {
    const one = caseOf("8-operating-point", id);
    const pump: HeadCurve = { leastFlow: 0, mostFlow: 70, headAt: (q) => pumps * (50 - 0.01 * q * q), knots: [0, 70] };
    const system: HeadCurve = { leastFlow: 0, mostFlow: 70, headAt: (q) => 20 + 0.005 * q * q, knots: [0, 70] };
    const read = curveCrossing({ pump, system });
    if (!read.ok) throw new Error("no crossing");
    expectPublished(read.value.flow, "Q", one);
    expectPublished(read.value.head, "H", one);

    const curve = tabled((q) => 50 - 0.01 * q * q, 70, 100);
    const asked = tabled((q) => 20 + 0.005 * q * q, 70, 3);
    const [, values] = cell(
      "OPERATINGPOINT",
      curve,
      asked,
      null,
      null,
      pumps,
      "series",
      null,
      null,
      null,
      "SI",
    ) as Rows;
    expect(relativeError(values?.[0] as number, read.value.flow)).toBeLessThanOrEqual(1e-7);
  });
});

describe("8-acceptance", () => {
  const guarantee = { flow: 1, head: 1, efficiency: 1 };
  it("leaves no case out", () => {
    handled(
      "8-acceptance",
      ["003", "004", "006", "007", "009", "010"].map((end) => `8-acceptance-${end}`),
    );
  });

  it.each(["003", "004", "006"])("8-acceptance-%s", (end) => {
    const one = caseOf("8-acceptance", `8-acceptance-${end}`);
    const grade = acceptanceGradeNamed(one.inputs["grade"] as string);
    const bands = grade.ok ? acceptanceBands(grade.value, guarantee) : grade;
    if (!grade.ok || !bands.ok) throw new Error("no bands");
    const { flow, head, leastEfficiency = Number.NaN } = bands.value;
    const percent = (limit: number): number => Math.round((limit - 1) * 1e10) / 1e8;
    expectPublished(percent(flow.most), "tau_Q_plus", one);
    expectPublished(percent(flow.least), "tau_Q_minus", one);
    expectPublished(percent(head.most), "tau_H_plus", one);
    expectPublished(percent(head.least), "tau_H_minus", one);
    expectPublished(percent(leastEfficiency), "tau_eta_minus", one);
    expectPublished(grade.value.power as number, "tau_P_plus", one);
  });

  it.each(["007", "009"])("8-acceptance-%s", (end) => {
    const one = caseOf("8-acceptance", `8-acceptance-${end}`);
    const bands = smallPumpBands(guarantee, 1000 * numberOf(one, "P_shaft_guaranteed"));
    if (!bands.ok) throw new Error("no bands");
    const { flow, head, leastEfficiency = Number.NaN } = bands.value;
    expect([flow.least, flow.most, head.least, head.most]).toEqual([0.9, 1.1, 0.92, 1.08]);
    expectPublished(100 * (leastEfficiency - 1), "tau_eta", one);
  });

  it("8-acceptance-010", () => {
    const one = caseOf("8-acceptance", "8-acceptance-010");
    for (const number of [1, 2]) {
      const grade = acceptanceGradeNamed(`1999 class ${number}`);
      const { value } = one.expected[`class${number}`] as unknown as { value: { Q: number; H: number; eta: number } };
      if (!grade.ok) throw new Error("no class");
      const { flow, head, efficiency } = grade.value;
      expect({ Q: flow[1], H: head[1], eta: efficiency }).toEqual(value);
    }
  });
});

describe("8-viscosity", () => {
  it("leaves no case out", () => {
    handled(
      "8-viscosity",
      ["006", "009", "010", "011", "012"].map((end) => `8-viscosity-${end}`),
    );
  });

  it("8-viscosity-006", () => {
    const one = caseOf("8-viscosity", "8-viscosity-006");
    const [flow, head, efficiency] = [numberOf(one, "Q_BEP_W"), numberOf(one, "H_BEP_W"), numberOf(one, "eta_BEP_W")];
    const curve = [
      ["flow", "head", "efficiency"],
      [0, 1.3 * head, 0],
      [flow, head, efficiency],
      [1.3 * flow, 0.7 * head, 0.9 * efficiency],
    ];
    const nu = textOf(one, "nu");
    const table = cell(
      "VISCOUSCURVE",
      curve,
      numberOf(one, "N"),
      nu,
      numberOf(one, "SG"),
      null,
      null,
      null,
      null,
      "METRIC",
    ) as Rows;
    const [viscousFlow, viscousHead, viscousEfficiency, power] = table[2] as readonly number[];
    expectPublished((viscousFlow as number) / flow, "CQ", one);
    expectPublished((viscousHead as number) / head, "CQ", one);
    expectPublished((viscousEfficiency as number) / efficiency, "C_eta", one);
    expect(relativeError(power as number, (one.expected["P_vis_BEP"] as { value: number }).value)).toBeLessThan(2.1e-3);
    const read = viscousCorrection({
      bestFlow: flow / 3600,
      bestHead: head,
      speed: numberOf(one, "N") / 60,
      kinematicViscosity: numberOf(one, "nu") * 1e-6,
    });
    expectPublished(read.ok ? read.value.parameter : Number.NaN, "B", one);
  });

  it.each(["009", "010", "011", "012"])("8-viscosity-%s, power with the factors given", (end) => {
    const one = caseOf("8-viscosity", `8-viscosity-${end}`);
    const flow = numberOf(one, "Q_W") * numberOf(one, "C_Q");
    const head = numberOf(one, "H_W") * numberOf(one, "C_H");
    const efficiency = numberOf(one, "eta_W") * numberOf(one, "C_eta");
    const power = numberIn("SHAFTPOWER", flow, head, efficiency, numberOf(one, "SG"));
    const { value, published } = one.expected["P_vis"] as { value: number; published: number };
    // The exact value of the case is worked with 3960, 0.04 % from the exact factor.
    expect(relativeError(power, value)).toBeLessThanOrEqual(4e-4);
    expect(relativeError(power, published)).toBeLessThanOrEqual(3e-3);
  });
});

describe("11-power", () => {
  it("leaves no case out", () => handled("11-power", ["11-power-001", "11-power-003", "11-power-005"]));

  it("11-power-001: the flow at which 30 hp give 100 ft", () => {
    const one = caseOf("11-power", "11-power-001");
    const perGallon = numberIn("SHAFTPOWER", 1, textOf(one, "H"), 1);
    expectPublished(numberOf(one, "P_hydraulic") / perGallon, "Q", one);
  });

  it.each(["11-power-003", "11-power-005"])("%s", (id) => {
    const one = caseOf("11-power", id);
    const of = (efficiency: number, units: string): number =>
      numberIn("SHAFTPOWER", textOf(one, "Q"), textOf(one, "H"), efficiency, numberOf(one, "rho") / 998.2, units);
    expectPublished(of(1, "SI"), "P_hydraulic", one);
    expectPublished(of(numberOf(one, "eta_pump"), "SI"), "P_shaft", one);
    expectPublished(of(numberOf(one, "eta_pump"), "US"), "P_shaft_hp", one);
    expectPublished(of(numberOf(one, "eta_pump") * numberOf(one, "eta_motor"), "METRIC"), "P_electric", one);
    expectAsPrinted(of(1, "SI"), "P_hydraulic", one);
  });
});
