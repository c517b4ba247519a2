/**
 * What the warmth of its wall leaves of the rating of plastic pipe and hose. Each row: temperature, factor. Below the first
 * row there is no credit for cold, above the last no rating.
 *
 * PE_BANDS, °F, a step to the row above: AWWA M55 (2006), table 4-6, to 100 °F, looked up; above, the industry's listing from
 * memory, where M55 refers to the maker. PE_ISO, °C, straight lines: EN 12201-1, annex A, from memory; the table prints 0.93 and
 * 0.80 at 25 and 35 °C, rounded down. PVC, °F, straight lines: for PVC 1120, looked up, three makers agree to 0.02. PVC_U, °C,
 * steps: EN ISO 1452-2, annex A, from memory. LAY_FLAT, °C, a straight line: EN ISO 8029, 10 bar at 23 °C and 5.1 at 55 °C,
 * looked up; taken for hose of PVC helix too (house choice). RUBBER, °C: common practice, no source; ISO 4641 ends at 70 °C.
 */
export const PLASTIC_PIPE_TEMPERATURE = {
  PE_BANDS: [
    [80, 1],
    [90, 0.9],
    [100, 0.8],
    [110, 0.75],
    [120, 0.7],
    [130, 0.65],
    [140, 0.6],
  ],
  PE_ISO: [
    [20, 1],
    [30, 0.87],
    [40, 0.74],
  ],
  PVC: [
    [73, 1],
    [80, 0.88],
    [90, 0.75],
    [100, 0.62],
    [110, 0.51],
    [120, 0.4],
    [130, 0.31],
    [140, 0.22],
  ],
  PVC_U: [
    [25, 1],
    [35, 0.8],
    [45, 0.63],
  ],
  LAY_FLAT: [
    [23, 1],
    [55, 0.51],
  ],
  RUBBER: [
    [40, 1],
    [70, 0.75],
  ],
} as const satisfies Record<string, readonly (readonly [temperature: number, factor: number])[]>;
