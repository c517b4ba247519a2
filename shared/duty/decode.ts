import { UNIT_SETS, type UnitSetName } from "../../src/basis/quantities.ts";
import { type Finding, fail, type Result, succeed } from "../../src/basis/result.ts";
import type { CountedFitting } from "../../src/pipework/fitting.ts";
import { pipeNamed } from "../../src/pipework/pipe-name.ts";
import { fittings } from "../catalogue/parameters/fittings.ts";
import { decodeField, type Keep, leftOut } from "./decode-field.ts";
import { decodeOtherPumps, decodePump, isBlankPump } from "./decode-pump.ts";
import type { Duty, DutySegment, FieldState } from "./duty.ts";
import { type DutyText, type LineKey, placeKey, type SegmentText } from "./duty-text.ts";
import { amount, meant } from "./field.ts";
import { FIELD_KEYS, FIELDS, type FieldKey, type FieldValues } from "./fields.ts";
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

const LINE_NAMES: Readonly<Record<LineKey, string>> = {
  suctionLine: "suction line",
  dischargeLine: "discharge line",
};

/** Reads each typed text by itself, so that a mistake in one never spoils another. */
export function decodeDuty(typed: DutyText): Decoded {
  const findings = new Map<string, readonly Finding[]>();
  const keep: Keep = (place, result) => {
    if (result.findings.length > 0) findings.set(place, [...(findings.get(place) ?? []), ...result.findings]);
    return result.ok ? result.value : undefined;
  };
  const suctionLine = decodeLine("suctionLine", typed, keep);
  const dischargeLine = decodeLine("dischargeLine", typed, keep);
  const { values, state } = decodeFields(typed, [...suctionLine, ...dischargeLine], keep);
  const isChosen = typed.pump !== undefined && !isBlankPump(typed.pump);
  const chosen = isChosen ? decodePump(typed.pump, typed.unitSet, keep) : undefined;
  const others = decodeOtherPumps(typed.otherPumps ?? [], typed.pump?.name ?? "", typed.unitSet, keep);
  // A station is known with all its pumps or not at all.
  const pump = others === undefined ? undefined : chosen;
  const pumpState = isChosen ? (pump === undefined ? "unreadable" : "stated") : "blank";
  const { unitSet, fields: texts, basis } = typed;
  return {
    duty: {
      ...values,
      unitSet,
      texts,
      basis,
      state,
      suctionLine,
      dischargeLine,
      pump,
      otherPumps: others ?? [],
      pumpState,
    },
    findings,
    isComplete: [...findings.values()].flat().every(({ kind }) => kind !== "error"),
  };
}

interface DecodedFields {
  readonly values: FieldValues;
  readonly state: Readonly<Record<FieldKey, FieldState>>;
}

function decodeFields({ fields, unitSet }: DutyText, segments: readonly DutySegment[], keep: Keep): DecodedFields {
  const values = {} as { -readonly [K in keyof FieldValues]: unknown };
  const state = {} as Record<FieldKey, FieldState>;
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
  // Each key holds what its own field read.
  const read = values as FieldValues;
  const pipes = segments.flatMap(({ segment }) => segment?.pipe ?? []);
  for (const { field, findings } of RULES) {
    const found = findings(read, pipes);
    if (found.length === 0) continue;
    if (found.every(({ kind }) => kind !== "error")) {
      keep(field, succeed(null, found));
      continue;
    }
    keep(field, fail(found));
    values[field] = undefined;
    state[field] = "unreadable";
  }
  return { values: read, state };
}

const PIPE = meant((name) => pipeNamed(name), { label: "pipe", required: true, help: 'a name such as "6in sch40"' });

const LENGTH = amount({
  label: "length",
  quantity: "length",
  bounds: { atLeast: 0 },
  required: true,
  help: "the developed length of this run",
});

function decodeLine(line: LineKey, typed: DutyText, keep: Keep): readonly DutySegment[] {
  const rows = typed[line].map((segment, row) => ({ segment, row })).filter(({ segment }) => !isBlank(segment));
  if (rows.length === 0) {
    const place = placeKey({ line, row: 0, column: "pipe" });
    keep(place, leftOut(LINE_NAMES[line], "one row at least: pipe, length, fittings"));
  }
  return rows.map(({ segment: texts, row }) => {
    const wrong: Finding[] = [];
    const read = <T>(column: keyof SegmentText, result: Result<T>): T | undefined => {
      wrong.push(...result.findings.filter(({ kind }) => kind === "error"));
      return keep(placeKey({ line, row, column }), result);
    };
    const pipe = read("pipe", decodeField(PIPE, texts.pipe, typed.unitSet));
    const length = read("length", decodeField(LENGTH, texts.length, typed.unitSet));
    const counted = read("fittings", readFittings(texts.fittings, typed.unitSet));
    const isRead = pipe !== undefined && length !== undefined && counted !== undefined;
    return { typed: texts, row, segment: isRead ? { pipe, length, fittings: counted } : undefined, wrong };
  });
}

function readFittings(given: string, unitSet: UnitSetName): Result<readonly CountedFitting[]> {
  if (given.trim() === "") return succeed([]);
  return fittings.read([[given]], { name: "fittings", unitSet, units: UNIT_SETS[unitSet] });
}

function isBlank({ pipe, length, fittings: given }: SegmentText): boolean {
  return pipe.trim() === "" && length.trim() === "" && given.trim() === "";
}
