import type { CurvePointText, PumpKey } from "../../../shared/duty/duty-text.ts";
import type { Quantity } from "../../../src/basis/quantities.ts";

/** A box of the chosen pump: label, quantity, what a blank stands for, and words of help. */
export interface PumpBox {
  readonly label: string;
  /** Absent for texts and plain numbers. */
  readonly quantity?: Quantity;
  readonly whenBlank?: string;
  readonly help: string;
}

/** In the order of the pane. How several pumps stand is asked beside how many there are. */
export const PUMP_KEYS = ["name", "speed", "impellerDiameter", "speedRatio", "trimRatio", "count"] as const;
export type PumpBoxKey = Exclude<PumpKey, "arrangement">;

export const PUMP_BOXES: Readonly<Record<PumpBoxKey, PumpBox>> = {
  name: { label: "Name", help: "As the pump is called in the table or by its maker." },
  speed: { label: "Speed of the curve", quantity: "speed", help: "Speed the curve below was drawn at." },
  impellerDiameter: {
    label: "Impeller of the curve",
    quantity: "size",
    help: "Impeller diameter the curve below was drawn for.",
  },
  speedRatio: {
    label: "Speed ratio",
    quantity: "ratio",
    whenBlank: "1",
    help: "Speed it runs at over the speed of the curve, 0.2 to 2.5. Faster than the curve only within the maker's limit.",
  },
  trimRatio: {
    label: "Trim ratio",
    quantity: "ratio",
    whenBlank: "1",
    help: "Impeller diameter it runs with over that of the curve, 0.75 to 1. The rule overstates the cut: trim in steps.",
  },
  count: { label: "How many alike", whenBlank: "1", help: "Equal pumps that run together." },
};

/** The columns of its curve, as messages name them. */
export const POINT_NAMES: Readonly<Record<keyof CurvePointText, string>> = {
  flow: "flow",
  head: "head",
  efficiency: "efficiency",
  npshRequired: "NPSH required",
};
