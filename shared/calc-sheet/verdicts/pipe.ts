import type { Duty } from "../../duty/duty.ts";
import { type Criterion, openPoint } from "./criterion.ts";

/** Pipe and hose of every run against the pressure in it. */
export function pipeCriteria(_: Duty): readonly Criterion[] {
  return [openPoint({ of: "pipe", what: "pipe and hose rating of every run", missing: [] })];
}
