/**
 * How hard the solids are that pumps meet: Mohs scale, and Vickers hardness (HV) as taken here.
 *
 * The ten minerals of the Mohs scale in order, then trade names with the mineral that decides. Verified: from memory of
 * mineral handbooks; Vickers figures scatter by a tenth to a fifth from grain to grain, quartz 1000 to 1280. Between
 * whole Mohs figures HV is read on a straight line of its logarithm.
 */
export const MOHS_VICKERS: readonly (readonly [mohs: number, mineral: string, vickers: number])[] = [
  [1, "talc", 47],
  [2, "gypsum", 60],
  [3, "calcite", 140],
  [4, "fluorite", 190],
  [5, "apatite", 540],
  [6, "feldspar", 795],
  [7, "quartz", 1100],
  [8, "topaz", 1430],
  [9, "corundum", 2060],
  [10, "diamond", 10_000],
];

/** Other names of solids, with their Mohs figure (the hardest usual part of them). */
export const NAMED_PARTICLES: readonly (readonly [name: string, mohs: number])[] = [
  ["coal", 2.5],
  ["clay", 2],
  ["limestone", 3],
  ["dolomite", 3.8],
  ["chalk", 2.5],
  ["barite", 3.3],
  ["magnetite", 6],
  ["haematite", 6],
  ["fly ash", 6],
  ["ash", 6],
  ["slag", 6.5],
  ["glass", 5.5],
  ["pyrite", 6.3],
  ["silt", 7],
  ["sand", 7],
  ["silica", 7],
  ["gravel", 7],
  ["grit", 7],
  ["flint", 7],
  ["granite", 7],
  ["garnet", 7.5],
  ["alumina", 9],
];
