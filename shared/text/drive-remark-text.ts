import type { UnitSetName } from "../../src/basis/quantities.ts";
import type { DriveRemark, DriveRemarkCode } from "../../src/drive/drive-remark.ts";
import { amountText } from "./words.ts";

/** Says a fact of a remark in the reader's units. */
type Fact = (name: string) => string;

const WORDS: Readonly<Record<DriveRemarkCode, (fact: Fact) => string>> = {
  "short-and-cheap": () => "shortest and cheapest",
  "no-field-alignment": () => "no alignment on site",
  "standard-motor": () => "standard flanged motor, easily replaced",
  "seal-within-reach": () => "seal changed without moving the motor's shaft",
  "carries-own-thrust": () => "pump bearings carry its thrust and side load",
  "driver-swaps-quickly": () => "motor and engine swap quickly",
  "stands-heat-and-solids": () => "stands hot liquid, solids and high power",
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
  "liquid-too-hot": (fact) => `liquid above ${fact("limit")}`,
  "power-high": (fact) => `more than ${fact("limit")}, where this is less common`,
  "power-too-high": (fact) => `more than ${fact("limit")}`,
  "speed-slow": (fact) => `slower than ${fact("limit")}`,
  "no-mains-motor-at-speed": (fact) =>
    `no line-start motor runs at ${fact("speed")}: variable-frequency drive (VFD), gears or belts needed`,
  "engine-speed-unusual": (fact) =>
    `engines run ${fact("least")} to ${fact("most")} continuously: gears or belts may be needed`,
  "beyond-housings": () => "more power than is seen on any SAE housing",
  "check-torque": (fact) => `shaft torque ${fact("torque")}`,
  "check-coupling": (fact) => `coupling good for ${fact("least")} to ${fact("most")}, by its maker's factor`,
  "check-torsion": () => "torsional analysis by the coupling or engine maker",
  "check-housing": (fact) => `SAE J617 housing ${fact("housings")}; the same number on engine and pump`,
  "check-run-out": (fact) => `run-out of pilot and face ${fact("least")} (No. 6) to ${fact("most")} (No. 00) in all`,
  "check-overhang": () => "overhung moment against the engine maker's limit",
  "check-suction-thrust": () =>
    "suction pressure is not known here: thrust against the motor bearing, and no JM shaft above 8 bar (116 psi)",
  "check-solids": () => "solids are not known here: abrasive liquid wants a bearing frame and more margin",
  "check-motor-rating": (fact) => `motor ${fact("NEMA")} or ${fact("IEC")} by shaft power alone`,
  "check-mains-motor": (fact) => `motor of ${fact("motors")}`,
  "check-alignment": (fact) =>
    `offset at most ${fact("offset")}, hot; pipes move the coupling at most ${fact("strain")}; again after road moves`,
  "check-thermal-growth": () => "set cold for the growth when hot",
  "check-guard": () => "guard over every turning part (29 CFR 1910.219, ISO 14120)",
  "check-sheave": (fact) => `pump sheave at most ${fact("most")} for ${fact("speed")} belt speed`,
  "check-belt-frame": () => "T frame, not TS; sheave not below the motor's least",
  "check-clutch": () => "clutch torque and side load against its maker's limits",
  "check-engine-rating": () => "continuous net engine power on site, by ENGINESITEPOWER and the maker's curve",
  "check-swap": () => "a swap to an engine needs another pump end",
};

/** Remarks as one cell: "shortest and cheapest; no alignment on site". */
export function driveRemarkText(remarks: readonly DriveRemark[], units: UnitSetName): string {
  return remarks
    .map(({ code, facts }) =>
      WORDS[code]((name) => {
        const value = facts?.[name];
        return typeof value === "object" ? amountText(value, units) : (value ?? "");
      }),
    )
    .join("; ");
}
