import { flangeClassNamed } from "../../../src/pressure/flange-class.ts";
import { ratingSystem } from "../../catalogue/parameters/class.ts";
import type { Duty } from "../../duty/duty.ts";
import { type Call, callById, constant, type Expression, ifNumber, partAt, value, verdict } from "../expression.ts";
import type { PlanItem, SpillItem, TableItem } from "../plan.ts";
import { remark } from "./package-inputs.ts";
import { stated } from "./stated-input.ts";

interface Flange {
  readonly field: "suctionFlange" | "dischargeFlange";
  readonly label: string;
  /** Records of FLANGEDIMENSIONS and BOLTTORQUE. */
  readonly dimensions: string;
  readonly joint: string;
  readonly torque: string;
  readonly verdict: string;
}

const FLANGES: readonly Flange[] = [
  {
    field: "suctionFlange",
    label: "Suction flange",
    dimensions: "suctionDimensions",
    joint: "suctionJoint",
    torque: "suctionTorque",
    verdict: "suctionBoltStress",
  },
  {
    field: "dischargeFlange",
    label: "Discharge flange",
    dimensions: "dischargeDimensions",
    joint: "dischargeJoint",
    torque: "dischargeTorque",
    verdict: "dischargeBoltStress",
  },
];

const PN_FLANGES =
  "The class is a PN, and dimensions of PN flanges are not held here: take diameters, drilling and bolts from EN 1092-2 and the pump's drawing. A PN flange bolts to one of the same PN, and to no Class flange.";
const NO_GASKET = "No gasket is stated, so no bolt load and no torque are given.";
const NO_PUMP = "No pump is chosen, so the greatest pressure is not known and no bolt load and no torque are given.";

/**
 * Dimensions of the pump's flanges by size and class, and where a gasket is stated their bolt load and torque. Nothing
 * without a size and a class. Inputs that stand on the sheet already are not stated again.
 */
export function bolting(duty: Duty, above: readonly PlanItem[]): readonly PlanItem[] {
  const { flangeClass, gasket } = duty;
  const flanges = FLANGES.filter(({ field }) => duty[field] !== undefined);
  if (flangeClass === undefined || flanges.length === 0) return [];
  const stands = new Set(above.flatMap((item) => (item.kind === "input" ? [item.key] : [])));
  const inputs = [...stated(duty, "flangeClass"), ...flanges.flatMap(({ field }) => stated(duty, field))].filter(
    ({ key }) => !stands.has(key),
  );
  const named = flangeClassNamed(flangeClass, ratingSystem(duty.unitSet));
  if (named.ok && named.value.series === "PN") {
    return [
      { kind: "section", id: "bolting", text: "Flanges and bolting" },
      ...inputs,
      { kind: "statement", text: PN_FLANGES },
    ];
  }
  const first = flanges[0] as Flange;
  return [
    { kind: "section", id: "bolting", text: "Flanges and bolting" },
    ...inputs,
    ...flanges.map(dimensionsOf),
    dimensionTable(flanges),
    ...(gasket === undefined
      ? ([{ kind: "statement", text: NO_GASKET }] as const)
      : duty.pump === undefined
        ? ([{ kind: "statement", text: NO_PUMP }] as const)
        : joints(duty, flanges)),
    remark("flangeNotes", "Flange dimensions", boltingCall(first)),
  ];
}

function boltingCall({ field }: Flange): Call {
  return callById("FLANGEDIMENSIONS", value(field), value("flangeClass"));
}

/** Places of the records of FLANGEDIMENSIONS and BOLTTORQUE. */
const OF_FLANGE = {
  outside: 0,
  circle: 1,
  bolts: 2,
  studLength: 7,
  machineBoltLength: 8,
  gasketOutside: 9,
  gasketInside: 10,
  boltSize: 12,
} as const;
const OF_JOINT = {
  bolts: 0,
  boltSize: 1,
  needed: 4,
  neededStress: 5,
  stress: 6,
  greatest: 7,
  load: 8,
  torque: 9,
  reference: 10,
} as const;

function dimensionsOf(flange: Flange): SpillItem {
  const sizes = (...keys: readonly string[]) => keys.map((key) => ({ key, quantity: "size" as const }));
  return {
    kind: "spill",
    key: flange.dimensions,
    label: `Dimensions of the ${flange.label.toLowerCase()}`,
    expression: boltingCall(flange),
    rows: 2,
    columns: [
      ...sizes("outside", "circle"),
      { key: "bolts" },
      ...sizes("boltDiameter", "hole", "raisedFace", "steel", "stud", "machineBolt", "gasketOutside", "gasketInside"),
      ...sizes("ductile"),
      { key: "boltSize" },
    ],
  };
}

/** Lengths are for two like steel flanges; where the standard of the class has none, the drawing must say. */
const BY_DRAWING = "by drawing";

function dimensionTable(flanges: readonly Flange[]): TableItem {
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
    rows: flanges.map(({ label, dimensions: record }) => ({
      label,
      cells: [
        partAt(record, OF_FLANGE.outside),
        {
          op: "join",
          terms: [partAt(record, OF_FLANGE.bolts), constant(" × "), partAt(record, OF_FLANGE.boltSize)],
        },
        partAt(record, OF_FLANGE.circle),
        whereHeld(record, OF_FLANGE.studLength),
        whereHeld(record, OF_FLANGE.machineBoltLength),
        partAt(record, OF_FLANGE.gasketOutside),
        partAt(record, OF_FLANGE.gasketInside),
      ],
    })),
  };
}

function whereHeld(record: string, place: number): Expression {
  return ifNumber(partAt(record, place), partAt(record, place), BY_DRAWING);
}

/** At the last discharge, running or standing, as the pressure section has it. */
const GREATEST_PRESSURE = value("greatestPressure");

function joints(duty: Duty, flanges: readonly Flange[]): readonly PlanItem[] {
  const torqueCall = ({ field }: Flange): Call =>
    callById(
      "BOLTTORQUE",
      value(field),
      value("flangeClass"),
      GREATEST_PRESSURE,
      value("gasket"),
      value("casingMaterial"),
      value("boltGrade"),
      value("nutFactor"),
    );
  return [
    ...stated(duty, "gasket", "boltGrade", "nutFactor"),
    ...flanges.map((flange) => jointOf(flange, torqueCall(flange))),
    jointTable(flanges),
    ...flanges.flatMap(torqueAndVerdict),
    ...flanges.map((flange) => remark(`${flange.joint}Notes`, `${flange.label} bolting`, torqueCall(flange))),
  ];
}

function jointOf({ joint, label }: Flange, call: Call): SpillItem {
  const of = (quantity: "force" | "stress" | "torque", ...keys: readonly string[]) =>
    keys.map((key) => ({ key, quantity }));
  return {
    kind: "spill",
    key: joint,
    label: `Bolt load and torque of the ${label.toLowerCase()}`,
    expression: call,
    rows: 2,
    columns: [
      { key: "bolts" },
      { key: "boltSize" },
      ...of("force", "operating", "seating", "needed"),
      ...of("stress", "neededStress", "stress", "greatest"),
      ...of("force", "load"),
      ...of("torque", "torque", "reference"),
      ...of("stress", "gasketStress"),
    ],
  };
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
        partAt(joint, OF_JOINT.needed),
        {
          op: "join",
          terms: [
            partAt(joint, OF_JOINT.bolts),
            constant(" × "),
            partAt(joint, OF_JOINT.boltSize),
            constant(", "),
            value("boltGrade"),
          ],
        },
        partAt(joint, OF_JOINT.load),
        partAt(joint, OF_JOINT.neededStress),
        partAt(joint, OF_JOINT.stress),
        partAt(joint, OF_JOINT.greatest),
        partAt(joint, OF_JOINT.reference),
      ],
    })),
  };
}

function torqueAndVerdict({ field, label, joint, torque, verdict: key }: Flange): readonly PlanItem[] {
  const why =
    field === "suctionFlange" ? " The suction flange sees that pressure when a stopped pump lets it back." : "";
  return [
    {
      kind: "result",
      key: torque,
      label: `Torque, ${label.toLowerCase()}`,
      quantity: "torque",
      expression: partAt(joint, OF_JOINT.torque),
      how: `Nut factor × bolt diameter × load of one bolt; ± 30 % in load by torque wrench.${why}`,
      main: true,
    },
    {
      kind: "result",
      key,
      label: `Bolt stress, ${label.toLowerCase()}`,
      expression: verdict(
        partAt(joint, OF_JOINT.greatest),
        partAt(joint, OF_JOINT.stress),
        "within bounds",
        "TOO HIGH",
      ),
      how: "Stress taken against the most that bolt, flange and gasket stand.",
    },
  ];
}
