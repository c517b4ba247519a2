import { type Duty, type DutyPump, isLifted } from "../../../duty/duty.ts";
import { isSlurry } from "../../../duty/slurry.ts";
import { type Expression, type Handle, sum } from "../../expression.ts";
import { FIELD } from "../../field-handles.ts";
import type { Block, BlockRow, PlanItem } from "../../plan.ts";
import { byWeight, PUMPED } from "../as-pumped.ts";
import { SPECIFIC_GRAVITY } from "../drawn-curves.ts";
import { HEAD, headAskedFor, headToSelect } from "../head.ts";
import { LIQUID_FIGURES } from "../liquid.ts";
import { NPSH } from "../npsh.ts";
import { POINT } from "../operating-point.ts";
import { PUMP } from "../pump.ts";
import type { Standing } from "./standing.ts";

type Row = readonly [of: Handle, label: string, main?: "main"];

/** Duty, system and pump side by side: each figure is the cell of the calculation, said again. */
export function figures(duty: Duty, stands: Standing): PlanItem {
  const { pump } = duty;
  return {
    kind: "blocks",
    blocks: [
      dutyBlock(duty, stands),
      systemBlock(duty, stands),
      pump === undefined ? asked(duty, stands) : pumpBlock(duty, pump, stands),
    ],
  };
}

function dutyBlock(duty: Duty, stands: Standing): Block {
  const slurry: readonly Row[] = [
    [byWeight(duty), "Solids by weight"],
    [PUMPED.pumpedGravity, "SG as pumped"],
  ];
  // Without a pump nothing asks for it.
  const weight: Row = stands(SPECIFIC_GRAVITY)
    ? [SPECIFIC_GRAVITY, "Specific gravity"]
    : [LIQUID_FIGURES.density, "Density"];
  return block("Duty", "Duty", stands, [
    [FIELD.flow, "Flow", "main"],
    [FIELD.liquid, "Liquid"],
    [FIELD.temperature, "Temperature"],
    ...(isSlurry(duty) ? slurry : [weight]),
    [LIQUID_FIGURES.viscosity, "Viscosity"],
    [FIELD.sourceLevel, "Source level"],
    [FIELD.pumpLevel, "Pump level"],
    [FIELD.deliveryLevel, "Delivery level"],
    [FIELD.altitude, "Altitude"],
  ]);
}

const LOSSES = sum(HEAD.suctionPipe, HEAD.suctionFittings, HEAD.dischargePipe, HEAD.dischargeFittings);

function systemBlock(duty: Duty, stands: Standing): Block {
  const { heading, rows } = block("System", "System", stands, [
    [HEAD.staticHead, "Static head"],
    [FIELD.leastStaticHead, "Minimum static head"],
    [FIELD.greatestStaticHead, "Maximum static head"],
    [HEAD.pressureHead, "Pressure head"],
    [HEAD.totalHead, "Total dynamic head", "main"],
    [HEAD.lineHead, "Head of the line"],
    [HEAD.marginHead, "Margin on losses"],
    [headAskedFor(duty), "Head to select for", "main"],
    ...(isSlurry(duty) ? ([[HEAD.waterHead, "Equivalent water head", "main"]] as const) : []),
    [FIELD.agedRoughness, "Roughness, aged"],
  ]);
  const losses: BlockRow = {
    key: "summaryLosses",
    label: "Losses of both lines",
    quantity: "head",
    expression: LOSSES,
  };
  const before = rows.findIndex(({ label }) => label === "Total dynamic head");
  return { heading: heading as string, rows: rows.toSpliced(before, 0, losses) };
}

function pumpBlock(duty: Duty, pump: DutyPump, stands: Standing): Block {
  return block("Pump", "Pump at the operating point", stands, [
    [PUMP.pumpName, duty.otherPumps.length === 0 ? "Pump" : "Selected pump"],
    ...(isSeveral(duty) ? ([[FIELD.pumpsRunning, "Pumps running"]] as const) : []),
    [PUMP.runningSpeed, "Speed"],
    ...(stands(PUMP.runningSpeed) ? [] : ([[PUMP.speedRatio, "Speed over the curve's"]] as const)),
    [PUMP.runningDiameter, "Impeller"],
    ...(pump.trimRatio === 1 || stands(PUMP.runningDiameter) ? [] : ([[PUMP.trimRatio, "Trim"]] as const)),
    [POINT.operatingFlow, "Flow", "main"],
    [POINT.operatingHead, "Head", "main"],
    [POINT.operatingEfficiency, "Efficiency"],
    [POINT.bestFlowPercent, "Of BEP flow"],
    [POINT.operatingPower, "Shaft power", "main"],
    ...(stands(POINT.operatingNpshRequired)
      ? ([
          [POINT.operatingNpshAvailable, "NPSH available"],
          [POINT.operatingNpshRequired, "NPSH required"],
          [POINT.operatingNpshMargin, "NPSH margin", "main"],
        ] as const)
      : npshAtDuty("at the duty")),
  ]);
}

function isSeveral({ state, otherPumps }: Duty): boolean {
  return state.pumpsRunning === "stated" || otherPumps.length > 0;
}

/** Without a pump: what one has to give. */
function asked(duty: Duty, stands: Standing): Block {
  return block("Asked", "Asked of the pump", stands, [
    [FIELD.flow, "Flow", "main"],
    [headToSelect(duty), isSlurry(duty) ? "Head, on water" : "Head", "main"],
    ...npshAtDuty(""),
    [NPSH.greatestLift, "Maximum suction lift"],
    [NPSH.suctionLift, isLifted(duty) ? "Suction lift" : "Suction lift (flooded)"],
    ...(isSeveral(duty) ? ([[FIELD.pumpsRunning, "Pumps running"]] as const) : []),
  ]);
}

function npshAtDuty(place: string): readonly Row[] {
  const after = place === "" ? "" : ` ${place}`;
  return [
    [NPSH.npshAvailable, `NPSH available${after}`],
    [FIELD.npshRequired, "NPSH required, stated"],
    [NPSH.npshDifference, "NPSH margin", "main"],
  ];
}

/** The rows whose cells the calculation holds. */
function block(key: string, heading: string, stands: Standing, rows: readonly Row[]): Block {
  return {
    heading,
    rows: rows
      .filter(([of]) => stands(of))
      .map(([of, label, main]) => ({
        key: `summary${key}${capital(of.key)}`,
        label,
        ...(of.quantity && { quantity: of.quantity }),
        expression: of as Expression,
        ...(main && { main: true }),
      })),
  };
}

/** Names hold no dots: those of a cell of a table are run together. */
function capital(key: string): string {
  return key
    .split(".")
    .filter((part) => !/^\d+$/.test(part))
    .map((part) => `${part.charAt(0).toUpperCase()}${part.slice(1)}`)
    .join("");
}
