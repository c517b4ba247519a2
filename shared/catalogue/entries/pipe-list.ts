import { citationText, NOT_VERIFIED } from "../../../src/basis/citation.ts";
import { andThen, succeed } from "../../../src/basis/result.ts";
import type { Pipe } from "../../../src/pipework/pipe.ts";
import { allPipes, pipesOf } from "../../../src/pipework/pipe-name.ts";
import { defineEntry } from "../entry.ts";
import { text } from "../parameter.ts";
import { pipe } from "../parameters/pipe.ts";

export const BORE = defineEntry({
  id: "BORE",
  group: "Pipe and friction",
  summary: "Inside diameter of a pipe or hose, by its name",
  method:
    "The name is a nominal size and a family: 6in sch40, DN150 sch40, 10in HDPE DR17, 6in ductile iron cl350, 4in copper L, DN150 EN10220 168.3x4.5, 6in layflat. A condition may follow (used, old, galvanised, stainless, unlined, double lined), then a roughness (rough 0.15 mm); neither changes the bore of any but ductile-iron pipe. Bore = outside diameter − 2 × wall. Steel and copper: the nominal wall. PVC and HDPE: the mean wall, 1.06 times the minimum wall, so HDPE is OD − 2.12 OD/DR. Ductile iron: nominal wall and the cement-mortar lining of AWWA C104, unless unlined. Quick-connect pipe: 6in quick-connect galvanised (108mm by its outside diameter), 6in quick-connect aluminium, walls of common practice. Concrete: 24in concrete, wall A or C where named. Hose: the nominal bore is the bore; the growth of lay-flat hose under pressure is not counted. Measured pipes are written ID 154.1 mm rough 0.045 mm or OD 168.3 mm wall 4.5 mm steel.",
  cites: [
    { source: "asme-b36.10m", at: "dimensions" },
    { source: "asme-b36.19m", at: "dimensions" },
    { source: "astm-d1785", at: "dimensions" },
    { source: "astm-f714", at: "dimensions" },
    { source: "awwa-c151", at: "dimensions" },
    { source: "astm-b88", at: "dimensions" },
    { source: "en-10220", at: "dimensions", unverified: true },
    { source: "astm-c76", at: "designated diameters and walls", unverified: true },
    { source: "practice", at: "quick-connect pipe and hose" },
    { source: "pump-data-book", at: "dimensions of AWWA C151-17, ASTM B88 and ASTM D1785, compared with these" },
  ],
  parameters: { pipe: pipe("Pipe or hose") },
  answer: { kind: "quantity", name: "bore", quantity: "size" },
  examples: [
    {
      args: ["6in sch40"],
      answer: 6.065,
      within: 1e-9,
      source: "ASME B36.10M, NPS 6 schedule 40: 6.625 − 2 × 0.280 in",
    },
    {
      args: ["DN150 sch40", "SI"],
      answer: 154.1,
      within: 0.06,
      source: "ASME B36.10M, millimetre columns, DN 150 schedule 40: 168.3 − 2 × 7.11 mm",
    },
    {
      args: ["12in HDPE DR17"],
      answer: 11.16,
      within: 1e-9,
      source: "Average inside diameter in the industry's table for 12 in IPS DR 17: 11.160 in",
    },
    {
      args: ["4in copper L"],
      answer: 3.905,
      within: 1e-9,
      source: "ASTM B88, standard size 4, type L: 4.125 − 2 × 0.110 in",
    },
  ],
  run: (values) => succeed(values.pipe.bore),
});

export const PIPES = defineEntry({
  id: "PIPES",
  group: "Lists",
  summary: "Every pipe and hose the add-in knows, or those of one family, with dimensions, roughness and source",
  method: `A family is what follows the size in a pipe's name: sch40, STD, sch10S, PVC sch80, HDPE DR17, HDPE DIPS DR17, ductile iron cl350, copper L, EN10220, quick-connect galvanised, quick-connect aluminium, concrete, layflat, TPU layflat, suction hose, rubber suction hose. EN10220 seamless and EN10220 welded list the usual wall of each size alone. Unit set US lists inch sizes; SI and METRIC list DN and millimetre sizes where a family has them. The wall of PVC and HDPE is the mean wall; that of ductile iron is without its lining. Cells stay empty where no standard fixes the figure. The dimensions of EN 10220 pipe, of ductile iron above 54 in by special class and of cement linings are ${NOT_VERIFIED}: check them against a copy before they decide anything.`,
  cites: [
    { source: "asme-b36.10m", at: "dimensions" },
    { source: "moody-1944", at: "roughness of commercial pipe" },
    { source: "idelchik", at: "roughness tables" },
  ],
  parameters: {
    family: text<string | null>(
      {
        about: "Family of pipe, as PIPES lists it",
        example: '"sch40"',
        whenLeftOut: { value: null, shown: "every family" },
      },
      (given) => succeed(given),
    ),
  },
  answer: {
    kind: "table",
    name: "pipes",
    columns: {
      name: { name: "name" },
      outsideDiameter: { name: "outside diameter", quantity: "size" },
      wall: { name: "wall", quantity: "size" },
      bore: { name: "inside diameter", quantity: "size" },
      roughness: { name: "roughness", quantity: "size" },
      standard: { name: "standard", isTitle: true },
      roughnessSource: { name: "source of roughness", isTitle: true },
    },
  },
  examples: [
    {
      args: ["STD"],
      part: [18, 3],
      answer: 12,
      within: 1e-9,
      source: "ASME B36.10M, NPS 12 STD, the eighteenth size of that class from NPS 1/8: 12.750 − 2 × 0.375 in",
    },
    { args: ["copper K"], part: [1, 0], answer: "1/4in copper K", source: "ASTM B88, first size of type K" },
  ],
  run: ({ family }, { unitSet }) => {
    const sizes = unitSet === "US" ? "inch" : "metric";
    if (family === null) return succeed(allPipes(sizes).map(rowOf));
    return andThen(pipesOf(family, sizes), (found) => succeed(found.map(rowOf)));
  },
});

function rowOf({ name, outsideDiameter, wall, bore: inside, roughness, cites, roughnessCites }: Pipe) {
  return {
    name,
    outsideDiameter,
    wall,
    bore: inside,
    roughness,
    standard: citationText(cites),
    roughnessSource: citationText(roughnessCites),
  };
}
