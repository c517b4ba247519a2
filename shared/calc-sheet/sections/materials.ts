import type { Duty } from "../../duty/duty.ts";
import { callOf, value } from "../expression.ts";
import type { PlanItem } from "../plan.ts";
import { type RankedList, rankedRow, rankedSpill, remark, statedAmount, statedText } from "./package-inputs.ts";

/** Where the lists of metals, elastomers, seal faces and dry parts begin, and how much of each is printed. */
const PRINTED = [
  { label: "Metals, best first", from: 0, rows: 5 },
  { label: "Elastomers", from: 11, rows: 2 },
  { label: "Seal faces", from: 16, rows: 2 },
  { label: "Dry parts", from: 19, rows: 1 },
] as const;
const ROWS = 20;

/** Materials for the liquid, ranked. Nothing is ranked where the pH is not stated. */
export function materials(duty: Duty): readonly PlanItem[] {
  const { pH, chlorides, solids, solidsHardness } = duty.package;
  if (pH === undefined) return [];
  const list: RankedList = {
    key: "materialChoice",
    label: "Materials for the liquid",
    call: callOf(
      "MATERIAL",
      value("pH"),
      value("temperature"),
      chlorides === undefined ? null : value("chlorides"),
      value("solids"),
      solidsHardness === undefined ? null : value("solidsHardness"),
    ),
    rows: ROWS,
    columns: ["rank", "material", "verdict", "parts", "reasons", "cautions"],
  };
  const hasSolids = duty.pumpLevel > duty.sourceLevel;
  return [
    { kind: "section", text: "Materials" },
    ...statedAmount(duty, "pH", pH),
    ...statedAmount(duty, "chlorides", chlorides),
    ...(hasSolids ? [] : statedAmount(duty, "solids", solids)),
    ...statedText(duty, "solidsHardness", solidsHardness),
    rankedSpill(list),
    ...PRINTED.flatMap(({ label, from, rows }) =>
      Array.from({ length: rows }, (_, i) =>
        rankedRow(list, from + i, i === 0 ? label : "", [
          ["", 1],
          [" (", 2],
          [") for ", 3],
          [". ", 4],
          [" ", 5],
        ]),
      ),
    ),
    remark("materialNotes", "Materials", list.call),
  ];
}
