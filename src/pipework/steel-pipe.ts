import { unitOf } from "../basis/units.ts";
import { STAINLESS_PIPE_B36_19M } from "../tables/stainless-pipe-b36-19m.ts";
import { STEEL_PIPE_B36_10M } from "../tables/steel-pipe-b36-10m.ts";
import { EN_10220_WALLS, STEEL_PIPE_EN_10220 } from "../tables/steel-pipe-en-10220.ts";
import { nominalInches } from "./nominal-size.ts";
import { inchSize, inDecimals, type PipeFamily, type PipeSize, pipeFamily } from "./pipe-family.ts";

const STEEL_CONDITIONS = {
  used: { surface: "used steel" },
  old: { surface: "old steel" },
  galvanised: { surface: "galvanised steel" },
  stainless: { surface: "stainless steel", make: { material: "stainless steel" } },
} as const;

/** Steel pipe, one family a schedule or weight class. Source: ASME B36.10M, dimensions. */
export function scheduleFamilies(): readonly PipeFamily[] {
  const order = ["5", "10", "20", "30", "40", "60", "80", "100", "120", "140", "160", "STD", "XS", "XXS"];
  return order.map((schedule) =>
    pipeFamily({
      family: /^\d/.test(schedule) ? `sch${schedule}` : schedule,
      words: [/^\d/.test(schedule) ? `sch${schedule}` : schedule.toLowerCase()],
      mayAlsoSay: ["steel", "carbon"],
      standard: { source: "asme-b36.10m", at: `dimensions, ${/^\d/.test(schedule) ? "schedule " : ""}${schedule}` },
      surface: "steel",
      make: { material: "steel", rule: "ASME B31.3" },
      conditions: STEEL_CONDITIONS,
      sizes: STEEL_PIPE_B36_10M.filter(([, , , schedules]) => schedules.split(" ").includes(schedule)).map(
        ([size, outsideDiameter, wall]) => inchSize({ size, outsideDiameter, wall }, "with DN"),
      ),
    }),
  );
}

/** Stainless steel pipe, one family a schedule. Source: ASME B36.19M, dimensions. */
export function stainlessFamilies(): readonly PipeFamily[] {
  return ["5S", "10S", "40S", "80S"].map((schedule, column) =>
    pipeFamily({
      family: `sch${schedule}`,
      words: [`sch${schedule.toLowerCase()}`],
      mayAlsoSay: ["steel", "stainless"],
      standard: { source: "asme-b36.19m", at: `dimensions, schedule ${schedule}` },
      surface: "stainless steel",
      make: { material: "stainless steel", rule: "ASME B31.3" },
      sizes: STAINLESS_PIPE_B36_19M.flatMap(([size, outsideDiameter, ...walls]) => {
        const wall = walls[column] ?? null;
        return wall === null ? [] : [inchSize({ size, outsideDiameter, wall }, "with DN")];
      }),
    }),
  );
}

const millimetre = unitOf("mm").factor;

const METRIC_STEEL = {
  family: "EN10220",
  standard: { source: "en-10220", at: "outside diameters of series 1, preferred walls", unverified: true },
  surface: "steel",
  make: { material: "steel", rule: "EN 13480-3" },
  mayAlsoSay: ["steel", "carbon", "tube"],
  conditions: STEEL_CONDITIONS,
} as const;

function metricSize(dn: number, outsideDiameter: number, wall: number): PipeSize {
  const inches = nominalInches(dn);
  return {
    size: `DN${dn}`,
    variant: `${outsideDiameter}x${wall}`,
    bore: inDecimals(outsideDiameter - 2 * wall) * millimetre,
    outsideDiameter: outsideDiameter * millimetre,
    wall: wall * millimetre,
    ...(inches === undefined ? {} : { nominalInches: inches }),
  };
}

/** Metric steel pipe: every preferred wall of each size. Source: EN 10220, outside diameters of series 1. */
export function metricSteelFamily(): PipeFamily {
  return pipeFamily({
    ...METRIC_STEEL,
    words: ["en10220"],
    sizes: STEEL_PIPE_EN_10220.flatMap(([dn, outsideDiameter, thinnest, thickest]) =>
      EN_10220_WALLS.filter((wall) => wall >= thinnest && wall <= thickest).map((wall) =>
        metricSize(dn, outsideDiameter, wall),
      ),
    ),
  });
}

/** Metric steel pipe with the one usual wall of each size: to choose a size from, not to name a pipe by. */
export function usualMetricSteelFamilies(): readonly PipeFamily[] {
  return (["seamless", "welded"] as const).map((make) =>
    pipeFamily({
      ...METRIC_STEEL,
      words: ["en10220", make],
      sizes: STEEL_PIPE_EN_10220.flatMap(([dn, outsideDiameter, , , seamless, welded]) => {
        const wall = make === "seamless" ? seamless : welded;
        return wall === null ? [] : [metricSize(dn, outsideDiameter, wall)];
      }),
    }),
  );
}
