import { type Quantity, UNIT_SETS, type UnitSetName, unitFits } from "../../../src/basis/quantities.ts";
import { readWrittenAmount } from "../../../src/basis/quantity-text.ts";
import { fromEngine, toEngine, type Unit } from "../../../src/basis/units.ts";
import { figuresAt } from "../sums/sum-parts.ts";

/** A figure said, with its unit where it was said. */
export interface SaidAmount {
  readonly text: string;
  readonly unit: Unit | undefined;
}

const VACUUM = /^ (?:of )?vac(?:uum)?\b\.?/i;

/** The figure a text begins with, and shorter readings of it: "900 ft 8in" is one of feet and inches, or 900 ft. The longest first. */
export function amountsAt(text: string): readonly SaidAmount[] {
  const sign = /^[-−–+]?/.exec(text)?.[0] ?? "";
  return figuresAt(text.slice(sign.length)).map(({ written, unit }) => {
    const vacuum = unit === undefined ? "" : (VACUUM.exec(text.slice(sign.length + written.length))?.[0] ?? "");
    return { text: `${sign}${written}${vacuum}`, unit };
  });
}

/** Whether a figure may be one of a quantity: it has such a unit, or none. */
export function mayBe({ unit }: SaidAmount, quantity: Quantity): boolean {
  return unit === undefined || unitFits(unit, quantity);
}

/** A figure with its unit spelled out, for a sum beside others. */
export function withUnit(said: SaidAmount, quantity: Quantity, unitSet: UnitSetName): string {
  return said.unit === undefined ? `${said.text} ${UNIT_SETS[unitSet][quantity].symbol}` : said.text;
}

/** Figures with units as a sum and what it comes to, as a box keeps one: "12 ft + 60 ft = 72 ft". */
export function sumText(first: string, sign: "+" | "-", second: string): string {
  const [one, other] = [first, second].map((text) => readWrittenAmount(text, "", ""));
  if (!one?.ok || !other?.ok) return `${first} ${sign} ${second}`;
  const { value, unit } = one.value;
  const further = fromEngine(toEngine(other.value.value, other.value.unit), unit);
  const sum = Number((sign === "+" ? value + further : value - further).toPrecision(12));
  return `${first} ${sign} ${second} = ${sum} ${unit.symbol}`;
}

/** "2*1500 US gpm = 3000 US gpm". */
export function timesText(times: number, amount: string): string {
  const read = readWrittenAmount(amount, "", "");
  const sum = `${times}*${amount}`;
  return read.ok ? `${sum} = ${Number((times * read.value.value).toPrecision(12))} ${read.value.unit.symbol}` : sum;
}
