import { SPECIFIC_GRAVITY_REFERENCE } from "../../../src/basis/constants.ts";
import { UNIT_SETS } from "../../../src/basis/quantities.ts";
import { andThen, type Result, succeed } from "../../../src/basis/result.ts";
import { fromEngine } from "../../../src/basis/units.ts";
import { pipeCollapse, pipeCollapseMethod } from "../../../src/estimate/pipe-collapse.ts";
import { massOfLength, massOfLengthMethod } from "../../../src/estimate/pipe-mass.ts";
import { takeOff, takeOffCites } from "../../../src/estimate/take-off.ts";
import { thrust, thrustMethod } from "../../../src/estimate/thrust.ts";
import type { FlangeClass } from "../../../src/pressure/flange-class.ts";
import type { Cell } from "../../cells/cell.ts";
import { defineEntry } from "../entry.ts";
import { type OptionalParameter, quantity, type Reading, type SingleParameter } from "../parameter.ts";
import { flangeClass, ratingSystem } from "../parameters/class.ts";
import { line } from "../parameters/line.ts";
import { temperature } from "../parameters/liquid.ts";
import { pipe } from "../parameters/pipe.ts";
import { share } from "../parameters/share.ts";
import { zeroDoubted } from "../parameters/zero-doubted.ts";

const classOrNothing: OptionalParameter<FlangeClass | null> = {
  ...flangeClass,
  fallback: null,
  whenLeftOut: "flanged joints are counted without bolting",
};

const bendAngle = quantity("angle", { about: "Change of direction", range: "above 0, at most 180°" });

const DEAD_ENDS: readonly string[] = ["dead end", "shut valve", "tee"];

/** Degrees of a bend, or null for whatever stops the flow. Never left out: a dead end pushes less than a sharp bend. */
const angle: SingleParameter<number | null> = {
  ...bendAngle,
  about: 'Change of direction of the bend, or "dead end", "shut valve", "tee"',
  example: '90, "45°" or "dead end"',
  choices: DEAD_ENDS,
  read: (cell: Cell, reading: Reading): Result<number | null> =>
    typeof cell === "string" && DEAD_ENDS.includes(cell.trim().toLowerCase())
      ? succeed(null)
      : bendAngle.read(cell, reading),
};

const specificGravity = quantity("ratio", {
  about: "Specific gravity of the liquid, relative to 998.2 kg/m³",
  example: "1.2",
  range: "above 0",
  whenLeftOut: { value: 1, shown: "1, water" },
});

export const TAKEOFF = defineEntry({
  id: "TAKEOFF",
  group: "Estimate",
  summary: "Bill of quantities of the two lines: pipe, joints, fittings, flanged joints with bolting, masses",
  method: `Pipe by developed length and in pieces of stock length: steel, ductile iron, copper, PVC 20 ft (6 m), HDPE 40 ft (12 m), hose 20 ft (6 m), lay-flat and discharge hose as made up. Ordered with 5 % for cutting, HDPE 3 %. Flanged joints: the pump nozzle, each change of pipe, both ends of every valve, one end of foot valve, strainer and bellmouth; bends and tees are joined as the pipe is. A row whose share is 1/2 is two equal runs side by side and counts twice, with its fittings; the word header beside the pipe makes it one piece of header. Where the nominal size changes and no fitting of the line does it, a reducer is listed. Studs, nuts and gaskets of the class, ASME B16.5, with 10 % spare studs and 20 % spare gaskets, rounded up: common practice. Mass of plain pipe π (D − t) t ρ, steel 7850 kg/m³, and full of water at 20 °C. Nothing is priced. NOTES says what is not counted.`,
  cites: takeOffCites,
  parameters: {
    suctionLine: line("The suction line, from the liquid to the pump"),
    dischargeLine: line(
      "The discharge line, from the pump to its outlet; one exit in the last row, free or submerged alike",
    ),
    flangeClass: classOrNothing,
  },
  answer: {
    kind: "table",
    name: "bill of quantities",
    columns: {
      line: { name: "line" },
      item: { name: "item" },
      size: { name: "size" },
      quantity: { name: "quantity" },
      order: { name: "to order" },
      unit: { name: "unit" },
      mass: { name: "mass", quantity: "mass" },
      filled: { name: "mass full of water", quantity: "mass" },
      remark: { name: "remark" },
    },
  },
  examples: [
    {
      args: [[["6in sch40", 100]], [["6in sch40", 100, "1 gate"]], 150],
      part: [1, 6],
      answer: 1899,
      within: 10,
      source: "ASME B36.10M, NPS 6 schedule 40: 18.99 lb/ft, times 100 ft",
    },
    {
      args: [[["6in sch40", 100]], [["6in sch40", 100, "1 gate"]], 150],
      part: [7, 3],
      answer: 32,
      within: 0,
      source: "by hand: two pump nozzles and a gate valve make 4 joints of 8 bolts (ASME B16.5, NPS 6 Class 150)",
    },
  ],
  run: (input, { unitSet }) => {
    const { length } = UNIT_SETS[unitSet];
    const lengthName = unitSet === "US" ? "ft" : "m";
    return andThen(takeOff({ ...input, system: ratingSystem(unitSet) }), (rows) =>
      succeed(
        rows.map((row) => ({
          line: row.line,
          item: row.item,
          size: row.size,
          quantity: row.isLength ? fromEngine(row.quantity, length) : row.quantity,
          order: row.isLength ? fromEngine(row.order, length) : row.order,
          unit: row.isLength ? lengthName : "each",
          mass: row.mass,
          filled: row.filled,
          remark: row.remark,
        })),
      ),
    );
  },
});

export const PIPEMASS = defineEntry({
  id: "PIPEMASS",
  group: "Estimate",
  summary: "Mass of a pipe, of what fills it, and of both",
  method:
    "Plain pipe π (D − t) t ρ with its nominal wall, plastic with its mean wall; steel 7850 kg/m³, stainless steel 7960, ductile iron 7050 with its lining, HDPE 955, PVC 1400. Contents (π/4) d² at SG 1 = 998.2 kg/m³. For one foot in US units and one metre otherwise, where no length is given. Couplings, flanges, fittings and insulation are not in it. Where the wall or the material of a pipe is not known, as of hose, its own mass is left empty, with a caution.",
  cites: massOfLengthMethod.cites,
  parameters: {
    pipe: pipe("Pipe or hose"),
    SG: specificGravity,
    length: quantity("length", {
      about: "Length of the pipe, fittings not counted",
      range: "0 or more",
      whenLeftOut: { value: null, shown: "1 ft or 1 m" },
    }),
  },
  answer: {
    kind: "record",
    name: "mass of pipe",
    columns: {
      empty: { name: "empty", quantity: "mass" },
      contents: { name: "contents", quantity: "mass" },
      full: { name: "full", quantity: "mass" },
    },
  },
  examples: [
    {
      args: ["6in sch40"],
      part: [1, 0],
      answer: 18.99,
      within: 0.02,
      source: "ASME B36.10M, NPS 6 schedule 40: 18.99 lb/ft",
    },
    {
      args: ["12in STD"],
      part: [1, 2],
      answer: 98.6,
      within: 0.15,
      source: "ASME B36.10M, NPS 12 STD: 49.61 lb/ft; water 0.3405 × 12² = 49.03 lb/ft by hand",
    },
  ],
  run: ({ pipe, SG, length }, { unitSet }) =>
    andThen(
      massOfLength({ pipe, specificGravity: SG, length: length ?? UNIT_SETS[unitSet].length.factor }),
      ({ empty, contents, full }) => succeed({ empty, contents, full }),
    ),
});

export const BENDTHRUST = defineEntry({
  id: "BENDTHRUST",
  group: "Estimate",
  summary: "Force that pushes a bend or a dead end out of its line, as a caution",
  method:
    "At a bend 2 (P A + ρ Q v) sin(θ/2), at a dead end, a shut valve or the branch of a tee P A. A is that of the bore; at push-on ductile iron that of the outside diameter. Give the pressure against a shut valve with surge and test, not that while running. Without a flow the momentum is left out, which is small below 3 m/s (10 ft/s). For a line of caution, not for the design of a thrust block or an anchor, which is for a qualified person.",
  cites: thrustMethod.cites,
  parameters: {
    pipe: pipe("Pipe or hose"),
    pressure: quantity("gaugePressure", {
      about: "Maximum pressure in the line",
      example: '150, or "10 bar"',
      range: "above 0",
    }),
    angle,
    flow: zeroDoubted(
      quantity("flow", {
        about: "Flow, for the momentum",
        range: "0 or more",
        whenLeftOut: { value: null, shown: "momentum is left out" },
      }),
    ),
    SG: specificGravity,
  },
  answer: { kind: "quantity", name: "thrust", quantity: "force" },
  examples: [
    {
      args: ["8in sch40", 150, 90],
      answer: 10612,
      within: 5,
      source: "by hand: 2 × 150 psi × π/4 × 7.981² in² × sin 45°",
    },
    {
      args: ["ID 300 mm rough 0.05 mm", 10, 45, null, null, "METRIC"],
      answer: 54100,
      within: 50,
      source: "by hand: 2 × 1 MPa × π/4 × 0.3² m² × sin 22.5°",
    },
  ],
  run: ({ SG, ...inputs }) => thrust({ ...inputs, density: SG * SPECIFIC_GRAVITY_REFERENCE }),
});

export const COLLAPSEPRESSURE = defineEntry({
  id: "COLLAPSEPRESSURE",
  group: "Estimate",
  summary: "Pressure difference under which a pipe buckles, and whether it stands a full vacuum",
  method:
    "2 E/(1 − μ²) × (1/(DR − 1))³ × ((1 − q)/(1 + q)²)³ for a pipe q out of round that nothing supports; 3 % leaves 0.76. Polyethylene, μ 0.45, E by the duration of the vacuum at 73 °F (23 °C): PE4710 and PE100 82 000 psi for half an hour, 63 000 for 12 h, 55 000 for 100 h, 40 000 for a year, 29 000 for 50 years; PE3608 and PE80 some 5 % less, taken where the grade is not stated; less when warm, to 140 °F (60 °C). Vacuums with hours of rest between do not add up; that of a line on a lift day and night does. PVC, short term, 400 000 psi; steel 30, stainless 28, ductile iron 24 million psi. “Stands a full vacuum” where it is at least twice a standard atmosphere, as practice asks of a suction line. Soil, traffic and kinks need their own check. Hose is refused: ask the maker.",
  cites: pipeCollapseMethod.cites,
  parameters: {
    pipe: pipe("Pipe of known wall, such as polyethylene of a dimension ratio", '"10in HDPE DR17 PE4710"'),
    duration: quantity("hours", {
      about: "How long the vacuum lasts without hours of rest, in hours",
      example: "12",
      range: "above 0, up to 438 000 (50 years)",
      whenLeftOut: { value: null, shown: "50 years" },
    }),
    temperature,
    outOfRound: share({
      about: "Out of round: maximum less minimum diameter over their sum",
      range: "0 to 10 %",
      whenLeftOut: { value: null, shown: "3 %" },
    }),
  },
  answer: {
    kind: "record",
    name: "collapse under vacuum",
    columns: {
      dimensionRatio: { name: "dimension ratio" },
      pressure: { name: "collapse pressure", quantity: "pressureDifference" },
      longTerm: { name: "for 50 years", quantity: "pressureDifference" },
      factor: { name: "times a full vacuum" },
      verdict: { name: "verdict" },
      atBest: { name: "at best", quantity: "pressureDifference" },
      assumed: { name: "assumed" },
    },
  },
  examples: [
    {
      args: ["10in HDPE DR17 PE4710", 12, 73, "3 %"],
      part: [1, 1],
      answer: 29.5,
      within: 0.1,
      source:
        "by hand: 2 × 63 000/(1 − 0.45²)/16³ × 0.764 psi, modulus of the Handbook of Polyethylene Pipe, table B.1.1",
    },
    {
      args: ["10in HDPE DR17 PE4710", null, 73],
      part: [1, 4],
      answer: "does not stand a full vacuum",
      source: "by hand: 13.6 psi after 50 years is 0.9 times 14.7 psi, below twice",
    },
  ],
  run: (inputs) =>
    andThen(pipeCollapse(inputs), ({ holds, ...found }) =>
      succeed({ ...found, verdict: holds ? "stands a full vacuum" : "does not stand a full vacuum" }),
    ),
});
