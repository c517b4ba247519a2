/**
 * Rated outputs of three-phase motors in kilowatts, with the frame of a four-pole 50 Hz motor. IEC 60072-1, rated-output
 * series; `secondary` marks values of the secondary series, which not every maker stocks. Frames: usual assignment
 * following EN 50347.
 *
 * Verified: list to 400 kW looked up; frames partly looked up to 4 kW, the rest common practice from memory: confirm
 * with the maker's drawing. 3.7 kW is not here: it is the 60 Hz counterpart of 5 hp. Nothing lies between rows.
 */
export type IecRatingRow = readonly [kilowatts: number, frame: string | null, series: "primary" | "secondary"];

export const MOTOR_RATINGS_IEC: readonly IecRatingRow[] = [
  [0.37, "71", "primary"],
  [0.55, "80M", "primary"],
  [0.75, "80M", "primary"],
  [1.1, "90S", "primary"],
  [1.5, "90L", "primary"],
  [2.2, "100L", "primary"],
  [3, "100L", "primary"],
  [4, "112M", "primary"],
  [5.5, "132S", "primary"],
  [7.5, "132M", "primary"],
  [11, "160M", "primary"],
  [15, "160L", "primary"],
  [18.5, "180M", "primary"],
  [22, "180L", "primary"],
  [30, "200L", "primary"],
  [37, "225S", "primary"],
  [45, "225M", "primary"],
  [55, "250M", "primary"],
  [75, "280S", "primary"],
  [90, "280M", "primary"],
  [110, "315S", "primary"],
  [132, "315M", "primary"],
  [150, null, "secondary"],
  [160, "315 (M/L)", "primary"],
  [185, null, "secondary"],
  [200, "315 (L)", "primary"],
  [220, null, "secondary"],
  [250, null, "primary"],
  [280, null, "secondary"],
  [300, null, "secondary"],
  [315, null, "primary"],
  [355, null, "primary"],
  [375, null, "secondary"],
  [400, null, "primary"],
  [450, null, "primary"],
  [500, null, "primary"],
  [560, null, "primary"],
  [630, null, "primary"],
  [710, null, "primary"],
  [800, null, "primary"],
  [900, null, "primary"],
  [1000, null, "primary"],
];
