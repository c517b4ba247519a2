import type { Amount } from "../basis/quantities.ts";

/** The motor that an attachment is for. */
export interface NamedMotor {
  readonly rating: Amount;
  readonly poles: number | null;
  readonly frame: string | null;
}

interface Most {
  readonly limit: Amount;
}

/** From the least to the most. */
interface Span {
  readonly least: Amount;
  readonly most: Amount;
}

/**
 * Why an arrangement suits or not, and what must still be checked, with the facts its words need; null where they need
 * none. The words are at the edge, in the reader's units.
 */
export interface DriveRemarkFacts {
  "short-and-cheap": null;
  "no-field-alignment": null;
  "standard-motor": null;
  "seal-within-reach": null;
  "carries-own-thrust": null;
  "driver-swaps-quickly": null;
  "stands-heat-and-solids": null;
  "speed-trimmed-by-sheaves": null;
  "gives-this-speed": null;
  "aligned-by-spigots": null;
  "short-and-light": null;
  "runs-out-of-gear": null;
  "thrust-on-motor-bearings": null;
  "heat-reaches-motor": null;
  "special-motor-spare": null;
  "long-and-heavy": null;
  "needs-field-alignment": null;
  "engine-pulses-reach-pump": null;
  "overhang-on-engine": null;
  "motor-swap-needs-new-parts": null;
  "clutch-wears": null;
  "side-load-limited": null;
  "belts-lose-power": null;
  "belts-pull-sideways": null;
  "liquid-too-hot": Most;
  "power-high": Most;
  "power-too-high": Most;
  "speed-slow": Most;
  "suction-pressure-high": { readonly found: Amount; readonly limit: Amount };
  "solids-wear": { readonly found: Amount };
  "solids-wear-fast": { readonly found: Amount; readonly limit: Amount };
  "shaft-too-short-for-belts": { readonly frame: string };
  "no-mains-motor-at-speed": { readonly speed: Amount; readonly frequency: number };
  "engine-speed-unusual": Span;
  "beyond-housings": null;
  "check-torque": { readonly torque: Amount };
  "check-coupling": Span;
  "check-torsion": null;
  "check-housing": { readonly housings: string };
  "check-run-out": { readonly least: string; readonly most: string };
  "check-overhang": null;
  /** Null where it is not stated. */
  "check-suction-thrust": { readonly found: Amount | null; readonly limit: Amount };
  "check-solids": { readonly found: Amount | null };
  "check-viscous": { readonly found: Amount };
  "check-motor": NamedMotor;
  "check-motor-not-chosen": null;
  "check-alignment": { readonly offset: string; readonly strain: string };
  "check-thermal-growth": null;
  "check-guard": null;
  "check-sheave": { readonly most: Amount; readonly speed: Amount };
  "check-belt-frame": null;
  "check-clutch": null;
  "check-engine-rating": null;
  "check-swap": null;
}

export type DriveRemarkCode = keyof DriveRemarkFacts;

/** The codes whose words need no facts. */
export type PlainDriveRemark = {
  [C in DriveRemarkCode]: DriveRemarkFacts[C] extends null ? C : never;
}[DriveRemarkCode];

export type DriveRemark =
  | { readonly code: PlainDriveRemark; readonly facts?: never }
  | {
      [C in Exclude<DriveRemarkCode, PlainDriveRemark>]: { readonly code: C; readonly facts: DriveRemarkFacts[C] };
    }[Exclude<DriveRemarkCode, PlainDriveRemark>];
