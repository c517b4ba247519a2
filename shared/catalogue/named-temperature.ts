import type { Finding } from "../../src/basis/result.ts";
import type { Liquid } from "../../src/liquid/liquid.ts";
import { temperatureOfName } from "../../src/liquid/stated-temperature.ts";
import { type Argument, isAbsent, isRange } from "../cells/cell.ts";
import type { Parameter } from "./parameter.ts";

/** The temperature of a function that takes a liquid: whether it is given, and what stands for it where it is not. */
export interface TemperatureSlot {
  readonly isGiven: boolean;
  readonly fallback: unknown;
}

interface Slot {
  readonly key: string;
  readonly parameter: Parameter<unknown>;
  readonly argument: Argument;
}

/** Nothing for a function without a liquid, or without its temperature. */
export function temperatureSlot(slots: readonly Slot[]): TemperatureSlot | undefined {
  const slot = slots.find(({ key }) => key === "temperature");
  if (slot === undefined || !slots.some(({ key }) => key === "liquid") || !("fallback" in slot.parameter))
    return undefined;
  const { argument, parameter } = slot;
  const cells = isRange(argument) ? argument.flat() : [argument];
  return { isGiven: cells.length > 1 || cells.some((cell) => !isAbsent(cell)), fallback: parameter.fallback };
}

/** The temperature in a liquid's own name stands where the argument is left out; what is wrong where the two differ. */
export function settleTemperature(
  values: Record<string, unknown>,
  slot: TemperatureSlot | undefined,
): Finding | undefined {
  if (slot === undefined) return undefined;
  const liquid = values["liquid"] as Partial<Liquid> | null | undefined;
  if (slot.isGiven) {
    return liquid?.statedTemperature === undefined
      ? undefined
      : temperatureOfName("liquid", liquid, values["temperature"] as number);
  }
  values["temperature"] = liquid?.statedTemperature ?? slot.fallback;
  return undefined;
}
