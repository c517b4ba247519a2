import type { RatedGroup } from "./flange-rating-table.ts";

/** Flanges are named by class (ASME) or by PN (EN). The material and the series together settle the standard. */
export type ClassSeries = "class" | "PN";

export interface PressureMaterial {
  readonly name: string;
  /** Group of the standard that rates it, in each series that has one; none where no flange standard held here does. */
  readonly groups: Readonly<Partial<Record<ClassSeries, RatedGroup>>>;
  /** What a name without a grade is taken as, in each series. */
  readonly takenAs?: Readonly<Partial<Record<ClassSeries, string>>>;
  /** The standard of a series rates another grade; its figures are used by custom. */
  readonly ratedAs?: Readonly<Partial<Record<ClassSeries, string>>>;
  /** Not certain to be listed in every edition of the standard. */
  readonly isListingUncertain?: true;
  /** No rating above, °F. */
  readonly greatestTemperature?: number;
  /** Other spellings, a space between, in lower case without spaces, hyphens or points. */
  readonly also: string;
}

const DUCTILE = "A395 ductile iron";
const EN_DUCTILE = "EN-GJS-400-15 / 400-18 (LT)";
const EN_DUCTILE_500 = "EN-GJS-500-7 / 600-3";
const EN_GREY = "EN-GJL-250";
const WITHOUT_3E1 = "group 3E0, which is below its own 3E1";

/**
 * Materials of casings and flanges, and the group each is rated in: ASME B16.42 and B16.1, EN 1092-2, then the groups of
 * ASME B16.5 and EN 1092-1; last those that are cast into casings and that no flange standard held here rates. Grades and
 * groups from memory but where the tables of ratings name them; 450 °F (232 °C) is the limit of A395 65-45-15 in B16.42.
 * Material numbers (1.4408) of EN 10213, EN 10088 and EN 1563, old German names (GGG40) of DIN 1693 and 1691, from memory.
 * The spellings are the trade's.
 */
export const PRESSURE_MATERIALS: readonly PressureMaterial[] = [
  {
    name: "ductile iron",
    groups: { class: DUCTILE, PN: EN_DUCTILE },
    takenAs: { class: "ASTM A395 60-40-18", PN: "EN-GJS-400-15" },
    also: "castductileiron di nodulariron sgiron spheroidalgraphiteiron ductile",
  },
  {
    name: "A395",
    groups: { class: DUCTILE },
    also: "a395604018 604018 a395ductileiron ductileironpressure f32800",
  },
  { name: "A395 65-45-15", groups: { class: DUCTILE }, greatestTemperature: 450, also: "654515" },
  {
    name: "A536",
    groups: { class: DUCTILE },
    ratedAs: { class: "ASTM A395" },
    also: "a536654512 654512 a536604018 a536805506 805506 a536ductileiron f33100",
  },
  {
    name: "EN-GJS-400-15",
    groups: { PN: EN_DUCTILE },
    also: "gjs40015 engjs400 gjs400 ggg40 07040 enjs1030 53106",
  },
  {
    name: "EN-GJS-400-18",
    groups: { PN: EN_DUCTILE },
    also: "gjs40018 engjs40018lt gjs40018lt engjs40018rt gjs40018rt ggg403 07043 enjs1025 53103 53104 53105",
  },
  { name: "EN-GJS-350-22", groups: { PN: EN_DUCTILE }, also: "gjs35022 engjs35022lt gjs35022lt ggg353" },
  { name: "EN-GJS-500-7", groups: { PN: EN_DUCTILE_500 }, also: "gjs5007 engjs500 gjs500 ggg50 07050 enjs1050 53200" },
  { name: "EN-GJS-600-3", groups: { PN: EN_DUCTILE_500 }, also: "gjs6003 engjs600 gjs600 ggg60 07060 enjs1060 53201" },
  {
    name: "grey iron",
    groups: { class: "A126 Class B", PN: EN_GREY },
    takenAs: { class: "ASTM A126 Class B", PN: EN_GREY },
    also: "castiron ci greycastiron",
  },
  { name: "A126", groups: { class: "A126 Class B" }, takenAs: { class: "ASTM A126 Class B" }, also: "" },
  { name: "A126 Class B", groups: { class: "A126 Class B" }, also: "a126b a126greyironclassb" },
  { name: "A126 Class A", groups: { class: "A126 Class A" }, also: "a126a a126greyironclassa" },
  // A48 castings of no stated class, or of 20 and 25, may be weaker than A126 Class B (31 ksi): Class A (21 ksi).
  {
    name: "A48",
    groups: { class: "A126 Class A" },
    ratedAs: { class: "ASTM A126 Class A" },
    also: "a4820 a4820b a4825 a4825b",
  },
  {
    name: "A48 Class 30",
    groups: { class: "A126 Class B" },
    ratedAs: { class: "ASTM A126 Class B" },
    also: "a4830 a4830b a4835 a4835b a4840 a4840b f12101 greyiron30",
  },
  { name: "EN-GJL-250", groups: { PN: EN_GREY }, also: "gjl250 gg25 06025 enjl1040 51301" },
  {
    name: "carbon steel",
    groups: { class: "1.1", PN: "3E0" },
    takenAs: { class: "group 1.1 (A216 WCB, A105)", PN: "group 3E0 (P245GH, GP240GH)" },
    also: "steel caststeel castcarbonsteel forgedsteel forgedcarbonsteel",
  },
  {
    name: "WCB",
    groups: { class: "1.1", PN: "3E0" },
    takenAs: { PN: WITHOUT_3E1 },
    also: "a216 a216wcb 11 group11 j03002",
  },
  { name: "A105", groups: { class: "1.1", PN: "3E0" }, also: "a105n" },
  { name: "P245GH", groups: { PN: "3E0" }, also: "10352 p250gh 10460 3e0 group3e0" },
  { name: "GP240GH", groups: { PN: "3E0" }, also: "10619 gsc25" },
  { name: "P280GH", groups: { PN: "3E0" }, takenAs: { PN: WITHOUT_3E1 }, also: "10426 p295gh 10481" },
  { name: "WCC", groups: { class: "1.2" }, also: "a216wcc 12 group12" },
  { name: "LCC", groups: { class: "1.2" }, also: "a352lcc" },
  {
    name: "304",
    groups: { class: "2.1", PN: "11E0" },
    also: "f304 a182f304 304stainless 304stainlesssteel stainlesssteel304 stainless304 14301 21 group21 11e0 group11e0",
  },
  { name: "CF8", groups: { class: "2.1", PN: "11E0" }, also: "a351cf8 a743cf8 a744cf8 304cast cast304 14308 j92600" },
  {
    name: "304L",
    groups: { class: "2.3", PN: "10E0" },
    also: "f304l a182f304l 304lstainless 304lstainlesssteel stainlesssteel304l stainless304l 14307 14306 10e0 group10e0",
  },
  { name: "321", groups: { PN: "12E0" }, also: "347 14541 14550 14552 12e0 group12e0" },
  {
    name: "316",
    groups: { class: "2.2", PN: "14E0" },
    also: "f316 a182f316 316stainless 316stainlesssteel stainlesssteel316 stainless316 14401 14436 22 group22 14e0 group14e0",
  },
  {
    name: "CF8M",
    groups: { class: "2.2", PN: "14E0" },
    also: "a351cf8m a743cf8m a744cf8m a743a744a351cf8m 316cast cast316 cast316stainless 14408 j92900",
  },
  {
    name: "CF3M",
    groups: { class: "2.2", PN: "13E0" },
    takenAs: { PN: "group 13E0 (316L)" },
    also: "a351cf3m cast316l 14409",
  },
  {
    name: "316L",
    groups: { class: "2.3", PN: "13E0" },
    also: "f316l a182f316l 316lstainless 316lstainlesssteel stainlesssteel316l stainless316l 14404 14432 14435 23 group23 13e0 group13e0",
  },
  { name: "316Ti", groups: { PN: "15E0" }, also: "14571 14580 14581 15e0 group15e0" },
  {
    name: "duplex",
    groups: { class: "2.8", PN: "16E0" },
    takenAs: { PN: "group 16E0 (1.4462)" },
    also: "duplexstainless duplexstainlesssteel 2205 s31803 f51 a182f51 superduplex 2507 s32750 f53 a182f53 s32760 f55 a182f55 28 group28",
  },
  { name: "1.4462", groups: { PN: "16E0" }, also: "14362 14470 16e0 group16e0" },
  {
    name: "CD4MCuN",
    groups: { class: "2.8", PN: "16E0" },
    isListingUncertain: true,
    ratedAs: { PN: "1.4470 (16E0)" },
    also: "1b a9951b a8901b a9951bcd4mcun a8901bcd4mcun a995cd4mcun a890cd4mcun a890a9951b castduplexcd4mcun j93372",
  },
  {
    name: "CD4MCu",
    groups: { class: "2.8", PN: "16E0" },
    isListingUncertain: true,
    ratedAs: { PN: "1.4470 (16E0)" },
    also: "1a a8901a a890cd4mcu a351cd4mcu castduplexcd4mcu j93370",
  },
  {
    name: "CN7M",
    groups: { class: "3.17" },
    also: "a351cn7m a743cn7m a744cn7m alloy20 castalloy20 n08007 j95150 317 group317",
  },
  {
    name: "nickel-aluminium bronze",
    groups: {},
    also: "nab c95800 b148 b148c95800 aluminiumbronze",
  },
  { name: "bronze", groups: {}, also: "gunmetal b62 c83600 tinbronze" },
  {
    name: "high-chrome white iron",
    groups: {},
    also: "highchrome highchromeiron hichrome chromeiron whiteiron hcwi a532 a532iiia a532iiitypea 25cr f45009",
  },
  { name: "CA6NM", groups: {}, also: "a743ca6nm cast13cr4ni 13cr4ni 134 j91540 14317" },
  { name: "Ni-resist", groups: {}, also: "a436 a439 austeniticiron niresistd2 d2niresist" },
  { name: "titanium", groups: {}, also: "b367" },
];
