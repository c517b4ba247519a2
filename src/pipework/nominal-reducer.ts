import { fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import type { Fitting } from "./fitting.ts";
import { inchesOf, nominalInches } from "./nominal-size.ts";
import type { Pipe } from "./pipe.ts";
import { pipeNamed } from "./pipe-name.ts";
import { GRADUAL_CHANGE, sizeChange } from "./size-change.ts";

const inch = unitOf("in").factor;

const SIZE = String.raw`(?:dn ?)?(\d+(?:[- ]\d+\/\d+|\.\d+|\/\d+)?) ?(?:in(?:ch(?:es)?)?|"|mm)?`;
const WRITTEN = new RegExp(
  `^(?:(?:concentric|eccentric|steel) )*(reducer|increaser|expander) ${SIZE} ?(?:x|×|to|by) ?${SIZE}(?: (?:concentric|eccentric))?$`,
  "i",
);

const NOUN_LAST = new RegExp(`^(${SIZE} ?(?:x|×|to|by) ?${SIZE}) +((?:[a-z]+ )*)(reducer|increaser|expander)s?$`, "i");

/** Whether a text is a change of size that begins with its sizes, which are then no count. */
export function beginsWithSizes(given: string): boolean {
  return NOUN_LAST.test(given);
}

/** "8x6 ecc. reducer" as "eccentric reducer 8x6". */
function nounFirst(given: string): string {
  return given
    .replace(/\b(con|ec)c\b\.?/gi, (_, which: string) => (/con/i.test(which) ? "concentric" : "eccentric"))
    .replace(NOUN_LAST, (_, sizes: string, _one, _two, manner: string, noun: string) => `${manner}${noun} ${sizes}`);
}

/** Share of a nominal size by which a measured bore may differ from it. */
const ABOUT = 0.12;

/**
 * A reducer or increaser by its two nominal sizes, "reducer 10x8", "increaser DN200 x 250", as a fitting of the pipe at one of its
 * ends; the other end is of the same family, or schedule 40 where that has no such size. Nothing for another text.
 * Fails: size-change-elsewhere (the coefficient), in a pipe of neither size.
 */
export function nominalReducer(given: string, angle: number): Result<Fitting> | undefined {
  const match = WRITTEN.exec(nounFirst(given).replace(/(\d)x(?=\d)/gi, "$1 x "));
  if (match === null) return undefined;
  const [, noun = "", first = "", second = ""] = match;
  const kind = /reducer/i.test(noun) ? "narrowing" : "widening";
  return succeed({
    name: given,
    isExit: false,
    cites: GRADUAL_CHANGE,
    lossCoefficient: (pipe) => {
      const other = otherEnd(pipe, inchesOf(first.replace(" ", "-")), inchesOf(second.replace(" ", "-")));
      if (other === undefined) {
        return fail([{ code: "size-change-elsewhere", kind: "error", subject: given, given: pipe.name }]);
      }
      const pipeIsNarrow = pipe.bore < other;
      const direction = pipeIsNarrow === (kind === "widening") ? "to" : "from";
      return sizeChange({ name: given, kind, direction, otherBore: other, angle }).lossCoefficient(pipe);
    },
  });
}

/** Bore at the end that is not the pipe's, m; nothing where the pipe is of neither size. */
function otherEnd(pipe: Pipe, first: number, second: number): number | undefined {
  const { family } = pipe;
  const systems = [
    (size: number) => `${size}in ${family}`,
    (size: number) => `DN${size} ${family}`,
    (size: number) => `${size}mm ${family}`,
  ];
  for (const named of systems) {
    for (const [own, other] of [
      [first, second],
      [second, first],
    ] as const) {
      const mine = pipeNamed(named(own));
      if (mine.ok && Math.abs(mine.value.bore - pipe.bore) < 1e-9) {
        const theirs = pipeNamed(named(other));
        return theirs.ok ? theirs.value.bore : steelBore(other);
      }
    }
  }
  for (const toInches of [(size: number) => size, nominalInches]) {
    const [one, two] = [toInches(first), toInches(second)];
    if (one === undefined || two === undefined) continue;
    if (isAbout(pipe, one)) return steelBore(two);
    if (isAbout(pipe, two)) return steelBore(one);
  }
  return undefined;
}

function isAbout({ nominalInches: nominal, bore }: Pipe, inches: number): boolean {
  return nominal === undefined ? Math.abs(bore / inch / inches - 1) <= ABOUT : nominal === inches;
}

/** Bore of standard steel pipe of a size in inches or DN, m. */
function steelBore(size: number): number | undefined {
  const inches = nominalInches(size) ?? size;
  const pipe = pipeNamed(`${inches}in STD`);
  return pipe.ok ? pipe.value.bore : undefined;
}
