import type { PrimingFindings } from "../../../src/basis/finding-code.ts";
import type { WordsOf } from "../words.ts";

export const primingWords: WordsOf<keyof PrimingFindings> = {
  "line-shorter-than-lift": (f, say) =>
    `${f.subject} is ${say.amount(f.found)} long and cannot gain a suction lift of ${say.amount(f.limit)}`,
  "priming-line-falls": (f) =>
    `${f.subject} falls on its way to the pump: its high point keeps air and must be vented there, so no time to prime holds`,
  "priming-no-air": (f) => `${f.subject} and casing hold no air; give the lengths and bores of the line`,
  "lift-above-atmosphere": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is more than the atmosphere can push the liquid up here, ${say.amount(f.limit)}; set the pump lower or submerge it`,
  "lift-above-vapour": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is more than the atmosphere less the vapour pressure holds up here, ${say.amount(f.limit)}: the liquid boils in the line`,
  "never-primes": (f, say) =>
    `it never primes: the blank-off lift of the air pump, ${say.amount(f.limit)}, is less than the suction lift of ${say.amount(f.found)}`,
  "leak-exceeds-air-pump": (f, say) =>
    `it never primes: the leak of ${say.amount(f.found)} is no less than what the air pump draws, ${say.amount(f.facts.capacity)}`,
  "flooded-no-priming": (f, say) =>
    `the pump stands ${say.amount(f.found)} below the liquid and fills by itself when vented; no time to prime applies`,
  "air-pump-part-unread": (f, say) => `${f.subject}: “${f.given}” cannot be read; write ${say.suggestions()}`,
  "blank-off-ambiguous": (f, say) =>
    `${f.subject} “${f.given}” does not say whether it is a vacuum or an absolute pressure; write ${say.suggestions()}`,
  "priming-front-fast": (f, say) =>
    `the water front moves at up to ${say.amount(f.found)}, faster than the ${say.amount(f.limit)} that is slow enough for the method; the time is a rough one, and water hammer is possible when it reaches the pump`,
  "priming-one-run": (f) =>
    `of the ${f.facts.runs} runs side by side in the ${f.subject} one is counted, the pump's own; state the number of pumps that the line serves: with one, all of them are drawn through, and it takes ${f.facts.runs} times as long`,
  "priming-profile-assumed": () =>
    "the lift is taken as gained straight up from the liquid and the rest of the line as level, the longest time of any line without a high point; a high point keeps air and must be vented",
  "blank-off-assumed": (f, say) =>
    `no blank-off was stated for the ${f.subject}: a vacuum of ${say.amount(f.found)} at sea level is taken, and no leak unless stated; ${
      f.facts.time === undefined
        ? `at ${say.amount(f.facts.better)}, the better end of practice, it never primes either`
        : `at ${say.amount(f.facts.better)}, the better end of practice, it takes ${say.amount(f.facts.time)}`
    }`,
  "casing-not-counted": (f) =>
    `${f.subject} was left out: the air in the casing and the priming chamber is not counted, so the true time is longer`,
  "priming-vapour-unknown": () =>
    "the liquid states no vapour pressure: the air over it is taken as dry, which is too short a time for a warm or volatile liquid",
  "priming-vapour-counted": (f, say) => `the air is taken as saturated with vapour at ${say.amount(f.found)}`,
  "priming-npsh-not-judged": (f, say) =>
    `a pump that primes may still lack NPSH: priming reaches ${say.amount(f.found)} here, and the maximum lift by NPSH at the flow (MAXLIFT) holds as well, whichever is less`,
  "priming-lift-blank-off-assumed": (f, say) =>
    `no blank-off was stated for the ${f.subject}: a vacuum of ${say.amount(f.found)} at sea level is taken, and no leak unless stated; at ${say.amount(f.facts.better)}, the better end of practice, it holds the liquid to ${say.amount(f.facts.lift)}`,
  "priming-lift-negative": (f, say) =>
    `the pump must stand at least ${say.amount(f.found)} below the liquid: no lift is left by ${f.facts.rule}`,
  "eductor-by-practice": (f) =>
    `${f.subject}: vacuum, air drawn and compressor power are typical values; check against the data of the unit bought`,
  "eductor-power-rough": (f, say) =>
    `compressor power goes by a figure for air of ${say.amount(f.facts.usual)}; at ${say.amount(f.found)} it is a rough one`,

  "prime-liquid-hot": (f, say) =>
    `the liquid has a vapour pressure of ${say.amount(f.found)}, above that of water at 60 °C (140 °F), ${say.amount(f.limit)}: no lift is offered`,
  "prime-lift-beyond": (f, say) => {
    const [found, limit] = [say.amount(f.found), say.amount(f.limit)];
    return `suction lift of ${found} is above ${limit}, the maximum by ${f.facts.rule}`;
  },
  "prime-lift-within": (f, say) =>
    `suction lift of ${say.amount(f.found)} is within ${say.amount(f.limit)}, the maximum by ${f.facts.rule}`,
  "prime-lift-near": (f, say) => {
    const [found, limit] = [say.amount(f.found), say.amount(f.limit)];
    if (found === limit) return `suction lift of ${found} is at the limit by ${f.facts.rule}`;
    return `suction lift of ${found} is near the limit of ${limit} by ${f.facts.rule}`;
  },
  "prime-slurry-settles": () =>
    "slurry of 20 % by weight or more settles in a line that stands, and does not prime again: flood the suction, or flush before each stop",
  "prime-by-gravity": (f, say) => `the liquid stands ${say.amount(f.found)} above the pump and fills it by itself`,
  "prime-not-needed": (f, say) => `the pump is flooded by ${say.amount(f.found)}`,
  "prime-needs-gate-and-vent": () => "gate valve in the suction line and a vent on the casing",
  "prime-lowest-level": () => "holds only as long as the level stays above the impeller eye: check the lowest level",
  "prime-time-short": (f, say) =>
    `an air pump of ${say.amount(f.facts.capacity)} fills the line in ${say.amount(f.found)}`,
  "prime-time-long": (f, say) =>
    `an air pump of ${say.amount(f.facts.capacity)} takes ${say.amount(f.found)}, more than the ${say.amount(f.facts.bypass)} accepted on bypass duty`,
  "prime-time-very-long": (f, say) =>
    `an air pump of ${say.amount(f.facts.capacity)} takes ${say.amount(f.found)}, more than the ${say.amount(f.facts.dewatering)} accepted on dewatering`,
  "prime-dry-long-lines": () => "serves long lines and high lifts, primes again by itself and stands dry running",
  "prime-dry-passes-solids": () =>
    "passes solids and primes again by itself when unattended or drawing air at a low level",
  "prime-needs-air-pump": () =>
    "belt-driven air pump of about 50 ft³/min (24 L/s) and an air separator with float valve",
  "prime-needs-larger-air-pump": (f, say) =>
    `for ${say.amount(f.facts.time)}, an air pump of at least ${say.amount(f.found)}, or a smaller or shorter line`,
  "prime-needs-discharge-check": () =>
    "tight check valve on the discharge, or no vacuum forms; fast closing for a static head over 10 m (33 ft)",
  "prime-float-valve": () =>
    "float valve and check valve need upkeep, and mist leaves with the air; every suction joint must be tight (20 inHg held shut, less than 1 inHg lost a minute)",
  "prime-float-stringy": () => "stringy solids hang in the float valve: inspect it often",
  "prime-blank-off-varies": (f, say) =>
    `the time is for a blank-off at a vacuum of ${say.amount(f.found)}, at sea level; units of ${say.amount(f.facts.better)} are quicker`,
  "prime-hazardous-area": () => "in a hazardous area no engine or motor without its rating: eductor or flooded suction",
  "prime-self-short-line": (f, say) =>
    `the line of ${say.amount(f.found)} is short enough (below ${say.amount(f.limit)}) to prime by the liquid kept in the casing`,
  "prime-self-long-line": (f, say) =>
    `the line of ${say.amount(f.found)} is long (${say.amount(f.limit)} or more): time about doubles with the suction volume; beyond the pump's listed time use vacuum assist`,
  "prime-self-solids": () => "tolerates solids",
  "prime-self-needs": () => "casing filled once, liquid held back at every stop, and air led off from the discharge",
  "prime-self-cautions": () =>
    "takes minutes, lower efficiency, can freeze; priming air cannot be pressed against a head, so fit an air release or bleed line",
  "prime-eductor-no-moving-parts": () => "no moving parts; takes dust and hazardous areas",
  "prime-eductor-motive-air": (f, say) =>
    `compressed air: a nozzle of ${say.amount(f.facts.nozzle)} at ${say.amount(f.facts.pressure)} takes ${say.amount(f.found)} of free air and draws 0.2 to 0.5 of it by mass at 10 to 20 inHg; about 4 to 5 ft³/min a horsepower of compressor`,
  "prime-eductor-cautions": () =>
    "high air consumption: shut it once primed; draws nothing beyond 25 to 27 inHg; above 100 dB(A) without a silencer; exhaust can freeze",
  "prime-foot-valve-clogs": () => "solids hold a foot valve open or clog it",
  "prime-foot-valve-cheap": () => "cheap and simple for clean liquid",
  "prime-foot-valve-needs": () => "foot valve with strainer, and liquid to fill line and casing by hand",
  "prime-foot-valve-cautions": () => "one valve that sticks and the pump does not start; adds head loss to the suction",
  "prime-submerged-no-priming": () => "no priming at all where the pump can stand below the liquid",
  "prime-submerged-needs": () =>
    "a place below the lowest level: submersible pump, hydraulically driven head, booster, or a lower pump",
  "prime-hot-needs": () =>
    "a flooded suction with an NPSH reserve of at least 1.5 m (5 ft) over what the pump requires",
  "prime-submerged-cautions": () => "siting, electrics under water and lifting the pump out",
};
