import { printedUnit, type Quantity } from "../../../../src/basis/quantities.ts";
import type { Duty } from "../../../duty/duty.ts";
import { constant, type Expression, type Handle, join, part, rounded } from "../../expression.ts";
import { FIELD } from "../../field-handles.ts";
import { type PackageSection, waitsFor } from "../../package-section.ts";
import type { LinesItem } from "../../plan.ts";
import { decimalsOf } from "../../styles.ts";
import { driveSection } from "../drive.ts";
import { DRIVE_ENGINE } from "../drive-engine.ts";
import { DRIVE_MOTOR } from "../drive-motor.ts";
import { POWER } from "../drive-power.ts";
import { MATERIAL_LIST, materialsSection } from "../materials.ts";
import { PRESSURE, pressureSection } from "../pressure.ts";
import { METHODS, PRIMING, primingSection } from "../priming.ts";
import type { Standing } from "./standing.ts";

type Words = readonly (string | Expression)[];

/**
 * The package in four lines, each live; where its part is not worked out, what that waits for. Nothing where no pump is
 * chosen that it could be the package of.
 */
export function packageLines(duty: Duty, stands: Standing): readonly LinesItem[] {
  if (duty.pumpState === "blank") return [];
  const line = (key: string, label: string, section: PackageSection, words: Words): LinesItem["rows"][number] => ({
    key: `package${key}`,
    label,
    text: words.length === 0 ? constant(notWorkedOut(section, duty)) : joined(words),
  });
  return [
    {
      kind: "lines",
      heading: "Package",
      rows: [
        line("Flanges", "Sizes and class", pressureSection, flanges(duty, stands)),
        line("Driver", "Driver", driveSection, driver(duty, stands)),
        line("Priming", "Priming", primingSection, priming(duty, stands)),
        line("Materials", "Materials", materialsSection, materials(duty, stands)),
      ],
    },
  ];
}

function notWorkedOut(section: PackageSection, duty: Duty): string {
  const waits = waitsFor(section, duty);
  if (waits.length > 0) return `not worked out: waits for ${waits.join(", ")}`;
  const { missing } = section;
  // A flooded pump has all it needs.
  return section === primingSection ? missing : `not worked out: ${missing.charAt(0).toLowerCase()}${missing.slice(1)}`;
}

function joined(words: Words): Expression {
  return join(...words.map((one) => (typeof one === "string" ? constant(one) : one)));
}

function flanges(duty: Duty, stands: Standing): Words {
  if (!stands(PRESSURE.greatestPressure)) return [];
  const { suctionFlange, dischargeFlange, flangeClass } = FIELD;
  return [
    ...(stands(suctionFlange) && stands(dischargeFlange)
      ? ["nominal sizes: suction ", suctionFlange, ", discharge ", dischargeFlange, "; "]
      : ["sizes not stated; "]),
    ...(stands(flangeClass) ? ["class offered: ", flangeClass, "; "] : ["class offered not stated; "]),
    "needed: ",
    PRESSURE.classNeeded,
    " at ",
    ...amount(PRESSURE.greatestPressure, duty),
  ];
}

function driver(duty: Duty, stands: Standing): Words {
  if (!stands(POWER.powerNeeded)) return [];
  const needed = [
    `; ${duty.pump === undefined || duty.state.pumpsRunning !== "stated" ? "" : "each "}needed `,
    ...amount(POWER.powerNeeded, duty),
  ];
  if (duty.driver === "motor") {
    const motor = stands(DRIVE_MOTOR.motorName)
      ? [DRIVE_MOTOR.motorName, ", ", DRIVE_MOTOR.motorDrive, ", frame ", DRIVE_MOTOR.coupledFrame]
      : ["motor, ", ...amount(DRIVE_MOTOR.motorRating, duty)];
    return [...motor, ...needed];
  }
  return [
    "engine",
    ...(stands(FIELD.engineRating)
      ? [", ", ...amount(FIELD.engineRating, duty), " rated, ", ...amount(DRIVE_ENGINE.enginePower, duty), " on site"]
      : [", rating not stated"]),
    ...needed,
  ];
}

function priming(duty: Duty, stands: Standing): Words {
  if (!stands(PRIMING.primeTime)) return [];
  return [part(METHODS, "method", 0), "; time to prime ", ...amount(PRIMING.primeTime, duty)];
}

function materials(duty: Duty, stands: Standing): Words {
  if (!stands({ op: "value", key: MATERIAL_LIST.key })) return [];
  const stated = [
    [FIELD.casingMaterial, "casing "],
    [FIELD.impellerMaterial, "impeller "],
    [FIELD.sealFaces, "seal faces "],
    [FIELD.elastomer, "elastomer "],
  ] as const;
  return [
    ...stated.flatMap(([of, before]) => (duty.state[of.key] === "stated" && stands(of) ? [before, of, "; "] : [])),
    "of the metals ranks first for this liquid: ",
    part(MATERIAL_LIST, "material", 0),
  ];
}

/** A figure as the sheet prints it, with its unit; a text that stands in its place as it is. */
function amount(of: Handle & { readonly quantity?: Quantity }, { unitSet }: Pick<Duty, "unitSet">): Words {
  const { quantity } = of;
  return [rounded(of, decimalsOf(quantity, unitSet)), ...(quantity ? [` ${printedUnit(quantity, unitSet)}`] : [])];
}
