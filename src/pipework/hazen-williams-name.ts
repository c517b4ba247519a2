import { outOfRange } from "../basis/method.ts";
import { fail, type Result, succeed } from "../basis/result.ts";
import { splitRoughness } from "./measured-pipe.ts";
import type { Pipe } from "./pipe.ts";

/** "c 120", "c=120", "c-factor 120", "hazen-williams c 120"; without a sign between only what can be a C: "c150". */
const STATED =
  /[ ,]*\b(?:hazen[- ]?williams )?c(?:[- ]?(?:factor|value))?(?:(?: ?[=:] ?| )(-?\d+(?:[.,]\d+)?)|(1\d\d))\b/;

/** Stands in for the roughness of a bore that goes by its C. */
const SMOOTH = " rough 0 mm";

/**
 * What a text names that may state a C of Hazen–Williams: "8in sch40 C 120". A text that can be read as it stands has
 * none, such as "DN200 ductile iron C40", a class.
 * Fails: pipe-rough-and-c; out-of-range for a C of 0 or less; as `read`.
 */
function withCoefficient<T>(
  tidied: string,
  given: string,
  read: (tidied: string) => Result<T>,
  stating: (named: T, coefficient: number) => T,
): Result<T> {
  const whole = read(tidied);
  const match = whole.ok ? null : STATED.exec(tidied);
  if (match === null) return whole;
  const before = `${tidied.slice(0, match.index)}${tidied.slice(match.index + match[0].length)}`.trim();
  const coefficient = Number((match[1] ?? (match[2] as string)).replace(",", "."));
  const { before: bare, rough } = splitRoughness(before);
  if (rough !== undefined) {
    const suggestions = [`“${bare} C ${coefficient}”`, `“${before}”`];
    return fail([{ code: "pipe-rough-and-c", kind: "error", subject: "pipe", given, suggestions }]);
  }
  const named = read(before);
  const found = boreAlone(named) ? read(before + SMOOTH) : named;
  if (!found.ok) return found;
  if (coefficient <= 0) return fail([outOfRange("C of the pipe", "ratio", coefficient, "above", 0)]);
  // A C makes remarks on the surface needless, not the word of what the pipe was taken for.
  const kept = found.findings.filter(({ code }) => code === "pipe-material-not-stated");
  return succeed(stating(found.value, coefficient), kept);
}

/** A pipe whose text may state its C. Fails: as `withCoefficient`. */
export function pipeWithCoefficient(tidied: string, given: string, read: (tidied: string) => Result<Pipe>) {
  return withCoefficient(tidied, given, read, stated);
}

/** The pipes of a family whose text may state the C of each. Fails: as `withCoefficient`. */
export function pipesWithCoefficient(tidied: string, given: string, read: (tidied: string) => Result<readonly Pipe[]>) {
  return withCoefficient(tidied, given, read, (pipes, coefficient) => pipes.map((pipe) => stated(pipe, coefficient)));
}

function stated(pipe: Pipe, coefficient: number): Pipe {
  return { ...pipe, name: `${pipe.name.replace(SMOOTH, "")} C ${coefficient}`, hazenWilliams: coefficient };
}

/** Whether all that a text lacks is the roughness, which a C makes needless. */
function boreAlone({ ok, findings }: Result<unknown>): boolean {
  return !ok && findings.some(({ code }) => code === "pipe-roughness-missing");
}
