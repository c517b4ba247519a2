import { STANDARD_ATMOSPHERE } from "../../../src/basis/constants.ts";
import { UNIT_SETS } from "../../../src/basis/quantities.ts";
import { amount, type Finding, type Result, succeed } from "../../../src/basis/result.ts";
import { amountOf } from "../../cells/amount-cell.ts";
import { type OptionalParameter, quantity } from "../parameter.ts";

/** A pressure on a liquid's surface, Pa: gauge, or absolute where a text said so. */
export type SurfacePressure = { readonly gauge: number } | { readonly absolute: number };

/** Share of an atmosphere within which a gauge pressure was meant to be that of the air; house choice. */
const NEAR = 0.03;

const open: SurfacePressure = { gauge: 0 };
const facts = quantity("gaugePressure", {
  about: "Gauge pressure on the liquid at the source; negative for a vacuum",
  example: '5, "0.4 bar", or absolute: "12 psia", "0.83 bar(a)"',
  range: "above absolute zero",
  whenLeftOut: { value: 0, shown: "0, open to the air" },
});

/** The pressure on the source's surface: gauge, or absolute as a text. One atmosphere of gauge pressure is doubted. */
export const surfacePressure: OptionalParameter<SurfacePressure> = {
  ...facts,
  readsNumbers: true,
  fallback: open,
  read: (cell, { name, units, unitSet }): Result<SurfacePressure> => {
    const gauge = amountOf(cell, "gaugePressure", units.gaugePressure, name);
    if (gauge.ok) return succeed({ gauge: gauge.value }, [...gauge.findings, ...doubted(gauge.value, name)]);
    if (typeof cell !== "string") return gauge;
    const absolute = amountOf(cell, "absolutePressure", UNIT_SETS[unitSet].absolutePressure, name);
    return absolute.ok ? succeed({ absolute: absolute.value }, absolute.findings) : gauge;
  },
};

/** A gauge pressure of one atmosphere, which was meant to be that of the air. */
export function doubted(gauge: number, subject: string): readonly Finding[] {
  if (Math.abs(gauge - STANDARD_ATMOSPHERE) > NEAR * STANDARD_ATMOSPHERE) return [];
  const found = amount("gaugePressure", gauge);
  return [{ code: "surface-pressure-atmospheric", kind: "check", subject, found }];
}

/** Above the air around it, Pa. */
export function gaugeOf(pressure: SurfacePressure, atmosphere: number): number {
  return "gauge" in pressure ? pressure.gauge : pressure.absolute - atmosphere;
}
