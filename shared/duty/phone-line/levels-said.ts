import type { UnitSetName } from "../../../src/basis/quantities.ts";
import type { FieldKey } from "../fields.ts";
import { type SaidAmount, sumText, withUnit } from "./amounts.ts";
import type { Height } from "./said.ts";

/** A height said, by its place among the parts. */
export interface SaidHeight {
  readonly part: number;
  readonly kind: Height;
  readonly amount: SaidAmount;
}

/** A level that follows from what was said, by the part that it follows from. */
export interface SaidLevel {
  readonly part: number;
  readonly key: Extract<FieldKey, "sourceLevel" | "pumpLevel" | "deliveryLevel">;
  readonly text: string;
  /** How it follows, where it was not said as it stands. */
  readonly remark?: string;
}

export interface RefusedHeight {
  readonly part: number;
  readonly refused: string;
  readonly instead: readonly string[];
}

const LEVELS = { "source level": "sourceLevel", "pump level": "pumpLevel", "delivery level": "deliveryLevel" } as const;

/** Whether a height by itself decides where the pump stands. */
const OF_THE_PUMP: readonly Height[] = ["lift", "flooded"];

/** The three levels as far as heights and levels tell them. A level nobody gave is counted from the source, at 0. */
export function levelsSaid(
  heights: readonly SaidHeight[],
  unitSet: UnitSetName,
): { readonly levels: readonly SaidLevel[]; readonly refused: readonly RefusedHeight[] } {
  const levels: SaidLevel[] = [];
  const refused: RefusedHeight[] = [];
  const known: Partial<Record<SaidLevel["key"], string>> = {};
  const spelled = ({ amount }: SaidHeight): string => withUnit(amount, "elevation", unitSet);
  const refuse = ({ part }: SaidHeight, why: string, instead: readonly string[] = []): void => {
    refused.push({ part, refused: why, instead });
  };
  const give = (part: number, key: SaidLevel["key"], text: string, remark?: string): void => {
    known[key] = text.split(" = ").at(-1) as string;
    levels.push({ part, key, text, ...(remark !== undefined && { remark }) });
  };
  const first = takeFirst(heights, refuse);
  for (const [kind, key] of Object.entries(LEVELS)) {
    const said = first.get(kind as Height);
    if (said === undefined) continue;
    give(said.part, key, said.amount.text);
    known[key] = spelled(said);
  }
  const fromSource = (part: number): string => {
    if (known.sourceLevel === undefined) give(part, "sourceLevel", "0", "levels are counted from the source, at 0");
    return known.sourceLevel as string;
  };
  placePump();
  placeDelivery();
  return { levels, refused };

  function placePump(): void {
    const end = first.get("rise") ?? first.get("drop") ?? first.get("static");
    const either = first.get("either");
    // Beside a rise, a lift is that of the suction.
    const isSuction = either !== undefined && end !== undefined && first.get("lift") === undefined;
    if (either !== undefined && !isSuction) {
      const { text } = either.amount;
      refuse(either, "a lift of the suction, or of the whole? Say which", [`suction lift ${text}`, `static ${text}`]);
    }
    const said = OF_THE_PUMP.flatMap((kind) => first.get(kind) ?? []);
    const [lift = isSuction ? either : undefined, ...further] = said;
    for (const each of further) refuse(each, "where the pump stands is said twice");
    if (lift === undefined) return;
    if (known.sourceLevel !== undefined && known.pumpLevel !== undefined) {
      refuse(lift, "the levels of source and pump are said already");
      return;
    }
    const isFlooded = lift.kind === "flooded";
    const height = spelled(lift);
    const where = isFlooded ? "below the source" : "above the source";
    if (known.pumpLevel !== undefined) {
      give(
        lift.part,
        "sourceLevel",
        sumText(known.pumpLevel, isFlooded ? "+" : "-", height),
        `the pump stands ${where}`,
      );
      return;
    }
    const isFromZero = known.sourceLevel === undefined;
    const source = fromSource(lift.part);
    const text = isFromZero
      ? `${isFlooded ? "-" : ""}${lift.amount.text}`
      : sumText(source, isFlooded ? "-" : "+", height);
    give(lift.part, "pumpLevel", text, `the pump stands ${where}`);
    if (isFromZero) known.pumpLevel = `${isFlooded ? "-" : ""}${height}`;
  }

  function placeDelivery(): void {
    const ends = (["rise", "drop", "static"] as const).flatMap((kind) => first.get(kind) ?? []);
    const [end, ...further] = ends;
    for (const each of further) refuse(each, "how high the line delivers is said twice");
    if (end === undefined) return;
    if (known.deliveryLevel !== undefined) {
      refuse(end, "the delivery level is said already");
      return;
    }
    if (known.pumpLevel === undefined) {
      refuse(end, "where does the pump stand? Say its suction lift, or how far it is flooded, too");
      return;
    }
    const height = spelled(end);
    if (end.kind === "static") {
      const isFromZero = known.sourceLevel === undefined || known.sourceLevel === "0";
      const source = fromSource(end.part);
      const text = isFromZero ? end.amount.text : sumText(source, "+", height);
      give(end.part, "deliveryLevel", text, "a static head counts from the source");
      return;
    }
    give(
      end.part,
      "deliveryLevel",
      sumText(known.pumpLevel, end.kind === "rise" ? "+" : "-", height),
      `it delivers ${end.kind === "rise" ? "above" : "below"} the pump`,
    );
  }
}

function takeFirst(
  heights: readonly SaidHeight[],
  refuse: (height: SaidHeight, why: string) => void,
): ReadonlyMap<Height, SaidHeight> {
  const first = new Map<Height, SaidHeight>();
  for (const height of heights) {
    if (first.has(height.kind)) refuse(height, "this is said twice");
    else first.set(height.kind, height);
  }
  return first;
}
