import { nearestNames } from "../basis/nearest.ts";
import { fail, type Result, succeed } from "../basis/result.ts";
import { toEngine, unitOf } from "../basis/units.ts";
import type { RatedGroup } from "../tables/flange-rating-table.ts";

/** Flanges are named by class (ASME) or by PN (EN). The material and the series together settle the standard. */
export type ClassSeries = "class" | "PN";

/** A material of casings and flanges. */
export interface PressureMaterial {
  readonly name: string;
  /** Group of the standard that rates it, in each series that has one. */
  readonly groups: Readonly<Partial<Record<ClassSeries, RatedGroup>>>;
  /** What a name without a grade is taken as, in each series. */
  readonly takenAs?: Readonly<Partial<Record<ClassSeries, string>>>;
  /** The standard rates another grade; its figures are used by custom. */
  readonly ratedAs?: string;
  /** Not certain to be listed in every edition of the standard. */
  readonly isListingUncertain?: true;
  /** No rating above, K. */
  readonly greatestTemperature?: number;
}

interface MaterialRow extends PressureMaterial {
  /** Other spellings, as `tidy` leaves them. */
  readonly also: readonly string[];
}

const DUCTILE = "A395 ductile iron";
const EN_DUCTILE = "EN-GJS-400-15 / 400-18 (LT)";
const EN_GREY = "EN-GJL-250";

/** 450 °F (232 °C): ASTM A395 65-45-15 in ASME B16.42. */
const A395_65_45_15_LIMIT = toEngine(450, unitOf("°F"));

const MATERIALS: readonly MaterialRow[] = [
  {
    name: "ductile iron",
    groups: { class: DUCTILE, PN: EN_DUCTILE },
    takenAs: { class: "ASTM A395 60-40-18", PN: "EN-GJS-400-15" },
    also: ["castductileiron", "di", "nodulariron", "sgiron", "spheroidalgraphiteiron", "ductile"],
  },
  { name: "A395", groups: { class: DUCTILE }, also: ["a395604018", "604018", "a395ductileiron"] },
  {
    name: "A395 65-45-15",
    groups: { class: DUCTILE },
    greatestTemperature: A395_65_45_15_LIMIT,
    also: ["654515"],
  },
  {
    name: "A536",
    groups: { class: DUCTILE },
    ratedAs: "ASTM A395",
    also: ["a536654512", "654512", "a536604018", "a536805506", "805506", "a536ductileiron"],
  },
  { name: "EN-GJS-400-15", groups: { PN: EN_DUCTILE }, also: ["gjs40015", "engjs400", "gjs400"] },
  {
    name: "EN-GJS-400-18",
    groups: { PN: EN_DUCTILE },
    also: ["gjs40018", "engjs40018lt", "gjs40018lt", "engjs40018rt", "gjs40018rt"],
  },
  {
    name: "grey iron",
    groups: { class: "A126 Class B", PN: EN_GREY },
    takenAs: { class: "ASTM A126 Class B", PN: EN_GREY },
    also: ["grayiron", "castiron", "ci", "greycastiron", "graycastiron"],
  },
  {
    name: "A126",
    groups: { class: "A126 Class B" },
    takenAs: { class: "ASTM A126 Class B" },
    also: [],
  },
  { name: "A126 Class B", groups: { class: "A126 Class B" }, also: ["a126b", "a126greyironclassb"] },
  { name: "A126 Class A", groups: { class: "A126 Class A" }, also: ["a126a", "a126greyironclassa"] },
  { name: "EN-GJL-250", groups: { PN: EN_GREY }, also: ["gjl250"] },
  {
    name: "carbon steel",
    groups: { class: "1.1" },
    takenAs: { class: "group 1.1 (A216 WCB, A105)" },
    also: ["steel", "caststeel", "castcarbonsteel", "forgedsteel", "forgedcarbonsteel"],
  },
  { name: "WCB", groups: { class: "1.1" }, also: ["a216", "a216wcb", "11", "group11"] },
  { name: "A105", groups: { class: "1.1" }, also: ["a105n"] },
  { name: "WCC", groups: { class: "1.2" }, also: ["a216wcc", "12", "group12"] },
  { name: "LCC", groups: { class: "1.2" }, also: ["a352lcc"] },
  {
    name: "316",
    groups: { class: "2.2" },
    also: [
      "f316",
      "a182f316",
      "316stainless",
      "316stainlesssteel",
      "stainlesssteel316",
      "stainless316",
      "22",
      "group22",
    ],
  },
  { name: "CF8M", groups: { class: "2.2" }, also: ["a351cf8m", "316cast", "cast316"] },
  { name: "CF3M", groups: { class: "2.2" }, also: ["a351cf3m", "cast316l"] },
  {
    name: "316L",
    groups: { class: "2.3" },
    also: [
      "f316l",
      "a182f316l",
      "316lstainless",
      "316lstainlesssteel",
      "stainlesssteel316l",
      "stainless316l",
      "23",
      "group23",
    ],
  },
  {
    name: "304L",
    groups: { class: "2.3" },
    also: ["f304l", "a182f304l", "304lstainless", "304lstainlesssteel", "stainlesssteel304l", "stainless304l"],
  },
  {
    name: "duplex",
    groups: { class: "2.8" },
    also: [
      "duplexstainless",
      "duplexstainlesssteel",
      "2205",
      "s31803",
      "f51",
      "a182f51",
      "superduplex",
      "2507",
      "s32750",
      "f53",
      "a182f53",
      "s32760",
      "f55",
      "a182f55",
      "28",
      "group28",
    ],
  },
  {
    name: "CD4MCuN",
    groups: { class: "2.8" },
    isListingUncertain: true,
    also: ["cd4mcu", "a9951b", "a8901b", "a9951bcd4mcun", "a8901bcd4mcun", "a995cd4mcun", "a890cd4mcun"],
  },
];

/** Names a drop-down offers, and the lists suggest. */
export const PRESSURE_MATERIAL_NAMES: readonly string[] = MATERIALS.map(({ name }) => name);

export const PRESSURE_MATERIALS: readonly PressureMaterial[] = MATERIALS;

/** One way of writing: no case, spaces, hyphens or points, nor the words for a standards body or a grade. */
function tidy(text: string): string {
  return text
    .toLowerCase()
    .replace(/\b(?:astm|asme|aisi|uns|grade|gr\.?|type|class|cl\.?|ss)\b/g, " ")
    .replace(/[\s._\-,/()]/g, "")
    .replace(/^sa(?=\d{3})/, "a")
    .replace(/^ss(?=3\d\d)|(?<=^3\d\dl?)ss$/, "");
}

const byName = new Map(MATERIALS.flatMap((row) => [tidy(row.name), ...row.also].map((name) => [name, row] as const)));

/** The material a text names: "ductile iron", "A536", "WCB", "CF8M". Fails with `name-unknown` and the nearest names. */
export function pressureMaterialNamed(text: string, subject = "material"): Result<PressureMaterial> {
  // A group of the standard is 2.2 with its point; a bare 22 is no material.
  const isStray = /^\s*\d\s?\d?\s*$/.test(text);
  const found = isStray ? undefined : byName.get(tidy(text.slice(0, 100)));
  if (found !== undefined) return succeed(found);
  const near = nearestNames(text.slice(0, 100), PRESSURE_MATERIAL_NAMES);
  const suggestions = (near.length > 0 ? near : COMMON).map((name) => `"${name}"`);
  return fail([{ code: "name-unknown", severity: "error", subject, given: text.trim(), suggestions }]);
}

const COMMON = ["ductile iron", "grey iron", "carbon steel", "316", "duplex"];
