import { NOT_VERIFIED } from "../../../src/basis/citation.ts";
import { andThen, succeed } from "../../../src/basis/result.ts";
import { eductorAir, eductorAirMethod } from "../../../src/priming/eductor-air.ts";
import { linePrimeCourse } from "../../../src/priming/line-prime-time.ts";
import { primeTimeMethod } from "../../../src/priming/prime-time.ts";
import { primingLiftMethod } from "../../../src/priming/priming-lift.ts";
import { statedPrimingLift } from "../../../src/priming/stated-priming-lift.ts";
import { standardAtmosphere } from "../../../src/site/atmosphere.ts";
import { defineEntry } from "../entry.ts";
import { quantity } from "../parameter.ts";
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
} from "../parameters/priming.ts";
import { zeroDoubted } from "../parameters/zero-doubted.ts";

/** 15 °C in K: the air that "standard" air is counted at. */
const STANDARD_TEMPERATURE = 288.15;

export const PRIMINGLIFT = defineEntry({
  id: "PRIMINGLIFT",
  group: "Priming",
  summary: "Maximum suction lift by the air pump, by practice and by NPSH, and which of them rules",
  method:
    "By blank-off: the height at which the air pump moves no more air, its leak and the vapour of a liquid warmer than water at 20 °C counted, over ρg. By practice: 7.62 m (25 ft) of cold water at sea level, less what thinner air and warmer liquid take off, and less for a heavier liquid; not more for a lighter one. By NPSH: as MAXLIFT gives it for the flow and the pump; where it is left out, a caution says that NPSH was not judged. The lowest of them is the maximum lift. No lift of a liquid hotter than water at 60 °C. A capacity alone takes a blank-off of 25 inHg of vacuum at sea level; the blank-off goes with the atmosphere. A negative lift means the pump must be flooded by so much. A leak that the air pump cannot outdraw is refused.",
  cites: [
    ...primingLiftMethod.cites,
    { source: "practice", at: "capacity of an air pump falls in a straight line over the vacuum to its blank-off" },
  ],
  parameters: {
    airPumpCapacity,
    NPSHLift: zeroDoubted(
      quantity("head", {
        about: "Maximum suction lift by NPSH, as MAXLIFT gives it; negative where the pump must be flooded",
        whenLeftOut: { value: null, shown: "not judged, with a caution" },
      }),
    ),
    altitude,
    liquid,
    temperature,
  },
  answer: {
    kind: "record",
    name: "maximum suction lift",
    columns: {
      byBlankOff: { name: "by blank-off", quantity: "head" },
      byPractice: { name: "by practice", quantity: "head" },
      byNpsh: { name: "by NPSH", quantity: "head" },
      greatest: { name: "maximum lift", quantity: "head" },
      rules: { name: "ruled by" },
    },
  },
  examples: [
    {
      args: ["23.6 L/s, blank-off 40 kPa(a)", null, null, "998.2 kg/m3, 1 cP, pv 2.3 kPa", null, "SI"],
      part: [1, 0],
      answer: 6.26,
      within: 0.006,
      source: "by hand: (101.325 − 40) kPa / 9.789 kPa/m",
    },
    {
      args: ["50 cfm, blank-off 26 inHg", null, null, "water", 68],
      part: [1, 3],
      answer: 25,
      within: 0.01,
      source: "common practice, no source: 7.62 m (25 ft) of cold water at sea level",
    },
  ],
  run: ({ airPumpCapacity: stated, NPSHLift, altitude: above, liquid: named, temperature: at }) => {
    const airPump = airPumpOf(stated);
    return onSite(above, named.at(at), (atmosphericPressure, state) =>
      andThen(
        statedPrimingLift({ airPump, npshLift: NPSHLift, atmosphericPressure, liquid: state }),
        ({ byBlankOff, byPractice, byNpsh, greatest, rules }) =>
          succeed({ byBlankOff, byPractice, byNpsh: byNpsh ?? "not judged", greatest, rules }),
      ),
    );
  },
});

export const PRIMECURVE = defineEntry({
  id: "PRIMECURVE",
  group: "Priming",
  summary: "Course of a priming as a table: time, height of the water, vacuum and air left, to the full casing",
  method:
    "The same air balance and the same line as PRIMETIME, cut at sixteen equal steps of height up to the lift and at four equal steps of volume from there, while level run and casing fill at the vacuum held: 21 rows whatever the line. Without a lift all steps are of volume. The last time is the answer of PRIMETIME. The vacuum is that of the air over the water, below the air of the site. Add 5 to 20 s for separator and priming valve (common practice).",
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
  answer: {
    kind: "table",
    name: "course of the priming",
    columns: {
      time: { name: "time", quantity: "duration" },
      height: { name: "height of water", quantity: "head" },
      vacuum: { name: "vacuum", quantity: "pressureDifference" },
      airLeft: { name: "air left", quantity: "volume" },
      stage: { name: "stage" },
    },
  },
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
      part: [17, 0],
      answer: 10.17,
      within: 0.03,
      source: "by hand: closed form of the rise through 5 m of a 6 in bore, checked by a mass march",
    },
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
      part: [21, 0],
      answer: 18.17,
      within: 0.1,
      source: "by hand: 10.17 s for the rise and 8.00 s for 6 m level and 60 L of casing at the vacuum held",
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
      andThen(linePrimeCourse({ ...suction, pumps, airPump, atmosphericPressure, liquid: state }), (points) =>
        succeed(points.map(({ time, height, vacuum, airLeft, stage }) => ({ time, height, vacuum, airLeft, stage }))),
      ),
    );
  },
});

export const EDUCTORAIR = defineEntry({
  id: "EDUCTORAIR",
  group: "Priming",
  summary: "Compressed air a priming eductor takes, the compressor for it, the air it draws and the vacuum it reaches",
  method:
    "Motive air by choked flow through the nozzle, coefficient of discharge 1, shown as air at 15 °C and one standard atmosphere. The rest is common practice without a source and comes as a minimum and a maximum: 4 to 5 ft³/min of free air for each horsepower of compressor with air of 100 psi; 0.2 to 0.5 of the motive air drawn at 10 to 20 inHg of vacuum; nothing more drawn at 25 to 27 inHg (single stage, at sea level, in proportion to the atmosphere elsewhere). A nozzle that the pressure does not choke is refused. Eductors are thirsty and above 100 dB(A) without a silencer, and the exhaust can freeze: shut the air once primed.",
  cites: eductorAirMethod.cites,
  parameters: {
    nozzleBore: quantity("size", { about: "Bore of the motive nozzle", range: "above 0" }),
    motivePressure: quantity("gaugePressure", {
      about: "Gauge pressure of the compressed air before the nozzle",
      range: "enough to choke it: 90 kPa (13 psi) at sea level",
    }),
    motiveTemperature: zeroDoubted(
      quantity("temperature", {
        about: "Temperature of the compressed air before the nozzle",
        whenLeftOut: { value: STANDARD_TEMPERATURE, shown: "59 °F (15 °C)" },
      }),
    ),
    altitude,
  },
  answer: {
    kind: "record",
    name: "eductor",
    columns: {
      motiveAir: { name: "motive air", quantity: "freeAirFlow" },
      leastPower: { name: "compressor power, minimum", quantity: "power" },
      mostPower: { name: "compressor power, most", quantity: "power" },
      leastDrawn: { name: "air drawn, minimum", quantity: "freeAirFlow" },
      mostDrawn: { name: "air drawn, most", quantity: "freeAirFlow" },
      leastVacuum: { name: "vacuum reached, minimum", quantity: "pressureDifference" },
      mostVacuum: { name: "vacuum reached, most", quantity: "pressureDifference" },
    },
  },
  examples: [
    {
      args: [0.25, 100, 60],
      part: [1, 0],
      answer: 104,
      within: 1.5,
      source: `trade table (${NOT_VERIFIED}): an orifice of 1/4 in passes 104 ft³/min of standard air at 100 psi`,
    },
  ],
  run: ({ nozzleBore, motivePressure, motiveTemperature: airTemperature, altitude: above }) =>
    andThen(standardAtmosphere(above), (atmosphericPressure) =>
      andThen(
        eductorAir({ nozzleBore, motivePressure, airTemperature, atmosphericPressure }),
        ({ motiveAir, compressorPower, airDrawn, vacuum }) =>
          succeed({
            motiveAir,
            leastPower: compressorPower.least,
            mostPower: compressorPower.most,
            leastDrawn: airDrawn.least,
            mostDrawn: airDrawn.most,
            leastVacuum: vacuum.least,
            mostVacuum: vacuum.most,
          }),
      ),
    ),
});
