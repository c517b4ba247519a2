import { decodeDuty } from "../../shared/duty/decode.ts";
import type { Duty } from "../../shared/duty/duty.ts";
import { type DutyText, EMPTY_DUTY, EMPTY_PUMP, type PumpText } from "../../shared/duty/duty-text.ts";
import type { FieldKey } from "../../shared/duty/fields.ts";
import { SAMPLE_DUTIES } from "../../shared/duty/samples.ts";

/** The sample of an invented quarry's sump, with a pump chosen. */
export const QUARRY = (SAMPLE_DUTIES[0] as (typeof SAMPLE_DUTIES)[number]).duty;

export type Fields = Partial<Record<FieldKey, string>>;

/** Water lifted 100 ft by a pump 2 ft below it, through short lines. */
const BASE: DutyText = {
  ...EMPTY_DUTY,
  fields: { ...EMPTY_DUTY.fields, flow: "600 gpm", sourceLevel: "0", pumpLevel: "-2 ft", deliveryLevel: "100 ft" },
  suctionLine: [{ pipe: "10in sch40", length: "20 ft", fittings: "1 entrance flush" }],
  dischargeLine: [{ pipe: "8in sch40", length: "500 ft", fittings: "1 exit" }],
};

/** A duty as typed: fields laid over those of a small one, and over that whatever else a case changes. */
export function dutyText(fields: Fields = {}, change: Partial<DutyText> = {}): DutyText {
  const changed = { ...BASE, ...change };
  return { ...changed, fields: { ...changed.fields, ...fields } };
}

/** The same, read. */
export function dutyOf(fields: Fields = {}, change: Partial<DutyText> = {}): Duty {
  return dutyRead(dutyText(fields, change));
}

export function dutyRead(typed: DutyText): Duty {
  const { duty, findings, isComplete } = decodeDuty(typed);
  if (!isComplete) throw new Error(JSON.stringify([...findings]));
  return duty;
}

/** A pump as typed, of rows of flow, head, efficiency and NPSH required; what is left out is blank. */
export function pumpText(rows: readonly (readonly string[])[], change: Partial<PumpText> = {}): PumpText {
  const points = rows.map(([flow = "", head = "", efficiency = "", npshRequired = ""]) => ({
    flow,
    head,
    efficiency,
    npshRequired,
  }));
  return { ...EMPTY_PUMP, name: "invented for the tests", points, ...change };
}

/** A pump of straight figures: 1000 gpm at 200 ft and 70 % takes most. */
export const STRAIGHT_PUMP = pumpText(
  [
    ["0 gpm", "300 ft"],
    ["250 gpm", "295 ft", "50"],
    ["500 gpm", "280 ft", "68"],
    ["750 gpm", "250 ft", "75"],
    ["1000 gpm", "200 ft", "70"],
  ],
  { speed: "1780 rpm", impellerDiameter: "14 in" },
);
