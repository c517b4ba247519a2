import { outOfRange } from "../basis/method.ts";
import { readQuantity } from "../basis/quantity-text.ts";
import { amount, andThen, type Finding, fail, type Result, type Side, succeed } from "../basis/result.ts";
import { CLEAN_STRAINER, type FixedRow } from "../tables/fittings-fixed.ts";
import { BASKET_STRAINER } from "../tables/fittings-trade.ts";
import { branchFitting } from "./branch-fitting.ts";
import type { Fitting } from "./fitting.ts";
import { GIVEN } from "./fitting-forms.ts";
import { valveOfCoefficient } from "./flow-coefficient.ts";
import { blockedStrainer } from "./known-fittings.ts";
import { nominalReducer } from "./nominal-reducer.ts";
import { pipeNamed } from "./pipe-name.ts";
import { reducedCoupling, reducedMeter, reducedPinchValve, sizeChange } from "./size-change.ts";

/** Full cone angle of a reducer or expander that states none: 30°, the upper end of what is made (20° to 30°). */
const USUAL_CONE = Math.PI / 6;

const COEFFICIENT = /^(k|cv|kv)\s*=?\s*([+-]?\d*\.?\d+(?:e[+-]?\d+)?)$/i;
/** An eccentric one is as steep on its one side as a concentric one of this many times its angle. Common practice. */
const ECCENTRIC = 1.5;

const BLOCKED_STRAINER = /^(basket |suction )?strainer (\d+(?:\.\d+)?) ?% (?:blocked|clogged)$/i;
const NARROW_COUPLING = /^(?:reduced )?(?:hose )?(?:coupling|shank|camlock) (?:to )?(?:id|bore) (.+)$/i;
const NARROW_PART = /^(pinch valve|magmeter|(?:magnetic )?flow ?meter)(?: sleeve)? (?:to )?(?:id|bore) (.+)$/i;
const SIZE_CHANGE =
  /^((?:(?:sudden|abrupt|gradual|concentric|eccentric|conical) )*)(expansion|enlargement|expander|increaser|diffuser|contraction|reducer|reduction) (to|from) (.+?)(?: (\d+(?:\.\d+)?) ?(?:°|deg|degrees?))?$/i;
const MEASURED_BORE = /^(?:id )?((?:\d+\.?\d*|\.\d+) ?(?:mm|cm|m|in|inch|inches|"|ft))$/i;

/**
 * A fitting written with its own figure or size; nothing where the text has none of the forms.
 * Fails: out-of-range (Cv, Kv or bore not above 0, nothing left open in a strainer, an angle not above 0, beyond 180°
 * or of a sudden change); as `readQuantity` and `pipeNamed`.
 * Warns: bore-is-nominal; of the surface, as `pipeNamed` for the other pipe.
 */
export function describedFitting(given: string): Result<Fitting> | undefined {
  const coefficient = COEFFICIENT.exec(given);
  if (coefficient !== null) return ofCoefficient(coefficient[1] as string, Number(coefficient[2]), given);
  const strainer = BLOCKED_STRAINER.exec(given);
  if (strainer !== null) {
    const clean = /basket/i.test(strainer[1] ?? "") ? BASKET_STRAINER : CLEAN_STRAINER;
    return ofBlockedStrainer(given, Number(strainer[2]) / 100, clean);
  }
  const narrow = NARROW_PART.exec(given);
  if (narrow !== null) {
    const of = /pinch/i.test(narrow[1] as string) ? reducedPinchValve : reducedMeter;
    return andThen(positiveBore(narrow[2] as string, given), (bore) => succeed(of(given, bore)));
  }
  const coupling = NARROW_COUPLING.exec(given);
  if (coupling !== null) {
    return andThen(positiveBore(coupling[1] as string, given), (bore) => succeed(reducedCoupling(given, bore)));
  }
  const change = SIZE_CHANGE.exec(given);
  if (change !== null) return ofSizeChange(given, change.slice(1));
  return nominalReducer(given, USUAL_CONE) ?? branchFitting(given, (text) => otherBore(text, given));
}

function ofCoefficient(letters: string, value: number, given: string): Result<Fitting> {
  switch (letters.toLowerCase()) {
    case "k":
      return succeed({ name: `K ${value}`, isExit: false, cites: GIVEN, lossCoefficient: () => succeed(value) });
    case "cv":
      return value > 0
        ? succeed(valveOfCoefficient("Cv", value))
        : fail([outOfRange(given, "ratio", value, "above", 0)]);
    default:
      return value > 0
        ? succeed(valveOfCoefficient("Kv", value))
        : fail([outOfRange(given, "ratio", value, "above", 0)]);
  }
}

function ofBlockedStrainer(given: string, blocked: number, clean: FixedRow): Result<Fitting> {
  return blocked < 1
    ? succeed(blockedStrainer(given, blocked, clean))
    : fail([outOfRange(given, "ratio", blocked, "below", 1)]);
}

/** "reducer" and "expander" are cones; "expansion" and "contraction" are sudden unless they say otherwise. */
function ofSizeChange(given: string, parts: readonly (string | undefined)[]): Result<Fitting> {
  const [manner = "", noun = "", towards = "", other = "", degrees] = parts;
  const isSudden = /sudden|abrupt/i.test(manner);
  const isCone = !isSudden && (manner !== "" || /er$/i.test(noun));
  const steepness = /eccentric/i.test(manner) ? ECCENTRIC : 1;
  const cone = degrees === undefined ? USUAL_CONE : (steepness * Number(degrees) * Math.PI) / 180;
  const angle = isCone || degrees !== undefined ? cone : Math.PI;
  const badAngle = (side: Side, limit: number): Result<never> =>
    fail([outOfRange(`angle of ${given}`, "ratio", Number(degrees), side, limit)]);
  if (isSudden && degrees !== undefined) return badAngle("at least", 180);
  if (!(angle > 0)) return badAngle("above", 0);
  if (angle > Math.PI) return badAngle("at most", 180);
  const kind = /^(?:contraction|reducer|reduction)$/i.test(noun) ? "narrowing" : "widening";
  const direction = towards.toLowerCase() === "to" ? "to" : "from";
  return andThen(otherBore(other, given), (bore) =>
    succeed(sizeChange({ name: given, kind, direction, otherBore: bore, angle })),
  );
}

/** The bore a change of size leads to or comes from: a measured bore with its unit, or a pipe's name. */
function otherBore(text: string, subject: string): Result<number> {
  const written = MEASURED_BORE.exec(text)?.[1];
  if (written === undefined) return andThen(pipeNamed(text), ({ bore }) => succeed(bore));
  return andThen(positiveBore(written, subject), (bore) => succeed(bore, nominalRemark(written, subject)));
}

/** "8 in" may be the nominal size of a steel pipe whose bore is 7.981 in. */
function nominalRemark(written: string, subject: string): readonly Finding[] {
  const inches = /^([\d.]+) ?(?:in|inch|inches|")$/i.exec(written)?.[1];
  const pipe = inches === undefined ? undefined : pipeNamed(`${inches}in sch40`);
  if (pipe === undefined || !pipe.ok) return [];
  const { name, bore } = pipe.value;
  const facts = { bore: amount("size", bore) };
  return [{ code: "bore-is-nominal", kind: "check", subject, facts, suggestions: [`"${name}"`] }];
}

function positiveBore(text: string, subject: string): Result<number> {
  return andThen(readQuantity(text, "size", subject), (bore) => {
    if (bore > 0) return succeed(bore);
    return fail([outOfRange(subject, "size", bore, "above", 0)]);
  });
}
