import { cell } from "../calc-sheet/expression.ts";
import { FRICTION, SETTLING } from "../calc-sheet/sections/slurry-lines.ts";
import type { Duty } from "../duty/duty.ts";
import { workedDuty } from "./worked-duty.ts";

/** A run of pipe against the settling of its solids, velocities in m/s. */
export interface SettlingRun {
  /** As the sheet's table labels it: "Discharge 2". */
  readonly label: string;
  readonly velocity: number;
  /** Solids come to rest below it. */
  readonly limiting: number;
  /** Least to design for. */
  readonly design: number;
  /** How the solids travel, as the sheet says it: "carried", "bed at rest". */
  readonly regime: string;
}

/** The runs of both lines in the order of flow; undefined where the duty is no slurry or a run cannot be worked out. */
export function settlingRuns(duty: Duty): readonly SettlingRun[] | undefined {
  const { plan, worked, figure } = workedDuty(duty);
  const table = plan.items.find((item) => item.kind === "table" && item.key === SETTLING.key);
  if (table?.kind !== "table") return undefined;
  const runs: SettlingRun[] = [];
  for (const [row, { label }] of table.rows.entries()) {
    const at = (of: "velocity" | "limiting" | "design") => figure(cell(SETTLING, row, of));
    const [velocity, limiting, design] = [at("velocity"), at("limiting"), at("design")];
    if (typeof velocity !== "number" || typeof limiting !== "number" || typeof design !== "number") return undefined;
    runs.push({
      label,
      velocity,
      limiting,
      design,
      regime: String(worked.cells.get(cell(FRICTION, row, "regime").key)),
    });
  }
  return runs;
}
