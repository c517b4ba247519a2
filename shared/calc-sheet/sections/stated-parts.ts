import type { PartKind } from "../../../src/material/stated-part.ts";
import { MATERIALCHECK } from "../../catalogue/entries/material-check.ts";
import type { Duty } from "../../duty/duty.ts";
import { callOf, cell, constant, type Expression, join, part, spillOf } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { type OptionItem, type PlanItem, spill } from "../plan.ts";
import { letters } from "../row-letters.ts";
import { byWeight } from "./as-pumped.ts";
import { LINES } from "./lines.ts";
import { isStated, makeUpCell, wettedDutyOf } from "./wetted-duty.ts";

/** A wetted part whose material is stated, and the cell that names it. */
export interface StatedPart {
  readonly kind: PartKind;
  /** "casing", "suction run 2". */
  readonly label: string;
  readonly material: Expression;
  /** Where its judgement is spilled. */
  readonly record: ReturnType<typeof recordAt>;
}

const recordAt = (index: number) => spillOf(`materialCheck${letters(index)}`, MATERIALCHECK);

/** What bolts are where nobody states it: plain steel, whatever the flange. */
const USUAL_BOLTS = constant("A193 B7");

/** Casing, impeller, seal, elastomer, wetted bolts, and the pipes of both lines, each pipe once. */
export function statedParts(duty: Duty): readonly StatedPart[] {
  const stated: readonly Omit<StatedPart, "record">[] = [
    ...(isStated(duty, "casingMaterial")
      ? [{ kind: "casing", label: "casing", material: FIELD.casingMaterial } as const]
      : []),
    ...(isStated(duty, "impellerMaterial")
      ? [{ kind: "impeller", label: "impeller", material: FIELD.impellerMaterial } as const]
      : []),
    ...(isStated(duty, "sealFaces")
      ? [{ kind: "seal faces", label: "seal faces", material: FIELD.sealFaces } as const]
      : []),
    ...(isStated(duty, "elastomer")
      ? [{ kind: "elastomer", label: "elastomers", material: FIELD.elastomer } as const]
      : []),
    ...(areBoltsWetted(duty)
      ? [
          {
            kind: "bolts",
            label: "flange bolts",
            material: isStated(duty, "boltGrade") ? FIELD.boltGrade : USUAL_BOLTS,
          } as const,
        ]
      : []),
    ...runs(duty),
  ];
  return stated.map((one, i) => ({ ...one, record: recordAt(i) }));
}

/** Whether the bolts of the flanges are judged by the liquid. */
export function areBoltsWetted(duty: Duty): boolean {
  return duty.boltsWetted === "wetted or splashed";
}

function runs(duty: Duty): readonly Omit<StatedPart, "record">[] {
  const seen = new Set<string>();
  return (["suctionLine", "dischargeLine"] as const).flatMap((line) =>
    duty[line].flatMap(({ segment, typed }, i) => {
      const name = segment?.pipe.name ?? typed.pipe.trim();
      if (name === "" || seen.has(name)) return [];
      seen.add(name);
      const label = `${line === "suctionLine" ? "suction" : "discharge"} run ${i + 1}`;
      return [{ kind: "line", label, material: cell(LINES[line], i, "pipe") } as const];
    }),
  );
}

/** The judgement of each stated part, live. */
export function statedPartCalls(duty: Duty): readonly PlanItem[] {
  return statedParts(duty).map(({ kind, label, material, record }) =>
    spill(
      record,
      `Material of the ${label}`,
      callOf(MATERIALCHECK, {
        part: constant(kind),
        material,
        pH: FIELD.pH,
        ...(isStated(duty, "temperature") && { maximumTemperature: FIELD.temperature }),
        chlorides: FIELD.chlorides,
        ...(wettedDutyOf(duty).solids !== null && { solidsByWeight: byWeight(duty) }),
        hardness: FIELD.solidsHardness,
        maximumParticleSize: FIELD.particleSize,
        freePassage: FIELD.freePassage,
        oxidiser: FIELD.oxidiser,
        constituents: makeUpCell(duty),
      }),
    ),
  );
}

/** A line of each. */
export function statedPartLines(duty: Duty): readonly OptionItem[] {
  return statedParts(duty).map(({ label, material, record }, i) => ({
    kind: "option",
    key: `statedPart${letters(i)}`,
    ...(i === 0 && { heading: "Wetted parts stated" }),
    name: join(constant(`${label}: `), material),
    verdict: part(record, "verdict"),
    remarks: [{ label: "", text: part(record, "why") }],
  }));
}
