import type { Citation } from "../../../src/basis/citation.ts";
import { flangeClassNamed } from "../../../src/pressure/flange-class.ts";
import { ratingSource } from "../../../src/pressure/flange-rating.ts";
import { pressureMaterialNamed } from "../../../src/pressure/pressure-material.ts";
import { ratingSystem } from "../../catalogue/parameters/class.ts";
import { placeOfPart } from "../../catalogue/parameters/series-pumps.ts";
import { type Duty, type DutyPump, pumpsInSeries } from "../../duty/duty.ts";
import {
  asShare,
  constant,
  type Expression,
  greatest,
  ifAtLeast,
  ifError,
  ifNumber,
  join,
  part,
  product,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { greatestAtNozzleIn, pressedStates, pressureInState } from "../sections/case-pressures.ts";
import { isHighIdleAssumed, isShutoffUnknown, uncountedRaises } from "../sections/pressure-head.ts";
import { CLASSES, CLASSES_AT_BEST, hasAssumed, nozzleLabels, SUCTION } from "../sections/pressure-nozzles.ts";
import { stageCell, stagesOf } from "../sections/pressure-stages.ts";
import { type Criterion, limitOf, openPoint, worded } from "./criterion.ts";
import { boosterCriteria, otherFlanges } from "./station.ts";

type Classes = typeof CLASSES;

/** A criterion of a part at a nozzle: the row of the nozzle, and "flange" or the name of the part. */
export interface NozzleCriterion extends Criterion {
  readonly nozzle?: number;
  readonly part?: string;
}

/** Something that stands under the pressure of a nozzle, and what it may carry. */
interface Held {
  readonly part: string;
  readonly what: Expression | string;
  readonly limit: Expression;
  readonly when: readonly Expression[];
  readonly cites?: Citation;
  /** Broken, it is no failure yet: the limit is the lower of two, for nobody states which holds. */
  readonly isLowest?: boolean;
}

const STATED: Citation = { source: "stated", at: "working pressure of the part" };

/**
 * Every flange, casing and other part against the greatest pressure where it stands: running at closed valve and
 * standing; and with a failed check valve, which is to check and not to fail.
 */
export function pressureCriteria(duty: Duty, pump: DutyPump): readonly NozzleCriterion[] {
  const labels = nozzleLabels(duty);
  return [
    ...open(duty, pump),
    ...labels.flatMap((_, row) =>
      heldAt(duty, row).flatMap((held) =>
        compared(duty, pump, row, held).map((one) => ({ ...one, nozzle: row, part: held.part })),
      ),
    ),
    ...suctionStated(duty),
    ...boosterCriteria(duty),
    ...otherFlanges(duty),
    ...casingBlank(duty),
  ];
}

function open(duty: Duty, pump: DutyPump): readonly Criterion[] {
  const { state } = duty;
  const stages = [...stagesOf(duty).values()];
  const isOfStages = (key: "material" | "flangeClass"): boolean =>
    stages.filter((facts) => facts[key] !== undefined).length >= pumpsInSeries(duty);
  const missing = [
    ...(state.casingMaterial === "stated" || isOfStages("material") ? [] : (["casingMaterial"] as const)),
    ...(state.flangeClass !== "blank" || isOfStages("flangeClass") ? [] : (["flangeClass"] as const)),
  ];
  const sizes = new Set(
    nozzleLabels(duty).flatMap((_, row) =>
      isSizeMissing(duty, row) ? [row % 2 === 0 ? ("suctionFlange" as const) : ("dischargeFlange" as const)] : [],
    ),
  );
  const hasLooseParts = duty.otherPart !== undefined && state.otherPartPressure === "blank";
  const uncounted = uncountedRaises(duty, pump);
  return [
    ...(missing.length === 0 ? [] : [openPoint({ of: "pressure", what: "flange rating", missing })]),
    ...(sizes.size === 0
      ? []
      : [openPoint({ of: "pressure", what: "rating of grey iron, which goes by size", missing: [...sizes] })]),
    ...(hasLooseParts
      ? [openPoint({ of: "pressure", what: duty.otherPart as string, missing: ["otherPartPressure"] })]
      : []),
    ...(isShutoffUnknown(pump)
      ? [openPoint({ of: "pressure", what: "head at zero flow, for the curve begins above it", missing: [] })]
      : []),
    ...uncounted.map((what) =>
      openPoint({ of: "pressure", what: `maximum ${what}, for that of the curve is not stated`, missing: [] }),
    ),
  ];
}

/** Whether a flange is of grey iron by class, which is rated by size, and nobody states its size. */
function isSizeMissing(duty: Duty, row: number): boolean {
  const offered = offeredAt(duty, row);
  if (offered === undefined) return false;
  const { own, material, flangeClass } = offered;
  const side = row % 2 === 0 ? "suctionFlange" : "dischargeFlange";
  const isBySize = flangeClass.series === "class" && material.groups.class?.startsWith("A126") === true;
  return isBySize && flangeClass.size === undefined && own?.[side] === undefined && duty[side] === undefined;
}

/** Material and class of the flange at a nozzle; nothing where either is not stated or read. */
function offeredAt(duty: Duty, row: number) {
  const own = stagesOf(duty).get(Math.floor(row / 2) + 1);
  const material = pressureMaterialNamed(own?.material ?? duty.casingMaterial ?? "");
  const flangeClass = flangeClassNamed(own?.flangeClass ?? duty.flangeClass ?? "", ratingSystem(duty.unitSet));
  return material.ok && flangeClass.ok ? { own, material: material.value, flangeClass: flangeClass.value } : undefined;
}

/** What stands at a nozzle: its flange, the casing at its discharge, where its own pressure is greatest, other parts. */
function heldAt(duty: Duty, row: number): readonly Held[] {
  const { state } = duty;
  const count = pumpsInSeries(duty);
  const stages = stagesOf(duty);
  const stage = Math.floor(row / 2) + 1;
  const side = row % 2 === 0 ? "suction" : "discharge";
  const of = count === 1 ? "" : `stage ${stage} `;
  const own = stages.get(stage);
  const rating = part(CLASSES, "rating", row);
  const offered = offeredAt(duty, row);
  const cites = offered && ratingSource(offered.material, offered.flangeClass);
  const flange: Held = {
    part: "flange",
    what: ifError(join(constant(`${of}${side} flange `), part(CLASSES, "flange", row)), `${of}${side} flange`),
    limit: ifNumber(rating, rating, "no flange standard in the tables rates the material"),
    when: [part(CLASSES, "offered", row)],
    ...(cites && { cites }),
    isLowest: isSizeMissing(duty, row),
  };
  const casing: Held = {
    part: "casing",
    what: count === 1 ? "casing" : `casing of stage ${stage}`,
    limit: stageCell(stages, stage, "casing") as Expression,
    when: [],
    cites: STATED,
  };
  const hasClass = state.flangeClass !== "blank" || own?.flangeClass !== undefined;
  const hasCasing = state.casingWorkingPressure !== "blank" || own?.casing !== undefined;
  return [
    ...(hasClass ? [flange] : []),
    ...(hasCasing && side === "discharge" ? [casing] : []),
    ...partsAt(duty, stage, side).map(({ name, limit }) => ({
      part: name,
      what: `${name}, ${of}${side}`,
      limit,
      when: [],
      cites: STATED,
    })),
  ];
}

/** Other parts at a nozzle, by the places that their names say. */
function partsAt(
  duty: Duty,
  stage: number,
  side: "suction" | "discharge",
): readonly { readonly name: string; readonly limit: Expression }[] {
  const count = pumpsInSeries(duty);
  const stages = stagesOf(duty);
  const all = Array.from({ length: count }, (_, i) => i + 1).flatMap((of) => {
    const own = stages.get(of);
    if (own?.partPressure !== undefined) {
      return [{ of, name: own.part ?? "other part", limit: stageCell(stages, of, "partPressure") as Expression }];
    }
    return duty.state.otherPartPressure === "blank"
      ? []
      : [{ of, name: duty.otherPart ?? "other part", limit: FIELD.otherPartPressure as Expression }];
  });
  const seen = new Set<string>();
  return all.filter(({ of, name, limit }) => {
    const { side: only, between } = placeOfPart(name);
    const isPlaced = between === "all" ? count > 1 : between !== undefined && between >= 1 && between < count;
    const first = side === "discharge" ? stage : stage - 1;
    const stands = isPlaced
      ? between === "all"
        ? first >= 1 && first < count
        : between === first
      : of === stage && (only === undefined || only === side);
    const key = `${name} ${limit.op === "value" ? limit.key : ""}`;
    if (!stands || seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

function compared(duty: Duty, pump: DutyPump, row: number, held: Held): readonly Criterion[] {
  const { what, limit, when, cites, isLowest } = held;
  const normal = (of: Classes): Expression => greatest(part(of, "running", row), part(of, "standing", row));
  // At its careful end the worst of all states at once; at its favourable end each state by itself.
  const found = normal(CLASSES);
  const states = pressedStates(duty);
  const count = nozzleLabels(duty).length;
  const own = (end: "careful" | "atBest"): readonly Expression[] =>
    states.map((_, state) => pressureInState(state, row, count, end));
  const hasBest = hasAssumed(duty, pump);
  const isSeveral = states.length > 1;
  const best = isSeveral ? greatest(...own(hasBest ? "atBest" : "careful")) : normal(CLASSES_AT_BEST);
  const inStates = isSeveral ? [greatestAtNozzleIn(row)] : [];
  const assumed = [
    ...(hasBest ? [assumedOf(duty, pump)] : []),
    ...(isSeveral ? [constant("the worst of all cases at once")] : []),
  ];
  const isStanding = ifAtLeast(
    part(CLASSES, "running", row),
    part(CLASSES, "standing", row),
    constant("closed valve"),
    constant("pumps stopped"),
  );
  const base = {
    of: "pressure",
    what,
    limit,
    quantity: "gaugePressure",
    mustBe: "at most",
    ...(cites && { cites }),
  } as const;
  const nearly = (of: Expression): Expression =>
    ifNumber(
      limit,
      ifAtLeast(
        product(limit, asShare(FIELD.ratingUsed)),
        of,
        constant(""),
        ifAtLeast(limit, of, join(constant(", over "), FIELD.ratingUsed, constant(" % of it used")), constant("")),
      ),
      "",
    );
  const failed = part(CLASSES, "checkFailed", row);
  return [
    limitOf({
      ...base,
      found,
      ...(assumed.length > 0 && { foundAtBest: best, assumed: listed(assumed) }),
      broken: isLowest ? "check" : "fail",
      when: ifError(join(listed([...when, isStanding, ...inStates]), nearly(found)), ""),
    }),
    // A column that no check valve holds off stands among the normal cases already.
    limitOf({ ...base, found: failed, broken: "check", when: listed([...when, constant("check valve failed")]) }),
  ];
}

function listed(words: readonly Expression[]): Expression {
  return ifError(join(...words.flatMap((word, i) => (i === 0 ? [word] : [constant(", "), word]))), "");
}

/** What was taken because nobody stated it. */
function assumedOf(duty: Duty, pump: DutyPump): Expression {
  const { acceptanceGrade } = duty.state;
  return listed([
    ...(acceptanceGrade === "blank" ? [join(constant("head tolerance "), part(CLASSES, "tolerance"))] : []),
    ...(isHighIdleAssumed(duty, pump)
      ? [join(constant("high idle "), FIELD.droopHighIdle, constant(" % over the running speed"))]
      : []),
  ]);
}

/** A stated suction pressure below what the source gives: one of the two is wrong. */
function suctionStated({ state }: Duty): readonly Criterion[] {
  if (state.greatestSuctionPressure === "blank") return [];
  return [
    limitOf({
      of: "pressure",
      what: "suction pressure stated, compared with source pressure and level",
      found: greatest(constant(0), FIELD.greatestSuctionPressure),
      limit: SUCTION.sourceGives,
      quantity: "gaugePressure",
      mustBe: "at least",
      broken: "check",
      why: ifError(
        ifAtLeast(
          greatest(constant(0), FIELD.greatestSuctionPressure),
          SUCTION.sourceGives,
          constant(""),
          constant("what the source gives is used"),
        ),
        "",
      ),
    }),
  ];
}

/** A flange alone says little: the casing is seldom as strong. */
function casingBlank(duty: Duty): readonly Criterion[] {
  const stages = stagesOf(duty);
  const isBlank =
    duty.state.casingWorkingPressure === "blank" &&
    Array.from({ length: pumpsInSeries(duty) }, (_, i) => i + 1).some(
      (stage) => stages.get(stage)?.casing === undefined,
    );
  if (!isBlank) return [];
  const what = "casing working pressure not stated, the flange alone is compared";
  return [worded({ of: "pressure", state: "check", what })];
}
