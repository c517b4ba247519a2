import { NOT_VERIFIED } from "../../../src/basis/citation.ts";
import type { DriveFindings, MotorFacts } from "../../../src/basis/finding-code.ts";
import type { Say, WordsOf } from "../words.ts";

/** "a 75 hp NEMA motor of 2 poles at 60 Hz" */
function motorNamed({ rating, series, poles, frequency }: MotorFacts, say: Say): string {
  return `a ${say.amount(rating)} ${series} motor of ${poles} poles at ${frequency} Hz`;
}

export const driveWords: WordsOf<keyof DriveFindings> = {
  "motor-margin-small": (f, say) =>
    `${f.subject} leaves ${say.amount(f.found)} over the shaft power; a pump may take more than its curve says`,
  "motor-rating-secondary": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is of the secondary series and not stocked by every maker; the next of the primary series is ${say.amount(f.facts.next)}`,
  "motor-is-large-machine": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is a large machine, built to order: ask the maker for rating, frame and starting`,
  "motor-power-beyond-ratings": (f, say) =>
    `${f.subject} with its service factor comes to ${say.amount(f.found)}, above the greatest ${f.given} rating${f.facts.isOnSite ? " on site" : ""}, ${say.amount(f.limit)}; share the duty between pumps or ask the maker`,
  "speed-above-synchronous": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is above the synchronous speed, ${say.amount(f.limit)}: no induction motor drives at it`,
  "motor-efficiency-not-tabulated": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} has no efficiency in the standard for that number of poles`,
  "motor-current-not-tabulated": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} has no current in NEC Table 430.250 at ${f.facts.voltage} V; the table has standard horsepower ratings at ${f.facts.voltages} V`,
  "motor-raised-for-site": (f, say) =>
    `on this site a motor gives ${say.amount(f.facts.share)} of its rating: a ${say.amount(f.facts.plain)} motor would fall short, so ${say.amount(f.facts.taken)} is taken`,
  "motor-derated-on-site": (f, say) =>
    `on this site a motor gives ${say.amount(f.facts.share)} of its rating, here ${say.amount(f.found)}, which still carries the pump`,
  "motor-cool-air-credit": (f, say) =>
    `at this altitude a motor may keep its whole rating in air up to ${say.amount(f.limit)}, and the air stated is ${say.amount(f.found)}; no credit is taken for it: ask the maker`,
  "motor-service-factor-credit": (f, say) =>
    `a motor with a service factor of 1.15 may keep its rating to ${say.amount(f.limit)} with the factor used up; no credit is taken for it: ask the maker`,
  "motor-speed-not-mains": (f, say) =>
    `no line-start motor runs at ${say.amount(f.found)}: a variable-frequency drive (VFD), belts, gears or an engine must give this speed, so poles, slip, efficiency and torque are left empty`,
  "motor-below-base-speed": (f) =>
    `a ${f.subject} on a variable-frequency drive (VFD) gives its rating at its base speed, and below that less in proportion to speed: compare the pump's torque with it`,
  "motor-speed-synchronous": (f, say) =>
    `${say.amount(f.found)} is the synchronous speed, which no loaded motor reaches: 0.5 % to 2.5 % less is usual, and the pump gives less head`,
  "frequency-drive-derated": (f, say) =>
    `a ${f.subject} at this altitude gives ${say.amount(f.found)} of its rating: size it for that`,
  "motor-frame-from-memory": () =>
    `the frame is the usual one with four poles, partly ${NOT_VERIFIED}; the maker's drawing decides`,
  "motor-frame-not-held": (f, say) =>
    `the tables have no ${f.subject} for ${motorNamed(f.facts, say)}; take it from the maker's drawing`,
  "motor-efficiency-other-supply": (f, say) =>
    `the efficiencies in the tables are of ${f.facts.series === "NEMA" ? "NEMA motors at 60 Hz" : "IEC motors at 50 Hz"}, and this is ${motorNamed(f.facts, say)}: ask the maker`,
  "motor-efficiency-not-held": (f, say) =>
    `the standard has no efficiency for ${motorNamed(f.facts, say)}: ask the maker`,
  "motor-class-higher-due": (f, say) =>
    `efficiency is that of class IE3; in the European Union and the United Kingdom a motor of this rating must be IE4, ${say.amount(f.found)}`,
  "motor-current-by-code": (f, say) =>
    `${f.subject} is that of the electrical code's ${say.amount(f.facts.column)} column, for conductors and protection; the nameplate wins for everything else`,
  "motor-current-not-known": (f) =>
    `${f.subject} is left empty, for without an efficiency it cannot be worked out: take it from the nameplate`,
  "motor-power-factor-assumed": (f, say) =>
    `${f.subject} rests on a power factor of ${say.amount(f.found)}; the nameplate wins`,
  "motor-starting-current": (f) =>
    `${f.subject} is the greatest of ${f.facts.direct} times full-load current direct on line; star-delta (wye-delta) draws ${f.facts.starDelta} times, a soft starter ${f.facts.soft}, a variable-frequency drive ${f.facts.drive}`,
  "engine-rating-assumed": (f) =>
    `${f.subject} is taken as the continuous net rating at run speed; do not use a standby, intermittent or gross rating`,
  "engine-gross-rating-assumed": (f) =>
    `${f.subject} is taken as the continuous gross rating at run speed; do not use a standby or intermittent rating`,
  "engine-losses-assumed": (f, say) =>
    `no ${f.subject} were given; ${say.amount(f.found)} is taken off the rating, and 0 is for a rating that is net already`,
  "engine-aspiration-assumed": () =>
    "aspiration not given; naturally aspirated is assumed, the largest altitude derating",
  "engine-charge-coolant-assumed": (f, say) =>
    `${f.subject} is ${say.amount(f.facts.share)} of rated, ${f.facts.limit}, with charge air cooled by air of the same temperature; makers often keep full power to 1500 m (4900 ft) or more: use the maker's curve`,
  "engine-limit-chosen": (f, say) =>
    `${f.subject} is ${say.amount(f.facts.share)} of rated, ${f.facts.limit}, the lesser of the two limits, with air of 30 % humidity: use the maker's curve`,
  "engine-quick-rule": (f, say) =>
    `as a check, 3 % for each 1000 ft above 500 ft leaves ${say.amount(f.found)}; the answer is ${say.amount(f.facts.adjusted)}`,
  "engine-load-low": (f, say) =>
    `${f.subject} is ${say.amount(f.found)}, below ${say.amount(f.limit)}: prolonged light load causes carbon build-up (wet stacking)`,
  "engine-too-small": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is more than the engine gives on site, ${say.amount(f.limit)}`,
  "fuel-consumption-assumed": (f, say) =>
    `no ${f.subject} was given; ${say.amount(f.found)} is usual for an engine of this power near full load, and half load or less takes more`,
  "fuel-part-load": (f, say) =>
    `at ${say.amount(f.found)} load an engine takes ${f.facts.factor} times the fuel for each unit of energy that it takes from half load up`,
  "fuel-load-outside": (f, say) =>
    `no fuel is worked out at ${say.amount(f.found)} load; the rule for part load holds from 25 % to 110 %`,
  "housing-mismatch": (f) =>
    `the pump adapter for housing No. ${f.facts.pump} does not bolt to engine housing No. ${f.facts.engine}: bolt circles ${f.facts.engineCircle} and ${f.facts.pumpCircle} differ`,
  "flywheel-unusual-for-housing": (f) =>
    `${f.subject} ${f.facts.size} is seldom seen with housing No. ${f.facts.housing} (usual: ${f.facts.usual}); an adapter may be needed`,
  "sheave-too-small": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is below the minimum the motor's shaft and bearing allow, ${say.amount(f.limit)}`,
  "sheaves-overlap": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} leaves the two sheaves touching; it must be above ${say.amount(f.limit)}`,
  "sheave-minimum-unknown": (f) =>
    `the minimum ${f.subject} the motor allows is not given; compare it with NEMA MG 1 or the maker's figure`,
  "belt-speed-high": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is above ${say.amount(f.limit)}${f.kind === "error" ? "" : ": have the sheaves balanced"}`,
  "belt-power-high": (f, say) =>
    `${f.subject} carries ${say.amount(f.found)}; V-belts are seldom used above ${say.amount(f.limit)}`,
  "drive-ranking-chosen": () => "the order of the arrangements is Dutybook's own choice",
};
