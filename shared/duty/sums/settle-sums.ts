import { QUANTITIES, type Quantity } from "../../../src/basis/quantities.ts";
import { type Finding, fail, type Result } from "../../../src/basis/result.ts";
import { fieldOfBox } from "../box-field.ts";
import { textIn, withTextIn } from "../boxes.ts";
import { type DutyText, placeKey } from "../duty-text.ts";
import { CASE_KEYS } from "../fields/cases.ts";
import { OWN_KEYS, POINT_COLUMNS, PUMP_KEYS } from "../fields/pump.ts";
import { FIELD_KEYS, FIELDS } from "../fields.ts";
import { placeLabel } from "../place-label.ts";
import { readAmount } from "../read-amount.ts";
import { type SumTree, unitOfAnswer, workOutSum } from "./work-out-sum.ts";
import { otherReadings, sumIn, withAnswer } from "./written-sum.ts";

/** A sum in a box of a duty. */
export interface DutySum {
  readonly place: string;
  readonly text: string;
  readonly quantity: Quantity;
  readonly subject: string;
}

/** The boxes of a duty that hold a sum. */
export function sumsOf(duty: DutyText): readonly DutySum[] {
  return amountBoxes(duty).flatMap(({ place, quantity, subject }) => {
    const text = textIn(duty, place);
    if (!SIGN.test(text)) return [];
    const sum = sumIn(text);
    if (sum === undefined || otherReadings(text, isLength(quantity)) !== undefined) return [];
    // "1/2" and "10+00 ft" are figures.
    if (sum.answer === undefined && readAmount(text, quantity, duty.unitSet, subject).ok) return [];
    return [{ place, text, quantity, subject }];
  });
}

const SIGN = /[-+*/^=×÷·−–x(]/i;

function isLength(quantity: Quantity): boolean {
  return QUANTITIES[quantity].dimension === "length";
}

/** A duty whose sums are worked out, and why some are not. */
export interface SettledSums {
  readonly duty: DutyText;
  readonly refused: ReadonlyMap<string, Finding>;
}

/** Works out the sums of a duty: each text gets what it comes to behind it, and an answer that its sum does not give is replaced. */
export function settleSums(duty: DutyText, sums: readonly DutySum[], treeOf: SumTree | undefined): SettledSums {
  const refused = new Map<string, Finding>();
  let settled = duty;
  for (const { place, text, quantity, subject } of sums) {
    const { sum, answer } = sumIn(text) ?? { sum: text };
    const box = { quantity, unitSet: duty.unitSet, subject, unit: unitOfAnswer(answer) };
    const found: Result<string> =
      treeOf === undefined
        ? fail([{ code: "sum-not-loaded", kind: "error", subject, given: sum }])
        : workOutSum(sum, box, treeOf);
    const [wrong] = found.findings;
    if (!found.ok && wrong !== undefined) refused.set(place, wrong);
    // An answer that cannot be worked out again stands for nothing.
    const next = found.ok ? withAnswer(sum, found.value) : treeOf === undefined ? text : sum;
    if (next !== text) settled = withTextIn(settled, place, next);
  }
  return { duty: settled, refused };
}

interface AmountBox {
  readonly place: string;
  readonly quantity: Quantity;
  readonly subject: string;
}

/** Every box of a duty that takes an amount. */
function amountBoxes(duty: DutyText): readonly AmountBox[] {
  const lines = (["suctionLine", "dischargeLine"] as const).flatMap((line) =>
    duty[line].flatMap((_, row): readonly AmountBox[] => [
      { place: placeKey({ line, row, column: "length" }), quantity: "length", subject: "length" },
      { place: placeKey({ line, row, column: "level" }), quantity: "elevation", subject: "level at its end" },
    ]),
  );
  const pumps = [undefined, ...(duty.otherPumps ?? []).keys()].flatMap((other) => {
    const pump = other === undefined ? duty.pump : duty.otherPumps?.[other];
    if (pump === undefined) return [];
    return [
      ...PUMP_KEYS.map((key) => placeKey({ pump: key, other })),
      ...(other === undefined ? [] : OWN_KEYS.map((own) => placeKey({ own, other }))),
      ...pump.points.flatMap((_, row) =>
        POINT_COLUMNS.map((column) => placeKey({ pump: "points", row, column, other })),
      ),
    ];
  });
  const cases = (duty.cases ?? []).flatMap((_, i) =>
    [...CASE_KEYS, "hours" as const].map((box) => placeKey({ case: i, box })),
  );
  const others = [...pumps, ...cases].flatMap((place): readonly AmountBox[] => {
    const field = fieldOfBox(place);
    if (field?.quantity === undefined) return [];
    return [{ place, quantity: field.quantity, subject: field.label }];
  });
  return [...OF_THE_DUTY, ...lines, ...others];
}

const OF_THE_DUTY: readonly AmountBox[] = FIELD_KEYS.flatMap((key) => {
  const { quantity } = FIELDS[key];
  return quantity === undefined ? [] : [{ place: key, quantity, subject: placeLabel(key) }];
});
