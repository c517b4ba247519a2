import type { DutyText } from "../../shared/duty/duty-text.ts";
import { QUARRY } from "./duty-of.ts";

const { pump } = QUARRY;
if (pump === undefined) throw new Error("the sample has no pump");

/**
 * The quarry with a second, slower pump of the same curve beside the first, rows with share and level, and two cases that
 * state between them every box of a case.
 */
export const STATION: DutyText = {
  ...QUARRY,
  fields: { ...QUARRY.fields, flow: "1500" },
  suctionLine: QUARRY.suctionLine.map((row) => ({ ...row, share: "1/2" })),
  dischargeLine: QUARRY.dischargeLine.map((row, i) => ({
    ...row,
    ...(i === 0 ? { share: "each" } : { level: "174" }),
  })),
  otherPumps: [
    {
      ...pump,
      name: "second (invented)",
      speedRatio: "0.94",
      level: "1",
      checkValve: "yes",
      suctionSize: "8",
      dischargeSize: "6",
      flangeClass: "150",
    },
  ],
  cases: [
    {
      name: "storm",
      hours: "300",
      fields: {
        flow: "1550",
        sourceLevel: "100",
        deliveryLevel: "175",
        sourcePressure: "1",
        pumpsRunning: "1",
        pipe: "new",
      },
    },
    {
      name: "summer",
      hours: "2000",
      fields: {
        deliveryPressure: "1",
        liquid: "water",
        temperature: "80",
        altitude: "900",
        frictionMargin: "5",
        pipe: "aged",
        speedRatio: "0.97",
      },
    },
  ],
};
