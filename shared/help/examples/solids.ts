import type { Uses } from "./example.ts";

export const SLURRY_USES: Uses = {
  SLURRYSG: {
    examples: [{ asks: "Sand of SG 2.65 at 20 % by weight in water", args: [2.65, "20 %"] }],
    see: ["SOLIDSBYVOLUME", "SLURRYMIXTURE"],
  },
  SOLIDSBYVOLUME: {
    examples: [{ asks: "20 % of sand by weight, as a share of the volume", args: [2.65, "20 %"] }],
    see: ["SLURRYSG", "SLURRYMIXTURE", "DEPOSITIONVELOCITY"],
  },
  DEPOSITIONVELOCITY: {
    examples: [
      { asks: "0.4 mm sand, 9 % by volume, in 8 in schedule 40", args: ["8in sch40", "0.4 mm", 2.65, "9 %"] },
      {
        asks: "0.2 mm tailings, 15 % by volume, in DN200 schedule 40",
        args: ["DN200 sch40", 0.2, 2.8, "15 %", null, null, "SI"],
      },
    ],
    see: ["SLURRYLINE", "VELOCITY", "SETTLINGVELOCITY"],
  },
  SLURRYDERATE: {
    examples: [{ asks: "A 14 in impeller on 0.4 mm sand, 9 % by volume", args: [14, "0.4 mm", 2.65, "9 %"] }],
    see: ["SLURRYDUTY", "SLURRYMIXTURE"],
  },
  SLURRYMIXTURE: {
    examples: [{ asks: "Sand of SG 2.65, 20 % by weight, 700 US gpm", args: [2.65, "20 %", null, null, 700] }],
    see: ["SLURRYSG", "SOLIDSBYVOLUME", "ASPUMPED"],
  },
  ASPUMPED: {
    examples: [
      {
        asks: "Water with 20 % of 0.4 mm sand, on a 14 in impeller",
        args: ["water with solids 20 %, SG 2.65, d50 0.4 mm", 60, 14],
      },
    ],
    see: ["SLURRYMIXTURE", "SLURRYDERATE", "SLURRYDUTY"],
  },
  SLURRYLINE: {
    examples: [
      {
        asks: "700 US gpm with 9 % of 0.4 mm sand by volume in 6 in schedule 40",
        args: [700, "6in sch40", "0.4 mm", 2.65, "9 %"],
      },
    ],
    see: ["DEPOSITIONVELOCITY", "FRICTIONHEAD", "SLURRYDUTY"],
  },
  SLURRYDUTY: {
    examples: [
      {
        asks: "700 US gpm at 105 ft of slurry, 0.4 mm sand, 9 % by volume, 14 in impeller, 72 % on water",
        args: [700, 105, "0.4 mm", 2.65, "9 %", null, 14, "72 %"],
      },
    ],
    see: ["SLURRYDERATE", "SLURRYLINE", "SLURRYCLASS"],
  },
  SLURRYCLASS: {
    examples: [{ asks: "105 ft a stage, 14 in impeller, 1,180 rpm", args: [105, 14, 1180] }],
    see: ["SLURRYDUTY", "WETTEDPARTS"],
  },
  SETTLINGVELOCITY: {
    examples: [{ asks: "How fast 0.4 mm sand falls in water", args: ["0.4 mm", 2.65] }],
    see: ["DEPOSITIONVELOCITY", "SLURRYLINE"],
  },
};

export const MATERIAL_USES: Uses = {
  CASTINGPROPERTY: {
    examples: [{ asks: "Yield strength of ductile iron A536 65-45-12", args: ["A536 65-45-12", "yield strength"] }],
    see: ["CASTINGS", "MATERIALCHECK"],
  },
  CASTINGS: {
    examples: [{ asks: "Every pump casting there is", args: [] }],
    see: ["CASTINGPROPERTY", "WETTEDPARTS"],
  },
  WETTEDPARTS: {
    examples: [
      {
        asks: "Silty pit water, pH 7.2, 80 mg/L of chlorides, a trace of fine sand",
        args: [7.2, 77, 80, "0.5 %", "sand", 0.2, 2.5, 0, "nothing else"],
      },
    ],
    see: ["MATERIALCHECK", "CASTINGS", "SLURRYCLASS"],
  },
  MATERIALCHECK: {
    examples: [
      {
        asks: "A ductile iron casing in acid mine water of pH 3",
        args: ["casing", "ductile iron", 3, 60, 350, 0, "soft", null, null, 0, "acid mine water"],
      },
    ],
    see: ["WETTEDPARTS", "CASTINGPROPERTY"],
  },
};
