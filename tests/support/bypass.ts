import { type DutyText, EMPTY_OTHER_PUMP, type OtherPumpText, type PumpText } from "../../shared/duty/duty-text.ts";
import { dutyText, type Fields, pumpText } from "./duty-of.ts";

// Case s2-pumps-017 of tests/published/hydraulics-s2-pumps.csv as a duty: hose and branch are each pump's own.
const fT = (bore: number): number => 0.25 / Math.log10(0.0018 / 3.7 / bore) ** 2;
const MAIN_BORE = 18 - (2.12 * 18) / 17;
/** Of each of the two pumps. */
export const BYPASS_CURVE = pumpText(
  [
    ["0", "72", "0", "6.9"],
    ["288", "71.38", "26.29 %", "7.06"],
    ["576", "69.51", "47.2 %", "7.54"],
    ["864", "66.41", "62.72 %", "8.33"],
    ["1151", "62.07", "72.83 %", "9.44"],
    ["1439", "56.49", "77.6 %", "10.86"],
    ["1727", "49.65", "76.98 %", "12.61"],
    ["2015", "41.58", "70.98 %", "14.67"],
  ],
  { name: "A" },
);
/** The bypass of one pump as typed, with what a case changes. */
export const bypass = (fields: Fields = {}, change: Partial<DutyText> = {}): DutyText =>
  dutyText(
    {
      liquid: "water",
      temperature: "70",
      altitude: "600",
      flow: "3000",
      sourceLevel: "588",
      pumpLevel: "600",
      deliveryLevel: "612",
      ...fields,
    },
    {
      suctionLine: [{ pipe: "ID 12 in rough 0.03 mm", length: "40", fittings: "K 0.64" }],
      dischargeLine: [
        { pipe: "ID 10.02 in rough 0.045 mm", length: "10", fittings: `K ${122 * fT(10.02)}`, share: "each" },
        { pipe: `ID ${MAIN_BORE} in rough 0.02 mm`, length: "4200", fittings: `K ${128 * fT(MAIN_BORE)}, 1 exit` },
      ],
      pump: BYPASS_CURVE,
      ...change,
    },
  );

/** A pump as a further one of a station. */
export const otherPump = (pump: PumpText, change: Partial<OtherPumpText> = {}): OtherPumpText => ({
  ...EMPTY_OTHER_PUMP,
  ...pump,
  name: "B",
  ...change,
});
