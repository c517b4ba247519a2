/** Places amounts of an axis on a picture, amounts beyond its ends too. */
export interface Scale {
  (amount: number): number;
  /** The amounts and the places of its two ends. */
  readonly ends: readonly [least: number, most: number];
  readonly places: readonly [first: number, last: number];
}

type Ends = readonly [number, number];

/**
 * A scale of equal parts, of any amounts and places; an axis without length has all its amounts in the middle. Written
 * here because the packages for it bring colours and formats along, a tenth of the pane's script.
 */
export function linearScale(ends: Ends, places: Ends): Scale {
  return scaleBy((amount) => amount, ends, places);
}

/** A scale of the square root of amounts, 0 or more. */
export function rootScale(ends: Ends, places: Ends): Scale {
  return scaleBy(Math.sqrt, ends, places);
}

function scaleBy(of: (amount: number) => number, ends: Ends, places: Ends): Scale {
  const [first, last] = places;
  const least = of(ends[0]);
  const span = of(ends[1]) - least;
  const place = (amount: number): number => {
    const part = span === 0 ? 0.5 : (of(amount) - least) / span;
    return first * (1 - part) + last * part;
  };
  return Object.assign(place, { ends, places });
}

/** Round amounts from end to end, about so many: steps of 1, 2 or 5 of a power of ten. None where the ends are one. */
export function ticksOf({ ends: [least, most] }: Pick<Scale, "ends">, about: number): readonly number[] {
  const step = roundStep(most - least, about);
  if (step === 0) return [];
  const from = Math.ceil(least / step - ROUNDING);
  const to = Math.floor(most / step + ROUNDING);
  return Array.from({ length: to - from + 1 }, (_, i) => timesStep(from + i, step));
}

/** The ends taken outwards to the round amounts next to them. */
export function roundedOut([least, most]: Ends, about: number): Ends {
  const step = roundStep(most - least, about);
  if (step === 0) return [least, most];
  const wider: Ends = [
    timesStep(Math.floor(least / step + ROUNDING), step),
    timesStep(Math.ceil(most / step - ROUNDING), step),
  ];
  // A wider axis may take wider steps.
  return roundStep(wider[1] - wider[0], about) === step ? wider : roundedOut(wider, about);
}

/** A round amount counts as the end it meets to within this part of a step. */
const ROUNDING = 1e-9;

/** The step that is nearest, in ratio, to the span over so many. */
export function roundStep(span: number, about: number): number {
  if (!(span > 0)) return 0;
  const power = 10 ** Math.floor(Math.log10(span / about));
  const times = span / about / power;
  return power * (times >= Math.sqrt(50) ? 10 : times >= Math.sqrt(10) ? 5 : times >= Math.sqrt(2) ? 2 : 1);
}

/** So many steps, without the last binary digits of a step below 1. */
function timesStep(count: number, step: number): number {
  return step < 1 ? count / Math.round(1 / step) : count * step;
}
