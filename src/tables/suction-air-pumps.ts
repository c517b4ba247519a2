import type { Citation } from "../basis/citation.ts";

/**
 * Devices that draw the air out of a suction line, in the figures the trade uses.
 *
 * Columns: free air with an open inlet, ft³/min (null where it depends on the motive air); vacuum at which no more air
 * is moved, at sea level with dry air, inches of mercury: least and greatest usual.
 *
 * Verified: trade figures without a citable source; compare with the data of the unit bought. Between open inlet and
 * blank-off the capacity is read as a straight line over the vacuum.
 */
export interface SuctionAirPump {
  readonly name: string;
  readonly freeAir: number | null;
  readonly leastBlankOff: number;
  readonly greatestBlankOff: number;
  readonly cites: Citation;
}

export const DIAPHRAGM_AIR_PUMP: SuctionAirPump = {
  name: "belt-driven diaphragm air pump",
  freeAir: 50,
  leastBlankOff: 25,
  greatestBlankOff: 27,
  cites: { source: "practice", at: "belt-driven diaphragm air pump, about 50 ft³/min, blank-off 25 to 27 inHg" },
};

export const AIR_EDUCTOR: SuctionAirPump = {
  name: "compressed-air eductor, single stage",
  freeAir: null,
  leastBlankOff: 25,
  greatestBlankOff: 27,
  cites: {
    source: "practice",
    at: "single-stage air eductor: draws 0.2 to 0.5 of its motive air by mass at 10 to 20 inHg, none at 25 to 27 inHg",
  },
};
