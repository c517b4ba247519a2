import { andThen, succeed } from "../../../src/basis/result.ts";
import { lineSurge, lineSurgeMethod } from "../../../src/pressure/line-surge.ts";
import { liquidBulkModulus } from "../../../src/pressure/liquid-bulk-modulus.ts";
import { pipeRating, pipeRatingMethod } from "../../../src/pressure/pipe-rating.ts";
import { PIPE_ALLOWABLE_STRESS, type PipeSpecificationName } from "../../../src/tables/pipe-allowable-stress.ts";
import { defineEntry } from "../entry.ts";
import { quantity } from "../parameter.ts";
import { line, ROWS_IN_WORDS } from "../parameters/line.ts";
import { liquid, temperature } from "../parameters/liquid.ts";
import { openChoice } from "../parameters/open-choice.ts";
import { pipe } from "../parameters/pipe.ts";

const SPECIFICATIONS = Object.keys(PIPE_ALLOWABLE_STRESS) as readonly PipeSpecificationName[];

export const PIPERATING = defineEntry({
  id: "PIPERATING",
  group: "Pressure and flanges",
  summary: "Working pressure of a pipe or hose at its wall's temperature, and what it may reach with surge",
  method:
    "Polyethylene of inch sizes 2 HDS/(DR − 1), HDS 1000 psi PE4710, 800 psi PE3608 and PE3408; by ISO 4427 20 MRS/(1.25 (SDR − 1)) bar. PVC of D1785 4000 t/(D − t) psi; C900, D2241 and PVC-U as printed. Each by its own temperature factors, and refused above their last. Ductile iron as its class; thickness classes by C150, at most 350 psi. Steel by B31.3, 2 S E t/(D − 0.8 t), the wall 12.5 % thin and less corrosion; metric carbon steel by EN 13480-3; a cross-country pipeline of grade B by B31.4, 2 × 0.72 × 35 000 t/D with no mill tolerance, and 1.1 times it with surge. What is not stated is taken at both ends, the careful one first: grade PE3608 or PE80, welded A53 B with 1.6 mm (1/16 in) of corrosion. Hose and quick-connect pipe, which no standard rates, by what is usual: the lowest of makers first, the maximum at best, of every kind the name may mean; a camlock named on the hose (6in TPU layflat camlock) caps it. The maker's figure, the lowest of hose, coupling and clamp, takes its place; hose loses with warmth as EN ISO 8029, rubber from 40 to 70 °C a quarter. Copper and bare measured pipe need the maker's figure; concrete pipe of C76 is for no pressure. With surge of every stop and with a rare one: polyethylene 1.5 and 2 times its rating, 1.5 by ISO; C900 1 and 1.6; ductile iron 100 psi more, 1.2 times by EN 545; steel 1 and, with the owner's consent and within the hours of B31.3, 1.33; all else 1. Joints, flanges and couplings often govern: they are not in it.",
  cites: pipeRatingMethod.cites,
  parameters: {
    pipe: pipe(
      "Pipe or hose, its grade or class in its name",
      '"10in HDPE DR17 PE4710", "250mm HDPE SDR17 PE100" or "6in sch40"',
    ),
    temperature,
    statedRating: quantity("gaugePressure", {
      about: "Working pressure its maker states, of hose at 73 °F (23 °C); it caps that of a standard",
      example: '150, or "10 bar"',
      range: "above 0",
      whenLeftOut: { value: null, shown: "that of its standard; of hose and quick couplings what is usual" },
    }),
    specification: openChoice(SPECIFICATIONS, "Specification of steel pipe", "the weakest usual one"),
    corrosion: quantity("size", {
      about: "Corrosion and thread that a steel wall loses",
      example: '0.0625, or "1.6 mm"',
      range: "0 or more",
      whenLeftOut: { value: null, shown: "1.6 mm (1/16 in) of carbon steel, none of stainless" },
    }),
  },
  answer: {
    kind: "record",
    name: "pipe rating",
    columns: {
      rating: { name: "rating", quantity: "gaugePressure" },
      atBest: { name: "at best", quantity: "gaugePressure" },
      withSurge: { name: "with surge", quantity: "gaugePressure" },
      withRareSurge: { name: "with rare surge", quantity: "gaugePressure" },
      assumed: { name: "assumed" },
      by: { name: "rated by" },
    },
  },
  examples: [
    {
      args: ["10in HDPE DR11 PE4710", 73],
      part: [1, 0],
      answer: 200,
      within: 1e-6,
      source: "AWWA C906, DR 11 of PE4710: pressure class 200 psi",
    },
    {
      args: ["315mm HDPE SDR17 PE100", "35 °C", null, null, null, "METRIC"],
      part: [1, 0],
      answer: 8.05,
      within: 0.005,
      source: "ISO 4427, PN 10 at 35 °C: 10 bar × 0.805, between 0.87 at 30 and 0.74 at 40 °C",
    },
    {
      args: ["8in STD", 100, null, "A53 B ERW", 0.0625],
      part: [1, 0],
      answer: 882.2,
      within: 0.1,
      source: "ASME B31.3, 304.1.2, by hand: 2 × 20 000 × 0.85 × 0.21925/(8.625 − 0.8 × 0.21925) psi",
    },
  ],
  run: ({ corrosion: allowance, ...inputs }) =>
    andThen(pipeRating({ ...inputs, allowance }), ({ careful: rating, ...rest }) => succeed({ rating, ...rest })),
});

export const LINESURGE = defineEntry({
  id: "LINESURGE",
  group: "Pressure and flanges",
  summary: "Surge of a line where its flow stops at once: the worst run, the whole line, and each run",
  method: `Each run by Joukowsky, ρ a V, with its own wave speed and velocity, as SURGE. The whole line by its mean wave speed ΣL/Σ(L/a) and its mean velocity ΣLV/ΣL. A run whose wave is back within a tenth of the line's time, such as a short steel spool before polyethylene, raises the pressure through the line alone; of the others the highest is the worst. ${ROWS_IN_WORDS} A screen, no transient study; it does not see a column that parts.`,
  cites: lineSurgeMethod.cites,
  parameters: {
    flow: quantity("flow", { about: "Flow that stops", range: "0 or more" }),
    line: line("The line"),
    liquid,
    temperature,
  },
  answer: {
    kind: "table",
    name: "surge of the line",
    columns: {
      of: { name: "of" },
      pressure: { name: "pressure rise", quantity: "pressureDifference" },
      waveSpeed: { name: "wave speed", quantity: "velocity" },
      velocity: { name: "velocity", quantity: "velocity" },
      returnTime: { name: "return time", quantity: "duration" },
      counts: { name: "counts" },
    },
  },
  examples: [
    {
      args: ["500 L/s", [["OD 415 mm wall 7.5 mm asphalted iron", 100]], "998.2 kg/m3, 1.002 cP", null, "METRIC"],
      part: [1, 1],
      answer: 45.2924,
      within: 1e-3,
      source: "Joukowsky and Korteweg, 17.07485 bar at 1.5 m/s, times 3.97887 m/s of 500 L/s in 400 mm over 1.5",
    },
  ],
  run: ({ flow, line: of, liquid: described, temperature: at }) =>
    andThen(described.at(at), (state) =>
      andThen(liquidBulkModulus(described, at), (bulkModulus) =>
        andThen(lineSurge({ flow, line: of, liquid: state, bulkModulus }), ({ runs, line: whole, worst }) => {
          const named = (i: number): string => `run ${i + 1}, ${of[i]?.pipe.name ?? ""}`;
          const row = (
            label: string,
            { pressureChange, ...rest }: (typeof runs)[number] | typeof whole,
            counts: string,
          ) => ({
            of: label,
            pressure: pressureChange,
            waveSpeed: rest.waveSpeed,
            velocity: rest.velocity,
            returnTime: rest.returnTime,
            counts,
          });
          const governs = worst === undefined ? undefined : runs[worst];
          return succeed([
            governs === undefined || worst === undefined
              ? row("the line", whole, "worst")
              : row(named(worst), governs, "worst"),
            row("the line", whole, "mean"),
            ...runs.map((run, i) => row(named(i), run, run.counts ? "yes" : "through the line")),
          ]);
        }),
      ),
    ),
});
