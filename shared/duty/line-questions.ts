import { amount, type Finding } from "../../src/basis/result.ts";
import { unitOf } from "../../src/basis/units.ts";
import { holdsCheckValve as runHoldsCheckValve } from "../../src/pipework/check-valve.ts";
import { doubtedShares } from "../../src/pipework/doubted-shares.ts";
import { type Duty, type DutySegment, pumpsSideBySide } from "./duty.ts";
import type { LineKey, Place } from "./duty-text.ts";

/** What is to be asked about a row of a line, at the box that would answer it. */
export interface LineQuestion {
  readonly place: Extract<Place, { readonly line: LineKey }>;
  readonly finding: Finding;
}

/** What the rows of both lines leave to be asked: whose flow they carry, and which of two levels is right. */
export function lineQuestions(duty: Duty): readonly LineQuestion[] {
  return (["suctionLine", "dischargeLine"] as const).flatMap((line) => [
    ...duty[line].flatMap((one) =>
      shareQuestions(line, one, pumpsSideBySide(duty)).map((finding) => at(line, one, "share", finding)),
    ),
    ...discharged(line, duty),
    ...sideBySideQuestions(line, duty),
    ...levelQuestions(line, duty),
  ]);
}

function at(line: LineKey, { row }: DutySegment, column: "share" | "level", finding: Finding): LineQuestion {
  return { place: { line, row, column }, finding };
}

/** Whether a check valve stands in a row. */
export function holdsCheckValve({ segment }: DutySegment): boolean {
  return segment !== undefined && runHoldsCheckValve(segment);
}

function shareQuestions(line: LineKey, one: DutySegment, pumps: number): readonly Finding[] {
  const { share, isHeader, segment, typed } = one;
  if (pumps === 1 || segment === undefined || share === undefined) return [];
  const facts = { pumps };
  const subject = "share";
  const isSuction = line === "suctionLine";
  const isCommon = share !== "each" && share * pumps > 1;
  const mayBeHeader = !isSuction && share !== "each" && segment.runs !== undefined;
  return [
    ...(isSuction && isShareBlank(one)
      ? [{ code: "share-of-each-assumed", kind: "assumed", subject, facts } as const]
      : []),
    ...(isSuction && isCommon && !isHeader
      ? [{ code: "suction-common-to-pumps", kind: "check", subject, facts } as const]
      : []),
    ...(isCommon && share === 1 && holdsCheckValve(one)
      ? [{ code: "check-valve-common-to-pumps", kind: "check", subject, facts } as const]
      : []),
    ...(mayBeHeader
      ? [
          {
            code: "share-may-be-header",
            kind: "check",
            subject,
            given: (typed.share ?? "").trim(),
            facts: { runs: segment.runs as number, pumps },
          } as const,
        ]
      : []),
  ];
}

/** Asked once, of a discharge line that says nowhere whose flow its rows carry. */
function discharged(line: LineKey, duty: Duty): readonly LineQuestion[] {
  const rows = duty[line];
  const [first] = rows;
  const pumps = pumpsSideBySide(duty);
  if (line === "suctionLine" || first === undefined || pumps === 1 || !rows.every(isShareBlank)) return [];
  return [
    at(line, first, "share", { code: "share-of-all-assumed", kind: "assumed", subject: "share", facts: { pumps } }),
  ];
}

function isShareBlank({ typed }: DutySegment): boolean {
  return (typed.share ?? "").trim() === "";
}

/** Rows typed one below the other that stand side by side. Not while a row cannot be read, nor of rows each pump has. */
function sideBySideQuestions(line: LineKey, duty: Duty): readonly LineQuestion[] {
  const rows = duty[line];
  const sharing = rows.flatMap(({ segment, share, isHeader }) =>
    segment === undefined ? [] : [{ segment, isOnPath: isHeader || share === "each" }],
  );
  if (sharing.length < rows.length) return [];
  const { flow, liquid, temperature } = duty;
  const state = temperature === undefined ? undefined : liquid?.at(temperature);
  const through = flow === undefined || state?.ok !== true ? undefined : { flow, liquid: state.value };
  return doubtedShares(sharing, "share", (i) => (rows[i]?.row ?? i) + 1, through).map(({ row, finding }) =>
    at(line, rows[row] as DutySegment, "share", finding),
  );
}

/** Levels of a line may differ from that of its end by so much, as they are read off different drawings. */
const SAME_LEVEL = { US: 0.1 * unitOf("ft").factor, other: 0.03 };
const ROUNDING = 1e-9;

function levelQuestions(line: LineKey, duty: Duty): readonly LineQuestion[] {
  const rows = duty[line];
  const given = rows.map(({ segment }) => segment?.endLevel);
  const last = rows.at(-1);
  if (last === undefined || given.every((level) => level === undefined)) return [];
  const end = line === "suctionLine" ? duty.pumpLevel : duty.deliveryLevel;
  const lastLevel = given.at(-1);
  const within = (duty.unitSet === "US" ? SAME_LEVEL.US : SAME_LEVEL.other) + ROUNDING;
  const subject = "level at its end";
  const isOff = (level: number, from: number): boolean => {
    const isUnderLiquid = line === "dischargeLine" && duty.outlet === "submerged" && level < from;
    return !isUnderLiquid && Math.abs(level - from) > within;
  };
  const blank = rows.filter((_, row) => row < rows.length - 1 && given[row] === undefined);
  return [
    ...blank.map((one) => at(line, one, "level", { code: "level-between-assumed", kind: "assumed", subject })),
    ...(lastLevel !== undefined && end !== undefined && isOff(lastLevel, end)
      ? [
          at(line, last, "level", {
            code: "level-not-at-end",
            kind: "check",
            subject,
            found: amount("elevation", lastLevel),
            facts: {
              end: amount("elevation", end),
              box: line === "suctionLine" ? "pump level" : "delivery level",
            },
          }),
        ]
      : []),
  ];
}
