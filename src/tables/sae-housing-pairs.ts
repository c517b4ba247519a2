/**
 * Which flywheels go with which housing, and the engines seen with them: housing number, flywheel sizes, engine power
 * from and to (kW), greatest continuous torque (N·m). Largest first. Null where trade lists give no end.
 *
 * Common practice, no source; engine makers differ. A first check only: the maker's torque for the coupling decides.
 * A housing and flywheel not paired here are not impossible (adapters exist).
 */
export type SaeHousingPairRow = readonly [
  number: string,
  flywheels: readonly number[],
  powerFrom: number,
  powerTo: number,
  torqueTo: number | null,
];

export const SAE_HOUSING_PAIRS: readonly SaeHousingPairRow[] = [
  ["00", [18, 21, 24], 700, 2200, null],
  ["0", [14, 16, 18], 350, 900, 6000],
  ["1/2", [14], 220, 450, 3000],
  ["1", [11.5, 14], 150, 450, 2600],
  ["2", [10, 11.5], 90, 250, 1300],
  ["3", [10, 11.5], 45, 170, 900],
  ["4", [7.5, 8, 10], 25, 90, 450],
  ["5", [6.5, 7.5, 8], 15, 45, 220],
  ["6", [6.5, 7.5], 0, 30, 120],
];
