import { unitOf } from "../basis/units.ts";
import { CONCRETE_PIPE_C76 } from "../tables/concrete-pipe-c76.ts";
import { type PipeFamily, pipeFamily } from "./pipe-family.ts";

const inch = unitOf("in").factor;

/** Reinforced concrete pipe by its bore, wall B unless another is named; no pressure pipe. Source: ASTM C76. */
export function concreteFamilies(): readonly PipeFamily[] {
  return (["B", "A", "C"] as const).map((letter) =>
    pipeFamily({
      family: letter === "B" ? "concrete" : `concrete wall ${letter}`,
      words: letter === "B" ? ["concrete"] : ["concrete", `wall${letter.toLowerCase()}`],
      mayAlsoSay: letter === "B" ? ["wallb"] : [],
      standard: {
        source: "astm-c76",
        at: `designated diameter, wall ${letter}`,
        ...(letter === "B" ? {} : { unverified: true }),
      },
      surface: "concrete pipe",
      make: { material: "concrete" },
      sizes: CONCRETE_PIPE_C76.flatMap(([inches, millimetres, a, b, c]) => {
        const wall = { A: a, B: b, C: c }[letter];
        if (wall === null) return [];
        return [
          {
            size: `${inches}in`,
            dnSize: `DN${millimetres}`,
            nominalInches: inches,
            bore: inches * inch,
            outsideDiameter: (inches + 2 * wall) * inch,
            wall: wall * inch,
          },
        ];
      }),
    }),
  );
}
