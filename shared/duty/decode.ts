import { type Finding, fail, succeed } from "../../src/basis/result.ts";
import { decodeCases } from "./decode-cases.ts";
import { decodeField, type Keep } from "./decode-field.ts";
import { decodeLine, holdClimbs } from "./decode-line.ts";
import { decodeOtherPumps, decodePump, isBlankPump } from "./decode-pump.ts";
import { type Duty, type DutySegment, type FieldState, pumpsSideBySide } from "./duty.ts";
import { type DutyText, type LineKey, LOGO_PLACE, placeKey } from "./duty-text.ts";
import { FIELD_KEYS, FIELDS, type FieldKey, type FieldValues } from "./fields.ts";
import { lineQuestions } from "./line-questions.ts";
import { readLogo } from "./logo.ts";
import { RULES } from "./rules.ts";
import { overSurface } from "./surface-pressure.ts";

export interface Decoded {
  /** As far as it can be read. */
  readonly duty: Duty;
  /** What is wrong or worth a remark, by the place it concerns. */
  readonly findings: ReadonlyMap<string, readonly Finding[]>;
  /** Whether nothing of it is wrong or still to be given. */
  readonly isComplete: boolean;
}

/** Where nothing is stated, the system curve goes as far beyond the flow. */
const CURVE_REACH = 1.5;

/** Reads each typed text by itself, so that a mistake in one never spoils another. */
export function decodeDuty(typed: DutyText): Decoded {
  const findings = new Map<string, readonly Finding[]>();
  const keep: Keep = (place, result) => {
    if (result.findings.length > 0) findings.set(place, [...(findings.get(place) ?? []), ...result.findings]);
    return result.ok ? result.value : undefined;
  };
  const { values, state } = decodeFields(typed, keep);
  const { sourceLevel, pumpLevel, deliveryLevel } = values;
  const furtherPumps = (typed.otherPumps ?? []).filter((pump) => !isBlankPump(pump)).length;
  const lineOf = (line: LineKey, start: number | undefined, end: number | undefined): readonly DutySegment[] =>
    holdClimbs(line, decodeLine(line, typed, pumpsSideBySide({ ...values, furtherPumps }), keep), start, end, keep);
  const suctionLine = lineOf("suctionLine", sourceLevel, pumpLevel);
  const dischargeLine = lineOf("dischargeLine", pumpLevel, deliveryLevel);
  holdRules(values, state, [...suctionLine, ...dischargeLine], keep);
  const isChosen = typed.pump !== undefined && !isBlankPump(typed.pump);
  const chosen = isChosen ? decodePump(typed.pump, typed.unitSet, keep) : undefined;
  const others = decodeOtherPumps(typed.otherPumps ?? [], typed.pump?.name ?? "", typed.unitSet, keep);
  // A station is known with all its pumps or not at all.
  const pump = others === undefined ? undefined : chosen;
  const pumpState: Duty["pumpState"] = isChosen ? (pump === undefined ? "unreadable" : "stated") : "blank";
  const { unitSet, fields: texts, basis } = typed;
  const base = {
    ...values,
    unitSet,
    texts,
    basis,
    state,
    suctionLine,
    dischargeLine,
    pump,
    otherPumps: others ?? [],
    furtherPumps,
    pumpState,
    logo: typed.logo === undefined ? undefined : keep(LOGO_PLACE, readLogo(typed.logo)),
    revisions: (typed.revisions ?? []).filter((row) => Object.values(row).some((text) => text.trim() !== "")),
  };
  const pipes = [...suctionLine, ...dischargeLine].flatMap(({ segment }) => segment?.pipe ?? []);
  const duty: Duty = { ...base, cases: decodeCases(typed.cases ?? [], base, pipes, keep) };
  for (const { place, finding } of lineQuestions(duty)) keep(placeKey(place), succeed(undefined, [finding]));
  return {
    duty,
    findings,
    isComplete: [...findings.values()].flat().every(({ kind }) => kind !== "error"),
  };
}

/** Each key holds what its own field read. */
type Values = { -readonly [K in keyof FieldValues]: FieldValues[K] };
type States = Record<FieldKey, FieldState>;

function decodeFields({ fields, unitSet }: DutyText, keep: Keep): { readonly values: Values; readonly state: States } {
  const values = {} as Record<keyof FieldValues, unknown>;
  const state = {} as States;
  for (const key of FIELD_KEYS) {
    const over = overSurface(key, fields[key], unitSet, values.altitude as number | undefined);
    values[key] = keep(key, over ?? decodeField(FIELDS[key], fields[key], unitSet));
    const isStated = fields[key].trim() !== "";
    state[key] = values[key] === undefined ? (isStated ? "unreadable" : "blank") : isStated ? "stated" : "assumed";
  }
  if (state.curveFlow === "blank" && typeof values.flow === "number") {
    values.curveFlow = CURVE_REACH * values.flow;
    state.curveFlow = "assumed";
  }
  const { statedTemperature } = (values as Values).liquid ?? {};
  if (state.temperature === "assumed" && statedTemperature !== undefined) {
    values.temperature = keep(
      "temperature",
      FIELDS.temperature.read(`${statedTemperature} K`, unitSet, FIELDS.temperature.label),
    );
    state.temperature = values.temperature === undefined ? "unreadable" : "stated";
  }
  return { values: values as Values, state };
}

/** Takes out the values that do not hold against others, or against the pipes of the lines. */
function holdRules(values: Values, state: States, segments: readonly DutySegment[], keep: Keep): void {
  const pipes = segments.flatMap(({ segment }) => segment?.pipe ?? []);
  for (const { field, findings } of RULES) {
    const found = findings(values, pipes);
    if (found.length === 0) continue;
    if (found.every(({ kind }) => kind !== "error")) {
      keep(field, succeed(null, found));
      continue;
    }
    keep(field, fail(found));
    values[field] = undefined;
    state[field] = "unreadable";
  }
}
