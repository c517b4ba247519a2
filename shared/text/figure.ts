import { decimalsAt, digitsOf, MONEY } from "./digits.ts";

/** A figure that is stated at so many digits is shown as it is in a sentence. */
const STATED_DIGITS = 4;
/** What is smaller than so many decimals beyond those shown is the trace of a calculation. */
const DUST_DECIMALS = 3;
const MOST_DECIMALS = 15;
/** Four significant figures where the unit says nothing. */
const PLAIN_DIGITS = 4;
const MOST_WRITTEN = 1e15;
/** Figures closer than this, relative to the greater, are one. */
const EQUAL = 1e-9;

/** A figure beside its unit, as the trade reads it: "1,250" US gpm, "96.6" ft. Nothing shows as 0 that is not. */
export function figureIn(unit: string, value: number): string {
  return written(value, decimalsShown(unit, value));
}

/** An amount of money, whatever its currency: "96.60", "1,250". */
export function moneyFigure(value: number): string {
  return grouped(value.toFixed(decimalsAt(MONEY, value)));
}

/** The same in a sentence, where a figure that was stated stands as stated: "at most 1.25 m", "12 ft". */
export function figureSaid(unit: string, value: number): string {
  return said(value, decimalsShown(unit, value));
}

/** Two figures in a sentence, with as many decimals as tell them apart. */
export function saidApart(unit: string, one: number, other: number): readonly [string, string] {
  const decimals = decimalsApart(unit, [one, other]);
  return [said(one, decimals(one)), said(other, decimals(other))];
}

/** Several figures in one sentence, told apart where they differ, the greater as the greater. */
export function sayingApart(unit: string, values: readonly number[]): (value: number) => string {
  const decimals = decimalsApart(unit, values);
  return (value) => said(value, decimals(value));
}

/** Four significant figures, whole numbers up to a million in full. */
export function figures(value: number): string {
  const size = Math.abs(value);
  if (size >= 1000 && size < 1e6) return grouped(String(Math.round(value)));
  const rounded = Number(value.toPrecision(PLAIN_DIGITS));
  // The greatest numbers there are round past themselves.
  if (!Number.isFinite(rounded)) return value < 0 ? "less than -1e308" : "more than 1e308";
  return grouped(String(rounded));
}

function decimalsShown(unit: string, value: number): number {
  const digits = digitsOf(unit);
  const size = Math.abs(value);
  if (digits === undefined) return size === 0 ? 0 : Math.max(0, PLAIN_DIGITS - 1 - Math.floor(Math.log10(size)));
  const decimals = decimalsAt(digits, value);
  if (Number(size.toFixed(decimals)) > 0 || size < 10 ** -(decimals + DUST_DECIMALS)) return decimals;
  return Math.ceil(-Math.log10(size));
}

function decimalsApart(unit: string, values: readonly number[]): (value: number) => number {
  let more = 0;
  const decimals = (value: number): number => Math.min(MOST_DECIMALS, decimalsShown(unit, value) + more);
  const isTold = (): boolean =>
    values.every((one, i) =>
      values
        .slice(i + 1)
        .every(
          (other) =>
            isOne(one, other) ||
            Math.sign(shownValue(one, decimals(one)) - shownValue(other, decimals(other))) === Math.sign(one - other),
        ),
    );
  while (more < MOST_DECIMALS && !isTold()) more += 1;
  return decimals;
}

function isOne(one: number, other: number): boolean {
  return Math.abs(one - other) <= EQUAL * Math.max(Math.abs(one), Math.abs(other));
}

/** What a reader takes a figure for. */
function shownValue(value: number, decimals: number): number {
  return isStated(value) ? Number(value.toPrecision(STATED_DIGITS)) : Number(value.toFixed(Math.min(100, decimals)));
}

function said(value: number, decimals: number): string {
  return isStated(value) ? grouped(String(Number(value.toPrecision(STATED_DIGITS)))) : written(value, decimals);
}

function isStated(value: number): boolean {
  const stated = Number(value.toPrecision(STATED_DIGITS));
  // The greatest numbers there are round past themselves.
  return Number.isFinite(stated) && isOne(value, stated);
}

function written(value: number, decimals: number): string {
  if (Math.abs(value) >= MOST_WRITTEN) return figures(value);
  const text = value.toFixed(Math.min(100, decimals));
  return Number(text) === 0 ? "0" : grouped(text);
}

/** Thousands set apart; a figure with an exponent as it is. */
function grouped(text: string): string {
  const [, sign = "", whole = "", rest = ""] = /^(-?)(\d+)((?:\.\d+)?)$/.exec(text) ?? [];
  return whole === "" ? text : `${sign}${whole.replace(/\B(?=(\d{3})+$)/g, ",")}${rest}`;
}
