import { outOfRange } from "../../src/basis/method.ts";
import { UNIT_SETS } from "../../src/basis/quantities.ts";
import { type Finding, fail, type Result, succeed } from "../../src/basis/result.ts";
import type { Liquid } from "../../src/liquid/liquid.ts";
import { liquidNamed } from "../../src/liquid/liquid-name.ts";
import type { CountedFitting } from "../../src/pipework/fitting.ts";
import type { Pipe } from "../../src/pipework/pipe.ts";
import { pipeNamed } from "../../src/pipework/pipe-name.ts";
import { acceptanceGradeNamed } from "../../src/pump/acceptance.ts";
import type { AcceptanceGradeRow } from "../../src/tables/acceptance-grades.ts";
import { fittings } from "../catalogue/parameters/fittings.ts";
import { decodePackage } from "./decode-package.ts";
import { decodePump, isBlankPump } from "./decode-pump.ts";
import type { Duty, DutySegment } from "./duty.ts";
import { type DutyText, FIELD_KEYS, type FieldKey, type LineKey, placeKey, type SegmentText } from "./duty-text.ts";
import { FIELDS } from "./fields.ts";
import { readAmount } from "./read-amount.ts";

export interface Decoded {
  /** The whole duty, once every field can be read. */
  readonly duty: Duty | undefined;
  /** What is wrong or worth a remark, by the place it concerns. */
  readonly findings: ReadonlyMap<string, readonly Finding[]>;
}

const CURVE_REACH = 1.5;

const ROUNDING = 1e-9;

const LINE_NAMES: Readonly<Record<LineKey, string>> = {
  suctionLine: "suction line",
  dischargeLine: "discharge line",
};

/** Reads each typed text by itself, so that a mistake in one never spoils another. */
export function decodeDuty(typed: DutyText): Decoded {
  const findings = new Map<string, readonly Finding[]>();
  const assumed = new Set<FieldKey>();

  function keep<T>(key: string, result: Result<T>): T | undefined {
    if (result.findings.length > 0) findings.set(key, result.findings);
    return result.ok ? result.value : undefined;
  }

  function amountOf(key: FieldKey): number | undefined {
    const field = FIELDS[key];
    const given = typed.fields[key];
    if (given.trim() !== "") {
      return keep(key, readAmount(given, field.quantity ?? "ratio", typed.unitSet, field.label));
    }
    if (typeof field.whenBlank === "number") {
      assumed.add(key);
      return field.whenBlank;
    }
    if (field.required) keep(key, leftOut(field.label, field.help));
    return undefined;
  }

  function liquidOf(): Liquid | undefined {
    const given = typed.fields.liquid.trim();
    if (given === "") assumed.add("liquid");
    return keep("liquid", liquidNamed(given === "" ? String(FIELDS.liquid.whenBlank) : given));
  }

  function lineOf(line: LineKey): readonly DutySegment[] | undefined {
    const rows = typed[line]
      .map((segment, row) => ({ segment, row }))
      .filter(({ segment }) => !isBlank(segment))
      .map(({ segment, row }) => segmentOf(line, row, segment));
    if (rows.length === 0) {
      const place = placeKey({ line, row: 0, column: "pipe" });
      keep(place, leftOut(LINE_NAMES[line], "one row at least: pipe, length, fittings"));
      return undefined;
    }
    return rows.every((row) => row !== undefined) ? (rows as readonly DutySegment[]) : undefined;
  }

  function segmentOf(line: LineKey, row: number, segment: SegmentText): DutySegment | undefined {
    const key = (column: keyof SegmentText): string => placeKey({ line, row, column });
    const pipe: Pipe | undefined = keep(
      key("pipe"),
      segment.pipe.trim() === "" ? leftOut("pipe", 'a name such as "6in sch40"') : pipeNamed(segment.pipe),
    );
    const length = keep(
      key("length"),
      segment.length.trim() === "" ? leftOut("length", "the developed length of this run") : readLength(segment.length),
    );
    const counted = keep(key("fittings"), readFittings(segment.fittings));
    if (pipe === undefined || length === undefined || counted === undefined) return undefined;
    return { typed: segment, segment: { pipe, length, fittings: counted } };
  }

  function readLength(given: string): Result<number> {
    const read = readAmount(given, "length", typed.unitSet, "length");
    if (!read.ok || read.value >= 0) return read;
    return fail([outOfRange("length", "length", read.value, "at least", 0)]);
  }

  function readFittings(given: string): Result<readonly CountedFitting[]> {
    if (given.trim() === "") return succeed([]);
    return fittings.read([[given]], { name: "fittings", unitSet: typed.unitSet, units: UNIT_SETS[typed.unitSet] });
  }

  /** Levels typed to a hundredth may meet the static head to a rounding of it. */
  function checkStaticHead(
    key: "leastStaticHead" | "greatestStaticHead",
    value: number | undefined,
    side: "at most" | "at least",
    staticHead: number,
  ): void {
    if (value === undefined) return;
    const excess = side === "at most" ? value - staticHead : staticHead - value;
    if (excess <= ROUNDING * Math.max(1, Math.abs(staticHead))) return;
    keep(key, fail([outOfRange(FIELDS[key].label, "head", value, side, staticHead)]));
  }

  function agedRoughnessOf(segments: readonly DutySegment[]): number | undefined {
    const value = amountOf("agedRoughness");
    if (value === undefined) return undefined;
    const subject = FIELDS.agedRoughness.label;
    const half = Math.min(...segments.map(({ segment }) => segment.pipe.bore)) / 2;
    if (value > 0 && value < half) return value;
    const [side, limit] = value > 0 ? (["below", half] as const) : (["above", 0] as const);
    return keep("agedRoughness", fail([outOfRange(subject, "size", value, side, limit)]));
  }

  function gradeOf(): AcceptanceGradeRow | undefined {
    const given = typed.fields.acceptanceGrade;
    return given.trim() === "" ? undefined : keep("acceptanceGrade", acceptanceGradeNamed(given));
  }

  const liquid = liquidOf();
  const temperature = amountOf("temperature");
  const altitude = amountOf("altitude");
  const flow = amountOf("flow");
  if (flow !== undefined && flow <= 0) keep("flow", fail([outOfRange("Flow", "flow", flow, "above", 0)]));
  const sourceLevel = amountOf("sourceLevel");
  const pumpLevel = amountOf("pumpLevel");
  const deliveryLevel = amountOf("deliveryLevel");
  const sourcePressure = amountOf("sourcePressure");
  const deliveryPressure = amountOf("deliveryPressure");
  const frictionMargin = amountOf("frictionMargin");
  const npshRequired = amountOf("npshRequired");
  const npshMargin = amountOf("npshMargin");
  const typedCurveFlow = amountOf("curveFlow");
  const curveFlow = typedCurveFlow ?? (flow === undefined ? undefined : CURVE_REACH * flow);
  if (typed.fields.curveFlow.trim() === "") assumed.add("curveFlow");
  if (typedCurveFlow !== undefined && flow !== undefined && typedCurveFlow < flow) {
    keep("curveFlow", fail([outOfRange(FIELDS.curveFlow.label, "flow", typedCurveFlow, "at least", flow)]));
  }
  const suctionLine = lineOf("suctionLine");
  const dischargeLine = lineOf("dischargeLine");
  const leastStaticHead = amountOf("leastStaticHead");
  const greatestStaticHead = amountOf("greatestStaticHead");
  if (sourceLevel !== undefined && deliveryLevel !== undefined) {
    const staticHead = deliveryLevel - sourceLevel;
    checkStaticHead("leastStaticHead", leastStaticHead, "at most", staticHead);
    checkStaticHead("greatestStaticHead", greatestStaticHead, "at least", staticHead);
  }
  const agedRoughness = agedRoughnessOf([...(suctionLine ?? []), ...(dischargeLine ?? [])]);
  const acceptanceGrade = gradeOf();
  const pump =
    typed.pump === undefined || isBlankPump(typed.pump) ? undefined : decodePump(typed.pump, typed.unitSet, keep);

  const packageRound = decodePackage({ typed, amountOf, keep, assumed });

  const hasErrors = [...findings.values()].flat().some(({ severity }) => severity === "error");
  if (
    hasErrors ||
    liquid === undefined ||
    temperature === undefined ||
    altitude === undefined ||
    flow === undefined ||
    sourceLevel === undefined ||
    pumpLevel === undefined ||
    deliveryLevel === undefined ||
    sourcePressure === undefined ||
    deliveryPressure === undefined ||
    frictionMargin === undefined ||
    npshMargin === undefined ||
    curveFlow === undefined ||
    suctionLine === undefined ||
    dischargeLine === undefined
  ) {
    return { duty: undefined, findings };
  }
  const duty: Duty = {
    unitSet: typed.unitSet,
    texts: typed.fields,
    basis: typed.basis,
    assumed,
    liquid,
    temperature,
    altitude,
    flow,
    sourceLevel,
    pumpLevel,
    deliveryLevel,
    sourcePressure,
    deliveryPressure,
    frictionMargin,
    npshRequired,
    npshMargin,
    curveFlow,
    suctionLine,
    dischargeLine,
    leastStaticHead,
    greatestStaticHead,
    agedRoughness,
    acceptanceGrade,
    pump,
    package: packageRound,
  };
  return { duty, findings };
}

/** The labels of required fields and lines still blank. */
export function missingFields(typed: DutyText): readonly string[] {
  const fields = FIELD_KEYS.filter((key) => FIELDS[key].required && typed.fields[key].trim() === "");
  const lines = (Object.keys(LINE_NAMES) as LineKey[]).filter((line) => typed[line].every(isBlank));
  return [...fields.map((key) => FIELDS[key].label), ...lines.map((line) => LINE_NAMES[line])];
}

function isBlank({ pipe, length, fittings: given }: SegmentText): boolean {
  return pipe.trim() === "" && length.trim() === "" && given.trim() === "";
}

function leftOut(subject: string, wanted: string): Result<never> {
  return { ok: false, findings: [{ code: "left-out", severity: "error", subject, suggestions: [wanted] }] };
}
