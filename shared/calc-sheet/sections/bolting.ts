import { BOLTTORQUE } from "../../catalogue/entries/bolting.ts";
import { FLANGEDIMENSIONS } from "../../catalogue/entries/flange-dimensions.ts";
import type { Duty } from "../../duty/duty.ts";
import {
  type Call,
  callOf,
  constant,
  type Expression,
  handles,
  ifAtLeast,
  ifNumber,
  ifText,
  join,
  part,
  product,
  spillOf,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import type { PackageSection } from "../package-section.ts";
import { figure, type PlanItem, remark, spill, statement, type TableItem } from "../plan.ts";
import { PRESSURE, pressureSection } from "./pressure.ts";
import { CLASSES, nozzleLabels } from "./pressure-nozzles.ts";
import { stated } from "./stated-input.ts";

/** Worked cells of this section. */
export const BOLTING = handles({
  jointTestPressure: "gaugePressure",
  suctionTorque: "torque",
  suctionSealsTo: "gaugePressure",
  suctionJointVerdict: null,
  suctionJointNotes: null,
  dischargeTorque: "torque",
  dischargeSealsTo: "gaugePressure",
  dischargeJointVerdict: null,
  dischargeJointNotes: null,
  flangeNotes: null,
});

export const FLANGES = [
  {
    field: "suctionFlange",
    label: "Suction flange",
    dimensions: spillOf("suctionDimensions", FLANGEDIMENSIONS),
    joint: spillOf("suctionJoint", BOLTTORQUE),
    torque: BOLTING.suctionTorque,
    sealsTo: BOLTING.suctionSealsTo,
    verdict: BOLTING.suctionJointVerdict,
    notes: BOLTING.suctionJointNotes,
    /** Its row among the nozzles, counted from the last. */
    fromLast: 1,
  },
  {
    field: "dischargeFlange",
    label: "Discharge flange",
    dimensions: spillOf("dischargeDimensions", FLANGEDIMENSIONS),
    joint: spillOf("dischargeJoint", BOLTTORQUE),
    torque: BOLTING.dischargeTorque,
    sealsTo: BOLTING.dischargeSealsTo,
    verdict: BOLTING.dischargeJointVerdict,
    notes: BOLTING.dischargeJointNotes,
    fromLast: 0,
  },
] as const;

export type Flange = (typeof FLANGES)[number];

const NO_GASKET = "No gasket is stated, so no bolt load and no torque are given.";
const NO_PUMP = "No pump is selected, so the maximum pressure is not known and no bolt load and no torque are given.";

/** The flanges whose size is stated, in the order of flow. */
export function statedFlanges({ state }: Pick<Duty, "state">): readonly Flange[] {
  return FLANGES.filter(({ field }) => state[field] !== "blank");
}

/** Greatest pressure at a flange: in series that of the last stage, whose suction sees most. */
export function pressureAt(duty: Duty, { fromLast }: Flange): Expression {
  return part(CLASSES, "greatest", nozzleLabels(duty).length - 1 - fromLast);
}

/**
 * Dimensions of the pump's flanges by size and class or PN, and where a gasket is stated their bolt load and torque.
 * Nothing without a size and a class.
 */
export const boltingSection: PackageSection = {
  id: "bolting",
  missing: "State the size of a flange here and its class under “Pressure and flanges”.",
  caution:
    "The pump and gasket makers’ torque comes first. Bolts are tightened on a cold joint without pressure alone, crosswise and in steps.",
  decidedBy: ["flangeClass", ...pressureSection.decidedBy],
  isOfPump: true,
  items: (duty) => {
    const { flangeClass, pump, state } = duty;
    const flanges = statedFlanges(duty);
    const [first] = flanges;
    if (flangeClass === undefined || first === undefined) return [];
    const dimensions = ({ field }: Flange): Call =>
      callOf(FLANGEDIMENSIONS, {
        size: FIELD[field],
        flangeClass: FIELD.flangeClass,
        flangeMaterial: FIELD.casingMaterial,
      });
    return [
      ...stated(duty, "flangeClass", "casingMaterial", ...flanges.map(({ field }) => field)),
      ...flanges.map((flange) =>
        spill(flange.dimensions, `Dimensions of the ${flange.label.toLowerCase()}`, dimensions(flange)),
      ),
      dimensionTable(flanges),
      ...(state.gasket === "blank"
        ? [statement(NO_GASKET)]
        : pump === undefined
          ? [statement(NO_PUMP)]
          : joints(duty, flanges)),
      remark(BOLTING.flangeNotes, "Flange dimensions", dimensions(first)),
    ];
  },
};

/** Lengths are for two like flanges; where the standard of the class has none, the drawing must say. */
function dimensionTable(flanges: readonly Flange[]): TableItem {
  const whereHeld = (length: Expression): Expression => ifNumber(length, length, "by drawing");
  return {
    kind: "table",
    key: "flangeTable",
    heading: "flange; bolt lengths for two identical flanges",
    columns: [
      { key: "outside", label: "flange OD", quantity: "size" },
      { key: "bolts", label: "bolts" },
      { key: "circle", label: "bolt circle", quantity: "size" },
      { key: "stud", label: "stud length", quantity: "size" },
      { key: "machineBolt", label: "machine bolt", quantity: "size" },
      { key: "gasketOutside", label: "ring gasket OD", quantity: "size" },
      { key: "gasketInside", label: "gasket ID", quantity: "size" },
    ],
    rows: flanges.map(({ label, dimensions: of }) => ({
      label,
      cells: [
        part(of, "outside"),
        join(part(of, "bolts"), constant(" × "), part(of, "boltSize")),
        part(of, "circle"),
        whereHeld(part(of, "studLength")),
        whereHeld(part(of, "machineBoltLength")),
        part(of, "gasketOutside"),
        part(of, "gasketInside"),
      ],
    })),
  };
}

/** Load and torque at the greatest pressure of each flange and at the test of the package. */
function joints(duty: Duty, flanges: readonly Flange[]): readonly PlanItem[] {
  const call = (flange: Flange): Call =>
    callOf(BOLTTORQUE, {
      size: FIELD[flange.field],
      flangeClass: FIELD.flangeClass,
      pressure: pressureAt(duty, flange),
      gasket: FIELD.gasket,
      flangeMaterial: FIELD.casingMaterial,
      boltGrade: FIELD.boltGrade,
      nutFactor: FIELD.nutFactor,
      testPressure: BOLTING.jointTestPressure,
      torqueScatter: FIELD.torqueScatter,
      gasketShape: FIELD.gasketShape,
      facing: FIELD.facing,
      boltFinish: FIELD.boltFinish,
      metalTemperature: FIELD.temperature,
    });
  const test = part(CLASSES, "packageTest", nozzleLabels(duty).length - 1);
  return [
    ...stated(duty, "gasket", "gasketShape", "facing", "boltGrade", "boltFinish", "nutFactor", "torqueScatter"),
    figure(
      BOLTING.jointTestPressure,
      "Test pressure of the joints",
      ifText(test, "", product(FIELD.jointTest, PRESSURE.greatestPressure), test),
      "Package test, or maximum pressure × test over working.",
    ),
    ...flanges.map((flange) =>
      spill(flange.joint, `Bolt load and torque of the ${flange.label.toLowerCase()}`, call(flange)),
    ),
    jointTable(flanges),
    ...flanges.flatMap((flange) => jointFigures(duty, flange)),
    ...flanges.map((flange) => remark(flange.notes, `${flange.label} bolting`, call(flange))),
  ];
}

function jointFigures(duty: Duty, flange: Flange): readonly PlanItem[] {
  const { label, joint, torque, sealsTo, verdict } = flange;
  const of = label.toLowerCase();
  const why = part(joint, "noTorque");
  const where = (given: Expression): Expression => ifText(why, "", given, join(constant("none: "), why));
  const seals = part(joint, "sealsTo");
  const pressure = pressureAt(duty, flange);
  const short = constant("DOES NOT SEAL");
  // Where nobody stated the nut factor, the least of those usual may decide.
  const failing =
    duty.state.nutFactor === "blank"
      ? ifAtLeast(part(joint, "sealsToAtBest"), pressure, constant("MAY NOT SEAL"), short)
      : short;
  return [
    figure(
      torque,
      `Torque, ${of}`,
      where(part(joint, "torque")),
      "Nut factor × bolt diameter × load of one bolt.",
      "main",
    ),
    figure(sealsTo, `Seals to, ${of}`, where(seals), "With the tightening low by its scatter, maximum nut factor."),
    figure(
      verdict,
      `Joint, ${of}`,
      ifText(
        why,
        "",
        ifAtLeast(
          seals,
          BOLTING.jointTestPressure,
          constant("seals, test included"),
          ifAtLeast(seals, pressure, constant("seals, SHORT AT TEST"), failing),
        ),
        constant("NO TORQUE"),
      ),
      "Tightening low, against maximum and test pressure.",
      "main",
    ),
  ];
}

function jointTable(flanges: readonly Flange[]): TableItem {
  return {
    kind: "table",
    key: "jointTable",
    heading: "bolting at maximum pressure",
    columns: [
      { key: "needed", label: "load needed", quantity: "force" },
      { key: "testLoad", label: "at test", quantity: "force" },
      { key: "bolts", label: "bolts" },
      { key: "load", label: "load per bolt", quantity: "force" },
      { key: "stress", label: "stress taken", quantity: "stress" },
      { key: "greatest", label: "at most", quantity: "stress" },
      { key: "reference", label: "ref. torque", quantity: "torque" },
    ],
    rows: flanges.map(({ label, joint }) => ({
      label,
      cells: [
        part(joint, "needed"),
        part(joint, "testLoad"),
        join(part(joint, "bolts"), constant(" × "), part(joint, "boltSize"), constant(", "), part(joint, "boltGrade")),
        ...(["load", "stress", "greatest", "reference"] as const).map((of) => {
          const cell = part(joint, of);
          return ifNumber(cell, cell, "–");
        }),
      ],
    })),
  };
}
