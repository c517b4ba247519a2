import { describe, expect, it } from "vitest";
import { call } from "../../../shared/catalogue/call.ts";
import { entryNamed } from "../../../shared/catalogue/catalogue.ts";
import type { Argument, Cell } from "../../../shared/cells/cell.ts";
import { STANDARD_ATMOSPHERE, STANDARD_GRAVITY } from "../../../src/basis/constants.ts";
import { unitOf } from "../../../src/basis/units.ts";
import { expectPublished } from "../../support/expect-published.ts";
import { publishedCases } from "../../support/published-cases.ts";

const FOOT = unitOf("ft").factor;
const INCH = unitOf("in").factor;
const PSI = unitOf("psi").factor;
const POUND_PER_CUBIC_FOOT = unitOf("lb/ft³").factor;
const GPM = unitOf("US gpm").factor;

type Inputs = Readonly<Record<string, unknown>>;

function answer(id: string, args: readonly Argument[]): Cell | readonly (readonly Cell[])[] {
  const entry = entryNamed(id);
  if (entry === undefined) throw new Error(`no ${id}`);
  const outcome = call(entry, args);
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
}

/** What a call answers in SI units: m, m³/s × 1000, kPa. */
function si(id: string, ...args: readonly Argument[]): number {
  return answer(id, [...args, "SI"]) as number;
}

function table(id: string, ...args: readonly Argument[]): readonly (readonly Cell[])[] {
  return answer(id, [...args, "SI"]) as readonly (readonly Cell[])[];
}

function measured(bore: number, roughness: number): string {
  return `ID ${bore * 1e3} mm rough ${roughness * 1e3} mm`;
}

function stated(inputs: Inputs, key: string): number {
  const amount = inputs[key] as number | { readonly value: number };
  return typeof amount === "number" ? amount : amount.value;
}

const NOTHING = [["", ""]];

/** A line that loses a stated head at 10 L/s: all of it a coefficient in a 100 mm bore. */
const LOSSY_FLOW = 10;
function losing(head: number): Argument {
  const velocity = LOSSY_FLOW / 1e3 / ((Math.PI / 4) * 0.1 ** 2);
  return [["ID 100 mm rough 0 mm", 0, `K ${head / (velocity ** 2 / (2 * STANDARD_GRAVITY))}`]];
}

interface Suction {
  /** Absolute, Pa. */
  readonly surface: number;
  readonly vapour: number;
  readonly density: number;
  /** m */
  readonly lift: number;
  readonly loss: number;
}

function described(density: number, vapour: number): string {
  return `${density} kg/m3, 1 cP, pv ${vapour / 1e3} kPa`;
}

function npsha({ surface, vapour, density, lift, loss }: Suction): number {
  const gauge = (surface - STANDARD_ATMOSPHERE) / 1e3;
  return si("NPSHA", LOSSY_FLOW, lift, losing(loss), 0, gauge, described(density, vapour), null);
}

/** The sources take 14.7 psi for the air, that of 2.3 m below the sea: ρ g of air at sea level is 1.225 × 9.80665. */
function greatestLift(loss: number, required: number, density: number, vapour: number): number {
  const altitude = -(14.7 * PSI - STANDARD_ATMOSPHERE) / (1.225 * STANDARD_GRAVITY);
  return si("MAXLIFT", LOSSY_FLOW, losing(loss), required, 0, altitude, described(density, vapour), null);
}

/** The grade line of the profile cases, which are worked from the outlet: the start head follows from its end. */
function gradeLineOf(inputs: Inputs, aboveSeaLevel: boolean): readonly (readonly Cell[])[] {
  const flow = stated(inputs, "Q");
  const pipe = measured(stated(inputs, "D"), stated(inputs, "eps"));
  const datum = aboveSeaLevel ? stated(inputs, "site_altitude") : 0;
  const outlet = stated(inputs, "z_outlet_centreline") + datum;
  const summit = stated(inputs, "z_highpoint") + datum;
  const rising = stated(inputs, "L_pump_to_highpoint");
  const falling = stated(inputs, "L_highpoint_to_outlet");
  // Lengths given are those of the pipe; the pump stands 1 m below the outlet, which changes nothing after it.
  const start = outlet - 1;
  const first = Math.sqrt(rising ** 2 - (summit - start) ** 2);
  const second = first + Math.sqrt(falling ** 2 - (outlet - summit) ** 2);
  const heading = ["chainage", aboveSeaLevel ? "elevation above sea level" : "elevation", "pipe"];
  const route = [heading, [0, start, pipe], [first, summit], [second, outlet]];
  const temperature = stated(inputs, "T");
  const at = (startHead: number) =>
    table("GRADELINE", flow, route, startHead, "water", temperature, null, null, null, null);
  // The grade falls by the same amount whatever the start head: raise it until the outlet is at atmosphere.
  const trial = at(outlet + 100);
  return at(outlet + 100 - ((trial[3]?.[2] as number) - outlet));
}

function gradeLineFigures(inputs: Inputs): Readonly<Record<string, number | boolean>> {
  const altitude = stated(inputs, "site_altitude");
  const [, , summit, outlet] = gradeLineOf(inputs, altitude !== 0) as readonly (readonly Cell[])[];
  expect(outlet?.[3]).toBeCloseTo(0, 9);
  return {
    p_gauge_highpoint: summit?.[3] as number,
    p_vapour: si("VAPORPRESSURE", "water", stated(inputs, "T")),
    column_separation: summit?.[4] === "column separation",
  };
}

/** Every case by its key: the figures our functions give for its inputs. */
const FIGURES: Readonly<Record<string, (inputs: Inputs) => Readonly<Record<string, number | boolean>>>> = {
  "6-tdh-001": (inputs) => {
    const coefficients = Object.values(inputs["K_fittings"] as Readonly<Record<string, number>>);
    const sum = coefficients.reduce((total, k) => total + k, 0) - 1;
    const pipe = measured(stated(inputs, "D") * INCH, stated(inputs, "eps") * INCH);
    const liquid = `${stated(inputs, "rho") * POUND_PER_CUBIC_FOOT} kg/m3, ${stated(inputs, "mu")} cP`;
    const line = [[pipe, stated(inputs, "L") * FOOT, `K ${sum}, 1 exit`]];
    const flow = stated(inputs, "Q") * GPM * 1e3;
    return { TDH: si("TDH", flow, stated(inputs, "static") * FOOT, NOTHING, line, 0, 0, liquid, null) / FOOT };
  },
  "6-tdh-003": (inputs) => {
    const staticHead = (stated(inputs, "discharge_level") - stated(inputs, "supply_level")) * FOOT;
    return { total_static_head: si("TDH", 0, staticHead, NOTHING, NOTHING, 0, 0, "water", null) / FOOT };
  },
  "6-tdh-004": (inputs) => {
    // The source takes g = 32.2 ft/s²; head lost goes as 1/g, so the loss alone is scaled to it.
    const bore = stated(inputs, "D") * INCH;
    const pipe = measured(bore, bore * stated(inputs, "eps_over_D"));
    const liquid = `62.4 lb/ft3, ${stated(inputs, "nu") * FOOT ** 2 * 1e6} cSt`;
    const line = [[pipe, stated(inputs, "L") * FOOT, `K ${stated(inputs, "sum_K")}`]];
    const flow = stated(inputs, "Q") * FOOT ** 3 * 1e3;
    const lost = si("TDH", flow, 0, NOTHING, line, 0, 0, liquid, null) / FOOT;
    return { TDH: stated(inputs, "static") + (lost * (STANDARD_GRAVITY / FOOT)) / stated(inputs, "g") };
  },
  "6-tdh-007": (inputs) => {
    const liquid = `${stated(inputs, "rho")} kg/m3, ${stated(inputs, "mu") * 1e3} cP`;
    const lineOf = (key: string, exit: string): Argument => {
      const { D, L, eps, K } = inputs[key] as { D: number; L: number; eps: number; K: number };
      return [[measured(D, eps), L, `K ${K}${exit}`]];
    };
    const flow = stated(inputs, "Q");
    const staticHead = stated(inputs, "z_destination") - stated(inputs, "z_source");
    const suction = lineOf("suction", "");
    const discharge = lineOf("discharge", ", 1 exit");
    const tdh = (head: number, ...lines: readonly Argument[]) => si("TDH", flow, head, ...lines, 0, 0, liquid, null);
    const exitLost = tdh(0, NOTHING, discharge) - tdh(0, NOTHING, lineOf("discharge", ""));
    return {
      TDH: tdh(staticHead, suction, discharge),
      h_suction: tdh(0, suction, NOTHING),
      h_discharge: tdh(0, NOTHING, lineOf("discharge", "")),
      exit_velocity_head: exitLost,
    };
  },
  "6-system-001": (inputs) => {
    // The flow at which 11.5 ft is lost: the loss at the expected flow is turned back into flow by its slope.
    const leg = (key: string) => inputs[key] as { readonly D: { value: number }; readonly L: { value: number } };
    const roughness = stated(inputs, "eps") * INCH;
    const beta = leg("leg2").D.value / leg("leg1").D.value;
    const line = [
      [
        measured(leg("leg1").D.value * INCH, roughness),
        leg("leg1").L.value * FOOT,
        `K ${0.5 + 60 * 0.017 + 8 * 0.017}`,
      ],
      [
        measured(leg("leg2").D.value * INCH, roughness),
        leg("leg2").L.value * FOOT,
        `K ${0.5 * (1 - beta ** 2)}, 1 exit`,
      ],
    ];
    const liquid = `${stated(inputs, "rho") * POUND_PER_CUBIC_FOOT} kg/m3, ${stated(inputs, "mu")} cP`;
    const available = stated(inputs, "head_available") * FOOT;
    const lost = (gpm: number) => si("TDH", gpm * GPM * 1e3, 0, NOTHING, line, 0, 0, liquid, null);
    let low = 100;
    let high = 200;
    for (let i = 0; i < 60; i += 1) {
      const middle = (low + high) / 2;
      if (lost(middle) < available) low = middle;
      else high = middle;
    }
    return { Q: low };
  },
  "6-system-002": (inputs) => {
    const pipes = inputs["pipes"] as readonly { readonly D_m: number; readonly L_m: number }[];
    const roughness = stated(inputs, "eps") / 1e3;
    const k = [`K ${stated(inputs, "K_entrance")}`, `K ${stated(inputs, "K_contraction_on_small")}, 1 exit`];
    const line = pipes.map(({ D_m, L_m }, i) => [measured(D_m, roughness), L_m, k[i] as string]);
    const liquid = `998.2 kg/m3, ${stated(inputs, "nu") * 1e6} cSt`;
    const lost = si("TDH", stated(inputs, "Q") * 1e3, 0, NOTHING, line, 0, 0, liquid, null);
    return { head_difference: (lost * STANDARD_GRAVITY) / stated(inputs, "g") };
  },
  "6-hgl-001": gradeLineFigures,
  "6-hgl-004": gradeLineFigures,
  "7-npsh-004": (inputs) => {
    // Every term is given as a head; any density turns them into pressures and back.
    const density = 999.7;
    const pressure = (feet: number) => feet * FOOT * density * STANDARD_GRAVITY;
    const suction = {
      surface: pressure(stated(inputs, "h_atm")),
      vapour: pressure(stated(inputs, "h_vap")),
      density,
      lift: -stated(inputs, "static") * FOOT,
      loss: (stated(inputs, "h_f") + stated(inputs, "h_inlet")) * FOOT,
    };
    return { NPSHa: npsha(suction) / FOOT };
  },
  "7-npsh-005": (inputs) => {
    const lift = -stated(inputs, "static") * FOOT;
    const line = losing(stated(inputs, "h_f") * FOOT);
    return { NPSHa: si("NPSHA", LOSSY_FLOW, lift, line, 0, 0, "water", "68 degF") / FOOT };
  },
  "7-npsh-007": (inputs) => {
    // 2.31 ft/psi for SG 1 is 144 / 2.31 lb/ft³.
    const density = 0.985 * (144 / 2.31) * POUND_PER_CUBIC_FOOT;
    const suction = {
      surface: stated(inputs, "p_surface") * PSI,
      vapour: 2.889 * PSI,
      density,
      lift: -stated(inputs, "static") * FOOT,
      loss: stated(inputs, "h_f") * FOOT,
    };
    return { NPSHa: npsha(suction) / FOOT };
  },
  "7-npsh-008": (inputs) => {
    const suction = {
      surface: stated(inputs, "p_tank_gauge") * PSI + stated(inputs, "p_atm"),
      vapour: stated(inputs, "p_v") * PSI,
      density: stated(inputs, "rho") * POUND_PER_CUBIC_FOOT,
      lift: -stated(inputs, "static") * FOOT,
      loss: stated(inputs, "h_f") * FOOT,
    };
    return { NPSHa: npsha(suction) / FOOT };
  },
  "7-npsh-009": (inputs) => {
    // f = 0.02 is given, so friction enters as a coefficient f L/D; g = 9.81 from γ.
    const bore = stated(inputs, "D");
    const k = (0.02 * stated(inputs, "L")) / bore + 0.5 + 2 * 30 * 0.017;
    const velocity = stated(inputs, "Q") / ((Math.PI / 4) * bore ** 2);
    const suction = {
      surface: (stated(inputs, "p_atm") + stated(inputs, "p_source_gauge")) * 1e3,
      vapour: stated(inputs, "p_v") * 1e3,
      density: (stated(inputs, "gamma") * 1e3) / STANDARD_GRAVITY,
      lift: -stated(inputs, "static"),
      loss: (k * velocity ** 2) / (2 * 9.81),
    };
    return { NPSHa: npsha(suction) };
  },
  "7-npsh-010": (inputs) => {
    const limit = (part: string) => {
      const { p_v_psia, gamma } = inputs[part] as { readonly p_v_psia: number; readonly gamma: number };
      const loss = stated(inputs, "h_f") * FOOT;
      const required = stated(inputs, "NPSHr") * FOOT;
      return greatestLift(loss, required, gamma * POUND_PER_CUBIC_FOOT, p_v_psia * PSI) / FOOT;
    };
    return { z_i_60F: limit("a"), z_i_200F: limit("b") };
  },
  "7-npsh-011": (inputs) => {
    const velocity = stated(inputs, "Q") / ((Math.PI / 4) * (stated(inputs, "D") / 12) ** 2);
    const lost = (stated(inputs, "K_suction_total") * velocity ** 2) / (2 * stated(inputs, "g"));
    const density = stated(inputs, "gamma") * POUND_PER_CUBIC_FOOT;
    const required = stated(inputs, "NPSHr") * FOOT;
    return { max_lift: greatestLift(lost * FOOT, required, density, stated(inputs, "p_v") * PSI) / FOOT };
  },
  "7-npsh-013": waterAtAltitude,
  "7-npsh-017": waterAtAltitude,
};

function waterAtAltitude(inputs: Inputs): Readonly<Record<string, number>> {
  const lift = -stated(inputs, "static");
  const surface = stated(inputs, "p_source_gauge") / 1e3;
  const line = losing(stated(inputs, "h_f"));
  const temperature = stated(inputs, "T");
  return { NPSHa: si("NPSHA", LOSSY_FLOW, lift, line, stated(inputs, "altitude"), surface, "water", temperature) };
}

/** Figures of the files that belong to other functions, or to none, and why. */
const ELSEWHERE: Readonly<Record<string, string>> = {
  "6-tdh-001 P_shaft": "shaft power, from this total head: SHAFTPOWER",
  "6-tdh-003 static_suction_lift": "a difference of two levels, a native formula on the sheet",
  "6-tdh-003 static_discharge_head": "a difference of two levels, a native formula on the sheet",
  "6-tdh-004 P_hydraulic": "hydraulic power, from this total head: SHAFTPOWER",
  "6-hgl-001 p_abs_highpoint": "GRADELINE answers in gauge pressure; its remark judges the absolute",
  "6-hgl-004 p_abs_highpoint": "GRADELINE answers in gauge pressure; its remark judges the absolute",
  "6-open-channel-002": "part-full gravity flow: no cell function works it out",
  "6-open-channel-003": "part-full gravity flow: no cell function works it out",
};

const CASES = ["6-tdh", "6-system", "6-hgl", "6-open-channel", "7-npsh"].flatMap((topic) => publishedCases(topic));

const checks = CASES.flatMap((one) => Object.keys(one.expected).map((name) => ({ one, id: one.id, name })));
const here = checks.filter(({ id, name }) => ELSEWHERE[id] === undefined && ELSEWHERE[`${id} ${name}`] === undefined);

describe("published system and suction cases", () => {
  it("leaves no case and no figure aside without a reason", () => {
    expect(CASES).toHaveLength(19);
    expect(here.length + 12).toBe(checks.length);
    expect(Object.keys(FIGURES).sort()).toEqual([...new Set(here.map(({ id }) => id))].sort());
  });

  it.each(here)("$id $name: $one.source", ({ one, id, name }) => {
    const figure = FIGURES[id]?.(one.inputs)[name];
    if (typeof figure === "number") expectPublished(figure, name, one);
    else expect(figure).toBe(one.expected[name]?.value);
  });
});
