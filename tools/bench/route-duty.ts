import type { CaseText, DutyText, SegmentText } from "../../shared/duty/duty-text.ts";
import { SAMPLE_DUTIES } from "../../shared/duty/samples.ts";

const RUNS = 50;

/** What the cases state anew, each something of its own. */
const CASES: readonly (readonly [name: string, hours: string, fields: CaseText["fields"]])[] = [
  ["dry weather", "2000", { flow: "900" }],
  ["storm", "200", { flow: "1350", sourceLevel: "102" }],
  ["sump full", "300", { sourceLevel: "106" }],
  ["sump drawn down", "300", { sourceLevel: "95" }],
  ["summer", "600", { temperature: "86" }],
  ["start on sea water", "10", { liquid: "sea water" }],
  ["aged pipe", "800", { pipe: "aged" }],
  ["aged pipe, summer, low", "100", { pipe: "aged", temperature: "86", sourceLevel: "96" }],
  ["outlet raised", "200", { deliveryLevel: "180" }],
  ["both running", "100", { pumpsRunning: "2", flow: "1500" }],
  ["on the hill", "50", { altitude: "3000" }],
  ["pressed", "50", { deliveryPressure: "5", frictionMargin: "15" }],
];

/** A duty with every section of the package: twelve cases of a route of fifty runs over two hills. */
export function routeDuty(): DutyText {
  const quarry = SAMPLE_DUTIES[0]?.duty;
  if (quarry === undefined) throw new Error("no sample to start from");
  const levels = Array.from({ length: RUNS }, (_, i) => 112 + 40 * Math.sin((2.5 * Math.PI * i) / RUNS) ** 2 + 0.4 * i);
  const dischargeLine = levels.map((level, i): SegmentText => {
    const isLast = i === RUNS - 1;
    return {
      pipe: i < 3 ? "8in sch40" : i % 7 === 0 ? "10in sch40" : "10in HDPE DR17",
      length: String(30 + ((i * 37) % 60)),
      fittings: i === 0 ? "1 swing check, 1 gate" : isLast ? "1 elbow 45, 1 exit" : i % 3 === 0 ? "2 elbow 45" : "",
      level: isLast ? "174" : level.toFixed(1),
    };
  });
  const cases = CASES.map(([name, hours, fields]): CaseText => ({ name, hours, fields }));
  return { ...quarry, dischargeLine, cases };
}
