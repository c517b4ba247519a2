import type { Frequency } from "../../../src/drive/motor-speed.ts";
import { FREQUENCY_NAMES, frequencyNamed } from "../../../src/drive/supply.ts";
import { type OptionalParameter, text } from "../parameter.ts";

/** Frequency of the supply; null where left out. */
export const supplyFrequency: OptionalParameter<Frequency | null> = text<Frequency | null>(
  {
    about: "Frequency of the supply",
    example: '60, or "50 Hz"',
    choices: FREQUENCY_NAMES,
    whenLeftOut: { value: null, shown: "that of the voltage where it says one, else 60 Hz for NEMA and 50 Hz for IEC" },
  },
  frequencyNamed,
);
