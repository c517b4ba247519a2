import { describe, expect, it } from "vitest";
import { textIn, withTextIn } from "../../../../shared/duty/boxes.ts";
import { decodeDuty } from "../../../../shared/duty/decode.ts";
import { type DutyText, EMPTY_OTHER_PUMP } from "../../../../shared/duty/duty-text.ts";
import { SAMPLE_DUTIES } from "../../../../shared/duty/samples.ts";
import type { Mend } from "../../../../shared/package/mends/mend.ts";
import { mendsFor } from "../../../../shared/package/mends/mends.ts";
import { OF_BOXES } from "../../../../shared/package/mends/of-boxes.ts";
import { OF_LINES } from "../../../../shared/package/mends/of-lines.ts";
import { workedDuty } from "../../../../shared/package/worked-duty.ts";
import type { FindingCode } from "../../../../src/basis/finding-code.ts";
import type { Finding } from "../../../../src/basis/result.ts";
import { dutyText, STRAIGHT_PUMP } from "../../../support/duty-of.ts";
import { hostilePlaces } from "../../../support/hostile-places.ts";

/** Of this code, shown by this text in this box; what is to be offered, by its label and what it puts where. */
interface Shown {
  readonly code: FindingCode;
  readonly duty: DutyText;
  readonly place: string;
  /** [label, text] for the box itself, or [label, text, other box]. */
  readonly mends: readonly (readonly [label: string, text: string, place?: string])[];
}

const BARE = dutyText();
const WITH_PUMP = dutyText({}, { pump: STRAIGHT_PUMP });
const THREE = dutyText({ pumpsRunning: "3" });
const PIPE = "dischargeLine.0.pipe";
const SHARE = "dischargeLine.0.share";
const FITTINGS = "dischargeLine.0.fittings";

const shown = (code: FindingCode, place: string, text: string, mends: Shown["mends"], duty = BARE): Shown => ({
  code,
  duty: withTextIn(duty, place, text),
  place,
  mends,
});

/** Expected by hand from what was typed: nothing of it is worked out by the code under test. */
const SHOWN: readonly Shown[] = [
  shown("number-ambiguous", "flow", "1,200 m3/h", [
    ["Read as “1200 m3/h”", "1200 m3/h"],
    ["Read as “1.200 m3/h”", "1.200 m3/h"],
  ]),
  shown("number-read-as", "flow", "1,000", [
    ["Read as “1000”", "1000"],
    ["Read as “1.000”", "1.000"],
  ]),
  // The opening of the 100 mesh sieve of ASTM E11 is 150 µm: 0.15/25.4 in.
  shown("number-read-as", "medianSize", "100 mesh", [["Read as “0.00590551 in”", "0.00590551 in"]]),
  shown("number-ambiguous", "pumpLevel", "-1,500 m", [["Read as “-1.500 m”", "-1.500 m"]]),
  shown("digits-parted", "flow", "6 00 gpm", [["Read as “600 gpm”", "600 gpm"]]),
  shown("unit-unknown", "flow", "600 gp", [
    ["Read as “600 US gpm”", "600 US gpm"],
    ["Read as “600 L/s”", "600 L/s"],
    ["Read as “600 m³/h”", "600 m³/h"],
  ]),
  shown("unit-wrong-kind", "flow", "600 psi", [["Read as “600 US gpm”", "600 US gpm"]]),
  shown("unit-missing", "fuelPrice", "3.5", [
    ["Read as “3.5 per US gal”", "3.5 per US gal"],
    ["Read as “3.5 per L”", "3.5 per L"],
  ]),
  shown("percent-as-fraction", "margin", "0.2", [
    ["Read as “20”", "20"],
    ["Read as “0.2 %”", "0.2 %"],
  ]),
  shown("not-a-whole-number", "pumpsRunning", "1.5", [
    ["Use “1”", "1"],
    ["Use “2”", "2"],
  ]),
  shown("name-unknown", "liquid", "watr", [["Use “water”", "water"]]),
  shown("name-unknown", FITTINGS, "2 elbo 90 long, 1 exit", [["Use “elbow 90 long”", "2 elbow 90 long, 1 exit"]]),
  shown("name-unknown", PIPE, "8in HDPE DR18", [["Use “8in HDPE DR17”", "8in HDPE DR17"]]),
  shown("name-unknown", PIPE, "8in sch4o", [["Use “8in sch40”", "8in sch40"]]),
  shown("choice-unknown", "outlet", "submergd", [["Use “submerged”", "submerged"]]),
  shown("fitting-which", FITTINGS, "1 tee, 1 exit", [
    ["Use “tee run”", "1 tee run, 1 exit"],
    ["Use “tee branch”", "1 tee branch, 1 exit"],
  ]),
  shown("pipe-family-missing", PIPE, "8 inch", [["Use “8in sch40”", "8in sch40"]]),
  shown("pipe-roughness-missing", PIPE, "ID 7.9 in", [["Use “ID 7.9 in steel”", "ID 7.9 in steel"]]),
  shown("pipe-material-not-stated", PIPE, "8in DR17", [
    ["Use “8in PVC DR17”", "8in PVC DR17"],
    ["Use “8in HDPE DR17”", "8in HDPE DR17"],
  ]),
  shown("pipe-rough-and-c", PIPE, "8in sch40 rough 0.1 mm C 140", [
    ["Use “8in sch40 C 140”", "8in sch40 C 140"],
    ["Use “8in sch40 rough 0.1 mm”", "8in sch40 rough 0.1 mm"],
  ]),
  shown("pipe-class-contradicts", PIPE, "DN200 PN16 PE100 SDR17", [
    ["Use “200mm HDPE SDR11 PE100”", "200mm HDPE SDR11 PE100"],
  ]),
  shown("bore-is-nominal", PIPE, "ID 8 in steel", [["Use “8in sch40”", "8in sch40"]]),
  shown("bore-is-nominal", FITTINGS, "1 reducer to 6 in, 1 exit", [
    ["Use “6in sch40”", "1 reducer to 6in sch40, 1 exit"],
  ]),
  shown("gravity-of-no-liquid", "liquid", "SG 1118, 3 cP", [["Use “1118 kg/m3, 3 cP”", "1118 kg/m3, 3 cP"]]),
  {
    ...shown("liquid-temperature-contradicts", "temperature", "100 °F", [["Use 86 °F", "86 °F"]]),
    duty: dutyText({ liquid: "water 30 °C", temperature: "100 °F" }),
  },
  shown("class-is-a-designation", "flangeClass", "150#", [["Use “Class 150”", "Class 150"]]),
  shown("class-by-metric-name", "flangeClass", "PN20", [["Use “Class 150”", "Class 150"]]),
  shown("bolt-grade-taken-as", "boltGrade", "B8", [["Use “A193 B8 class 1”", "A193 B8 class 1"]]),
  shown("gasket-taken-as", "gasket", "EPDM", [["Use “rubber 75 A or harder”", "rubber 75 A or harder"]]),
  shown("out-of-range", "curveFlow", "100 gpm", [["Use 600 US gpm", "600 US gpm"]]),
  shown("out-of-range", "highestSourceLevel", "-5 ft", [["Use 0 ft", "0 ft"]]),
  shown("out-of-range", "leastStaticHead", "500 ft", [["Use 100 ft", "100 ft"]]),
  shown("out-of-range", "greatestStaticHead", "5 ft", [["Use 100 ft", "100 ft"]]),
  {
    // Of 20 % by weight and SG 2.65 in water of SG 1: 1/(0.2/2.65 + 0.8) = 1.142; water at 68 °F is 0.9982 of that at 4 °C.
    ...shown("slurry-figures-contradict", "slurryGravity", "1.5", []),
    duty: dutyText({ solids: "20", solidsGravity: "2.65", slurryGravity: "1.5" }),
  },
  {
    code: "efficiency-mixed",
    place: "pump.points",
    duty: withTextIn(WITH_PUMP, "pump.points.1.efficiency", "0.5"),
    mends: [["Use 50 % in row 2", "50", "pump.points.1.efficiency"]],
  },
  shown(
    "pump-named-twice",
    "otherPumps.0.name",
    STRAIGHT_PUMP.name,
    [[`Use “${STRAIGHT_PUMP.name} (2)”`, `${STRAIGHT_PUMP.name} (2)`]],
    { ...WITH_PUMP, otherPumps: [{ ...EMPTY_OTHER_PUMP, ...STRAIGHT_PUMP }] },
  ),
  shown("case-named-twice", "cases.1.name", "wet", [["Use “wet (2)”", "wet (2)"]], {
    ...BARE,
    cases: ["wet", "dry"].map((name) => ({ name, hours: "", fields: { flow: "500 gpm" } })),
  }),
  shown("level-not-at-end", "dischargeLine.0.level", "90 ft", [
    ["Use the delivery level, 100 ft, here", "100 ft"],
    ["Use 90 ft as delivery level", "90 ft", "deliveryLevel"],
  ]),
  shown(
    "share-of-each-assumed",
    "suctionLine.0.share",
    "",
    [
      ["State “each”", "each"],
      ["State “all”", "all"],
    ],
    THREE,
  ),
  shown("share-of-all-assumed", SHARE, "", [["State “all”", "all"]], THREE),
  shown("suction-common-to-pumps", "suctionLine.0.share", "all", [["State “each”", "each"]], THREE),
  shown(
    "check-valve-common-to-pumps",
    SHARE,
    "all",
    [["State “each”", "each"]],
    withTextIn(THREE, FITTINGS, "1 swing check, 1 exit"),
  ),
  shown(
    "share-may-be-header",
    SHARE,
    "1/3",
    [
      ["Write “header” beside the pipe", "8in sch40 header", PIPE],
      ["State “each”", "each"],
    ],
    THREE,
  ),
  shown("share-leaves-a-rest", SHARE, "40 %", [["Write “header” beside the pipe", "8in sch40 header", PIPE]]),
  shown(
    "rows-side-by-side",
    "dischargeLine.1.share",
    "40 %",
    [["Write “header” beside the pipe", "8in sch40 header", "dischargeLine.1.pipe"]],
    {
      ...BARE,
      dischargeLine: [
        { pipe: "8in sch40", length: "500 ft", fittings: "", share: "60 %" },
        { pipe: "8in sch40", length: "500 ft", fittings: "1 exit", share: "40 %" },
      ],
    },
  ),
  shown("share-number-unclear", SHARE, "2", [
    ["Read as “1/2”", "1/2"],
    ["Read as “2 %”", "2 %"],
  ]),
  shown("share-is-a-date", SHARE, "2-Jan", [["Read as “1/2”", "1/2"]]),
];

/** What the calculation says of lines as typed, and what is to be offered. */
const CALCULATED: readonly { readonly code: FindingCode; readonly duty: DutyText; readonly mend: Mend }[] = [
  {
    code: "exit-not-counted",
    duty: withTextIn(BARE, FITTINGS, "2 elbow 90 long"),
    mend: { label: "Add 1 exit", place: FITTINGS, text: "2 elbow 90 long, 1 exit" },
  },
  {
    code: "exit-counted-twice",
    duty: withTextIn(BARE, FITTINGS, "1 gate, 2 exit"),
    mend: { label: "Keep 1 exit", place: FITTINGS, text: "1 gate, 1 exit" },
  },
  {
    code: "exit-counted-twice",
    duty: {
      ...BARE,
      dischargeLine: [
        { pipe: "8in sch40", length: "500 ft", fittings: "1 gate, 1 exit" },
        { pipe: "8in sch40", length: "500 ft", fittings: "1 exit" },
      ],
    },
    mend: { label: "Take the exit out of row 1", place: FITTINGS, text: "1 gate" },
  },
  {
    code: "exit-in-suction",
    duty: withTextIn(BARE, "suctionLine.0.fittings", "1 entrance flush, 1 exit"),
    mend: { label: "Take the exit out", place: "suctionLine.0.fittings", text: "1 entrance flush" },
  },
];

function foundAt(duty: DutyText, place: string, code: FindingCode): readonly Finding[] {
  return (decodeDuty(duty).findings.get(place) ?? []).filter((finding) => finding.code === code);
}

function calculated(duty: DutyText, code: FindingCode): readonly Finding[] {
  return [...workedDuty(decodeDuty(duty).duty).findings.values()].flat().filter((finding) => finding.code === code);
}

/** Boxes that are otherwise in the one duty than in the other. */
function boxesApart(one: unknown, other: unknown, place = ""): readonly string[] {
  if (typeof one !== "object" || one === null || typeof other !== "object" || other === null) {
    return (one ?? "") === (other ?? "") ? [] : [place];
  }
  const [before, after] = [one as Record<string, unknown>, other as Record<string, unknown>];
  return [...new Set([...Object.keys(before), ...Object.keys(after)])].flatMap((key) =>
    boxesApart(before[key], after[key], place === "" ? key : `${place}.${key}`),
  );
}

describe("a finding that one text in one box clears", () => {
  it.each(SHOWN.map((one) => [one.code, textIn(one.duty, one.place), one] as const))(
    "%s: %s",
    (code, _, { duty, place, mends }) => {
      const [finding] = foundAt(duty, place, code);
      expect(finding).toBeDefined();
      const offered = mendsFor(duty, decodeDuty(duty)).at(place, finding as Finding);
      expect(offered).not.toEqual([]);
      for (const [label, text, box = place] of mends) expect(offered).toContainEqual({ label, place: box, text });
      for (const mend of offered) {
        const mended = withTextIn(duty, mend.place, mend.text);
        expect(foundAt(mended, place, code), mend.label).toEqual([]);
        expect(
          boxesApart(duty, mended).map((at) => at.replace("fields.", "")),
          mend.label,
        ).toEqual([mend.place]);
      }
    },
  );

  it.each(CALCULATED)("$code of the calculation: $mend.label", ({ code, duty, mend }) => {
    const [finding] = calculated(duty, code);
    expect(finding).toBeDefined();
    expect(mendsFor(duty, decodeDuty(duty)).of(finding as Finding)).toContainEqual(mend);
    const mended = withTextIn(duty, mend.place, mend.text);
    expect(calculated(mended, code)).toEqual([]);
    expect(boxesApart(duty, mended)).toEqual([mend.place]);
  });

  it("is of a code that stands here", () => {
    const tried = new Set<string>([...SHOWN, ...CALCULATED].map(({ code }) => code));
    expect([...Object.keys(OF_BOXES), ...Object.keys(OF_LINES)].filter((code) => !tried.has(code))).toEqual([]);
  });

  it("puts the figure of a slurry that follows from the others", () => {
    const { duty, place } = SHOWN.find(({ code }) => code === "slurry-figures-contradict") as Shown;
    const [finding] = foundAt(duty, place, "slurry-figures-contradict");
    const [mend] = mendsFor(duty, decodeDuty(duty)).at(place, finding as Finding);
    // 1/(0.2/2.65 + 0.8/0.998): SG of water at 68 °F, VDI heat atlas, over that of 1000 kg/m³.
    expect(Number(mend?.text)).toBeCloseTo(1 / (0.2 / 2.65 + 0.8 / 0.998), 2);
  });
});

describe("what nobody stated", () => {
  it.each([
    ["a strength", "liquid", "ethylene glycol"],
    ["a volume as a weight", "liquid", "ethylene glycol 40 % by volume"],
    ["a size", PIPE, "sch40"],
    ["another size", PIPE, "8in foo"],
    ["a size of a ratio", PIPE, "DR17"],
    ["another class", "flangeClass", "160"],
    ["stages of an example", "stages", "x"],
    ["a name", "flow", "abc"],
  ])("is not offered: %s", (_, place, text) => {
    const duty = withTextIn(BARE, place, text);
    const decoded = decodeDuty(duty);
    const found = (decoded.findings.get(place) ?? []).filter(({ kind }) => kind === "error");
    expect(found).not.toEqual([]);
    expect(found.flatMap((finding) => mendsFor(duty, decoded).at(place, finding))).toEqual([]);
  });

  it("is not offered as a roughness", () => {
    const duty = withTextIn(BARE, PIPE, "ID 7.9 in");
    const [finding] = foundAt(duty, PIPE, "pipe-roughness-missing");
    const offered = mendsFor(duty, decodeDuty(duty)).at(PIPE, finding as Finding);
    expect(offered.filter(({ text }) => text.includes("rough"))).toEqual([]);
  });

  it("leaves the other fittings of a row as they are", () => {
    const duty = withTextIn(BARE, FITTINGS, "2 gate, 1 camlok, 1 exit");
    const [finding] = foundAt(duty, FITTINGS, "name-unknown");
    for (const { text } of mendsFor(duty, decodeDuty(duty)).at(FITTINGS, finding as Finding)) {
      expect(text).toMatch(/^2 gate, 1 \S.*, 1 exit$/);
    }
  });
});

describe("whatever stands in a box", () => {
  const TEXTS = ["1,234", "12 furlongs", "5 psi", "0.1", "1.5", "6in sch4", "submergd", "12-6", "watr"];

  it.each(SAMPLE_DUTIES.map(({ name, duty }) => [name, duty] as const))(
    "is cleared by what is offered: %s",
    (_, sample) => {
      let tried = 0;
      for (const { key, holding } of hostilePlaces(sample).filter((_, i) => i % 7 === 0)) {
        for (const text of TEXTS) {
          const duty = holding(text);
          const decoded = decodeDuty(duty);
          const mends = mendsFor(duty, decoded);
          for (const finding of decoded.findings.get(key) ?? []) {
            for (const mend of mends.at(key, finding)) {
              const mended = withTextIn(duty, mend.place, mend.text);
              const left = decodeDuty(mended).findings.get(key) ?? [];
              expect(left, `${key}: ${text}, ${mend.label}`).not.toContainEqual(finding);
              tried += 1;
            }
          }
        }
      }
      expect(tried).toBeGreaterThan(20);
    },
    120_000,
  );
});
