import { UNIT_SETS } from "../../../src/basis/quantities.ts";
import { andThen, succeed } from "../../../src/basis/result.ts";
import { fromEngine } from "../../../src/basis/units.ts";
import { takeOff, takeOffCites } from "../../../src/estimate/take-off.ts";
import type { FlangeClass } from "../../../src/pressure/flange-class.ts";
import { defineEntry, type Entry } from "../entry.ts";
import type { SingleParameter } from "../parameter.ts";
import { flangeClass, ratingSystem } from "../parameters/class.ts";
import { line } from "../parameters/line.ts";

const classOrNothing: SingleParameter<FlangeClass | null> = {
  ...flangeClass,
  fallback: null,
  whenLeftOut: "flanged joints are counted without bolting",
};

export const takeOffEntries: readonly Entry[] = [
  defineEntry({
    id: "TAKEOFF",
    group: "Estimate",
    summary: "Bill of quantities of the two lines: pipe, joints, fittings, flanged joints with bolting, masses",
    method:
      "Pipe by developed length and in pieces of stock length: steel, ductile iron, copper, PVC 20 ft (6 m), HDPE 40 ft (12 m), hose 20 ft (6 m), lay-flat and discharge hose as made up. Ordered with 5 % for cutting, HDPE 3 %. Flanged joints: the pump nozzle, each change of pipe, both ends of every valve, one end of foot valve, strainer and bellmouth; bends and tees are joined as the pipe is. Where the nominal size changes and no fitting of the line does it, a reducer is listed. Studs, nuts and gaskets of the class, ASME B16.5, with 10 % spare studs and 20 % spare gaskets, rounded up: common practice. Mass of plain pipe π (D − t) t ρ, steel 7850 kg/m³, and full of water at 20 °C. Nothing is priced. NOTES says what is not counted.",
    cites: takeOffCites,
    parameters: {
      suctionLine: line("Suction line"),
      dischargeLine: line("Discharge line"),
      flangeClass: classOrNothing,
    },
    answer: {
      kind: "table",
      name: "bill of quantities",
      columns: [
        { name: "line" },
        { name: "item" },
        { name: "size" },
        { name: "quantity" },
        { name: "to order" },
        { name: "unit" },
        { name: "mass", quantity: "mass" },
        { name: "mass full of water", quantity: "mass" },
        { name: "remark" },
      ],
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
          rows.map((row) => [
            row.line,
            row.item,
            row.size,
            row.isLength ? fromEngine(row.quantity, length) : row.quantity,
            row.isLength ? fromEngine(row.order, length) : row.order,
            row.isLength ? lengthName : "each",
            row.mass ?? null,
            row.filled ?? null,
            row.remark,
          ]),
        ),
      );
    },
  }),
];
