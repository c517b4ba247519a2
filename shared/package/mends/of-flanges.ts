import { greatestOf } from "../../../src/numeric/extremes.ts";
import { FLANGE_CLASS_NAMES } from "../../../src/pressure/flange-class.ts";
import { cell } from "../../calc-sheet/expression.ts";
import { CLASSES, nozzleLabels } from "../../calc-sheet/sections/pressure-nozzles.ts";
import { stagesOf } from "../../calc-sheet/sections/pressure-stages.ts";
import type { Criterion } from "../../catalogue/parameters/criteria.ts";
import type { Duty } from "../../duty/duty.ts";
import { workedDuty } from "../worked-duty.ts";
import type { Mend } from "./mend.ts";
import { isBroken } from "./verdict-rows.ts";

/** Lowest first in each series. */
const KNOWN: readonly string[] = FLANGE_CLASS_NAMES;

/** Where a flange is above its rating, the class that both nozzles need. */
export function classMends(rows: readonly Criterion[], duty: Duty): readonly Mend[] {
  const isFlange = rows.some((row) => isBroken(row) && /(?:suction|discharge) flange /.test(row.what));
  if (!isFlange || stagesOf(duty).size > 0 || duty.otherPumps.length > 0) return [];
  // A size or facing beside the class would be lost.
  if (duty.flangeClass === undefined || flangeClassText(duty.flangeClass) === undefined) return [];
  const { cells } = workedDuty(duty).worked;
  const needed = nozzleLabels(duty).map((_, row) => String(cells.get(cell(CLASSES, row, "class").key) ?? ""));
  const ranks = needed.map((name) => KNOWN.indexOf(name));
  if (ranks.length === 0 || ranks.includes(-1)) return [];
  const text = KNOWN[greatestOf(ranks)] as string;
  return text === flangeClassText(duty.flangeClass)
    ? []
    : [{ label: `Use ${text} flanges`, place: "flangeClass", text }];
}

/** "Class 150" of "150": the class where nothing else is said. */
function flangeClassText(typed: string): string | undefined {
  const [, series = "Class", number] = /^(?:(class|pn) ?)?(\d+)$/i.exec(typed.trim()) ?? [];
  return number === undefined ? undefined : `${series.toLowerCase() === "pn" ? "PN" : "Class "}${number}`;
}
