import { figureIn } from "../../../../shared/text/figure.ts";
import { roundStep, type Scale } from "../scale.ts";

/** A curve that values are read off, in the units of the axes. */
export interface ReadCurve {
  readonly name: string;
  readonly unit: string;
  /** Undefined where the curve does not reach. */
  readonly valueAt: (place: number) => number | undefined;
}

/** A chart that is read along its lower axis. */
export interface Readable {
  /** "Flow", "Chainage". */
  readonly along: string;
  readonly unit: string;
  readonly x: Scale;
  /** Where reading begins: the duty. */
  readonly start: number;
  readonly curves: readonly ReadCurve[];
}

export interface Reading {
  readonly at: number;
  /** "1,150 US gpm". */
  readonly place: string;
  readonly values: readonly { readonly name: string; readonly text: string }[];
}

/** The values of every curve at a place; a curve that does not reach there has none. */
export function readingAt(chart: Readable, place: number): Reading {
  const [least, most] = chart.x.ends;
  const at = Math.min(most, Math.max(least, place));
  return {
    at,
    place: `${figureIn(chart.unit, at)} ${chart.unit}`,
    values: chart.curves.flatMap(({ name, unit, valueAt }) => {
      const value = valueAt(at);
      return value === undefined ? [] : [{ name, text: `${figureIn(unit, value)} ${unit}` }];
    }),
  };
}

/** "1,150 US gpm: pump 118.2 ft; NPSH required 12.4 ft". */
export function readingText({ place, values }: Reading): string {
  return `${place}: ${values.length === 0 ? "no curve here" : values.map(({ name, text }) => `${name} ${text}`).join("; ")}`;
}

/** Steps over an axis with the arrow keys. */
const STEPS = 50;
const LONG = 5;

/** Where a key leads from a place, on round amounts; undefined for keys that lead nowhere. */
export function placeAfter({ x }: Pick<Readable, "x">, at: number, key: string): number | undefined {
  const [least, most] = x.ends;
  const step = roundStep(most - least, STEPS);
  const onwards = (steps: number): number => {
    const on = (steps > 0 ? Math.floor(at / step + ROUNDING) : Math.ceil(at / step - ROUNDING)) + steps;
    return Math.min(most, Math.max(least, on * step));
  };
  switch (key) {
    case "ArrowRight":
    case "ArrowUp":
      return onwards(1);
    case "ArrowLeft":
    case "ArrowDown":
      return onwards(-1);
    case "PageUp":
      return onwards(LONG);
    case "PageDown":
      return onwards(-LONG);
    case "Home":
      return least;
    case "End":
      return most;
    default:
      return undefined;
  }
}

const ROUNDING = 1e-9;
