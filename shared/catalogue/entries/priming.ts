import { andThen, type Finding, succeed } from "../../../src/basis/result.ts";
import { linePrimeTime } from "../../../src/priming/line-prime-time.ts";
import { primeTimeMethod } from "../../../src/priming/prime-time.ts";
import { type PrimingOption, primingChoice, primingChoiceMethod } from "../../../src/priming/priming-choice.ts";
import { type PrimingSolids, SOLIDS_WORDS, solidsNamed, solidsOf } from "../../../src/priming/priming-solids.ts";
import { findingText } from "../../text/finding-text.ts";
import { defineEntry } from "../entry.ts";
import { quantity, type SingleParameter } from "../parameter.ts";
import { liquid, temperature } from "../parameters/liquid.ts";
import {
  airPumpCapacity,
  airPumpOf,
  altitude,
  casingVolume,
  onSite,
  pumpsOnLine,
  suctionLift,
  suctionLine,
  usualAirPump,
} from "../parameters/priming.ts";
import { share } from "../parameters/share.ts";

const byWeight = share({ about: "Solids by weight" });

const solids: SingleParameter<PrimingSolids> = {
  takes: "cell",
  about: "What comes with the liquid: solids by weight, or words such as clean, raw sewage, rags, sand and leaves",
  quantity: "percent",
  example: '5, "5 %" or "rags"',
  range: "0 to below 70 %",
  choices: SOLIDS_WORDS,
  read: (cell, reading) =>
    typeof cell === "string" && !/^\s*[+\-−.\d]/.test(cell)
      ? solidsNamed(cell, reading.name)
      : andThen(byWeight.read(cell, reading), (fraction) => succeed(solidsOf(fraction))),
};

export const PRIMETIME = defineEntry({
  id: "PRIMETIME",
  group: "Priming",
  summary: "Time until an air pump has drawn the water up the suction line and filled the casing, in seconds",
  method:
    "The water front rises as the air leaves: d(pV)/dt = −p_a F, with p = p_a − ρgh over the front and F the free air still drawn at that pressure. Volume from the bores and lengths of the line, all of it counted as full of air, and the casing. The line is taken to go straight up from the liquid until the lift is gained and level from there: of all lines without a high point that one takes longest, so the answer is on the safe side. Of runs side by side (share 1/2) those of one pump count: with one pump both, with two pumps one, and one, with a caution, where the number of pumps is left out. The capacity falls in a straight line over the vacuum to nothing at the blank-off; free air is air at the pressure of the site, and the blank-off goes with the atmosphere. A number gives the capacity alone and takes a blank-off of 25 inHg of vacuum at sea level; the caution gives the time at 27 inHg too. A text may state both and a leak: 50 cfm, blank-off 26 inHg, leak 2 cfm. Where the liquid is warmer than water at 20 °C the air counts as saturated with its vapour. Add 5 to 20 s for separator and priming valve (common practice). A lift the air pump cannot hold is refused with the lift it can. A pump that primes may still lack NPSH: check NPSHA.",
  cites: primeTimeMethod.cites,
  parameters: {
    suctionLine,
    suctionLift,
    airPumpCapacity,
    casingVolume,
    altitude,
    liquid,
    temperature,
    numberOfPumps: pumpsOnLine,
  },
  answer: { kind: "quantity", name: "time to prime", quantity: "duration" },
  examples: [
    {
      args: [
        [["ID 152.4 mm rough 0.045 mm", 11]],
        5,
        "23.6 L/s, blank-off 10 kPa(a)",
        60,
        null,
        null,
        null,
        null,
        "SI",
      ],
      answer: 18.17,
      within: 0.1,
      source:
        "by hand: 5 m of rise and 6 m level in a 6 in bore; closed form 10.17 s for the rise, 8.00 s for the rest, checked by a mass march",
    },
    {
      args: [
        [["ID 100 mm rough 0 mm", 10]],
        0,
        "10 L/s, blank-off 10 kPa(a)",
        "21.46 L",
        null,
        "SG 1, 1 cP, pv 0 kPa",
        null,
        null,
        "SI",
      ],
      answer: 10,
      within: 0.001,
      source: "by hand: no lift, so the pump moves its free air throughout: (78.54 L + 21.46 L) / 10 L/s",
    },
  ],
  run: ({
    airPumpCapacity: stated,
    altitude: above,
    liquid: named,
    temperature: at,
    numberOfPumps: pumps,
    ...suction
  }) => {
    const airPump = airPumpOf(stated);
    return onSite(above, named.at(at), (atmosphericPressure, state) =>
      andThen(linePrimeTime({ ...suction, pumps, airPump, atmosphericPressure, liquid: state }), ({ total }) =>
        succeed(total),
      ),
    );
  },
});

export const PRIMINGMETHODS = defineEntry({
  id: "PRIMINGMETHODS",
  group: "Priming",
  summary: "Ways to prime the pump, ranked for this suction, with reasons, needs and cautions",
  method:
    "Common practice, stated as such. A flooded suction needs no priming. No lift is offered for a liquid hotter than water at 60 °C (140 °F), nor above the lowest of three: what the air pump holds, 7.62 m (25 ft) of cold water at sea level less what altitude, vapour pressure and a heavier liquid take off, and the maximum lift given; there the pump goes below the level. Within 5 % of it or 0.3 m (1 ft), and with 20 % of solids by weight or more, a method suits with care at best. Solids, rags or a line of 6 m (20 ft) and more ask for a vacuum-assisted dry prime; a short line of clean liquid is served by a self-priming casing. The time is that of the air pump on line and casing, as PRIMETIME works it out; over 5 minutes it requires a larger one. NPSH depends on flow and pump: give the maximum lift with it counted, or a caution says that it was not. Solids are stated by weight or by a word.",
  cites: primingChoiceMethod.cites,
  parameters: {
    suctionLift,
    suctionLine,
    solids,
    altitude,
    liquid,
    temperature,
    airPumpCapacity: usualAirPump,
    casingVolume,
    maximumLift: quantity("head", {
      about: "Maximum suction lift with NPSH counted, as PRIMINGLIFT gives it; negative where the pump must be flooded",
      whenLeftOut: { value: null, shown: "that of air pump and practice, with a caution" },
    }),
    numberOfPumps: pumpsOnLine,
  },
  answer: {
    kind: "table",
    name: "ways to prime",
    columns: {
      rank: { name: "rank" },
      method: { name: "method" },
      verdict: { name: "verdict" },
      primeTime: { name: "prime time", quantity: "duration" },
      reasons: { name: "reasons" },
      needs: { name: "needs" },
      cautions: { name: "cautions" },
    },
  },
  examples: [
    {
      args: [15, [["6in suction hose", 40, "1 strainer"]], "rags"],
      part: [1, 1],
      answer: "vacuum-assisted dry prime",
      source: "common practice, no source: solids and rags, unattended, ask for a dry prime",
    },
    {
      args: [2, [["6in sch40", 4]], 0, null, null, null, null, null, null, null, "SI"],
      part: [1, 1],
      answer: "self-priming casing",
      source: "common practice, no source: clean liquid and a line under 6 m",
    },
  ],
  run: (
    {
      altitude: above,
      liquid: named,
      temperature: at,
      airPumpCapacity: stated,
      maximumLift,
      numberOfPumps: pumps,
      ...suction
    },
    { unitSet },
  ) => {
    const airPump = stated === null ? null : airPumpOf(stated);
    const said = (findings: readonly Finding[]): string =>
      findings.map((finding) => findingText(finding, unitSet)).join(" ");
    const row = (option: PrimingOption, i: number) => ({
      rank: i + 1,
      method: option.method,
      verdict: option.verdict,
      primeTime: option.time,
      reasons: said(option.reasons),
      needs: said(option.needs),
      cautions: said(option.cautions),
    });
    return onSite(above, named.at(at), (atmosphericPressure, state) =>
      andThen(
        primingChoice({ ...suction, pumps, greatestLift: maximumLift, airPump, atmosphericPressure, liquid: state }),
        (options) => succeed(options.map(row)),
      ),
    );
  },
});
