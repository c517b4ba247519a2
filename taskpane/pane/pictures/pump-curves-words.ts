import { figureIn } from "../../../shared/text/figure.ts";
import { smoothly } from "./chart/curve-values.ts";
import type { PumpCurvesShown, PumpUnits } from "./pump-curves.ts";
import { endsText, type Point, upTo } from "./pump-curves-frame.ts";

/** Flows that differ by less are one. */
const SAME = 1e-6;

/** What the picture shows, first: where the pump runs, and whether NPSH is there for it. */
export function pumpFinding(shown: PumpCurvesShown, units: PumpUnits): string {
  return [runsText(shown, units), npshText(shown, units)].filter((text) => text !== "").join(" ");
}

function runsText({ duty, operating, meets, ofBest }: PumpCurvesShown, units: PumpUnits): string {
  const flow = (value: number): string => `${figureIn(units.flow, value)} ${units.flow}`;
  const at = (point: Point): string => `${flow(point.flow)} at ${figureIn(units.head, point.value)} ${units.head}`;
  if (operating === undefined) return `Pump and system do not meet on the curve; the duty is ${at(duty)}.`;
  const best = ofBest === undefined ? "" : `, ${figureIn("%", ofBest)} % of BEP flow`;
  const short = duty.flow - operating.flow;
  if (short > SAME * duty.flow) {
    const by = figureIn("%", (100 * short) / duty.flow);
    return `Pump gives ${at(operating)}${best}: short of the duty of ${flow(duty.flow)} by ${by} %.`;
  }
  return meets
    ? `Pump meets the duty of ${at(duty)} and runs at ${at(operating)}${best}.`
    : `Pump runs at ${at(operating)}${best}; the duty is ${at(duty)}.`;
}

/** Where NPSH available falls below NPSH required, and by how much at most. */
export interface NpshShort {
  /** Undefined where it is short from the first flow on. */
  readonly above: number | undefined;
  readonly most: number;
}

export function npshShort(shown: PumpCurvesShown): NpshShort | undefined {
  const margins = npshMargins(shown);
  const first = margins.findIndex(({ value }) => value < 0);
  const at = margins[first];
  if (at === undefined) return undefined;
  const before = margins[first - 1];
  const above =
    before === undefined
      ? undefined
      : before.flow + ((at.flow - before.flow) * before.value) / (before.value - at.value);
  return { above, most: margins.reduce((most, { value }) => Math.max(most, -value), 0) };
}

/** NPSH available less required, at the flows both are known at. */
export function npshMargins({ running, npshRequired, npshAvailable }: PumpCurvesShown): readonly Point[] {
  const reach = upTo(npshAvailable, running.points.at(-1)?.flow ?? 0);
  const flows = [...new Set([...npshRequired, ...reach].map(({ flow }) => flow))].sort((a, b) => a - b);
  const readOf = (points: readonly Point[]) => smoothly(points.map(({ flow, value }) => [flow, value]));
  const [availableAt, requiredAt] = [readOf(reach), readOf(npshRequired)];
  return flows.flatMap((flow) => {
    const [available, required] = [availableAt(flow), requiredAt(flow)];
    return available === undefined || required === undefined ? [] : [{ flow, value: available - required }];
  });
}

function npshText(shown: PumpCurvesShown, units: PumpUnits): string {
  const margins = npshMargins(shown);
  if (margins.length < 2) return "";
  const head = (value: number): string => `${figureIn(units.head, value)} ${units.head}`;
  const of = shown.ofOne === undefined ? "" : ` of ${shown.ofOne.name}`;
  const short = npshShort(shown);
  if (short === undefined) {
    const least = margins.reduce((so, { value }) => Math.min(so, value), Number.POSITIVE_INFINITY);
    return `NPSH available${of} stays above NPSH required over the curve, by ${head(least)} at the closest.`;
  }
  const where =
    short.above === undefined ? "over the curve" : `above ${figureIn(units.flow, short.above)} ${units.flow}`;
  return `NPSH margin${of} short by up to ${head(short.most)} ${where}.`;
}

/** The picture in words: the finding, then the curves. */
export function pumpCurvesWords(shown: PumpCurvesShown, units: PumpUnits): string {
  const head = { flow: units.flow, value: units.head };
  const at = ({ flow, value }: Point): string =>
    `${figureIn(units.head, value)} ${units.head} at ${figureIn(units.flow, flow)} ${units.flow}`;
  const between = ({
    leastFlow,
    greatestFlow,
  }: {
    readonly leastFlow: number;
    readonly greatestFlow: number;
  }): string => `${figureIn(units.flow, leastFlow)} to ${figureIn(units.flow, greatestFlow)} ${units.flow}`;
  const { region, preferred, efficiency, shaftPower } = shown;
  const best = efficiency.reduce<Point | undefined>(
    (top, point) => (top === undefined || point.value > top.value ? point : top),
    undefined,
  );
  return [
    pumpFinding(shown, units),
    ...[shown.running, ...shown.pumps, ...shown.family, ...shown.systems].map(
      ({ label, points }) => `${label}: ${endsText(points, head)}.`,
    ),
    ...shown.ends.map(({ label, point }) => `${label}: ${at(point)}.`),
    ...(preferred === undefined ? [] : [`Preferred operating region: ${between(preferred)}.`]),
    ...(region === undefined || !(region.greatestFlow > region.leastFlow)
      ? []
      : [`Operating range: ${between(region)}.`]),
    ...(best === undefined
      ? []
      : [`Efficiency: ${figureIn("%", best.value)} % at best, at ${figureIn(units.flow, best.flow)} ${units.flow}.`]),
    ...(shaftPower.length === 0
      ? []
      : [`Shaft power: ${endsText(shaftPower, { flow: units.flow, value: units.power })}.`]),
    ...(shown.npshRequired.length === 0 ? [] : [`NPSH required: ${endsText(shown.npshRequired, head)}.`]),
    ...(shown.npshAvailable.length === 0
      ? []
      : [`NPSH available: ${endsText(upTo(shown.npshAvailable, shown.running.points.at(-1)?.flow ?? 0), head)}.`]),
  ].join(" ");
}
