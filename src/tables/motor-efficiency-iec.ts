/**
 * Coefficients of the least full-load efficiency of 50 Hz motors: η = A x³ + B x² + C x + D percent, x = log₁₀(P/kW),
 * rounded to 0.1 point. IEC 60034-30-1:2014; Regulation (EU) 2019/1781; UK SI 2021/745, Schedule 16, Tables 27 (0.12 to
 * 0.55 kW) and 28 (0.75 to 200 kW). From 200 kW to 1000 kW the figure at 200 kW holds.
 *
 * Verified: looked up in SI 2021/745. Table 28 gives the printed 4-pole table at each of 22 ratings × 3 classes, and the
 * 2-pole IE3 figures of a motor maker's data sheet, p. 17, at 13 of 13 ratings from 0.75 to 22 kW. Two figures that the source prints with a decimal comma
 * (−3,0554 and 86,8321) are read as decimals.
 */
export type EfficiencyCoefficients = readonly [A: number, B: number, C: number, D: number];

/** By class, then for 2, 4, 6 and 8 poles. */
type ByClass = Readonly<
  Record<
    "IE2" | "IE3" | "IE4",
    readonly [EfficiencyCoefficients, EfficiencyCoefficients, EfficiencyCoefficients, EfficiencyCoefficients]
  >
>;

/** 0.12 kW to 0.55 kW. */
export const EFFICIENCY_COEFFICIENTS_SMALL: ByClass = {
  IE2: [
    [22.4864, 27.7603, 37.8091, 82.458],
    [17.2751, 23.978, 35.5822, 84.9935],
    [-15.9218, -30.258, 16.6861, 79.1838],
    [6.4855, 9.4748, 36.852, 70.762],
  ],
  IE3: [
    [6.8532, 6.2006, 25.1317, 84.0392],
    [7.6356, 4.8236, 21.0903, 86.0998],
    [-17.361, -44.538, -3.0554, 79.1318],
    [-0.5896, -25.526, 4.2884, 75.831],
  ],
  IE4: [
    [-8.8538, -20.3352, 8.9002, 85.0641],
    [8.432, 2.6888, 14.6236, 87.6153],
    [-13.0355, -36.9497, -4.3621, 82.0009],
    [-4.9735, -21.453, 2.6653, 79.055],
  ],
};

/** 0.75 kW to 200 kW. */
export const EFFICIENCY_COEFFICIENTS: ByClass = {
  IE2: [
    [0.2972, -3.3454, 13.0651, 79.077],
    [0.0278, -1.9247, 10.4395, 80.9761],
    [0.0148, -2.4978, 13.247, 77.5603],
    [2.1311, -12.029, 26.719, 69.735],
  ],
  IE3: [
    [0.3569, -3.3076, 11.6108, 82.2503],
    [0.0773, -1.8951, 9.2984, 83.7025],
    [0.1252, -2.613, 11.9963, 80.4769],
    [0.7189, -5.1678, 15.705, 77.074],
  ],
  IE4: [
    [0.34, -3.0479, 10.293, 84.8208],
    [0.2412, -2.3608, 8.446, 86.8321],
    [0.3598, -3.2107, 10.7933, 84.107],
    [0.6556, -4.7229, 13.977, 80.247],
  ],
};
