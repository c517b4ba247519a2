import { SPECIFIC_GRAVITY_REFERENCE } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, type Result, succeed } from "../basis/result.ts";
import { carrierOf, type LiquidState } from "../liquid/liquid.ts";
import { carrierRemark, FINEST, pumpDerating, pumpDeratingMethod } from "./pump-derating.ts";
import { sinks } from "./solids.ts";

export const asPumpedMethod = {
  cites: pumpDeratingMethod.cites,
  inputs: { impellerDiameter: pumpDeratingMethod.inputs.impellerDiameter },
} as const satisfies Method<"impellerDiameter">;

/** What a pump keeps of its figures on water. */
export interface PumpRatios {
  readonly headRatio: number;
  readonly efficiencyRatio: number;
}

/** A liquid as a pump known on water meets it. */
export interface AsPumped extends PumpRatios {
  readonly specificGravity: number;
  /** Of the liquid between the solids. */
  readonly carrierGravity: number;
  readonly solidsByWeight: number;
  readonly solidsByVolume: number;
  /** Of the solids; null where there are none. */
  readonly solidsGravity: number | null;
}

const NO_LOSS: PumpRatios = { headRatio: 1, efficiencyRatio: 1 };

/**
 * Specific gravity of a liquid as pumped, what it carries, and the share of its head and efficiency on water that a
 * pump keeps on it: 1 without solids, with solids that float and at a d50 where Cave's loss is nothing.
 * Formula: as `pumpDerating`
 * Fails: as `pumpDerating`; an impeller out of range.
 * Warns: derating-size-unknown (an assumption: 1 is taken where d50 is not stated); derating-not-in-water; as
 * `pumpDerating`.
 * Source: as `pumpDerating`.
 */
export function asPumped(liquid: LiquidState, impellerDiameter: number | null): Result<AsPumped> {
  const { solids } = liquid;
  const specificGravity = liquid.density / SPECIFIC_GRAVITY_REFERENCE;
  const carrierGravity = carrierOf(liquid).density / SPECIFIC_GRAVITY_REFERENCE;
  const byVolume = solids?.byVolume ?? 0;
  const facts = {
    specificGravity,
    carrierGravity,
    solidsByVolume: byVolume,
    solidsByWeight: solids === undefined ? 0 : (byVolume * solids.specificGravity) / specificGravity,
    solidsGravity: solids?.specificGravity ?? null,
  };
  return andThen(pumpRatios(liquid, impellerDiameter), (ratios) => succeed({ ...facts, ...ratios }));
}

/** Head and efficiency ratio of `asPumped`. */
export function pumpRatios({ solids }: LiquidState, impellerDiameter: number | null): Result<PumpRatios> {
  if (impellerDiameter !== null) {
    const checked = checkInputs(asPumpedMethod, { impellerDiameter });
    if (!checked.ok) return checked;
  }
  if (solids === undefined || !sinks(solids)) return succeed(NO_LOSS);
  const { medianSize, specificGravity: solidsSG, byVolume: solidsByVolume, fines, carrier } = solids;
  const inCarrier = carrierRemark(carrier.density / SPECIFIC_GRAVITY_REFERENCE);
  if (medianSize === null) return succeed(NO_LOSS, [SIZE_UNKNOWN]);
  // The loss comes down to nothing there; the cautions of so fine a slurry are those of its settling.
  if (medianSize <= FINEST || solidsSG <= 1) return succeed(NO_LOSS, inCarrier);
  return andThen(
    pumpDerating({ impellerDiameter, particleSize: medianSize, solidsSG, solidsByVolume, fines }),
    ({ headRatio, efficiencyRatio }) => succeed({ headRatio, efficiencyRatio }, inCarrier),
  );
}

const SIZE_UNKNOWN: Finding = {
  code: "derating-size-unknown",
  kind: "assumed",
  subject: "head and efficiency ratio",
  found: amount("ratio", 1),
};
