import { cell, tableCell } from "../calc-sheet/expression.ts";
import { asStated, isStation } from "../calc-sheet/sections/duty-cases.ts";
import { STOPS, stopLabels } from "../calc-sheet/sections/pump-stops.ts";
import { STATION, STATION_NPSH, stationNames, stationRow } from "../calc-sheet/sections/station-states.ts";
import type { Duty } from "../duty/duty.ts";
import type { Worked } from "./head-and-suction.ts";
import { workedDuty } from "./worked-duty.ts";

/** What one pump of a station does on the duty as stated. */
export interface PumpShown {
  readonly name: string;
  /** m³/s */
  readonly flow: Worked;
  /** m */
  readonly head: Worked;
  /** Flow over best efficiency flow. */
  readonly bestFlowRatio: Worked | undefined;
  /** NPSH available less required, m. */
  readonly npshMargin: Worked | undefined;
  readonly does: string;
}

/** What the rest does when pumps stop. */
export interface StopShown {
  readonly stopped: string;
  readonly does: string;
  readonly flow: Worked | undefined;
}

export interface StationShown {
  /** Empty where one kind of pump runs. */
  readonly pumps: readonly PumpShown[];
  readonly stops: readonly StopShown[];
}

/** The station for the pane: its pumps one by one, and what happens when one stops. */
export function stationShown(duty: Duty): StationShown {
  const { worked, figure, figureWhereGiven } = workedDuty(duty);
  const text = (key: string): string => {
    const found = worked.cells.get(key);
    return typeof found === "string" ? found : "–";
  };
  const stated = asStated(duty);
  const pumps = isStation(stated, duty) ? stationNames(duty) : [];
  return {
    pumps: pumps.map((name, i) => {
      const row = stationRow(duty, stated, i);
      const percent = figureWhereGiven(cell(STATION, row, "bestFlowPercent"));
      return {
        name,
        flow: figure(cell(STATION, row, "flow")),
        head: figure(cell(STATION, row, "head")),
        bestFlowRatio: percent,
        npshMargin: figureWhereGiven(cell(STATION_NPSH, row, "npshMargin")),
        does: text(tableCell(STATION.key, row, "does")),
      };
    }),
    stops: stopLabels(duty).map((stopped, row) => ({
      stopped,
      does: text(tableCell(STOPS.key, row, "verdict")),
      flow: figureWhereGiven(cell(STOPS, row, "flow")),
    })),
  };
}
