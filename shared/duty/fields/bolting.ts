import { boltAssemblyMethod, WRENCH_SCATTER } from "../../../src/pressure/bolt-assembly.ts";
import { BOLT_FINISHES, boltFinishNamed } from "../../../src/pressure/bolt-finish.ts";
import { BOLT_GRADE_NAMES, boltGradeNamed } from "../../../src/pressure/bolt-grade.ts";
import { boltTorqueMethod } from "../../../src/pressure/bolt-torque.ts";
import { FLANGE_SIZE_NAMES, flangeSizeFor, flangeSizeRead } from "../../../src/pressure/flange-size.ts";
import { GASKET_NAMES, gasketNamed } from "../../../src/pressure/gasket-name.ts";
import { FACING_NAMES, GASKET_SHAPES } from "../../catalogue/entries/bolting.ts";
import { ratingSystem } from "../../catalogue/parameters/class.ts";
import { amount, named, oneOf, percent } from "../field.ts";

export const flangeSize = (label: string, help: string) =>
  named((size, subject, unitSet) => flangeSizeRead(size, ratingSystem(unitSet), subject), {
    label,
    choices: FLANGE_SIZE_NAMES,
    help,
    inUnitSet: (text, from, to) => flangeSizeFor(text, ratingSystem(from), ratingSystem(to)),
  });

export const bolting = {
  suctionFlange: flangeSize(
    "Suction flange size",
    "Nominal size, such as NPS 8 or DN200. A bare number is inches in US units and DN otherwise.",
  ),
  dischargeFlange: flangeSize(
    "Discharge flange size",
    "Nominal size, such as NPS 6 or DN150. Grey iron is rated by it.",
  ),
  gasket: named(gasketNamed, {
    label: "Gasket",
    choices: GASKET_NAMES,
    help: "Decides the minimum bolt load; no torque is given without it. EPDM, NBR and fibre are understood.",
  }),
  gasketShape: oneOf(GASKET_SHAPES, {
    isSeldom: true,
    label: "Gasket shape",
    whenBlank: "ring",
    help: "A ring inside the bolts, or full face out to the rim: flat-faced grey iron with strong bolts takes full face.",
  }),
  facing: oneOf(FACING_NAMES, {
    isSeldom: true,
    label: "Flange faces",
    help: "How the two faces meet. A raised face against flat grey iron cracks it.",
  }),
  boltGrade: named(boltGradeNamed, {
    label: "Bolting material",
    choices: BOLT_GRADE_NAMES,
    help: "Decides how hard the bolts may be pulled. Left blank, B7 is counted, in grey iron A307 B or ISO 4.6.",
  }),
  boltFinish: named(boltFinishNamed, {
    isSeldom: true,
    label: "Bolt finish and lubricant",
    choices: BOLT_FINISHES,
    help: "Gives the nut factor where none is stated: galvanised, stainless with anti-seize …",
  }),
  nutFactor: amount({
    isSeldom: true,
    label: "Nut factor K",
    quantity: "ratio",
    bounds: boltTorqueMethod.inputs.nutFactor,
    help: "0.16 to 0.20 lubricated, 0.20 to 0.25 as received; left blank, 0.2 gives the torque and the range decides.",
  }),
  torqueScatter: percent({
    isSeldom: true,
    label: "Scatter of the tightening",
    bounds: boltAssemblyMethod.inputs.scatter,
    whenBlank: WRENCH_SCATTER,
    help: "How far the bolt load may come out low or high: 30 % by torque wrench, some 10 % by tensioner.",
  }),
};
