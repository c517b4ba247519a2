import { flangeClassNamed } from "../../../src/pressure/flange-class.ts";
import { BOLTTORQUE } from "../../catalogue/entries/bolting.ts";
import { FLANGEDIMENSIONS } from "../../catalogue/entries/pressure-and-flanges.ts";
import { ratingSystem } from "../../catalogue/parameters/class.ts";
import type { Duty } from "../../duty/duty.ts";
import {
  type Call,
  callOf,
  constant,
  type Expression,
  handles,
  ifNumber,
  join,
  part,
  spillOf,
  verdict,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import type { PackageSection } from "../package-section.ts";
import { figure, type PlanItem, remark, spill, statement, type TableItem } from "../plan.ts";
import { PRESSURE } from "./pressure.ts";
import { stated } from "./stated-input.ts";

/** Worked cells of this section. */
export const BOLTING = handles({
  suctionTorque: "torque",
  suctionBoltStress: null,
  suctionJointNotes: null,
  dischargeTorque: "torque",
  dischargeBoltStress: null,
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
    stress: BOLTING.suctionBoltStress,
    notes: BOLTING.suctionJointNotes,
    why: " The suction flange sees that pressure when a stopped pump lets it back.",
  },
  {
    field: "dischargeFlange",
    label: "Discharge flange",
    dimensions: spillOf("dischargeDimensions", FLANGEDIMENSIONS),
    joint: spillOf("dischargeJoint", BOLTTORQUE),
    torque: BOLTING.dischargeTorque,
    stress: BOLTING.dischargeBoltStress,
    notes: BOLTING.dischargeJointNotes,
    why: "",
  },
] as const;

type Flange = (typeof FLANGES)[number];

const PN_FLANGES =
  "The class is a PN, and dimensions of PN flanges are not held here: take diameters, drilling and bolts from EN 1092-2 and the pump's drawing. A PN flange bolts to one of the same PN, and to no Class flange.";
const NO_GASKET = "No gasket is stated, so no bolt load and no torque are given.";
const NO_PUMP = "No pump is chosen, so the greatest pressure is not known and no bolt load and no torque are given.";

/**
 * Dimensions of the pump's flanges by size and class, and where a gasket is stated their bolt load and torque. Nothing
 * without a size and a class.
 */
export const boltingSection: PackageSection = {
  id: "bolting",
  title: "Flanges and bolting",
  missing: "State the size of a flange here and its class under “Pressure and flanges”.",
  caution:
    "The pump and gasket makers’ torque comes first. Bolts are tightened on a cold joint without pressure alone, crosswise and in steps.",
  decidedBy: ["flangeClass"],
  isOfPump: true,
  items: (duty) => {
    const { flangeClass, pump, state, unitSet } = duty;
    const flanges = FLANGES.filter(({ field }) => state[field] !== "blank");
    const [first] = flanges;
    if (flangeClass === undefined || first === undefined) return [];
    const inputs = stated(duty, "flangeClass", ...flanges.map(({ field }) => field));
    const named = flangeClassNamed(flangeClass, ratingSystem(unitSet));
    if (named.ok && named.value.series === "PN") return [...inputs, statement(PN_FLANGES)];
    const dimensions = ({ field }: Flange): Call =>
      callOf(FLANGEDIMENSIONS, { size: FIELD[field], flangeClass: FIELD.flangeClass });
    return [
      ...inputs,
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

/** Lengths are for two like steel flanges; where the standard of the class has none, the drawing must say. */
function dimensionTable(flanges: readonly Flange[]): TableItem {
  const whereHeld = (length: Expression): Expression => ifNumber(length, length, "by drawing");
  return {
    kind: "table",
    key: "flangeTable",
    heading: "flange; lengths for two like ones",
    columns: [
      { key: "outside", label: "flange OD", quantity: "size" },
      { key: "bolts", label: "bolts" },
      { key: "circle", label: "bolt circle", quantity: "size" },
      { key: "stud", label: "stud length", quantity: "size" },
      { key: "machineBolt", label: "machine bolt", quantity: "size" },
      { key: "gasketOutside", label: "gasket OD", quantity: "size" },
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

/** Load and torque at the pressure of the last discharge, running or standing, as the pressure section has it. */
function joints(duty: Duty, flanges: readonly Flange[]): readonly PlanItem[] {
  const call = ({ field }: Flange): Call =>
    callOf(BOLTTORQUE, {
      size: FIELD[field],
      flangeClass: FIELD.flangeClass,
      pressure: PRESSURE.greatestPressure,
      gasket: FIELD.gasket,
      flangeMaterial: FIELD.casingMaterial,
      boltGrade: FIELD.boltGrade,
      nutFactor: FIELD.nutFactor,
    });
  return [
    ...stated(duty, "gasket", "boltGrade", "nutFactor"),
    ...flanges.map((flange) =>
      spill(flange.joint, `Bolt load and torque of the ${flange.label.toLowerCase()}`, call(flange)),
    ),
    jointTable(flanges),
    ...flanges.flatMap(({ label, joint, torque, stress, why }) => [
      figure(
        torque,
        `Torque, ${label.toLowerCase()}`,
        part(joint, "torque"),
        `Nut factor × bolt diameter × load of one bolt; ± 30 % in load by torque wrench.${why}`,
        "main",
      ),
      figure(
        stress,
        `Bolt stress, ${label.toLowerCase()}`,
        verdict(part(joint, "greatest"), part(joint, "stress"), "within bounds", "TOO HIGH"),
        "Stress taken against the most that bolt, flange and gasket stand.",
      ),
    ]),
    ...flanges.map((flange) => remark(flange.notes, `${flange.label} bolting`, call(flange))),
  ];
}

function jointTable(flanges: readonly Flange[]): TableItem {
  return {
    kind: "table",
    key: "jointTable",
    heading: "bolting at greatest pressure",
    columns: [
      { key: "needed", label: "load needed", quantity: "force" },
      { key: "bolts", label: "bolts" },
      { key: "load", label: "load of one", quantity: "force" },
      { key: "neededStress", label: "stress needed", quantity: "stress" },
      { key: "stress", label: "stress taken", quantity: "stress" },
      { key: "greatest", label: "at most", quantity: "stress" },
      { key: "reference", label: "reference torque", quantity: "torque" },
    ],
    rows: flanges.map(({ label, joint }) => ({
      label,
      cells: [
        part(joint, "needed"),
        join(part(joint, "bolts"), constant(" × "), part(joint, "boltSize"), constant(", "), FIELD.boltGrade),
        ...(["load", "neededStress", "stress", "greatest", "reference"] as const).map((of) => part(joint, of)),
      ],
    })),
  };
}
