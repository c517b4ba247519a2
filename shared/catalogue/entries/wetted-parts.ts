import { andThen, type Finding, succeed } from "../../../src/basis/result.ts";
import { constituentsNamed, NOTHING_ELSE } from "../../../src/material/constituent.ts";
import { materialChoice } from "../../../src/material/material-choice.ts";
import type { MaterialOption } from "../../../src/material/metal-choice.ts";
import { PARTICLE_NAMES, type Particle, particleNamed } from "../../../src/material/particle.ts";
import { RUBBER_LINING } from "../../../src/material/soft-parts.ts";
import { CONSTITUENTS, type Constituent, wettedDutyMethod } from "../../../src/material/wetted-duty.ts";
import { findingText } from "../../text/finding-text.ts";
import { defineEntry } from "../entry.ts";
import { quantity, text } from "../parameter.ts";
import { share } from "../parameters/share.ts";
import { dissolved, NOT_STATED } from "../parameters/wetted-duty.ts";
import { zeroDoubted } from "../parameters/zero-doubted.ts";

/** The kinds of wetted parts in the order they are listed. */
type Kind = "metal" | "lining" | "elastomer" | "seal faces" | "dry parts";

export const WETTEDPARTS = defineEntry({
  id: "WETTEDPARTS",
  group: "Materials",
  summary: "Materials of every wetted part by kind, ranked for the liquid, its particles, oxidisers and make-up",
  method: `Rules of thumb of the trade, stated as such: pH 4 to 9 with soft solids under 5 % by weight is usually fine in ductile iron; hard solids from 5 %, or any above 20 %, ask for high-chrome white iron; brine and the ends of the pH scale for 316 or duplex. Screens: iron below pH 4 is not offered and below 6 with care, alkaline water to pH 11; white iron pH 5.5 to 12; cast 316 to 1000 mg/L of chloride at 25 °C and 300 mg/L at 50 °C, flowing and neutral, stress cracking above 60 °C; duplex of PREN about 32 to 38 in salt water cold and flowing only; aerated water above 60 °C with care, above 90 °C not judged. House choices: iron is brackish from 1000 and in salt water from 10 000 mg/L of chloride. Particles are hard where they are 1.2 times as hard as ductile iron, in Vickers. Where solids are few, fewer doubts and common use rank first; where they wear severely, hardness does, at the ends of the pH scale after 316 and duplex. Outside pH 6 to 9, or with a chemical named, no metal is judged without the temperature. What is not stated is not guessed: a verdict that hangs on it is “not judged” or “suits with care”, and NOTES lists what to ask. Ranks run within each kind: metals and lining, elastomers, seal faces; dry parts are left standard. Hardness of the particles: soft, hard, a name such as sand or coal, Mohs 7, HV 1100; a bare number is Mohs up to 10 and Vickers from 20. List every wetted part and have the choice confirmed. Kinds: metal, lining, elastomer, seal faces, dry parts. Particles larger than the free passage of the impeller are refused; hard ones, or of unknown hardness, above a third of it bring a caution. Rubber lines only below 6 mm, with care from 65 °C and not above 70 °C, without oil; particles above 75 mm break white iron. Oxidiser is the dose of free chlorine, chlorine dioxide or permanganate: above 5 mg/L it rules out 316. Constituents name what else is in the liquid, commas between: ${CONSTITUENTS.join(", ")}; or ${NOTHING_ELSE}. Hydrofluoric acid rules out every metal here; ammonia and hydrogen sulphide rule out bronze, hydrogen sulphide grey and white iron too.`,
  cites: [...wettedDutyMethod.cites, { source: "iso-15156", at: "hardness and material limits for sour service" }],
  parameters: {
    pH: quantity("ratio", { about: "pH of the liquid", example: "7", range: "0 to 14" }),
    maximumTemperature: zeroDoubted(
      quantity("temperature", {
        about: "Greatest temperature of the liquid",
        example: '77, or "25 degC"',
        whenLeftOut: NOT_STATED,
      }),
    ),
    chlorides: dissolved({
      about: "Chloride ion in the water",
      example: '50, or "50 mg/L"',
      range: "0 or more; sea water has some 19 000 mg/L",
    }),
    solidsByWeight: zeroDoubted(
      share({
        about: "Solids by weight, of the weight of the slurry",
        example: '3, or "3 %"',
        range: "0 to below 70 %",
        whenLeftOut: NOT_STATED,
      }),
    ),
    hardness: text<Particle | null>(
      {
        about: "Hardness of the particles: soft, hard sand, quartz, Mohs 7 or HV 1100",
        example: '"soft" or "hard sand"',
        choices: PARTICLE_NAMES,
        whenLeftOut: NOT_STATED,
      },
      particleNamed,
    ),
    maximumParticleSize: quantity("size", {
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
    constituents: text<readonly Constituent[] | null>(
      {
        about: "What else is in the liquid, with commas between",
        example: `"caustic, ammonia" or "${NOTHING_ELSE}"`,
        choices: [NOTHING_ELSE, ...CONSTITUENTS],
        whenLeftOut: NOT_STATED,
      },
      constituentsNamed,
    ),
  },
  answer: {
    kind: "table",
    name: "wetted parts",
    columns: {
      kind: { name: "kind" },
      rank: { name: "rank" },
      material: { name: "material" },
      verdict: { name: "verdict" },
      parts: { name: "parts" },
      reasons: { name: "reasons" },
      cautions: { name: "cautions" },
    },
  },
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
  run: (
    {
      maximumTemperature: temperature,
      solidsByWeight: solids,
      hardness: particle,
      maximumParticleSize: particleSize,
      freePassage: passage,
      constituents: makeUp,
      ...liquid
    },
    { unitSet },
  ) => {
    const said = (findings: readonly Finding[]): string =>
      findings.map((finding) => findingText(finding, unitSet)).join(" ");
    const rows = (options: readonly MaterialOption[], kind: Kind) =>
      options.map(({ material, verdict, parts, reasons, cautions }, i) => ({
        kind: material === RUBBER_LINING ? "lining" : kind,
        rank: i + 1,
        material,
        verdict,
        parts,
        reasons: said(reasons),
        cautions: said(cautions),
      }));
    return andThen(
      materialChoice({ ...liquid, temperature, solids, particle, particleSize, passage, makeUp }),
      ({ wetEnd, elastomers, sealFaces, dryParts }) =>
        succeed([
          ...rows(wetEnd, "metal"),
          ...rows(elastomers, "elastomer"),
          ...rows(sealFaces, "seal faces"),
          ...rows([dryParts], "dry parts"),
        ]),
    );
  },
});
