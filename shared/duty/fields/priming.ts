import { describedAirPump } from "../../../src/priming/described-air-pump.ts";
import { eductorAirMethod } from "../../../src/priming/eductor-air.ts";
import { primeTimeMethod } from "../../../src/priming/prime-time.ts";
import { amount, named } from "../field.ts";

export const priming = {
  airPump: named(describedAirPump, {
    label: "Priming air pump",
    whenBlank: "50 cfm, blank-off 25 inHg",
    help: "Free-air capacity of the vacuum pump that primes, such as 50 cfm; about that is common practice.",
  }),
  casingVolume: amount({
    label: "Casing and chamber volume",
    quantity: "volume",
    bounds: primeTimeMethod.inputs.casingVolume,
    whenBlank: 0,
    help: "Air in the pump casing and priming chamber at the start, and in the discharge up to its check valve.",
  }),
  eductorNozzle: amount({
    label: "Eductor nozzle bore",
    quantity: "size",
    bounds: eductorAirMethod.inputs.nozzleBore,
    help: "Motive nozzle of a compressed-air eductor, for the air it takes.",
  }),
  motivePressure: amount({
    label: "Motive air pressure",
    quantity: "gaugePressure",
    bounds: eductorAirMethod.inputs.motivePressure,
    help: "Gauge pressure of the air before the eductor nozzle.",
  }),
};
