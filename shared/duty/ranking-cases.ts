import { andThen, fail, type Result, succeed } from "../../src/basis/result.ts";
import type { LiquidState } from "../../src/liquid/liquid.ts";
import { carrying } from "../../src/pipework/flow-share.ts";
import type { Line } from "../../src/pipework/line.ts";
import { routeOfLine } from "../../src/route/route.ts";
import { siphonCredit } from "../../src/route/siphon.ts";
import { standardAtmosphere } from "../../src/site/atmosphere.ts";
import type { StationCase, StationCases } from "../../src/station/station-ranking.ts";
import { ages, growsRougher } from "./aged-pipe.ts";
import { type Duty, type DutySegment, hasFields } from "./duty.ts";
import { stateAsPumped } from "./slurry.ts";

/** What a case of the ranking differs by from the duty it is made of. */
interface Made {
  readonly name?: string;
  readonly staticHead?: number | undefined;
  readonly isAged?: boolean;
  readonly isRangeEnd?: boolean;
}

/**
 * The cases that pumps are ranked for: the duty as stated; the ends of the static heads and the aged pipe it must cover;
 * and the cases it names. Each with the lines as so many equal pumps share them. Fails without findings where a box it
 * hangs on cannot be read, which is said there.
 */
export function rankingCases(duty: Duty): Result<StationCases> {
  const isOne = rangeEnds(duty).length === 0 && duty.cases.length === 0;
  const first = caseOf(duty, duty, isOne ? {} : { name: "as stated" });
  const others = [
    ...rangeEnds(duty).map((made) => caseOf(duty, duty, { ...made, isRangeEnd: true })),
    ...duty.cases.map((one) =>
      caseOf(duty, one.duty, { name: one.name, isAged: one.own.pipe === "aged" && ages(duty) }),
    ),
  ];
  const findings = [first, ...others].flatMap((one) => (one.ok ? [] : one.findings));
  if (!first.ok || others.some(({ ok }) => !ok)) return fail(findings);
  return succeed([first.value, ...others.flatMap((one) => (one.ok ? [one.value] : []))]);
}

/** Named as the sheet names the states of the range. */
function rangeEnds(duty: Duty): readonly Made[] {
  const { leastStaticHead, greatestStaticHead, state } = duty;
  const isAged = ages(duty);
  const hasGreatest = state.greatestStaticHead !== "blank";
  return [
    ...(state.leastStaticHead !== "blank" ? [{ name: "minimum static head", staticHead: leastStaticHead }] : []),
    ...(hasGreatest ? [{ name: "maximum static head", staticHead: greatestStaticHead }] : []),
    ...(isAged ? [{ name: "aged pipe", isAged }] : []),
    ...(isAged && hasGreatest
      ? [{ name: "maximum static head, aged pipe", staticHead: greatestStaticHead, isAged }]
      : []),
  ];
}

const NEEDED = [
  "pumpsRunning",
  "arrangement",
  "flow",
  "liquid",
  "temperature",
  "altitude",
  "sourceLevel",
  "pumpLevel",
  "deliveryLevel",
  "sourcePressure",
  "deliveryPressure",
  "frictionMargin",
] as const;

/** What a line with levels needs beside these. */
const OF_SIPHONS = ["siphonHeight", "siphonHeightLoss", "siphonPressure"] as const;

function isLevelled(line: Line): boolean {
  return line.some(({ endLevel }) => endLevel !== undefined);
}

function caseOf(base: Duty, duty: Duty, made: Made): Result<StationCase> {
  const suctionLine = lineOf(base, duty, base.suctionLine, made.isAged);
  const dischargeLine = lineOf(base, duty, base.dischargeLine, made.isAged);
  const isSiphonOpen = dischargeLine !== undefined && isLevelled(dischargeLine) && !hasFields(duty, ...OF_SIPHONS);
  const isMissing = isSiphonOpen || ("staticHead" in made && made.staticHead === undefined);
  if (!hasFields(duty, ...NEEDED) || suctionLine === undefined || dischargeLine === undefined || isMissing) {
    return fail([]);
  }
  const { flow, sourceLevel, pumpLevel, deliveryLevel, sourcePressure, deliveryPressure, frictionMargin } = duty;
  const { pumpsRunning, arrangement, npshMargin, service, highestSourceLevel, greatestSuctionPressure } = duty;
  return andThen(stateAsPumped(duty), (liquid) =>
    andThen(standardAtmosphere(duty.altitude), (atmosphericPressure) =>
      succeed({
        ...(made.name !== undefined && { name: made.name }),
        ...(made.isRangeEnd && { isRangeEnd: true }),
        flow,
        staticHead: made.staticHead ?? deliveryLevel - sourceLevel,
        suctionLine,
        dischargeLine,
        sourcePressure,
        deliveryPressure,
        liquid,
        frictionMargin,
        pumps: pumpsRunning,
        arrangement,
        sourceLevel: made.staticHead === undefined ? sourceLevel : deliveryLevel - made.staticHead,
        runsFull: runsFull(base, duty, made, liquid),
        suctionLift: pumpLevel - sourceLevel,
        atmosphericPressure,
        ...(npshMargin !== undefined && { npshMargin }),
        ...(service !== undefined && { service }),
        ...(highestSourceLevel !== undefined && { leastLift: pumpLevel - highestSourceLevel }),
        ...(greatestSuctionPressure !== undefined && { greatestSuctionPressure }),
      }),
    ),
  );
}

/** Whether the fall beyond the summit is counted on: at the end of a range as in the duty it is made of. */
function runsFull(base: Duty, duty: Duty, { isAged, isRangeEnd }: Made, liquid: LiquidState): boolean {
  const [suctionLine, line] = (["suctionLine", "dischargeLine"] as const).map((of) =>
    lineOf(base, duty, base[of], isAged && !isRangeEnd),
  );
  if (!hasFields(duty, ...NEEDED, ...OF_SIPHONS) || suctionLine === undefined || line === undefined) return false;
  if (!isLevelled(line)) return false;
  const { flow, sourceLevel, pumpLevel, deliveryLevel, sourcePressure, deliveryPressure, altitude } = duty;
  const ends = { outlet: base.outlet ?? "free", summitValve: base.summitValve ?? "none" };
  const found = andThen(routeOfLine({ line, startLevel: pumpLevel, outletLevel: deliveryLevel, altitude }), (route) =>
    siphonCredit({
      flow,
      sourceLevel,
      sourcePressure,
      deliveryPressure,
      suctionLine,
      route,
      liquid,
      limits: duty,
      ...ends,
    }),
  );
  return found.ok && found.value.isEarned;
}

/** A line as equal pumps share it: each its own rows, and no more of a piece of header than stands behind it. */
function lineOf(
  { agedRoughness, pumpsRunning: stated = 1 }: Duty,
  { pumpsRunning = 1, arrangement }: Duty,
  rows: readonly DutySegment[],
  isAged = false,
): Line | undefined {
  const sideBySide = arrangement === "series" ? 1 : pumpsRunning;
  const line = rows.flatMap(({ segment, share, isHeader }) => {
    if (segment === undefined || share === undefined) return [];
    const { share: _, runs: __, ...bare } = segment;
    const isOtherHeader = typeof share === "number" && isHeader && pumpsRunning !== stated;
    const ofCase = isOtherHeader ? Math.min(share * stated, sideBySide) / sideBySide : share;
    const isRougher = isAged && agedRoughness !== undefined && growsRougher(bare.pipe, agedRoughness);
    return {
      ...bare,
      ...(isRougher && { pipe: { ...bare.pipe, roughness: agedRoughness } }),
      ...carrying(ofCase === "each" ? 1 / sideBySide : ofCase, isHeader),
    };
  });
  return line.length > 0 && line.length === rows.length ? line : undefined;
}
