/** Working pressures, Pa: at the careful and at the favourable end of what is not stated. */
export interface Bracket {
  readonly careful: number;
  readonly atBest: number;
  /** What was taken because it is not stated, in a few words; empty where nothing was. */
  readonly assumed: string;
}
