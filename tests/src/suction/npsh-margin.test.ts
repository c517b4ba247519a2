import { describe, expect, it } from "vitest";
import { npshMargin } from "../../../src/suction/npsh-margin.ts";
import { NPSH_MARGINS } from "../../../src/tables/npsh-margins.ts";
import { SERVICES, type ServiceName } from "../../../src/tables/services.ts";

const foot = 0.3048;

function margin(npshRequired: number, service?: ServiceName, suctionSpecificSpeed?: number): number {
  const read = npshMargin({
    npshRequired,
    ...(service !== undefined && { service }),
    ...(suctionSpecificSpeed !== undefined && { suctionSpecificSpeed }),
  });
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  return read.value;
}

// ANSI/HI 9.6.1 (2012) as two public summaries print it; dewatering, slurry and lifts are common practice.
describe("the NPSH margin kept where nobody states one", () => {
  it.each([
    // Hand calculation: 0.3 · 13.87 ft is 4.161 ft, more than 3.28 ft; 18.03 less it is 13.87.
    { service: "dewatering", required: 13.87 * foot, nss: undefined, kept: 4.161 * foot },
    { service: "bypass", required: 2, nss: undefined, kept: 1 },
    { service: "slurry", required: 5, nss: undefined, kept: 1.5 },
    { service: undefined, required: 4.39, nss: undefined, kept: 1.317 },
    // 38.14/1.1 is 34.67 ft, 38.14/1.2 is 31.78 ft.
    { service: "water and wastewater", required: 34.67 * foot, nss: 7400 / 51.645, kept: 3.467 * foot },
    { service: "water and wastewater", required: 31.78 * foot, nss: 7600 / 51.645, kept: 6.356 * foot },
    { service: "water and wastewater", required: 3, nss: 100, kept: 0.6 },
    { service: "water and wastewater", required: 3, nss: undefined, kept: 1 },
    { service: "pulp and paper", required: 10, nss: 144, kept: 1 },
    { service: "chemical", required: 10, nss: 212, kept: 1 },
    { service: "chemical", required: 10, nss: 214, kept: 2 },
    { service: "oil and gas", required: 20, nss: 100, kept: 2 },
    { service: "oil and gas", required: 2, nss: 300, kept: 1 },
    { service: "building services", required: 8, nss: 144, kept: 0 },
    { service: "building services", required: 8, nss: 146, kept: 0.8 },
    { service: "building services", required: 2, nss: 146, kept: 0.6 },
  ] as const)("$service, NPSHR $required m, n_ss $nss: $kept m", ({ service, required, nss, kept }) => {
    expect(margin(required, service, nss)).toBeCloseTo(kept, 9);
  });

  it("has a row for every service there is, each once", () => {
    expect(NPSH_MARGINS.flatMap(({ services }) => services).toSorted()).toEqual(SERVICES.toSorted());
  });

  it("never grows smaller with NPSH required, and is refused below 0", () => {
    for (const service of SERVICES) {
      const margins = [0, 1, 2, 4, 8, 16].map((required) => margin(required, service));
      expect(margins).toEqual(margins.toSorted((a, b) => a - b));
    }
    expect(npshMargin({ npshRequired: -0.1 }).ok).toBe(false);
    expect(npshMargin({ npshRequired: 1, suctionSpecificSpeed: 0 }).ok).toBe(false);
  });
});
