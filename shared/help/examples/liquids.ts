import type { Uses } from "./example.ts";

export const LIQUID_USES: Uses = {
  DENSITY: {
    examples: [
      { asks: "Water at 60 °F", args: ["water", 60] },
      { asks: "40 % ethylene glycol at 20 °F", args: ["ethylene glycol 40 %", 20] },
      { asks: "Mine water of a stated specific gravity", args: ["SG 1.05, 1.2 cP, pv 0.3 psi"] },
    ],
    see: ["VISCOSITY", "VAPORPRESSURE", "LIQUIDS"],
  },
  VISCOSITY: {
    examples: [
      { asks: "Sea water at 15 °C", args: ["sea water 35 g/kg", 15, "SI"] },
      { asks: "30 % propylene glycol at 40 °F", args: ["propylene glycol 30 %", 40] },
    ],
    see: ["DENSITY", "REYNOLDS", "VISCOUSCURVE"],
  },
  VAPORPRESSURE: {
    examples: [
      { asks: "Water at 60 °F", args: ["water", 60] },
      { asks: "Process water at 160 °F: what a hot suction costs", args: ["water", 160] },
    ],
    see: ["NPSHA", "ATMOSPHERE", "DENSITY"],
  },
  ATMOSPHERE: {
    examples: [
      { asks: "A mine at 6,500 ft", args: [6500] },
      { asks: "A quarry at 850 ft", args: [850] },
    ],
    see: ["NPSHA", "PRIMINGLIFT", "VAPORPRESSURE"],
  },
  INUNITS: {
    examples: [
      { asks: "45 L/s in US gallons a minute", args: ["45 L/s", "gpm"] },
      { asks: "7 bar in psi", args: ["7 bar", "psi"] },
    ],
    see: ["PRESSUREHEAD", "HEADPRESSURE"],
  },
  LIQUIDS: {
    examples: [{ asks: "Every liquid known by name", args: [] }],
    see: ["DENSITY", "VISCOSITY", "VAPORPRESSURE"],
  },
  NOTES: {
    examples: [
      {
        asks: "What 1,800 US gpm in a 6 in pipe is warned of",
        args: ["FRICTIONHEAD", 1800, "6in sch40", 300],
      },
      {
        asks: "What the choice of a flange class for 255 psi rests on",
        args: ["FLANGECLASS", "ductile iron", 255, 70],
      },
    ],
    see: ["FINDINGS", "VERDICTS"],
  },
};
