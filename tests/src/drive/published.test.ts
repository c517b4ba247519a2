import { describe, expect, it } from "vitest";
import { findingText } from "../../../shared/text/finding-text.ts";
import { CELSIUS_ZERO } from "../../../src/basis/constants.ts";
import type { Result } from "../../../src/basis/result.ts";
import { unitOf } from "../../../src/basis/units.ts";
import { quickRulePower } from "../../../src/drive/engine-quick-rules.ts";
import { adjustedEnginePower } from "../../../src/drive/engine-site-power.ts";
import { flywheel, flywheelHousing, housingMatch } from "../../../src/drive/flywheel-housing.ts";
import { fuelRate } from "../../../src/drive/fuel-rate.ts";
import { tankTime } from "../../../src/drive/fuel-tank.ts";
import { fullLoadCurrent, necFullLoadCurrent } from "../../../src/drive/motor-current.ts";
import { iecEfficiency, nemaPremiumEfficiency } from "../../../src/drive/motor-efficiency.ts";
import { motorRating } from "../../../src/drive/motor-rating.ts";
import { slip, synchronousSpeed } from "../../../src/drive/motor-speed.ts";
import { shaftTorque } from "../../../src/drive/shaft-torque.ts";
import { shaftPower } from "../../../src/pump/shaft-power.ts";
import { publishedTable } from "../../support/published-table.ts";

const HP = unitOf("hp").factor;
const KW = unitOf("kW").factor;
const MM = unitOf("mm").factor;
const FT = unitOf("ft").factor;
const GPM = unitOf("US gpm").factor;
const RPM = unitOf("rpm").factor;
const LITRE = unitOf("L").factor;

function value<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.findings));
  return result.value;
}

/** Answers a case from its inputs, read as a number or a text by key. */
type Case = (n: (key: string) => number, text: (key: string) => string) => Readonly<Record<string, unknown>>;

/** What each case is held against, by its number; answers in the units its expected keys name. */
const CASES: Readonly<Record<string, Case>> = {
  "O-A01": (_, text) => {
    const { pilot, boltCircle, holes } = value(flywheelHousing(text("housing")));
    return { pilot_mm: pilot / MM, bolt_circle_mm: boltCircle / MM, holes };
  },
  "O-A02": (_, text) => {
    const { pilot, boltCircle, holes, recess } = value(flywheel(text("size")));
    return { pilot_mm: pilot / MM, bolt_circle_mm: boltCircle / MM, holes, recess_mm: recess / MM };
  },
  "O-A03": (n) => ({ Nm: value(shaftTorque({ shaftPower: n("kW") * KW, speed: n("rpm") * RPM })) }),
  "O-A04": (_, text) => {
    const match = housingMatch(
      value(flywheelHousing(text("engine_housing"))),
      value(flywheelHousing(text("pump_adapter"))),
    );
    const message = match.ok || match.findings[0] === undefined ? "" : findingText(match.findings[0], "SI");
    return { error: message };
  },
  "O-S01": (n) => ({
    bhp:
      value(
        shaftPower({ flow: n("gpm") * GPM, head: n("head_ft") * FT, specificGravity: n("sg"), efficiency: n("eff") }),
      ) / HP,
  }),
  // Non-overloading: rated for the greatest power anywhere on the curve.
  "O-S02": (n) => {
    const shaftPower = n("power_end_of_curve_hp") * HP;
    return { motor_hp: value(motorRating({ shaftPower, serviceFactor: 1, series: "NEMA" })).power / HP };
  },
  "O-S03": (n) => ({ eff_pct: value(iecEfficiency(n("kW") * KW, "IE3", 4)) * 100 }),
  "O-S04": (n) => ({ eff_pct: value(iecEfficiency(n("kW") * KW, "IE3", 2)) * 100 }),
  "O-S05": (n) => ({ eff_pct: value(nemaPremiumEfficiency(n("hp") * HP, 4, "enclosed")) * 100 }),
  "O-S06": (n) => ({ A: value(necFullLoadCurrent(n("hp") * HP, n("volts"))) }),
  "O-S07": (n) => ({
    A: value(
      fullLoadCurrent({
        shaftPower: n("shaft_kW") * KW,
        voltage: n("volts"),
        efficiency: n("eff"),
        powerFactor: n("pf"),
      }),
    ),
  }),
  "O-S08": (n) => ({
    sync_rpm: synchronousSpeed(60, 4) / RPM,
    slip_pct: value(slip(n("rpm") * RPM, 60, 4)) * 100,
  }),
  "O-S09": (n) => ({
    hp:
      value(
        quickRulePower("naturally aspirated, by altitude", {
          ratedPower: n("rated_hp") * HP,
          altitude: n("altitude_ft") * FT,
          airTemperature: 25 + CELSIUS_ZERO,
        }),
      ).power / HP,
  }),
  "O-S10": (n) => ({
    L_h:
      value(
        fuelRate({
          shaftPower: n("kW") * KW,
          specificConsumption: n("bsfc_g_kWh") * unitOf("g/kWh").factor,
          fuelDensity: n("density_kg_L") * 1000,
        }),
      ) / unitOf("L/h").factor,
  }),
  "O-S11": (n) => ({
    h:
      value(
        tankTime({
          tankVolume: n("tank_L") * LITRE,
          usableShare: n("usable_pct") / 100,
          fuelRate: n("L_h") * unitOf("L/h").factor,
        }),
      ) / 3600,
  }),
  "O-S12": (n) => {
    const { k, alpha } = value(
      adjustedEnginePower({
        ratedPower: 100 * KW,
        altitude: n("altitude_m"),
        airTemperature: n("ambient_C") + CELSIUS_ZERO,
        chargeCoolant: n("charge_coolant_C") + CELSIUS_ZERO,
        mechanicalEfficiency: n("eta_m"),
        limit: "turbocharged, charge-air cooling",
      }),
    );
    return { k, alpha };
  },
};

// Source: column source of tests/published/mechanical-drive.csv, case by case.
describe("published and hand-worked cases", () => {
  const rows = publishedTable("mechanical-drive");

  it("has a check for every case", () => {
    expect(rows.map((row) => row["case_id"])).toEqual(Object.keys(CASES));
  });

  it.each(rows.map((row) => [row["case_id"] as string, row["topic"] as string, row] as const))(
    "%s %s",
    (id, _, row) => {
      const inputs: Readonly<Record<string, unknown>> = JSON.parse(row["inputs"] as string);
      const expected: Readonly<Record<string, unknown>> = JSON.parse(row["expected"] as string);
      const tolerance = row["tolerance"] as string;
      const found =
        CASES[id]?.(
          (key) => Number(inputs[key]),
          (key) => String(inputs[key]),
        ) ?? {};
      for (const [key, wanted] of Object.entries(expected)) {
        if (typeof wanted === "string") {
          // The bolt circles that differ.
          for (const figure of wanted.match(/\d+\.\d+/g) ?? []) expect(found[key]).toContain(figure);
          expect(found[key]).toContain("bolt circles");
          continue;
        }
        const amount = Number.parseFloat(tolerance);
        const most =
          tolerance === "exact" ? 1e-9 : tolerance.includes("percent") ? (amount / 100) * Number(wanted) : amount;
        expect(most).toBeGreaterThan(0);
        expect(Math.abs(Number(found[key]) - Number(wanted)), `${id} ${key}: ${found[key]}`).toBeLessThanOrEqual(most);
      }
    },
  );
});
