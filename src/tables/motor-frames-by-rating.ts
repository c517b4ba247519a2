/**
 * Motor frames by rating and poles, in printed order: rating, then the frame with 2, 4, 6 and 8 poles; null where the
 * standard assigns none and no usual one is known. Between rows there is nothing: a motor is bought in a listed rating.
 *
 * NEMA MG 1 Part 13, squirrel-cage motors of design A and B, 60 Hz (1964 T series), horsepower; TS is a short shaft for
 * coupling alone, never for belts. IEC: EN 50347 and IEC 60072-1, enclosed fan-cooled motors at 50 Hz, kilowatts.
 *
 * Verified: NEMA not yet verified against the standard, but for three cells seen in public lists (enclosed 5 hp and
 * 7.5 hp with 4 poles, 15 hp with 6); no column falls as the rating rises. IEC against a maker's price list of 2000:
 * 64 of the 95 frames compared agree, 21 agree in height but not in the letter, and 10 are packed one size smaller
 * there, below; the other 13 not yet verified. The maker's drawing decides.
 */
export type FrameRow = readonly [
  rating: number,
  twoPoles: string | null,
  fourPoles: string | null,
  sixPoles: string | null,
  eightPoles: string | null,
];

/** Open drip-proof, hp. */
export const NEMA_OPEN_FRAMES: readonly FrameRow[] = [
  [0.5, null, null, null, "143T"],
  [0.75, null, null, "143T", "145T"],
  [1, null, "143T", "145T", "182T"],
  [1.5, "143T", "145T", "182T", "184T"],
  [2, "145T", "145T", "184T", "213T"],
  [3, "145T", "182T", "213T", "215T"],
  [5, "182T", "184T", "215T", "254T"],
  [7.5, "184T", "213T", "254T", "256T"],
  [10, "213T", "215T", "256T", "284T"],
  [15, "215T", "254T", "284T", "286T"],
  [20, "254T", "256T", "286T", "324T"],
  [25, "256T", "284T", "324T", "326T"],
  [30, "284TS", "286T", "326T", "364T"],
  [40, "286TS", "324T", "364T", "365T"],
  [50, "324TS", "326T", "365T", "404T"],
  [60, "326TS", "364T", "404T", "405T"],
  [75, "364TS", "365T", "405T", "444T"],
  [100, "365TS", "404T", "444T", "445T"],
  [125, "404TS", "405T", "445T", null],
  [150, "405TS", "444T", "445T", "447T"],
  [200, "444TS", "445T", "447T", "449T"],
  [250, "445TS", "445T", "449T", null],
  [300, "447TS", "447T", null, null],
  [350, "449TS", "449T", null, null],
  [400, null, null, null, null],
  [450, null, null, null, null],
  [500, null, null, null, null],
];

/** Totally enclosed, fan-cooled, hp. */
export const NEMA_ENCLOSED_FRAMES: readonly FrameRow[] = [
  [0.5, null, null, null, "143T"],
  [0.75, null, null, "143T", "145T"],
  [1, null, "143T", "145T", "182T"],
  [1.5, "143T", "145T", "182T", "184T"],
  [2, "145T", "145T", "184T", "213T"],
  [3, "182T", "182T", "213T", "215T"],
  [5, "184T", "184T", "215T", "254T"],
  [7.5, "213T", "213T", "254T", "256T"],
  [10, "215T", "215T", "256T", "284T"],
  [15, "254T", "254T", "284T", "286T"],
  [20, "256T", "256T", "286T", "324T"],
  [25, "284TS", "284T", "324T", "326T"],
  [30, "286TS", "286T", "326T", "364T"],
  [40, "324TS", "324T", "364T", "365T"],
  [50, "326TS", "326T", "365T", "404T"],
  [60, "364TS", "364T", "404T", "405T"],
  [75, "365TS", "365T", "405T", "444T"],
  [100, "405TS", "405T", "444T", "445T"],
  [125, "444TS", "444T", "445T", "447T"],
  [150, "445TS", "445T", "447T", "447T"],
  [200, "447TS", "447T", "449T", "449T"],
  [250, "449TS", "449T", "449T", null],
  [300, "449TS", "449T", null, null],
  [350, null, null, null, null],
  [400, null, null, null, null],
  [450, null, null, null, null],
  [500, null, null, null, null],
];

/** Totally enclosed, fan-cooled, kW. */
export const IEC_ENCLOSED_FRAMES: readonly FrameRow[] = [
  [0.37, "71", "71", "80", "90S"],
  [0.55, "71", "80", "80", "90L"],
  [0.75, "80", "80", "90S", "100L"],
  [1.1, "80", "90S", "90L", "100L"],
  [1.5, "90S", "90L", "100L", "112M"],
  [2.2, "90L", "100L", "112M", "132S"],
  [3, "100L", "100L", "132S", "132M"],
  [4, "112M", "112M", "132M", "160M"],
  [5.5, "132S", "132S", "132M", "160M"],
  [7.5, "132S", "132M", "160M", "160L"],
  [11, "160M", "160M", "160L", "180L"],
  [15, "160M", "160L", "180L", "200L"],
  [18.5, "160L", "180M", "200L", "225S"],
  [22, "180M", "180L", "200L", "225M"],
  [30, "200L", "200L", "225M", "250M"],
  [37, "200L", "225S", "250M", "280S"],
  [45, "225M", "225M", "280S", "280M"],
  [55, "250M", "250M", "280M", "315S"],
  [75, "280S", "280S", "315S", "315M"],
  [90, "280M", "280M", "315M", "315L"],
  [110, "315S", "315S", "315L", "315L"],
  [132, "315M", "315M", "315L", "355M"],
  [160, "315L", "315L", "315L", "355M"],
  [200, "315L", "315L", "355M", "355L"],
  [250, "355M", "355M", "355L", "355L"],
  [315, "355L", "355L", "355L", "400"],
  [355, "355L", "355L", "400", "400"],
];

/** The greatest rating that the standard assigns a frame, with 2, 4, 6 and 8 poles; above it the usual one of makers. */
export const LAST_ASSIGNED = {
  "NEMA open": [250, 200, 125, 100],
  "NEMA enclosed": [150, 150, 125, 100],
  "IEC enclosed": [132, 132, 90, 75],
} as const;

/** Least rating, hp, whose four-pole T frame has a TS shaft beside it for direct coupling. */
export const FIRST_COUPLING_FRAME = 60;

/** Where a maker's list of 2000 has one size smaller: kW, poles and its frame. */
export const IEC_PACKED_SMALLER: readonly (readonly [kilowatts: number, poles: number, frame: string])[] = [
  [37, 8, "250M"],
  [45, 6, "250M"],
  [55, 8, "280M"],
  [75, 2, "250M"],
  [75, 4, "250M"],
  [75, 6, "280M"],
  [110, 2, "280M"],
  [110, 4, "280M"],
  [132, 8, "315LX"],
  [200, 6, "315LX"],
];
