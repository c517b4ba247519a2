/**
 * What a cell is called in the formulas of the sheet, where the words of its key say less than it holds: a loss is no
 * pipe, a margin is one on something. Every other name is the words of its key.
 */
const SAYS_MORE: Readonly<Record<string, string>> = {
  airPump: "priming air pump",
  airVolume: "air to draw",
  atmosphere: "atmospheric pressure",
  bestFlowPercent: "percent of best flow",
  checkFailure: "case of failed check valve",
  clearGravity: "clear liquid sg",
  columnVerdict: "column separation verdict",
  curveFlow: "system curve, maximum flow",
  dischargeFittings: "discharge fitting loss",
  dischargePipe: "discharge pipe friction",
  dischargeTorque: "discharge bolt torque",
  driverPower: "maximum shaft power of one pump",
  headAtBest: "maximum head without high idle",
  hydraulicFlow: "minimum flow by hydraulics",
  leastFlowGoverns: "minimum flow of all",
  liftRule: "lift governed by",
  makeUp: "other constituents",
  margin: "profit margin",
  marginHead: "head of margin",
  packageTest: "package test pressure",
  pH: "liquid ph",
  powerNeeded: "driver power needed",
  powerOfOne: "shaft power in operation",
  powerOverWater: "power ratio slurry over water",
  pumpedByVolume: "solids by volume as pumped",
  pumpedByWeight: "solids by weight as pumped",
  pumpedGravity: "slurry sg",
  pumpedSolidsGravity: "solids sg as pumped",
  ratedHead: "total head with margin",
  slurryOverClear: "head increase over clear liquid",
  solids: "solids by weight",
  solidsGravity: "solids sg",
  sourceGives: "suction pressure by source",
  suctionFittings: "suction fitting loss",
  suctionLoss: "suction line loss",
  suctionPipe: "suction pipe friction",
  suctionTorque: "suction bolt torque",
  surgeTotal: "discharge pressure with surge",
  testPressure: "flange test pressure",
  thermalFlow: "minimum flow by heating",
  toleranceTaken: "head tolerance counted",
  topOfCurve: "highest head running",
  waterHead: "equivalent water head",
  worstPressure: "worst run pressure share",
  years: "years in service",
};

/** "staticHead" as the name of a cell: "static_head". No one word of a letter, and none that reads as a cell: Q1, DN80. */
export function rangeName(key: string): string {
  const words = Object.hasOwn(SAYS_MORE, key) ? (SAYS_MORE[key] as string) : key.replace(WORD_STARTS, " ");
  const name = words.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, "_");
  return LIKE_A_CELL.test(name) ? `${name}_` : name;
}

/** Before a capital after a small letter, and before the last of several: "verdictOnNPSHMargin". */
const WORD_STARTS = /(?<=[\p{Ll}\p{N}])(?=\p{Lu})|(?<=\p{Lu})(?=\p{Lu}\p{Ll})/gu;

/** What Excel reads as a cell or a value, not as a name. */
const LIKE_A_CELL = /^([a-z]{1,3}[0-9]{1,7}|r[0-9]*(c[0-9]*)?|c[0-9]*|true|false)$/;
