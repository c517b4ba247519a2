import { figures } from "../../../shared/text/figure.ts";
import { findingText } from "../../../shared/text/finding-text.ts";
import type { Axis } from "../../../shared/tracing/calibration.ts";
import { type AxisKey, TRACED_KEYS } from "../../../shared/tracing/traced-amounts.ts";
import type { TracingState } from "./state.ts";
import { decimalsWorth, type TracingWorked, worthAtStart } from "./worked.ts";

/** Decimals shown on the sheet of each column with an even axis. */
export function sheetDecimals({ calibrations }: TracingWorked): Partial<Record<AxisKey, number>> {
  const decimals: Partial<Record<AxisKey, number>> = {};
  for (const key of TRACED_KEYS) {
    const calibration = calibrations[key];
    if (calibration?.ok !== true) continue;
    const { axes } = calibration.value;
    const worth = worthAtStart(calibration.value);
    if (axes.flow.scale === "linear") decimals.flow = decimalsWorth(worth.flow);
    if (axes.amount.scale === "linear") decimals[key] = decimalsWorth(worth.amount);
  }
  return decimals;
}

/** Where the figures come from: the picture, the axis points, what a pixel is worth, and what was remarked. */
export function sheetNotes(
  { picture, rows }: TracingState,
  { calibrations, findings }: TracingWorked,
): readonly string[] {
  const axes = new Map<string, string>();
  for (const key of TRACED_KEYS) {
    const calibration = calibrations[key];
    if (calibration?.ok !== true) continue;
    const worth = worthAtStart(calibration.value);
    axes.set("flow", axisNote(calibration.value.axes.flow, worth.flow));
    axes.set(key, axisNote(calibration.value.axes.amount, worth.amount));
  }
  const how =
    rows === "as-traced"
      ? "One row a traced point; a blank was not traced at that flow."
      : "Rows stand at the traced flows of the head line; other columns are read between their own traced points.";
  return [
    `Traced from the picture “${picture?.name ?? ""}”, ${picture?.width ?? 0} × ${picture?.height ?? 0} pixels.`,
    ...axes.values(),
    how,
    "Figures are as good as the picture and the click. Check them against printed values; the certified curve governs.",
    ...findings.map((finding) => findingText(finding, "SI")),
  ];
}

function axisNote({ name, unit, scale, points: [first, second] }: Axis, worth: number): string {
  const kind = scale === "log" ? "logarithmic" : "even";
  const start = scale === "log" ? " at its first point" : "";
  const set = `set at ${first.value} and ${second.value} ${unit}`;
  return `The ${name} is ${kind}, ${set}; a pixel of the picture is ${figures(worth)} ${unit}${start}.`;
}
