import { UNIT_SETS, type UnitSetName } from "../../src/basis/quantities.ts";
import { andThen, type Finding, type Result, succeed } from "../../src/basis/result.ts";
import type { CountedFitting } from "../../src/pipework/fitting.ts";
import { carrying, flowShare, withoutHeader } from "../../src/pipework/flow-share.ts";
import type { Line } from "../../src/pipework/line.ts";
import { climbsBeyondLength, climbsTooFar } from "../../src/pipework/line-levels.ts";
import { pipeNamed } from "../../src/pipework/pipe-name.ts";
import { fittings } from "../catalogue/parameters/fittings.ts";
import { readShort } from "../cells/long-text.ts";
import { decodeField, type Keep, leftOut } from "./decode-field.ts";
import type { DutySegment } from "./duty.ts";
import { type DutyText, type LineKey, placeKey, SEGMENT_COLUMNS, type SegmentText } from "./duty-text.ts";
import { amount, meant } from "./field.ts";
import { LEVEL } from "./fields/bounds.ts";

const LINE_NAMES: Readonly<Record<LineKey, string>> = {
  suctionLine: "suction line",
  dischargeLine: "discharge line",
};

const PIPE = meant((name) => pipeNamed(name), { label: "pipe", required: true, help: 'a name such as "6in sch40"' });

const LENGTH = amount({
  label: "length",
  quantity: "length",
  bounds: { atLeast: 0 },
  required: true,
  help: "the developed length of this run",
});

const END_LEVEL = amount({
  label: "level at its end",
  quantity: "elevation",
  bounds: LEVEL,
  help: "the level of the end of this run",
});

/** What a blank share stands for: each pump has a suction of its own, and all give into one discharge. */
const SHARE_WHEN_BLANK = { suctionLine: "each", dischargeLine: 1 } as const satisfies Record<LineKey, number | "each">;

/** Reads each cell of a line by itself, its shares for so many pumps side by side. */
export function decodeLine(line: LineKey, typed: DutyText, pumps: number, keep: Keep): readonly DutySegment[] {
  const rows = typed[line].map((segment, row) => ({ segment, row })).filter(({ segment }) => !isBlank(segment));
  if (rows.length === 0) {
    const place = placeKey({ line, row: 0, column: "pipe" });
    keep(place, leftOut(LINE_NAMES[line], "one row at least: pipe, length, fittings"));
  }
  return rows.map(({ segment: texts, row }) => {
    const wrong: Finding[] = [];
    const read = <T>(column: keyof SegmentText, result: Result<T>): T | undefined => {
      wrong.push(...result.findings.filter(({ kind }) => kind === "error"));
      return keep(placeKey({ line, row, column }), result);
    };
    const named = withoutHeader(texts.pipe);
    const fitted = withoutHeader(texts.fittings);
    const isHeader = named.isHeader || fitted.isHeader;
    const pipe = read("pipe", decodeField(PIPE, named.text, typed.unitSet));
    const length = read("length", decodeField(LENGTH, texts.length, typed.unitSet));
    const counted = read(
      "fittings",
      readShort(fitted.text, "fittings", (text) => readFittings(text, typed.unitSet)),
    );
    const share = read(
      "share",
      readShort(texts.share ?? "", "share", (text) => readShare(text, line, pumps)),
    );
    const level = read("level", decodeField(END_LEVEL, texts.level ?? "", typed.unitSet));
    const isLevelRead = level !== undefined || (texts.level ?? "").trim() === "";
    const facts = { typed: texts, row, isHeader, wrong };
    if (pipe === undefined || length === undefined || counted === undefined || share === undefined || !isLevelRead) {
      return { ...facts, share, segment: undefined };
    }
    const segment = {
      pipe,
      length,
      fittings: counted,
      ...carrying(share === "each" ? 1 / pumps : share, isHeader),
      ...(level !== undefined && { endLevel: level }),
    };
    return { ...facts, share, segment };
  });
}

/** A share of one in so many pumps on the suction is that of each pump. */
function readShare(given: string, line: LineKey, pumps: number): Result<number | "each"> {
  if (given.trim() === "") return succeed(SHARE_WHEN_BLANK[line]);
  return andThen(flowShare(given, "share"), (share) =>
    succeed(line === "suctionLine" && share !== "each" && pumps > 1 && isSame(share, 1 / pumps) ? "each" : share),
  );
}

/** A share typed to three places. */
function isSame(share: number, other: number): boolean {
  return Math.abs(share / other - 1) <= 0.005;
}

/** Holds the levels of a line against its lengths: a run climbs no more than it is long. */
export function holdClimbs(
  line: LineKey,
  rows: readonly DutySegment[],
  start: number | undefined,
  end: number | undefined,
  keep: Keep,
): readonly DutySegment[] {
  if (rows.every(({ segment }) => segment?.endLevel === undefined)) return rows;
  const path: Line = rows.flatMap(({ segment }) => segment ?? []);
  if (path.length < rows.length) return rows;
  const last = path.length - 1;
  // A last level that is not given is that of the end of the line.
  const whole = path.map((run, row) =>
    row === last && run.endLevel === undefined && end !== undefined ? { ...run, endLevel: end } : run,
  );
  const climbs = new Map(climbsTooFar(whole, start).map((climb) => [climb.row, climb]));
  return rows.map((one, i) => {
    const climb = climbs.get(i);
    if (climb === undefined) return one;
    const wrong = climbsBeyondLength("level at its end", climb);
    keep(placeKey({ line, row: one.row, column: "level" }), { ok: false, findings: [wrong] });
    return { ...one, segment: undefined, wrong: [...one.wrong, wrong] };
  });
}

function readFittings(given: string, unitSet: UnitSetName): Result<readonly CountedFitting[]> {
  if (given.trim() === "") return succeed([]);
  return fittings.read([[given]], { name: "fittings", unitSet, units: UNIT_SETS[unitSet] });
}

function isBlank(segment: SegmentText): boolean {
  return SEGMENT_COLUMNS.every((column) => (segment[column] ?? "").trim() === "");
}
