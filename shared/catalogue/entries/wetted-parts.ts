import { andThen, succeed } from "../../../src/basis/result.ts";
import { constituentsNamed, NOTHING_ELSE } from "../../../src/material/constituent.ts";
import { materialChoice } from "../../../src/material/material-choice.ts";
import type { MaterialOption } from "../../../src/material/metal-choice.ts";
import { RUBBER_LINING } from "../../../src/material/soft-parts.ts";
import { CONSTITUENTS, type Constituent, wettedDutyMethod } from "../../../src/material/wetted-duty.ts";
import { defineEntry } from "../entry.ts";
import { quantity, text } from "../parameter.ts";
import { dissolved, LIQUID_ON_METAL, NOT_STATED } from "../parameters/wetted-duty.ts";
import { MATERIAL_COLUMNS, materialRows, RULES_IN_WORDS } from "./materials.ts";

/** The kinds of wetted parts in the order they are listed. */
type Kind = "metal" | "lining" | "elastomer" | "seal faces" | "dry parts";

export const WETTEDPARTS = defineEntry({
  id: "WETTEDPARTS",
  group: "Materials",
  summary: "Materials of every wetted part by kind, ranked for the liquid, its particles, oxidisers and make-up",
  method: `${RULES_IN_WORDS} The rows are those of MATERIAL with their kind before them: metal, lining, elastomer, seal faces, dry parts. Particles larger than the free passage of the impeller are refused; hard ones, or of unknown hardness, above a third of it bring a caution. Rubber lines only below 6 mm, with care from 65 °C and not above 70 °C, without oil; particles above 75 mm break white iron. Oxidiser is the dose of free chlorine, chlorine dioxide or permanganate: above 5 mg/L it rules out 316. Make-up names what else is in the liquid, commas between: ${CONSTITUENTS.join(", ")}; or ${NOTHING_ELSE}. Hydrofluoric acid rules out every metal here; ammonia and hydrogen sulphide rule out bronze, hydrogen sulphide grey and white iron too.`,
  cites: [...wettedDutyMethod.cites, { source: "iso-15156", at: "hardness and material limits for sour service" }],
  parameters: {
    ...LIQUID_ON_METAL,
    particleSize: quantity("size", {
      about: "Size of the largest particles",
      range: "above 0, and no larger than the free passage",
      whenLeftOut: NOT_STATED,
    }),
    freePassage: quantity("size", {
      about: "Largest sphere the impeller passes, from the pump maker",
      range: "above 0",
      whenLeftOut: NOT_STATED,
    }),
    oxidiser: dissolved({
      about: "Free chlorine, chlorine dioxide or permanganate in the water",
      example: '2, or "2 mg/L"',
      range: "0 or more",
    }),
    makeUp: text<readonly Constituent[] | null>(
      {
        about: "What else is in the liquid, with commas between",
        example: `"caustic, ammonia" or "${NOTHING_ELSE}"`,
        choices: [NOTHING_ELSE, ...CONSTITUENTS],
        whenLeftOut: NOT_STATED,
      },
      constituentsNamed,
    ),
  },
  answer: { kind: "table", name: "wetted parts", columns: { kind: { name: "kind" }, ...MATERIAL_COLUMNS } },
  examples: [
    {
      args: [7, 25, 50, 3, "soft", 5, 50, "0 mg/L", NOTHING_ELSE, "SI"],
      part: [1, 2],
      answer: "ductile iron",
      source: "common practice, no source: pH 4 to 9 and soft solids under 5 % by weight",
    },
    {
      args: [7, 25, 50, 30, "hard sand", 5, 50, "0 mg/L", NOTHING_ELSE, "SI"],
      part: [1, 2],
      answer: "high-chrome white iron",
      source: "common practice, no source: solids above 20 % by weight",
    },
  ],
  run: ({ solidsByWeight: solids, hardness: particle, freePassage: passage, ...liquid }, { unitSet }) =>
    andThen(materialChoice({ ...liquid, solids, particle, passage }), ({ wetEnd, elastomers, sealFaces, dryParts }) => {
      const rows = (options: readonly MaterialOption[], kind: Kind) =>
        materialRows(options, unitSet).map((row) => ({
          kind: row.material === RUBBER_LINING ? "lining" : kind,
          ...row,
        }));
      return succeed([
        ...rows(wetEnd, "metal"),
        ...rows(elastomers, "elastomer"),
        ...rows(sealFaces, "seal faces"),
        ...rows([dryParts], "dry parts"),
      ]);
    }),
});
