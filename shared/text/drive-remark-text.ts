import type { Amount, UnitSetName } from "../../src/basis/quantities.ts";
import type { DriveRemark, DriveRemarkCode, DriveRemarkFacts, NamedMotor } from "../../src/drive/drive-remark.ts";
import { amountText } from "./words.ts";

/** An amount in the reader's units. */
type Say = (amount: Amount) => string;

type WordsOf<C extends DriveRemarkCode> = (facts: DriveRemarkFacts[C], say: Say) => string;

const WORDS: { readonly [C in DriveRemarkCode]: WordsOf<C> } = {
  "short-and-cheap": () => "shortest and cheapest",
  "no-field-alignment": () => "no alignment on site",
  "standard-motor": () => "standard flanged motor, easily replaced",
  "seal-within-reach": () => "seal changed without moving the motor's shaft",
  "carries-own-thrust": () => "pump bearings carry its thrust and side load",
  "driver-swaps-quickly": () => "motor and engine swap quickly",
  "stands-heat-and-solids": () => "takes hot liquid, solids and high power",
  "speed-trimmed-by-sheaves": () => "speed trimmed by sheaves",
  "gives-this-speed": () => "gives this speed from a line-start motor",
  "aligned-by-spigots": () => "aligned by machined spigots",
  "short-and-light": () => "short and light",
  "runs-out-of-gear": () => "engine starts and idles out of gear",
  "thrust-on-motor-bearings": () => "motor bearings carry the hydraulic thrust",
  "heat-reaches-motor": () => "heat of the liquid reaches the motor",
  "special-motor-spare": () => "special-shaft motor is a slow spare",
  "long-and-heavy": () => "longer and heavier",
  "needs-field-alignment": () => "must be aligned on site",
  "engine-pulses-reach-pump": () => "torque pulses of the engine reach the pump shaft",
  "overhang-on-engine": () => "pump hangs on the rear face of the engine",
  "motor-swap-needs-new-parts": () => "swap to a motor needs other parts",
  "clutch-wears": () => "clutch wears",
  "side-load-limited": () => "side load on the clutch shaft is limited",
  "belts-lose-power": () => "belts take 3 % to 7 % of the power",
  "belts-pull-sideways": () => "side pull on driver and pump; dust and sparks",
  "liquid-too-hot": ({ limit }, say) => `liquid above ${say(limit)}`,
  "power-high": ({ limit }, say) => `more than ${say(limit)}, where this is less common`,
  "power-too-high": ({ limit }, say) => `more than ${say(limit)}`,
  "speed-slow": ({ limit }, say) => `slower than ${say(limit)}`,
  "suction-pressure-high": ({ found, limit }, say) =>
    `${say(found)} at the suction, above ${say(limit)}: too much thrust for the motor's bearing`,
  "solids-wear": ({ found }, say) => `${say(found)} solids by weight wear seal and impeller on the driver's own shaft`,
  "solids-wear-fast": ({ found, limit }, say) =>
    `${say(found)} solids by weight, above ${say(limit)}: a bearing frame that carries its own thrust is needed`,
  "shaft-too-short-for-belts": ({ frame }) => `frame ${frame} has a short shaft, for a coupling alone`,
  "no-mains-motor-at-speed": ({ speed, frequency }, say) =>
    `no line-start motor runs at ${say(speed)} on ${frequency} Hz: variable-frequency drive (VFD), gears or belts needed`,
  "engine-speed-unusual": ({ least, most }, say) =>
    `engines run ${say(least)} to ${say(most)} continuously: gears or belts may be needed`,
  "beyond-housings": () => "more power than is seen on any SAE housing",
  "check-torque": ({ torque }, say) => `shaft torque ${say(torque)}`,
  "check-coupling": ({ least, most }, say) => `coupling good for ${say(least)} to ${say(most)}, by its maker's factor`,
  "check-torsion": () => "torsional analysis by the coupling or engine maker",
  "check-housing": ({ housings }) => `SAE J617 housing ${housings}; the same number on engine and pump`,
  "check-run-out": ({ least, most }) => `run-out of pilot and face ${least} (No. 6) to ${most} (No. 00) in all`,
  "check-overhang": () => "overhung moment against the engine maker's limit",
  "check-suction-thrust": ({ found, limit }, say) =>
    `thrust against the motor bearing${found === null ? "; suction pressure not stated" : ` at ${say(found)} at the suction`}: no JM shaft above ${say(limit)}`,
  "check-solids": ({ found }, say) =>
    found === null
      ? "solids not stated: abrasive liquid needs a bearing frame and more margin"
      : `${say(found)} solids by weight: wear allowance and more margin`,
  "check-viscous": ({ found }, say) =>
    `liquid of ${say(found)}: power and starting torque above those on water (VISCOUSCURVE)`,
  "check-motor": (motor, say) => `motor ${motorText(motor, say)}`,
  "check-motor-not-chosen": () => "motor with its poles and frame by MOTORDATA",
  "check-alignment": ({ offset, strain }) =>
    `offset at most ${offset}, hot; pipes move the coupling at most ${strain}; again after road moves`,
  "check-thermal-growth": () => "set cold for the growth when hot",
  "check-guard": () => "guard over every turning part (29 CFR 1910.219, ISO 14120)",
  "check-sheave": ({ most, speed }, say) => `pump sheave at most ${say(most)} for ${say(speed)} belt speed`,
  "check-belt-frame": () => "T frame, not TS; sheave not below the motor's minimum",
  "check-clutch": () => "clutch torque and side load against its maker's limits",
  "check-engine-rating": () => "continuous net engine power on site, by ENGINESITEPOWER and the maker's curve",
  "check-swap": () => "a swap to an engine needs another pump end",
};

/** "200 hp, 4 poles, frame 447TS" */
function motorText({ rating, poles, frame }: NamedMotor, say: Say): string {
  return [
    say(rating),
    ...(poles === null ? [] : [`${poles} poles`]),
    ...(frame === null ? [] : [`frame ${frame}`]),
  ].join(", ");
}

/** Remarks as one cell: "shortest and cheapest; no alignment on site". */
export function driveRemarkText(remarks: readonly DriveRemark[], units: UnitSetName): string {
  const say: Say = (amount) => amountText(amount, units);
  return remarks.map((remark) => wordsOf(remark, say)).join("; ");
}

function wordsOf<C extends DriveRemarkCode>(
  { code, facts }: { readonly code: C; readonly facts?: DriveRemarkFacts[C] },
  say: Say,
): string {
  return WORDS[code](facts as DriveRemarkFacts[C], say);
}
