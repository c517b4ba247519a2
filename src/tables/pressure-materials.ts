import type { RatedGroup } from "./flange-rating-table.ts";

/** Flanges are named by class (ASME) or by PN (EN). The material and the series together settle the standard. */
export type ClassSeries = "class" | "PN";

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
  /** No rating above, °F. */
  readonly greatestTemperature?: number;
  /** Other spellings, a space between, in lower case without spaces, hyphens or points. */
  readonly also: string;
}

const DUCTILE = "A395 ductile iron";
const EN_DUCTILE = "EN-GJS-400-15 / 400-18 (LT)";
const EN_GREY = "EN-GJL-250";

/**
 * Materials of casings and flanges, and the group each is rated in: ASME B16.42 and B16.1, EN 1092-2, then the groups of
 * ASME B16.5. Grades and groups from memory but where the tables of ratings name them; 450 °F (232 °C) is the limit of
 * A395 65-45-15 in B16.42. The spellings are the trade's.
 */
export const PRESSURE_MATERIALS: readonly PressureMaterial[] = [
  {
    name: "ductile iron",
    groups: { class: DUCTILE, PN: EN_DUCTILE },
    takenAs: { class: "ASTM A395 60-40-18", PN: "EN-GJS-400-15" },
    also: "castductileiron di nodulariron sgiron spheroidalgraphiteiron ductile",
  },
  { name: "A395", groups: { class: DUCTILE }, also: "a395604018 604018 a395ductileiron" },
  { name: "A395 65-45-15", groups: { class: DUCTILE }, greatestTemperature: 450, also: "654515" },
  {
    name: "A536",
    groups: { class: DUCTILE },
    ratedAs: "ASTM A395",
    also: "a536654512 654512 a536604018 a536805506 805506 a536ductileiron",
  },
  { name: "EN-GJS-400-15", groups: { PN: EN_DUCTILE }, also: "gjs40015 engjs400 gjs400" },
  {
    name: "EN-GJS-400-18",
    groups: { PN: EN_DUCTILE },
    also: "gjs40018 engjs40018lt gjs40018lt engjs40018rt gjs40018rt",
  },
  {
    name: "grey iron",
    groups: { class: "A126 Class B", PN: EN_GREY },
    takenAs: { class: "ASTM A126 Class B", PN: EN_GREY },
    also: "grayiron castiron ci greycastiron graycastiron",
  },
  { name: "A126", groups: { class: "A126 Class B" }, takenAs: { class: "ASTM A126 Class B" }, also: "" },
  { name: "A126 Class B", groups: { class: "A126 Class B" }, also: "a126b a126greyironclassb" },
  { name: "A126 Class A", groups: { class: "A126 Class A" }, also: "a126a a126greyironclassa" },
  { name: "EN-GJL-250", groups: { PN: EN_GREY }, also: "gjl250" },
  {
    name: "carbon steel",
    groups: { class: "1.1" },
    takenAs: { class: "group 1.1 (A216 WCB, A105)" },
    also: "steel caststeel castcarbonsteel forgedsteel forgedcarbonsteel",
  },
  { name: "WCB", groups: { class: "1.1" }, also: "a216 a216wcb 11 group11" },
  { name: "A105", groups: { class: "1.1" }, also: "a105n" },
  { name: "WCC", groups: { class: "1.2" }, also: "a216wcc 12 group12" },
  { name: "LCC", groups: { class: "1.2" }, also: "a352lcc" },
  {
    name: "316",
    groups: { class: "2.2" },
    also: "f316 a182f316 316stainless 316stainlesssteel stainlesssteel316 stainless316 22 group22",
  },
  { name: "CF8M", groups: { class: "2.2" }, also: "a351cf8m 316cast cast316" },
  { name: "CF3M", groups: { class: "2.2" }, also: "a351cf3m cast316l" },
  {
    name: "316L",
    groups: { class: "2.3" },
    also: "f316l a182f316l 316lstainless 316lstainlesssteel stainlesssteel316l stainless316l 23 group23",
  },
  {
    name: "304L",
    groups: { class: "2.3" },
    also: "f304l a182f304l 304lstainless 304lstainlesssteel stainlesssteel304l stainless304l",
  },
  {
    name: "duplex",
    groups: { class: "2.8" },
    also: "duplexstainless duplexstainlesssteel 2205 s31803 f51 a182f51 superduplex 2507 s32750 f53 a182f53 s32760 f55 a182f55 28 group28",
  },
  {
    name: "CD4MCuN",
    groups: { class: "2.8" },
    isListingUncertain: true,
    also: "cd4mcu a9951b a8901b a9951bcd4mcun a8901bcd4mcun a995cd4mcun a890cd4mcun",
  },
];
