import { checkInputs, type Method } from "../../../src/basis/method.ts";
import { amount, andThen, type Finding, type Result, succeed, withoutRepeats } from "../../../src/basis/result.ts";
import { explanationsOf } from "../../../src/field/explanation.ts";
import {
  type FieldCheck,
  type FieldUncertainties,
  fieldCheck,
  fieldCheckMethod,
} from "../../../src/field/field-check.ts";
import { type Uncertainty, uncertaintyOf } from "../../../src/field/uncertainty.ts";
import type { Liquid } from "../../../src/liquid/liquid.ts";
import { acceptanceGradeNamed } from "../../../src/pump/acceptance.ts";
import type { PumpCurve } from "../../../src/pump/pump-curve.ts";
import { ACCEPTANCE_GRADES, type AcceptanceGradeRow } from "../../../src/tables/acceptance-grades.ts";
import { EXPLANATION_TEXTS } from "../../text/explanation-text.ts";
import { defineEntry } from "../entry.ts";
import { choice, quantity, text } from "../parameter.ts";
import { curve } from "../parameters/curve.ts";
import {
  atTheirSpeed,
  type FieldReadings,
  fieldReadings,
  headUncertainty,
  instrument,
} from "../parameters/field-readings.ts";
import { liquid, temperature } from "../parameters/liquid.ts";
import { speedRatio, trimRatio } from "../parameters/running-pump.ts";

const BAND =
  "The curve is carried to the speed of each point (H r², Q r, P r³) and compared at its flow. The band is that of the acceptance grade the pump was bought with, flow or head within it being enough, efficiency down to its tolerance and power up to it; without a grade 5 % of head, a house choice. Within: the deviation and its uncertainty both stay inside the band. Outside: both lie beyond it. Between the two nobody can tell with these gauges. Readings on site do not settle a guarantee unless the contract says so.";

const parameters = {
  readings: fieldReadings,
  curve,
  speedRatio,
  trimRatio,
  curveSpeed: quantity("speed", {
    about: "Curve speed, where the readings hold the speed measured",
    example: "1750",
    range: "above 0",
    whenLeftOut: { value: null, shown: "no speed was measured: the speed ratio counts" },
  }),
  acceptanceGrade: text<AcceptanceGradeRow | null>(
    {
      about: "Acceptance grade",
      example: '"2B"',
      choices: ACCEPTANCE_GRADES.map(({ grade }) => grade),
      whenLeftOut: { value: null, shown: "none: a band of 5 % of head (house choice)" },
    },
    (given) => acceptanceGradeNamed(given),
  ),
  flowMeter: instrument(
    "flow",
    "What measured the flow, or how far it may be off",
    "good to 5 %, a clamp-on meter (house choice)",
  ),
  headUncertainty,
  powerMeter: instrument("power", "What measured the power, or how far it may be off", "good to 2 %, a utility meter"),
  speedMeter: instrument(
    "speed",
    "What measured the speed, or how far it may be off",
    "good to 0.1 %, a tachometer, where speeds were measured; to 1 % where not (house choice)",
  ),
  liquid,
  temperature,
} as const;

interface Stated {
  readonly readings: FieldReadings;
  readonly curve: PumpCurve;
  readonly speedRatio: number;
  readonly trimRatio: number;
  readonly curveSpeed: number | null;
  readonly acceptanceGrade: AcceptanceGradeRow | null;
  readonly flowMeter: Uncertainty | null;
  readonly headUncertainty: Uncertainty | null;
  readonly powerMeter: Uncertainty | null;
  readonly speedMeter: Uncertainty | null;
  readonly liquid: Liquid;
  readonly temperature: number;
}

/** A speed nobody measured, such as that of a motor by its plate: good to 1 %. House choice. */
const UNMEASURED: Uncertainty = { kind: "part", part: 0.01 };

function checksOf(stated: Stated): Result<readonly FieldCheck[]> {
  const isUnmeasured = stated.readings.points.some(({ speed }) => speed === null);
  const uncertainties: FieldUncertainties = {
    flow: stated.flowMeter,
    head: stated.headUncertainty,
    power: stated.powerMeter,
    speed: stated.speedMeter ?? (isUnmeasured ? UNMEASURED : null),
  };
  const checked = andThen(stated.liquid.at(stated.temperature), ({ density }) =>
    andThen(atTheirSpeed(stated.readings, stated.curveSpeed, stated.speedRatio), (points) =>
      fieldCheck({
        curve: stated.curve,
        trimRatio: stated.trimRatio,
        points,
        uncertainties,
        grade: stated.acceptanceGrade,
        density,
      }),
    ),
  );
  return {
    ...checked,
    findings: withoutRepeats([
      ...checked.findings,
      ...(checked.ok && isUnmeasured ? [speedTaken(stated.speedRatio)] : []),
    ]),
  };
}

function speedTaken(ratio: number): Finding {
  return { code: "field-speed-taken", kind: "assumed", subject: "speed", found: amount("ratio", ratio) };
}

export const FIELDCHECK = defineEntry({
  id: "FIELDCHECK",
  group: "Pump",
  summary: "What was measured at a running pump compared with its curve, with what the readings leave open",
  method: `${BAND} Deviations are measured over curve less 1, that of flow at the measured head. Their uncertainty is the root of the sum of squares of head, flow through the slope of the curve, and speed twice (power thrice), at two standard deviations (JCGM 100). Give a viscous liquid's curve corrected (VISCOUSCURVE).`,
  cites: fieldCheckMethod.cites,
  parameters,
  answer: {
    kind: "table",
    name: "field check",
    columns: {
      flow: { name: "flow", quantity: "flow" },
      head: { name: "head", quantity: "head" },
      curveHead: { name: "head of the curve", quantity: "head" },
      headDeviation: { name: "head over curve", quantity: "percent" },
      headOpen: { name: "may be off by", quantity: "percent" },
      flowDeviation: { name: "flow over curve", quantity: "percent" },
      flowOpen: { name: "flow may be off by", quantity: "percent" },
      efficiency: { name: "efficiency", quantity: "percent" },
      curveEfficiency: { name: "efficiency of the curve", quantity: "percent" },
      efficiencyDeviation: { name: "efficiency over curve", quantity: "percent" },
      efficiencyOpen: { name: "efficiency may be off by", quantity: "percent" },
      curvePower: { name: "power of the curve", quantity: "power" },
      powerDeviation: { name: "power over curve", quantity: "percent" },
      powerOpen: { name: "power may be off by", quantity: "percent" },
      verdict: { name: "verdict" },
    },
  },
  examples: [
    {
      args: [
        [
          ["flow", "head", "speed"],
          [1180, 89.72097, 1735],
        ],
        [["flow", "head"], ...Array.from({ length: 32 }, (_, i) => [50 * i, 110 - 28 * ((50 * i) / 1550) ** 2])],
        null,
        null,
        1750,
        "2B",
        "2 %",
        1.209626,
        null,
        "0 %",
      ],
      part: [1, 3],
      answer: -2.3654,
      within: 0.002,
      source: "worked in Python apart from this product: 110 − 28 (Q/1550)² at 1750 rpm carried to 1735 rpm",
    },
  ],
  run: (stated) =>
    andThen(checksOf(stated), (checks) =>
      succeed(
        checks.map((check) => ({
          flow: check.flow,
          head: check.head,
          curveHead: check.curveHead,
          headDeviation: check.headDeviation.value,
          headOpen: check.headDeviation.uncertainty,
          flowDeviation: check.flowDeviation?.value,
          flowOpen: check.flowDeviation?.uncertainty,
          efficiency: check.efficiency,
          curveEfficiency: check.curveEfficiency,
          efficiencyDeviation: check.efficiencyDeviation?.value,
          efficiencyOpen: check.efficiencyDeviation?.uncertainty,
          curvePower: check.curvePower,
          powerDeviation: check.powerDeviation?.value,
          powerOpen: check.powerDeviation?.uncertainty,
          verdict: check.verdict,
        })),
      ),
    ),
});

export const POWER_SOURCES = ["shaft", "electric meter", "fuel"] as const;

const rowsMethod = {
  cites: fieldCheckMethod.cites,
  inputs: { rows: { name: "rows", quantity: "ratio", atLeast: 1, atMost: 20, isWhole: true } },
} as const satisfies Method<"rows">;

const rows = quantity("ratio", {
  about: "Rows of the answer under its headings",
  example: "5",
  range: "a whole number from 1 to 20",
  whenLeftOut: { value: null, shown: "as many as there are reasons" },
});

export const NOTHING_DIFFERS = "nothing: no reading differs from the curve beyond its uncertainty";
export const NO_USUAL_CAUSE = "no usual cause has these signs";

export const FIELDREASONS = defineEntry({
  id: "FIELDREASONS",
  group: "Pump",
  summary: "What could explain why a pump differs from its curve, and what would tell",
  method: `Usual causes (common practice, no source) whose signs match what FIELDCHECK finds beyond its uncertainty, at every point: head, efficiency and power below, on or above the curve. One point leaves several open; a second near shutoff parts speed, suction and wear. What was not measured rules nothing out. ${BAND}`,
  cites: fieldCheckMethod.cites,
  parameters: {
    ...parameters,
    expectedFlow: quantity("flow", {
      about: "Flow the system was to give with this pump",
      range: "above 0",
      whenLeftOut: { value: null, shown: "not known: nothing is said of the system" },
    }),
    powerFrom: choice(POWER_SOURCES, {
      about: "Where the shaft power comes from",
      also: { electric: "electric meter", meter: "electric meter", engine: "fuel", torque: "shaft" },
      whenLeftOut: "electric meter",
    }),
    rows,
  },
  answer: {
    kind: "table",
    name: "what could explain it",
    columns: { likely: { name: "could be" }, check: { name: "what would tell" } },
  },
  examples: [
    {
      args: [
        [
          ["flow", "head"],
          [1000, 80],
        ],
        [
          ["flow", "head"],
          [0, 120],
          [500, 110],
          [1000, 80],
          [1200, 62],
        ],
      ],
      part: [1, 0],
      answer: NOTHING_DIFFERS,
      source: "by hand: the point lies on the curve",
    },
  ],
  run: ({ expectedFlow, powerFrom, rows: asked, ...stated }) =>
    andThen(checkInputs(rowsMethod, { rows: asked ?? 1 }), () =>
      andThen(checksOf(stated), (checks) =>
        andThen(uncertaintyOf(1, stated.flowMeter, "flow"), (flowUncertainty) => {
          const isElectric = powerFrom === "electric meter";
          const found = explanationsOf({ checks, expectedFlow, flowUncertainty, isElectric });
          const said = checks.length === 1 && found.length > 1 ? [ONE_POINT] : [];
          const reasons = found.length > 0 ? found.map((one) => EXPLANATION_TEXTS[one]) : [noneOf(checks)];
          const blank = Array.from({ length: Math.max(0, (asked ?? 0) - reasons.length) }, () => NO_REASON);
          return succeed([...reasons, ...blank], said);
        }),
      ),
    ),
});

const NO_REASON = { likely: "", check: "" };

function noneOf(checks: readonly FieldCheck[]): typeof NO_REASON {
  return checks.every(isOnCurve)
    ? { likely: NOTHING_DIFFERS, check: "" }
    : { likely: NO_USUAL_CAUSE, check: "read again, and at a second setting of the valve" };
}

const ONE_POINT: Finding = { code: "field-one-point", kind: "check", subject: "readings" };

function isOnCurve({ headDeviation, efficiencyDeviation, powerDeviation }: FieldCheck): boolean {
  return [headDeviation, efficiencyDeviation, powerDeviation].every(
    (one) => one === null || Math.abs(one.value) <= one.uncertainty,
  );
}
