import { boltTorqueMethod } from "../../../src/pressure/bolt-torque.ts";
import { flangeSizeRead } from "../../../src/pressure/flange-size.ts";
import { BOLT_GRADES, type BoltGradeName } from "../../../src/tables/bolts.ts";
import { GASKETS, type GasketName } from "../../../src/tables/gaskets.ts";
import { ratingSystem } from "../../catalogue/parameters/class.ts";
import { amount, named, oneOf } from "../field.ts";

const flangeSize = (label: string, help: string) =>
  named((size, subject, unitSet) => flangeSizeRead(size, ratingSystem(unitSet), subject), { label, help });

export const bolting = {
  suctionFlange: flangeSize(
    "Suction flange size",
    "Nominal size, such as NPS 8 or DN200. A bare number is inches in US units and DN otherwise.",
  ),
  dischargeFlange: flangeSize(
    "Discharge flange size",
    "Nominal size, such as NPS 6 or DN150. Grey iron is rated by it.",
  ),
  gasket: oneOf(Object.keys(GASKETS) as readonly GasketName[], {
    label: "Gasket",
    help: "Decides the least bolt load; no torque is given without it. Grey iron takes soft rubber, full face.",
  }),
  boltGrade: oneOf(Object.keys(BOLT_GRADES) as readonly BoltGradeName[], {
    label: "Bolting material",
    whenBlank: "A193 B7",
    help: "Decides how hard the bolts may be pulled.",
  }),
  nutFactor: amount({
    label: "Nut factor K",
    quantity: "ratio",
    bounds: boltTorqueMethod.inputs.nutFactor,
    whenBlank: 0.2,
    help: "0.16 to 0.20 lubricated, 0.20 to 0.25 as received; common practice.",
  }),
};
