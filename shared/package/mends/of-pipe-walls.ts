import { greatestOf } from "../../../src/numeric/extremes.ts";
import type { Pipe } from "../../../src/pipework/pipe.ts";
import { allPipes, pipeNamed } from "../../../src/pipework/pipe-name.ts";
import { pipeRating } from "../../../src/pressure/pipe-rating.ts";
import { type PipeRun, pipeRuns } from "../../calc-sheet/sections/pipe-runs.ts";
import type { Criterion } from "../../catalogue/parameters/criteria.ts";
import type { Duty } from "../../duty/duty.ts";
import { placeKey } from "../../duty/duty-text.ts";
import type { Mend } from "./mend.ts";
import { inEngine, isBroken } from "./verdict-rows.ts";

/** For each run above its rating, the pipe of the same outside and make whose rating is the least that will do. */
export function wallMends(rows: readonly Criterion[], duty: Duty): readonly Mend[] {
  return pipeRuns(duty).flatMap((run) => {
    const pipe = run.stated.segment?.pipe;
    const rating = pipe === undefined || run.isByMaker ? undefined : ratingOf(pipe, duty);
    if (pipe === undefined || rating === undefined) return [];
    const pressures = rows
      .filter((row) => isBroken(row) && row.what.startsWith(`${run.place}, `))
      .flatMap(({ found, limit }) => (found === undefined || limit === undefined ? [] : [{ found, limit }]))
      .map(({ found, limit }) => ({
        found: inEngine(found, "gaugePressure", duty),
        limit: inEngine(limit, "gaugePressure", duty),
      }))
      // With a surge the limit is another, and a stiffer pipe has more of it.
      .filter(({ limit }) => isSame(limit, rating.careful) || isSame(limit, rating.atBest))
      .map(({ found }) => found);
    return pressures.length === 0 ? [] : stronger(run, pipe, greatestOf(pressures), duty);
  });
}

function stronger(run: PipeRun, pipe: Pipe, pressure: number, duty: Duty): readonly Mend[] {
  const typed = run.stated.typed.pipe;
  const heavier = [...allPipes("inch"), ...allPipes("metric")]
    .filter((other) => isAlike(other, pipe) && other.bore < pipe.bore)
    .sort((a, b) => b.bore - a.bore);
  for (const other of heavier) {
    const text = inPlaceOf(typed, pipe, other);
    const read = text === undefined ? undefined : pipeNamed(text);
    if (text === undefined || read?.ok !== true || !(read.value.bore < pipe.bore)) continue;
    if ((ratingOf(read.value, duty)?.careful ?? 0) < pressure) continue;
    const place = placeKey({ line: run.line, row: run.stated.row, column: "pipe" });
    return [{ label: `Use “${text}”`, place, text }];
  }
  return [];
}

/** The same outside, made and rated alike. */
function isAlike({ make, outsideDiameter, name }: Pipe, pipe: Pipe): boolean {
  return (
    make?.rule === pipe.make?.rule &&
    make?.material === pipe.make?.material &&
    outsideDiameter !== undefined &&
    pipe.outsideDiameter !== undefined &&
    isSame(outsideDiameter, pipe.outsideDiameter) &&
    sizeOf(name) === sizeOf(pipe.name)
  );
}

/** "8in" of "8in HDPE DR17". */
function sizeOf(name: string): string {
  return name.split(" ")[0] as string;
}

/** What was typed, with the schedule, class or ratio of another pipe: what else it says of the pipe stays. */
function inPlaceOf(typed: string, { name }: Pipe, other: Pipe): string | undefined {
  const [own, wanted] = [name, other.name].map((one) => one.split(" ").at(-1) as string) as [string, string];
  const at = typed.toLowerCase().indexOf(own.toLowerCase());
  return at < 0 ? undefined : `${typed.slice(0, at)}${wanted}${typed.slice(at + own.length)}`;
}

function ratingOf(pipe: Pipe, duty: Duty): { readonly careful: number; readonly atBest: number } | undefined {
  const temperatures = [duty, ...duty.cases.map((one) => one.duty)].flatMap(({ temperature }) => temperature ?? []);
  if (temperatures.length === 0) return undefined;
  const temperature = greatestOf(temperatures);
  const read = pipeRating({ pipe, temperature, statedRating: null, specification: null, allowance: null });
  return read.ok ? read.value : undefined;
}

function isSame(one: number, other: number): boolean {
  return Math.abs(one - other) <= 1e-6 * Math.abs(other);
}
