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
    `${f.subject} of ${say.amount(f.found)} is of the secondary series, which few makers stock; the next of the primary series is ${say.amount(f.facts.next)}`,
  "motor-is-large-machine": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is a large machine, built to order: ask the maker for rating, frame and starting`,
  "motor-power-beyond-ratings": (f, say) =>
    `${f.subject} with its margin comes to ${say.amount(f.found)}, above the maximum ${f.given} rating${f.facts.isOnSite ? " on site" : ""}, ${say.amount(f.limit)}; share the duty between pumps or ask the maker`,
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
  "motor-too-small": (f, say) =>
    `${f.subject} gives ${say.amount(f.limit)} here and the pump takes ${say.amount(f.found)}: select a larger one or limit the flow${f.facts.isWithinFactor ? "; the load is inside a nameplate service factor of 1.15, which is no margin: it holds on a sine supply alone, to 1000 m (3300 ft) and 40 °C (104 °F), and on a variable-frequency drive it is 1.0" : ""}`,
  "motor-speed-not-mains": (f, say) =>
    `no ${f.facts.frequency} Hz motor runs at ${say.amount(f.found)} straight from the line: a variable-frequency drive (VFD) on a motor of ${f.facts.poles} poles is taken; with belts or gears the motor keeps its own speed and its whole rating`,
  "motor-other-supply-fits": (f, say) =>
    `a line-start motor of ${f.facts.poles} poles runs at ${say.amount(f.found)} on ${f.facts.frequency} Hz: state the frequency of the supply if it is that`,
  "motor-below-base-speed": (f, say) =>
    `slowed to the pump's speed the ${f.subject} gives ${say.amount(f.found)} of its rating, in proportion to speed; this is counted`,
  "motor-above-base-speed": (f, say) =>
    `at ${say.amount(f.found)} the ${f.subject} runs above its base speed: it gives no more than its rating, and bearings, balance and drive must be made for it: ask the maker`,
  "motor-large-on-drive": (f, say) =>
    `a ${f.subject} of ${say.amount(f.found)} on a VFD needs insulation for the drive's voltage peaks and an insulated bearing or shaft grounding: state the drive to its maker`,
  "motor-through-belts": (f) =>
    `the ${f.subject} drives through belts at its own speed, taken with four poles; they take 5 % of the power here, which is counted: size them with BELTDRIVE`,
  "motor-high-voltage": (f, say) =>
    `${f.subject} is that of a low-voltage motor, and ${say.amount(f.found)} is above 1000 V: ask the maker`,
  "generator-sizing-figure": (f) =>
    `${f.subject}: sizing figures, confirm with the set's maker; at altitude or in hot air its engine gives less (ENGINESITEPOWER)`,
  "locked-rotor-assumed": () =>
    "starting apparent power is taken as 7 times that of running; the motor's data sheet decides",
  "code-letter-assumed": (f) =>
    `${f.subject} ${f.facts.letter} is taken, the usual one of this rating; the nameplate decides`,
  "code-letter-open": (f) =>
    `${f.subject} ${f.given} has no maximum figure: use the locked-rotor apparent power of the motor's data sheet`,
  "speed-range-empty": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is not reached at this speed, whose shutoff head is ${say.amount(f.limit)}: there is no flow at any lower speed`,
  "speed-flows-alone": (f, say) => `with a ${f.subject} of ${say.amount(f.found)} liquid runs by gravity at any speed`,
  "speed-affinity-doubted": (f, say) =>
    `${f.subject} is ${say.amount(f.found)} of the speed; below 50 % the affinity laws are doubtful, and efficiency falls`,
  "speed-turndown-wide": (f, say) =>
    `${f.subject} is ${say.amount(f.found)} of the speed; guides for fan-cooled motors stop at 20 % to 30 %: ask the maker of motor and drive, and mind the pump's minimum flow`,
  "motor-speed-synchronous": (f, say) =>
    `${say.amount(f.found)} is the synchronous speed, which no loaded motor reaches: 0.5 % to 2.5 % less is usual, and the pump gives less head`,
  "frequency-drive-derated": (f, say) =>
    `a ${f.subject} at this altitude gives ${say.amount(f.found)} of its rating: size it for that`,
  "motor-frame-usual": (f) =>
    `the frame is ${f.facts.basis === "standard" ? "the one assigned to this rating and number of poles" : "the usual one beyond those the standard assigns"}, ${NOT_VERIFIED}; the maker's drawing decides`,
  "motor-frame-packed": (f) =>
    `frame ${f.facts.frame} is the standard one; some makers pack this motor one size smaller, as ${f.facts.packedAs}`,
  "motor-frame-not-held": (f, say) =>
    `the tables have no ${f.subject} for ${motorNamed(f.facts, say)}: frame by the maker`,
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
    `${f.subject} is the largest of ${f.facts.direct} times full-load current direct on line; star-delta (wye-delta) draws ${f.facts.starDelta} times, a soft starter ${f.facts.soft}, a variable-frequency drive ${f.facts.drive}`,
  "engine-rating-assumed": (f) =>
    `${f.subject} is taken as the continuous net rating at run speed; do not use a standby or intermittent rating, and take off a gross one what fan and accessories take`,
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
    `${f.subject} is ${say.amount(f.found)}, below the usual ${say.amount(f.limit)}: prolonged light load causes carbon build-up (wet stacking)`,
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
