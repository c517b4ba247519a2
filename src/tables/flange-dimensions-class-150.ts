import { FLANGE_HEADING } from "./flange-dimension-heading.ts";
import { namedRows } from "./named-rows.ts";

/**
 * Class 150 flanges, NPS 1/2 to 24. ASME B16.5 (2017): outside diameter and bolt circle (inches, then the standard's
 * millimetres), bolting, raised face, least thickness of steel without the 0.06 in raised face, lengths for two equal
 * flanges with 0.06 in raised faces. ASME B16.42 (2016): the same but for the least thickness, which takes in the raised
 * face, from NPS 1. Flat ring gasket: ASME B16.21 (2016).
 *
 * Verified: outside diameter, bolt circle, bolts and raised face read in a data book's flange tables and, but for the
 * raised face, in its table of Class 125 flanges, which have the same drilling; a misprinted thickness at NPS 10 and repeated stud lengths there were put right. Steel thickness, holes and both lengths of
 * all sizes read in the open data book of the American pump institute (2025); ductile thickness equals that of ASME B16.1
 * Class 125 there in every size. Gaskets from memory: they fit inside the bolts. The stud length of the standard's own rule comes
 * out for every size. Metric outside diameters are rounded to 5 mm by the standard and differ by up to 3 mm.
 */
export const FLANGES_CLASS_150 = namedRows(FLANGE_HEADING, [
  ["1/2", 15, 3.5, 90, 2.38, 60.3, 4, "1/2", 0.62, 1.38, 0.38, 9.6, null, 2.25, 2, 0.84, 1.88],
  ["3/4", 20, 3.88, 100, 2.75, 69.9, 4, "1/2", 0.62, 1.69, 0.44, 11.2, null, 2.5, 2, 1.05, 2.25],
  ["1", 25, 4.25, 110, 3.12, 79.4, 4, "1/2", 0.62, 2, 0.5, 12.7, 0.44, 2.5, 2.25, 1.31, 2.62],
  ["1-1/4", 32, 4.62, 115, 3.5, 88.9, 4, "1/2", 0.62, 2.5, 0.56, 14.3, 0.5, 2.75, 2.25, 1.66, 3],
  ["1-1/2", 40, 5, 125, 3.88, 98.4, 4, "1/2", 0.62, 2.88, 0.62, 15.9, 0.56, 2.75, 2.5, 1.9, 3.38],
  ["2", 50, 6, 150, 4.75, 120.7, 4, "5/8", 0.75, 3.62, 0.69, 17.5, 0.62, 3.25, 2.75, 2.38, 4.12],
  ["2-1/2", 65, 7, 180, 5.5, 139.7, 4, "5/8", 0.75, 4.12, 0.81, 20.7, 0.69, 3.5, 3, 2.88, 4.88],
  ["3", 80, 7.5, 190, 6, 152.4, 4, "5/8", 0.75, 5, 0.88, 22.3, 0.75, 3.5, 3, 3.5, 5.38],
  ["3-1/2", 90, 8.5, 215, 7, 177.8, 8, "5/8", 0.75, 5.5, 0.88, 22.3, 0.81, 3.5, 3, 4, 6.38],
  ["4", 100, 9, 230, 7.5, 190.5, 8, "5/8", 0.75, 6.19, 0.88, 22.3, 0.94, 3.5, 3, 4.5, 6.88],
  ["5", 125, 10, 255, 8.5, 215.9, 8, "3/4", 0.88, 7.31, 0.88, 22.3, 0.94, 3.75, 3.25, 5.56, 7.75],
  ["6", 150, 11, 280, 9.5, 241.3, 8, "3/4", 0.88, 8.5, 0.94, 23.9, 1, 4, 3.25, 6.62, 8.75],
  ["8", 200, 13.5, 345, 11.75, 298.5, 8, "3/4", 0.88, 10.62, 1.06, 27, 1.12, 4.25, 3.5, 8.62, 11],
  ["10", 250, 16, 405, 14.25, 362, 12, "7/8", 1, 12.75, 1.12, 28.6, 1.19, 4.5, 4, 10.75, 13.38],
  ["12", 300, 19, 485, 17, 431.8, 12, "7/8", 1, 15, 1.19, 30.2, 1.25, 4.75, 4, 12.75, 16.13],
  ["14", 350, 21, 535, 18.75, 476.3, 12, "1", 1.12, 16.25, 1.31, 33.4, 1.38, 5.25, 4.5, 14, 17.75],
  ["16", 400, 23.5, 595, 21.25, 539.8, 16, "1", 1.12, 18.5, 1.38, 35, 1.44, 5.25, 4.5, 16, 20.25],
  ["18", 450, 25, 635, 22.75, 577.9, 16, "1-1/8", 1.25, 21, 1.5, 38.1, 1.56, 5.75, 5, 18, 21.62],
  ["20", 500, 27.5, 700, 25, 635, 20, "1-1/8", 1.25, 23, 1.62, 41.3, 1.69, 6.25, 5.5, 20, 23.88],
  ["24", 600, 32, 815, 29.5, 749.3, 20, "1-1/4", 1.38, 27.25, 1.81, 46.1, 1.88, 6.75, 6, 24, 28.25],
]);
