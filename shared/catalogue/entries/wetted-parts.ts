import { andThen, type Finding, succeed } from "../../../src/basis/result.ts";
import { CONSTITUENTS } from "../../../src/material/constituent.ts";
import { NOTHING_ELSE } from "../../../src/material/make-up.ts";
import { materialChoice } from "../../../src/material/material-choice.ts";
import type { MaterialOption } from "../../../src/material/material-option.ts";
import { RUBBER_LINING } from "../../../src/material/soft-parts.ts";
import { wettedDutyMethod } from "../../../src/material/wetted-duty.ts";
import { findingText } from "../../text/finding-text.ts";
import { defineEntry } from "../entry.ts";
import { wettedDutyFrom, wettedParameters } from "../parameters/wetted-duty.ts";

/** The kinds of wetted parts in the order they are listed. */
type Kind = "metal" | "lining" | "elastomer" | "seal faces" | "bolts" | "line" | "dry parts";

export const WETTEDPARTS = defineEntry({
  id: "WETTEDPARTS",
  group: "Materials",
  summary: "Materials of every wetted part by kind, ranked for the liquid, its particles, oxidisers and make-up",
  method: `Rules of thumb of the trade and published corrosion data, row by row. ${CONSTITUENTS.length} named liquids and constituents say what stands them (“acid mine water”, “raw sewage”, “brine”, “diesel”), inside the pH, chloride and temperature their name is taken to mean; outside, the screens speak too and the worse counts. Screens: iron and steel pH 6 to 10, with care 4 to 11; white iron 6.5 to 10, with care 5.5 to 12; cast 316 to 1000 mg/L of chloride at 25 °C, 300 at 50 to 60 °C, 150 at 80 °C; duplex 3600 and 1000, in sea water to 20 °C and flowing only; both from pH 6 down divided by 10^((6 − pH)/2), to pH 4, below which only a named liquid speaks. Irons with care above 1000 and not above 10 000 mg/L of chloride; 13Cr 250 and 1000. Above 60 °C aerated water requires care, above 90 °C nothing is judged. Wear by the hardness of the particles over that of the metal, in Vickers: light to 0.8, severe above 1.2; white iron counts by its carbides, 1400 HV. What is not stated counts at the worst it may be: pH 0 to 14, chloride to 200 g/L, 5 to 90 °C, 40 % of quartz; outside pH 6 to 9 an unstated make-up may be any liquid of the table that holds what is stated, in neutral water it is taken as plain, with care. So no material ranks higher for an input left out, and what might be ruled out is “not judged”, never first or offered. Among equals the harder stands first where solids wear severely, else fewer cautions, then common use. Kinds: metal, lining, elastomer, seal faces, bolts (wetted or splashed), line, dry parts; ranks run within each, lining with the metals. Particles larger than the free passage of the impeller are refused; hard ones above a third of it bring a caution. Rubber lines only below 6 mm, with care from 65 °C and not above 70 °C, without oil. Oxidiser is the dose of free chlorine, chlorine dioxide or permanganate, below 2 mg/L where it is left out; above 5 mg/L it rules out 316. Constituents name the liquid or what else is in it, commas between, “${NOTHING_ELSE}” where it is salts and solids alone; “standing” where it stays in the pump. NOTES says what to ask, and what endangers people. List every wetted part and have the choice confirmed.`,
  cites: [
    ...wettedDutyMethod.cites,
    { source: "corrosion-data", at: "as the row of each named liquid says" },
    { source: "iso-15156", at: "hardness and material limits for sour service" },
  ],
  parameters: wettedParameters,
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
  run: (given, { unitSet }) => {
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
    return andThen(materialChoice(wettedDutyFrom(given)), ({ wetEnd, elastomers, sealFaces, bolts, lines, dryParts }) =>
      succeed([
        ...rows(wetEnd, "metal"),
        ...rows(elastomers, "elastomer"),
        ...rows(sealFaces, "seal faces"),
        ...rows(bolts, "bolts"),
        ...rows(lines, "line"),
        ...rows([dryParts], "dry parts"),
      ]),
    );
  },
});
