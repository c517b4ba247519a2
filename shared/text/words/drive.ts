import type { DriveCode } from "../../../src/basis/finding-code.ts";
import type { Words } from "../words.ts";

export const driveWords: Readonly<Record<DriveCode, Words>> = {
  "power-greatest-at-curve-end": (f, say) =>
    `the power is greatest, ${say.amount(f.found)}, at the last point of the curve; a pump that runs out beyond it takes more`,
  "greatest-power-below-duty": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is below that at the duty, ${say.amount(f.limit)}; give the greatest anywhere on the curve`,
  "driver-overloads-at-curve-end": (f, say) =>
    `a ${f.subject} of ${say.amount(f.found)} is overloaded where the pump takes ${say.amount(f.limit)}; hold the flow down or take a larger one`,
  "motor-margin-small": (f, say) =>
    `${f.subject} leaves ${say.amount(f.found)} over the shaft power; a pump may take more than its curve says`,
  "motor-rating-secondary": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is of the secondary series and not stocked by every maker; the next of the primary series is ${say.fact("next")}`,
  "motor-is-large-machine": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is a large machine, built to order: ask the maker for rating, frame and starting`,
  "motor-power-beyond-ratings": (f, say) =>
    `${f.subject} with its service factor comes to ${say.amount(f.found)}, above the greatest ${f.given} rating, ${say.amount(f.limit)}; share the duty between pumps or ask the maker`,
  "speed-above-synchronous": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is above the synchronous speed, ${say.amount(f.limit)}: no induction motor drives at it`,
  "motor-efficiency-not-tabulated": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} has no efficiency in the standard for that number of poles`,
  "motor-current-not-tabulated": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} has no current in NEC Table 430.250 at ${say.fact("voltage")} V; the table has standard horsepower ratings at ${say.fact("voltages")} V`,
  "engine-rating-assumed": (f) =>
    `${f.subject} is taken as the continuous net rating at run speed; a standby, intermittent or gross rating is not one for pumps`,
  "engine-aspiration-assumed": () =>
    "nothing says how the engine draws its air; it is taken as naturally aspirated, which altitude costs most",
  "engine-charge-coolant-assumed": (f, say) =>
    `${f.subject} is ${say.fact("share")} of rated, ${say.fact("limit")}, with charge air cooled by air of the same temperature; makers often keep full power to 1500 m (4900 ft) or more: use the maker's curve`,
  "engine-limit-chosen": (f, say) =>
    `${f.subject} is ${say.fact("share")} of rated, ${say.fact("limit")}, the lesser of the two limits, with air of 30 % humidity: use the maker's curve`,
  "engine-quick-rule": (f, say) =>
    `as a check, 3 % for each 1000 ft above 500 ft leaves ${say.amount(f.found)}; the answer is ${say.fact("adjusted")}`,
  "engine-load-low": (f, say) =>
    `${f.subject} is ${say.amount(f.found)}, below ${say.amount(f.limit)}: long running carbons the engine up`,
  "engine-too-small": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is more than the engine gives on site, ${say.amount(f.limit)}`,
  "fuel-consumption-assumed": (f, say) =>
    `no ${f.subject} was given; ${say.amount(f.found)} is usual for an engine of this power near full load, and half load or less takes more`,
  "housing-mismatch": (_, say) =>
    `the pump adapter for housing No. ${say.fact("pump")} does not bolt to engine housing No. ${say.fact("engine")}: bolt circles ${say.fact("engineCircle")} and ${say.fact("pumpCircle")} differ`,
  "flywheel-unusual-for-housing": (f, say) =>
    `${f.subject} ${say.fact("size")} is seldom seen with housing No. ${say.fact("housing")} (usual: ${say.fact("usual")}); an adapter may be needed`,
  "sheave-too-small": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is below the least the motor's shaft and bearing allow, ${say.amount(f.limit)}`,
  "sheaves-overlap": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} leaves the two sheaves touching; it must be above ${say.amount(f.limit)}`,
  "sheave-minimum-unknown": (f) =>
    `the least ${f.subject} the motor allows is not given; hold it against NEMA MG 1 or the maker's figure`,
  "belt-speed-high": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is above ${say.amount(f.limit)}${f.severity === "error" ? "" : ": have the sheaves balanced"}`,
  "belt-power-high": (f, say) =>
    `${f.subject} carries ${say.amount(f.found)}; V-belts are seldom used above ${say.amount(f.limit)}`,
  "drive-ranking-chosen": () =>
    "the order of the arrangements is a choice of this product; suction pressure and solids are not known to it",
};
