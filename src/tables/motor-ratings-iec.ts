/**
 * Rated outputs of three-phase motors in kilowatts. IEC 60072-1, rated-output series; `secondary` marks values of the
 * secondary series, which few makers stock and which are not chosen.
 *
 * Verified: list to 400 kW looked up. 3.7 kW is not here: it is the 60 Hz counterpart of 5 hp. Nothing lies between
 * rows.
 */
export type IecRatingRow = readonly [kilowatts: number, series: "primary" | "secondary"];

export const MOTOR_RATINGS_IEC: readonly IecRatingRow[] = [
  [0.37, "primary"],
  [0.55, "primary"],
  [0.75, "primary"],
  [1.1, "primary"],
  [1.5, "primary"],
  [2.2, "primary"],
  [3, "primary"],
  [4, "primary"],
  [5.5, "primary"],
  [7.5, "primary"],
  [11, "primary"],
  [15, "primary"],
  [18.5, "primary"],
  [22, "primary"],
  [30, "primary"],
  [37, "primary"],
  [45, "primary"],
  [55, "primary"],
  [75, "primary"],
  [90, "primary"],
  [110, "primary"],
  [132, "primary"],
  [150, "secondary"],
  [160, "primary"],
  [185, "secondary"],
  [200, "primary"],
  [220, "secondary"],
  [250, "primary"],
  [280, "secondary"],
  [300, "secondary"],
  [315, "primary"],
  [355, "primary"],
  [375, "secondary"],
  [400, "primary"],
  [450, "primary"],
  [500, "primary"],
  [560, "primary"],
  [630, "primary"],
  [710, "primary"],
  [800, "primary"],
  [900, "primary"],
  [1000, "primary"],
];
