import { FLANGE_HEADING } from "./flange-dimension-heading.ts";
import { namedRows } from "./named-rows.ts";

/**
 * Class 300 flanges, NPS 1/2 to 24. ASME B16.5 (2017): outside diameter and bolt circle (inches, then the standard's
 * millimetres), bolting, raised face, least thickness of steel without the 0.06 in raised face, lengths for two equal
 * flanges with 0.06 in raised faces. ASME B16.42 (2016): the same but for the least thickness, which takes in the raised
 * face, from NPS 1. Flat ring gasket: ASME B16.21 (2016).
 *
 * Verified: outside diameter, bolt circle, bolts and raised face read in a data book's flange tables and, but for the
 * raised face, in its table of Class 250 flanges, which have the same drilling; a misprinted bolting at NPS 2 and bolt circle at NPS 2-1/2 there were put right. Steel thickness, holes and both lengths of
 * all sizes read in the open data book of the American pump institute (2025); ductile thickness equals that of ASME B16.1
 * Class 250 there in every size. Gaskets from memory: they fit inside the bolts. The stud length of the standard's own rule comes
 * out for every size. Metric outside diameters are rounded to 5 mm by the standard and differ by up to 3 mm.
 */
export const FLANGES_CLASS_300 = namedRows(FLANGE_HEADING, [
  ["1/2", 15, 3.75, 95, 2.62, 66.7, 4, "1/2", 0.62, 1.38, 0.5, 12.7, null, 2.5, 2.25, 0.84, 2.12],
  ["3/4", 20, 4.62, 115, 3.25, 82.6, 4, "5/8", 0.75, 1.69, 0.56, 14.3, null, 3, 2.5, 1.05, 2.62],
  ["1", 25, 4.88, 125, 3.5, 88.9, 4, "5/8", 0.75, 2, 0.62, 15.9, 0.69, 3, 2.5, 1.31, 2.88],
  ["1-1/4", 32, 5.25, 135, 3.88, 98.4, 4, "5/8", 0.75, 2.5, 0.69, 17.5, 0.75, 3.25, 2.75, 1.66, 3.25],
  ["1-1/2", 40, 6.12, 155, 4.5, 114.3, 4, "3/4", 0.88, 2.88, 0.75, 19.1, 0.81, 3.5, 3, 1.9, 3.75],
  ["2", 50, 6.5, 165, 5, 127, 8, "5/8", 0.75, 3.62, 0.81, 20.7, 0.88, 3.5, 3, 2.38, 4.38],
  ["2-1/2", 65, 7.5, 190, 5.88, 149.2, 8, "3/4", 0.88, 4.12, 0.94, 23.9, 1, 4, 3.25, 2.88, 5.12],
  ["3", 80, 8.25, 210, 6.62, 168.3, 8, "3/4", 0.88, 5, 1.06, 27, 1.12, 4.25, 3.5, 3.5, 5.88],
  ["3-1/2", 90, 9, 230, 7.25, 184.2, 8, "3/4", 0.88, 5.5, 1.12, 28.6, 1.19, 4.25, 3.75, 4, 6.5],
  ["4", 100, 10, 255, 7.88, 200, 8, "3/4", 0.88, 6.19, 1.19, 30.2, 1.25, 4.5, 3.75, 4.5, 7.12],
  ["5", 125, 11, 280, 9.25, 235, 8, "3/4", 0.88, 7.31, 1.31, 33.4, 1.38, 4.75, 4.25, 5.56, 8.5],
  ["6", 150, 12.5, 320, 10.62, 269.9, 12, "3/4", 0.88, 8.5, 1.38, 35, 1.44, 4.75, 4.25, 6.62, 9.88],
  ["8", 200, 15, 380, 13, 330.2, 12, "7/8", 1, 10.62, 1.56, 39.7, 1.62, 5.5, 4.75, 8.62, 12.12],
  ["10", 250, 17.5, 445, 15.25, 387.4, 16, "1", 1.12, 12.75, 1.81, 46.1, 1.88, 6.25, 5.5, 10.75, 14.25],
  ["12", 300, 20.5, 520, 17.75, 450.8, 16, "1-1/8", 1.25, 15, 1.94, 49.3, 2, 6.75, 5.75, 12.75, 16.62],
  ["14", 350, 23, 585, 20.25, 514.4, 20, "1-1/8", 1.25, 16.25, 2.06, 52.4, 2.12, 7, 6.25, 14, 19.12],
  ["16", 400, 25.5, 650, 22.5, 571.5, 20, "1-1/4", 1.38, 18.5, 2.19, 55.6, 2.25, 7.5, 6.5, 16, 21.25],
  ["18", 450, 28, 710, 24.75, 628.6, 24, "1-1/4", 1.38, 21, 2.31, 58.8, 2.38, 7.75, 6.75, 18, 23.5],
  ["20", 500, 30.5, 775, 27, 685.8, 24, "1-1/4", 1.38, 23, 2.44, 62, 2.5, 8, 7.25, 20, 25.75],
  ["24", 600, 36, 915, 32, 812.8, 24, "1-1/2", 1.62, 27.25, 2.69, 68.3, 2.75, 9, 8, 24, 30.5],
]);
