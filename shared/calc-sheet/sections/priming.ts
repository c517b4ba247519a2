import type { Duty } from "../../duty/duty.ts";
import { callOf, range, value } from "../expression.ts";
import type { PlanItem } from "../plan.ts";
import { LIQUID_TAIL } from "./liquid.ts";
import { type RankedList, rankedRow, rankedSpill, remark, statedAmount, statedText } from "./package-inputs.ts";

const PRIME_TIME = callOf(
  "PRIMETIME",
  range("suctionLine"),
  value("suctionLift"),
  value("airPump"),
  value("casingVolume"),
  value("altitude"),
  ...LIQUID_TAIL,
);

const METHODS: RankedList = {
  key: "primingMethods",
  label: "Ways of priming",
  call: callOf(
    "PRIMING",
    value("suctionLift"),
    range("suctionLine"),
    value("solids"),
    value("altitude"),
    ...LIQUID_TAIL,
  ),
  rows: 5,
  columns: ["rank", "method", "verdict", "primeTime", "reasons", "needs", "cautions"],
};

/** How a pump above its liquid is primed, and how long that takes. Nothing where it is flooded. */
export function priming(duty: Duty): readonly PlanItem[] {
  if (duty.pumpLevel <= duty.sourceLevel) return [];
  return [
    { kind: "section", text: "Priming" },
    ...statedText(duty, "airPump", duty.package.airPump),
    ...statedAmount(duty, "casingVolume", duty.package.casingVolume),
    ...statedAmount(duty, "solids", duty.package.solids),
    {
      kind: "result",
      key: "primeTime",
      label: "Time to prime",
      quantity: "duration",
      expression: PRIME_TIME,
      how: "With the water rising in the line. The greatest lift by NPSH is a separate limit.",
      main: true,
    },
    rankedSpill(METHODS),
    ...Array.from({ length: METHODS.rows }, (_, row) =>
      rankedRow(METHODS, row, row === 0 ? "Methods, best first" : "", [
        ["", 1],
        [" (", 2],
        ["). ", 4],
        [" Needs: ", 5],
        [" Mind: ", 6],
      ]),
    ),
    remark("primeTimeNotes", "Time to prime", PRIME_TIME),
  ];
}
