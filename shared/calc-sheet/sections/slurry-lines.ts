import { SETTLINGVELOCITY, SLURRYLINE } from "../../catalogue/entries/slurry-duty.ts";
import type { Duty } from "../../duty/duty.ts";
import type { LineKey } from "../../duty/duty-text.ts";
import { isSizedSlurry } from "../../duty/slurry.ts";
import {
  callOf,
  cell,
  constant,
  type Expression,
  greatest,
  handle,
  handles,
  ifAtLeast,
  join,
  part,
  product,
  ratio,
  spillOf,
  tableOf,
} from "../expression.ts";
import { CLEAR_LIQUID, FIELD } from "../field-handles.ts";
import { figure, type PlanItem, remark, spill, type TableItem, working } from "../plan.ts";
import { letters } from "../row-letters.ts";
import { PUMPED } from "./as-pumped.ts";
import { leastFlow } from "./flow-range.ts";
import { totalHeadAt } from "./head.ts";
import { flowInRow, LINES } from "./lines.ts";
import { stated } from "./stated-input.ts";

export const SLURRY_LINES = handles({ leastSlurryFlow: "flow", leastFlowOfDuty: "flow", slopeFactor: "ratio" });

/** What a sloping line raises deposition velocity and design minimum by. */
export function slopeFactor({ state }: Duty): Expression {
  if (state.upwardSlope === "blank") return constant(1);
  const upTo = ifAtLeast(FIELD.riserSlope, FIELD.upwardSlope, FIELD.slopeVelocity, constant(1));
  return ifAtLeast(FIELD.upwardSlope, FIELD.slopeFrom, upTo, constant(1));
}

/** Whether the line has a part so steep that it must lift its largest particles. */
export function hasRiser({ state, upwardSlope, riserSlope }: Duty): boolean {
  if (riserSlope === undefined) return false;
  return state.upwardSlope === "stated" && (upwardSlope ?? 0) > riserSlope;
}

/** The least flow that keeps solids off the bottom of every run, as a point of the system curve. */
const MINIMUM = tableOf("slurryMinimum", { flow: "flow", head: "head" });

export const SETTLING = {
  kind: "table",
  key: "slurrySettling",
  heading: "velocity in each run",
  columns: [
    { key: "velocity", label: "velocity", quantity: "velocity" },
    { key: "verdict", label: "solids" },
    { key: "limiting", label: "deposition", quantity: "velocity" },
    { key: "over", label: "velocity / deposition", quantity: "ratio" },
    { key: "design", label: "design minimum", quantity: "velocity" },
  ],
} as const satisfies Omit<TableItem, "rows">;

export const FRICTION = {
  kind: "table",
  key: "slurryFriction",
  heading: "pipe friction in each run",
  columns: [
    { key: "slurryGradient", label: "gradient, slurry", quantity: "percent" },
    { key: "regime", label: "flow regime" },
    { key: "liquidGradient", label: "gradient, clear", quantity: "percent" },
    { key: "slurryHead", label: "head, slurry", quantity: "head" },
    { key: "liquidHead", label: "head, clear", quantity: "head" },
  ],
} as const satisfies Omit<TableItem, "rows">;

export type SlurryRun = ReturnType<typeof runsOf>[number];

const NAMES: Readonly<Record<LineKey, string>> = { suctionLine: "Suction", dischargeLine: "Discharge" };

/** The runs of both lines in the order of flow; a line still to be stated has one row, as its table. */
export function runsOf(duty: Duty) {
  return (["suctionLine", "dischargeLine"] as const).flatMap((line) =>
    Array.from({ length: Math.max(1, duty[line].length) }, (_, row) => {
      const at = duty[line][row];
      return {
        label: `${NAMES[line]} ${row + 1}`,
        pipe: at?.segment?.pipe.name ?? at?.typed.pipe.trim() ?? "",
        line,
        row,
        record: spillOf(`slurry${NAMES[line]}${letters(row)}`, SLURRYLINE),
        call: callOf(SLURRYLINE, {
          flow: flowInRow(duty, LINES, line, row, FIELD.flow),
          pipe: cell(LINES[line], row, "pipe"),
          d50: FIELD.medianSize,
          solidsSG: PUMPED.pumpedSolidsGravity,
          solidsByVolume: PUMPED.pumpedByVolume,
          d85: FIELD.coarseSize,
          ...CLEAR_LIQUID,
        }),
      };
    }),
  );
}

/** How fast the largest particles fall in the riser. */
export const RISER = spillOf("riserSettling", SETTLINGVELOCITY);

function riserSettling(duty: Duty): readonly PlanItem[] {
  if (!hasRiser(duty) || duty.state.particleSize === "blank") return [];
  const call = callOf(SETTLINGVELOCITY, {
    particleSize: FIELD.particleSize,
    solidsSG: PUMPED.pumpedSolidsGravity,
    ...CLEAR_LIQUID,
  });
  return [...stated(duty, "particleSize"), spill(RISER, "Settling of the largest particles", call)];
}

/** Each run against settling, worked out in the workings before what rests on it; nothing without d50. */
export function slurryWorkings(duty: Duty): readonly PlanItem[] {
  if (!isSizedSlurry(duty)) return [];
  const runs = runsOf(duty);
  return [
    ...riserSettling(duty),
    ...runs.map(({ record, label, call }) => spill(record, `Slurry in ${label.toLowerCase()}`, call)),
    ...(duty.state.upwardSlope === "blank" ? [] : stated(duty, "upwardSlope")),
    working(MINIMUM, "Minimum flow of the slurry", 1, [
      [
        "flow",
        "minimum flow",
        () =>
          product(
            FIELD.flow,
            greatest(...runs.map(({ record }) => ratio(part(record, "design"), part(record, "velocity")))),
            slopeFactor(duty),
          ),
      ],
      ["head", "system head there", () => totalHeadAt(cell(MINIMUM, 0, "flow"))],
    ]),
  ];
}

/** The minimum flow as a mark on the curve of the system. */
export function minimumFlowMark(duty: Duty) {
  if (!isSizedSlurry(duty)) return [];
  return [{ label: "minimum flow", x: cell(MINIMUM, 0, "flow"), y: cell(MINIMUM, 0, "head") }];
}

/** Each run against settling, the least flow that keeps all of them clear, and the friction of the slurry. */
export function slurryRuns(duty: Duty): readonly PlanItem[] {
  const runs = runsOf(duty);
  return [
    {
      ...SETTLING,
      rows: runs.map(({ label, record }) => {
        const [velocity, limiting] = [part(record, "velocity"), part(record, "limiting")];
        const settles = ifAtLeast(velocity, limiting, part(record, "verdict"), constant("SETTLES"));
        return { label, cells: [velocity, settles, limiting, part(record, "over"), part(record, "design")] };
      }),
    },
    figure(
      SLURRY_LINES.leastSlurryFlow,
      "Minimum design flow",
      cell(MINIMUM, 0, "flow"),
      "Where the slowest run reaches its design minimum, times the factor of the slope.",
      "main",
    ),
    ...(duty.state.upwardSlope === "blank"
      ? []
      : [
          figure(
            SLURRY_LINES.slopeFactor,
            "Factor of the upward slope",
            slopeFactor(duty),
            "1.3 from 15° to 60°: trade practice, no source. Steeper is a riser, judged by its largest particles.",
          ),
        ]),
    figure(
      SLURRY_LINES.leastFlowOfDuty,
      "Minimum flow of the duty",
      leastFlow(duty),
      "The lowest of the flow stated and the operating flows on slurry: the runs are judged at it.",
    ),
    { ...FRICTION, rows: runs.map(frictionIn) },
    ...runs.map(({ record, label, pipe, call }) =>
      remark(handle(`${record.key}Notes`, null), `${label}: ${pipe}`, call),
    ),
  ];
}

/** What the run loses is that of its table above; a bed is marked as such. */
function frictionIn({ label, line, row, record }: SlurryRun): TableItem["rows"][number] {
  const clear = product(ratio(part(record, "liquidGradient"), constant(100)), cell(LINES[line], row, "length"));
  const rests = join(part(record, "regime"), constant(": loss as at deposition"));
  const marked = ifAtLeast(part(record, "velocity"), part(record, "limiting"), part(record, "regime"), rests);
  return {
    label,
    cells: [
      part(record, "slurryGradient"),
      marked,
      part(record, "liquidGradient"),
      cell(LINES[line], row, "pipeHead"),
      clear,
    ],
  };
}
