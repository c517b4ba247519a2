import { html, type TemplateResult } from "lit";
import type { Duty } from "../../../shared/duty/duty.ts";
import { isSlurry } from "../../../shared/duty/slurry.ts";
import type { HeadAndSuction, Worked } from "../../../shared/package/head-and-suction.ts";
import type { DrawnPoint, DutyCase, PumpOnDuty } from "../../../shared/package/pump-on-duty.ts";
import { amountText } from "../../../shared/text/words.ts";
import { printedUnit, UNIT_SETS, type UnitSetName } from "../../../src/basis/quantities.ts";
import { amount } from "../../../src/basis/result.ts";
import { fromEngine } from "../../../src/basis/units.ts";
import { greatestOf } from "../../../src/numeric/extremes.ts";
import type { PaneContext } from "../context.ts";
import { type NamedCurve, type PumpCurvesShown, pumpCurvesPicture } from "../pictures/pump-curves.ts";
import { type Point, shownPoints, upTo } from "../pictures/pump-curves-frame.ts";
import { candidateNamed } from "../pump/candidates.ts";
import { familyOf } from "../pump/family.ts";

/** Flows that differ by less have one mark in the picture. */
const SAME = 1e-6;

/** The chosen pump on its duty in one picture. */
export function pumpPictureView(
  context: PaneContext,
  duty: Duty,
  pump: PumpOnDuty,
  results: HeadAndSuction,
): TemplateResult {
  const { state } = context;
  const units = state.duty.unitSet;
  const names = {
    flow: printedUnit("flow", units),
    head: printedUnit("head", units),
    power: printedUnit("power", units),
  };
  const shown = shownOf(context, duty, pump, results);
  if (shown === undefined) {
    return html`<p class="hint">Cannot be drawn: the head of the duty cannot be calculated; see the messages above.</p>`;
  }
  return pumpCurvesPicture(shown, names, state.width);
}

function shownOf(
  { state, worked: { verdicts } }: PaneContext,
  duty: Duty,
  pump: PumpOnDuty,
  results: HeadAndSuction,
): PumpCurvesShown | undefined {
  const units = state.duty.unitSet;
  const { flow: flowUnit, head: headUnit } = UNIT_SETS[units];
  const inFlow = (value: number): number => fromEngine(value, flowUnit);
  const inHead = (value: number): number => fromEngine(value, headUnit);
  const inPercent = (value: number): number => 100 * value;
  const pointAt = (flow: Worked, head: Worked): Point | undefined =>
    typeof flow === "number" && typeof head === "number" ? { flow: inFlow(flow), value: inHead(head) } : undefined;
  const asked = duty.flow === undefined ? undefined : pointAt(duty.flow, results.headAsked ?? results.ratedHead);
  if (duty.flow === undefined || asked === undefined || duty.pump === undefined) return undefined;

  const heads = (points: readonly DrawnPoint[]): readonly Point[] => shownPoints(points, inFlow, inHead);
  // Its other curves are on water: they do not go beside one on slurry.
  const family =
    isSlurry(duty) || pump.pumps.length > 0
      ? []
      : familyOf(duty, duty.pump, candidateNamed(state.offers.candidates, pump.name), units);
  const reach = inFlow(
    Math.max(
      duty.flow,
      greatestOf([pump.head, ...family.map(({ points }) => points)].map((all) => all.at(-1)?.flow ?? 0)),
    ),
  );
  const operating = pointAt(pump.operatingPoint.flow, pump.operatingPoint.head);
  return {
    running: { label: runningLabel(pump, units), name: runningName(pump), points: heads(pump.head), kind: "running" },
    pumps: pump.pumps.map(({ name, head }, i) => ({
      name,
      label: `${name} by itself`,
      points: heads(head),
      kind: PUMP_KINDS[i % PUMP_KINDS.length] as NamedCurve["kind"],
    })),
    ofOne:
      pump.pumps[0] === undefined
        ? undefined
        : { name: pump.pumps[0].name, flow: typeof pump.chosenFlow === "number" ? inFlow(pump.chosenFlow) : undefined },
    family: family.map(
      ({ label, points }): NamedCurve => ({
        label,
        name: `${label.slice(0, 1).toLowerCase()}${label.slice(1)}`,
        points: heads(points),
        kind: "family",
      }),
    ),
    systems: pump.systemCurves.map(
      ({ key, label, points }): NamedCurve => ({
        label,
        name: label.replace(/^System/, "system"),
        points: upTo(heads(points), reach),
        kind: systemKind(key),
      }),
    ),
    duty: asked,
    operating,
    cross:
      pump.acceptance === undefined || pump.acceptance.cross.length === 0
        ? undefined
        : { grade: pump.acceptance.grade, stroke: heads(pump.acceptance.cross) },
    measured: pump.measured === undefined ? undefined : pointAt(pump.measured.flow, pump.measured.head),
    ends: endsOf(pump.cases).flatMap(({ label, flow, head }) => {
      const point = pointAt(flow, head);
      return point === undefined || isSame(point, operating) ? [] : [{ label, point }];
    }),
    region:
      pump.region === undefined
        ? undefined
        : {
            leastFlow: inFlow(pump.region.leastFlow),
            greatestFlow: inFlow(pump.region.greatestFlow),
            corners: pump.region.corners.map(({ flow, head }) => ({ flow: inFlow(flow), value: inHead(head) })),
          },
    meets: verdicts.some(({ subject, state: verdict }) => subject === "head" && verdict === "pass"),
    ofBest:
      typeof pump.operatingPoint.bestFlowRatio === "number" ? inPercent(pump.operatingPoint.bestFlowRatio) : undefined,
    preferred:
      pump.preferred === undefined
        ? undefined
        : { leastFlow: inFlow(pump.preferred.leastFlow), greatestFlow: inFlow(pump.preferred.greatestFlow) },
    efficiency: shownPoints(pump.efficiency, inFlow, inPercent),
    shaftPower: shownPoints(pump.shaftPower, inFlow, (value) => fromEngine(value, UNIT_SETS[units].power)),
    npshRequired: heads(pump.npshRequired),
    npshAvailable: heads(pump.npshAvailable),
  };
}

const PUMP_KINDS = ["pump-1", "pump-2", "pump-3"] as const satisfies readonly NamedCurve["kind"][];

function runningLabel({ pumpsRunning = 1, arrangement, speed, pumps }: PumpOnDuty, units: UnitSetName): string {
  if (pumps.length > 0) return arrangement === "series" ? "All pumps in series" : "All pumps together, at their header";
  const at = speed === undefined ? "" : `, ${amountText(amount("speed", speed), units)}`;
  return pumpsRunning === 1 ? `Pump as it runs${at}` : `${pumpsRunning} pumps in ${arrangement}, as they run${at}`;
}

function runningName({ pumpsRunning = 1, pumps }: PumpOnDuty): string {
  if (pumps.length > 0) return "all pumps";
  return pumpsRunning === 1 ? "pump" : `${pumpsRunning} pumps`;
}

/** All states but the duty as stated, and the clear liquid, whose heads are of another liquid. */
function endsOf(cases: readonly DutyCase[]): readonly DutyCase[] {
  return cases.filter(({ key }) => key !== "normal" && key !== "flush");
}

function isSame({ flow }: Point, operating: Point | undefined): boolean {
  return operating !== undefined && Math.abs(flow / operating.flow - 1) < SAME;
}

function systemKind(key: string): NamedCurve["kind"] {
  switch (key) {
    case "least":
      return "least";
    case "greatest":
      return "greatest";
    case "aged":
      return "aged";
    case "greatestAged":
      return "greatest-aged";
    default:
      return "system";
  }
}
