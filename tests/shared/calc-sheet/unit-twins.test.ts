import { describe, expect, it } from "vitest";
import { isCellError, type Scalar } from "../../../shared/cells/cell.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import type { CellSpec, SheetSpec } from "../../../shared/ports/sheet-spec.ts";
import { UNIT_SETS, type UnitSetName } from "../../../src/basis/quantities.ts";
import { inBritish } from "../../../src/basis/spelling.ts";
import { toEngine, type Unit, unitOf } from "../../../src/basis/units.ts";
import { convertNumbers } from "../../../taskpane/pane/convert-numbers.ts";
import { dutyRead } from "../../support/duty-of.ts";
import { allJudged } from "../../support/judged.ts";
import { sheetsOf } from "../../support/laid-out.ts";

/** Numbers are converted to six figures. */
const CLOSE = 1e-4;
/** A difference of two figures alike has fewer that hold. */
const OF_TWO_ALIKE: Readonly<Record<string, number>> = {
  "NPSHR typed, off the curve": 1e-2,
  "Flow over the duty": 1e-3,
  "Over total head with margin": 1e-3,
};
/** What is nothing but for rounding. */
const NOTHING = 1e-9;

/** What rightly differs: the figures are of other units, or of what is bought and made where those units are used. */
const OF_THE_PLACE: Readonly<Record<string, string>> = {
  "Specific speed": "says which units it is of",
  "Suction specific speed": "says which units it is of",
  "Suction flange size": "NPS or DN",
  "Rating of the class offered": "the standard prints it rounded in psi and in bar (ASME B16.42)",
  "Joint test allowed up to": "1.5 times that, rounded up in either unit",
  "Next standard motor rating": "NEMA in hp, IEC in kW",
  "Output of the motor on site": "of that motor",
  "Full-load torque": "of that motor",
  "Motor efficiency taken": "of that motor",
  "Electricity in a year": "by its efficiency",
  "Left over the maximum shaft power": "of that motor",
  "Synchronous speed": "60 Hz or 50 Hz",
  "Full-load efficiency": "of that motor",
  "Discharge: butt fusion": "pipe comes in 40 ft or in 12 m",
  "Discharge: butt weld": "pipe comes in 21 ft or in 6 m",
};

interface Line {
  readonly value: Scalar;
  readonly unit: string;
}

/** The numbered lines of the calculation, by label and the how-manieth of it. */
function linesOf({ cells }: SheetSpec): ReadonlyMap<string, Line> {
  const at = shownOn(cells);
  const lines = new Map<string, Line>();
  const text = (place: string): string => String(at.get(place) ?? "");
  for (const { at: place } of cells) {
    if (!/^A\d+$/.test(place) || !/^\d+\.\d+$/.test(text(place))) continue;
    const row = place.slice(1);
    // A row of a table has another column there.
    if (text(`D${row}`) !== "" && measureOf(text(`D${row}`)) === undefined) continue;
    let key = inBritish(text(`B${row}`));
    for (let n = 2; lines.has(key); n += 1) key = `${inBritish(text(`B${row}`))}, ${n}`;
    lines.set(key, { value: at.get(`C${row}`) ?? null, unit: text(`D${row}`) });
  }
  return lines;
}

function shownOn(cells: readonly CellSpec[]): ReadonlyMap<string, Scalar> {
  return new Map(
    cells.map(({ at, v, cached }) => {
      const answer = Array.isArray(cached) ? cached[0]?.[0] : cached;
      return [at, isCellError(answer) ? answer.error : (v ?? answer ?? null)];
    }),
  );
}

/** A unit as the sheet prints it, pressures with their zero. */
function measureOf(printed: string): Unit | undefined {
  return unitOf(printed.replace(/\((g|a)\)$/, "").replace(/^psi[ga]$/, "psi") as Parameters<typeof unitOf>[0]);
}

function inEngine({ value, unit }: Line): number {
  const measure = measureOf(unit);
  return measure === undefined ? Number(value) : toEngine(Number(value), measure);
}

/** Subject and state of the verdicts on page 1. */
function verdictsOn({ cells }: SheetSpec): readonly string[] {
  const at = shownOn(cells);
  const rows = cells.flatMap(({ at: place }) => (/^C\d+$/.test(place) ? [place.slice(1)] : []));
  return rows
    .filter((row) => /^[✓✗!?] /.test(String(at.get(`C${row}`))))
    .map((row) => `${at.get(`A${row}`)} ${at.get(`C${row}`)}`);
}

const CASES = SAMPLE_DUTIES.flatMap(({ name, duty }) =>
  (Object.keys(UNIT_SETS) as UnitSetName[])
    .filter((unitSet) => unitSet !== duty.unitSet)
    .map((unitSet) => ({ name, duty, unitSet })),
);

describe.each(CASES)("$name, the same in $unitSet", ({ duty, unitSet }) => {
  const twin = convertNumbers(duty, unitSet);
  const [own, other] = [duty, twin].map((one) => sheetsOf(one).duty) as [SheetSpec, SheetSpec];

  it("has the same verdicts, on page 1 and in every point judged", () => {
    expect(verdictsOn(own).length).toBeGreaterThanOrEqual(3);
    expect(verdictsOn(other)).toEqual(verdictsOn(own));
    const states = (of: typeof duty): readonly string[] =>
      allJudged(dutyRead(of)).map(
        ({ subject, state, text }) => `${subject} ${state} ${inBritish(text).replace(/ (NPS|DN) ?\d.*|,? -?\d.*/, "")}`,
      );
    expect(states(twin)).toEqual(states(duty));
  });

  it("has the same figures on the sheet as written", () => {
    const [ours, theirs] = [linesOf(own), linesOf(other)];
    let compared = 0;
    const off: string[] = [];
    for (const key of new Set([...ours.keys(), ...theirs.keys()])) {
      const [a, b] = [ours.get(key), theirs.get(key)];
      if (Object.hasOwn(OF_THE_PLACE, key)) continue;
      if (a === undefined || b === undefined) {
        // Remarks name the figure they are about, and there may be one on a figure of the place.
        if ((a ?? b)?.unit !== "" || typeof (a ?? b)?.value === "number") off.push(`${key}: on one sheet alone`);
        continue;
      }
      if (typeof a.value !== "number" || typeof b.value !== "number") {
        const texts = [a.value, b.value].map((value) => inBritish(String(value)));
        if (texts[0] !== texts[1] && !texts.some((text) => /\d/.test(text))) off.push(`${key}: ${texts.join(", ")}`);
        continue;
      }
      compared += 1;
      const [p, q] = [inEngine(a), inEngine(b)];
      const scale = Math.max(Math.abs(p), Math.abs(q));
      if (Math.abs(p - q) > (OF_TWO_ALIKE[key] ?? CLOSE) * scale + NOTHING)
        off.push(`${key}: ${a.value} ${a.unit}, ${b.value} ${b.unit}`);
    }
    expect(off).toEqual([]);
    expect(compared).toBeGreaterThan(30);
  });
});
