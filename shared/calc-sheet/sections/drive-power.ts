import { extreme, handles, ifNumber, product, ratio } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { figure, type PlanItem } from "../plan.ts";
import { POWER_CURVE } from "./drawn-curves.ts";
import { NOT_GIVEN } from "./duty-cases.ts";
import { POINT } from "./operating-point.ts";
import { PUMP } from "./pump.ts";

/** What every driver is held against. */
export const POWER = handles({ powerOfOne: "power", driverPower: "power", powerNeeded: "power" });

/** The power one pump takes, and what its driver must be rated for. */
export const POWERS: readonly PlanItem[] = [
  figure(
    POWER.powerOfOne,
    "Shaft power in operation",
    ifNumber(POINT.operatingPower, ratio(POINT.operatingPower, PUMP.pumpCount), NOT_GIVEN),
    "Of one pump, at the operating point of the duty as stated.",
  ),
  figure(
    POWER.driverPower,
    "Greatest shaft power of one pump",
    extreme("columnGreatest", POWER_CURVE, "power", NOT_GIVEN),
    "Anywhere on its curve as it runs, with the liquid pumped: the driver is then not overloaded.",
  ),
  figure(
    POWER.powerNeeded,
    "Power the driver must be rated for",
    product(POWER.driverPower, FIELD.serviceFactor),
    "Greatest shaft power times the service factor.",
  ),
];
