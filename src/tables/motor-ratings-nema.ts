/**
 * Preferred ratings of three-phase motors in horsepower, with the frame of a four-pole motor. NEMA MG 1, Table 10-4
 * (600 hp and above belong to MG 1 Part 20, large machines); frames MG 1 Part 13, totally enclosed fan-cooled, design
 * B, 1800 r/min. From 200 hp the frame is the maker's choice.
 *
 * Verified: horsepower list looked up; frames from memory: confirm with the maker's drawing. There is nothing between
 * rows: a motor is bought in a listed rating.
 */
export type NemaRatingRow = readonly [horsepower: number, frame: string | null];

export const MOTOR_RATINGS_NEMA: readonly NemaRatingRow[] = [
  [0.5, null],
  [0.75, null],
  [1, "143T"],
  [1.5, "145T"],
  [2, "145T"],
  [3, "182T"],
  [5, "184T"],
  [7.5, "213T"],
  [10, "215T"],
  [15, "254T"],
  [20, "256T"],
  [25, "284T"],
  [30, "286T"],
  [40, "324T"],
  [50, "326T"],
  [60, "364T"],
  [75, "365T"],
  [100, "405T"],
  [125, "444T"],
  [150, "445T"],
  [200, null],
  [250, null],
  [300, null],
  [350, null],
  [400, null],
  [450, null],
  [500, null],
  [600, null],
  [700, null],
  [800, null],
  [900, null],
  [1000, null],
];

/** First rating, hp, that MG 1 treats as a large machine, built to order. */
export const FIRST_LARGE_MACHINE = 600;
