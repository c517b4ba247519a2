import type { Citation } from "../basis/citation.ts";
import { type Finding, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import type { Line, LineSegment } from "../pipework/line.ts";
import { nominalDiameter } from "../pipework/nominal-size.ts";
import type { Pipe } from "../pipework/pipe.ts";
import { boltOf, boltSizeText } from "../pressure/bolt-size.ts";
import type { FlangeClass } from "../pressure/flange-class.ts";
import { flangeDimensions } from "../pressure/flange-dimensions.ts";
import { wallMaterialOf } from "../pressure/pipe-wall.ts";
import type { RatingSystem } from "../tables/flange-rating-table.ts";
import { HOSE_STOCK, LAY_FLAT_STOCK, PIPE_STOCK, QUICK_CONNECT_STOCK, STOCK_PRACTICE } from "../tables/pipe-stock.ts";
import { changesSize, fittingPart } from "./fitting-part.ts";
import { pipeMass } from "./pipe-mass.ts";

export interface TakeOffInput {
  readonly suctionLine: Line;
  readonly dischargeLine: Line;
  /** Class the flanged joints are bolted to; null where not stated: joints are counted, bolting is not. */
  readonly flangeClass: FlangeClass | null;
  /** Whose stock lengths and flange tables are meant. */
  readonly system: RatingSystem;
}

export interface TakeOffRow {
  readonly line: "suction" | "discharge" | "both";
  readonly item: string;
  readonly size: string;
  /** Net: m where it is a length, otherwise a count. */
  readonly quantity: number;
  readonly isLength: boolean;
  /** To order, allowance and spares in it. */
  readonly order: number;
  /** kg; missing where not known. */
  readonly mass?: number;
  /** kg full of water. */
  readonly filled?: number;
  readonly remark: string;
}

export const takeOffCites: readonly [Citation, ...Citation[]] = [
  STOCK_PRACTICE,
  { source: "asme-b16.5", at: "bolting of Class 150 and 300 flanges" },
  { source: "asme-b36.10m", at: "mass of plain pipe" },
];

/** Spares of bolting and gaskets: common practice, no source. */
const SPARE_STUDS = 0.1;
const SPARE_GASKETS = 0.2;

/** An order of whole pieces is met where it is over by rounding alone. */
const ROUNDING = 1e-9;

/**
 * Bill of quantities of the two lines: pipe in m and pieces, joints, fittings, changes of size, bolting; kg where
 * known. Flanged are the pump nozzle, each change of pipe, and both ends of every valve; bends and tees are joined as
 * the pipe is. Two valves bolted face to face save a joint, which is not seen here. Runs side by side count each, with
 * their fittings; where their number changes a manifold stands between.
 * Warns: cautions take-off-leaves-out (always: supports, anchors, drains, vents, gauges, paint), share-counted-as-runs,
 * take-off-without-class, pipe-mass-not-known, bolting-not-held.
 * Source: common practice; bolting as `flangeDimensions`; mass as `pipeMass`.
 */
export function takeOff(input: TakeOffInput): Result<readonly TakeOffRow[]> {
  const { suctionLine, dischargeLine, flangeClass, system } = input;
  const findings: Finding[] = [
    { code: "take-off-leaves-out", kind: "check", subject: "take-off", cites: STOCK_PRACTICE },
  ];
  if (flangeClass === null) findings.push({ code: "take-off-without-class", kind: "check", subject: "flange class" });
  const joints = new Map<string, Joint>();
  const rows = [
    ...lineRows("suction", suctionLine, system, joints, findings),
    ...lineRows("discharge", dischargeLine, system, joints, findings),
  ];
  return succeed([...rows, ...jointRows([...joints.values()], flangeClass, system, findings)], findings);
}

/** Flanged joints of one size. */
interface Joint {
  readonly size: string;
  readonly inches: number | undefined;
  count: number;
}

function lineRows(
  line: "suction" | "discharge",
  segments: Line,
  system: RatingSystem,
  joints: Map<string, Joint>,
  findings: Finding[],
): readonly TakeOffRow[] {
  const rows: TakeOffRow[] = [];
  const pumpEnd = line === "suction" ? segments.at(-1) : segments[0];
  if (pumpEnd !== undefined) addJoints(joints, pumpEnd.pipe, runsOf(pumpEnd));
  for (const [i, segment] of segments.entries()) {
    const { pipe, share, runs } = segment;
    if (runs !== undefined && share !== undefined) {
      const given = `${pipe.name}, share ${Math.round(share * 1000) / 1000}`;
      findings.push({ code: "share-counted-as-runs", kind: "check", subject: `${line} line`, given, facts: { runs } });
    }
    rows.push(...pipeRows(line, segment, system, findings), ...fittingRows(line, segment, joints));
    const next = segments[i + 1];
    if (next === undefined) continue;
    const change = changeOf(line, segment, next);
    if (change !== undefined) rows.push(change);
    const [here, beyond] = [runsOf(segment), runsOf(next)];
    addJoints(joints, pipe, here);
    if (here !== beyond || nominal(pipe) !== nominal(next.pipe)) addJoints(joints, next.pipe, beyond);
  }
  return rows;
}

function runsOf({ runs = 1 }: LineSegment): number {
  return runs;
}

function pipeRows(
  line: TakeOffRow["line"],
  { pipe, length: ofOne, runs = 1 }: LineSegment,
  system: RatingSystem,
  findings: Finding[],
): readonly TakeOffRow[] {
  if (ofOne === 0) return [];
  const length = ofOne * runs;
  const stock = stockOf(pipe);
  const piece = system === "US" ? stock.feet * unitOf("ft").factor : stock.metres;
  const order = length * (1 + stock.allowance);
  const pieces = runs * Math.ceil((order / runs / piece) * (1 - ROUNDING));
  const { empty, water } = pipeMass(pipe);
  if (empty === undefined) {
    findings.push({ code: "pipe-mass-not-known", kind: "check", subject: `${line} line`, given: pipe.name });
  }
  const allowance = stock.allowance === 0 ? "" : `; ${Math.round(stock.allowance * 100)} % for cutting`;
  const of = system === "US" ? `${stock.feet} ft` : `${stock.metres} m`;
  const between = runs * Math.max(0, Math.ceil((ofOne / piece) * (1 - ROUNDING)) - 1);
  const sideBySide = runs === 1 ? "" : `; ${runs} runs side by side`;
  return [
    {
      line,
      item: stock.isHose ? "hose" : "pipe",
      size: pipe.name,
      quantity: length,
      isLength: true,
      order: stock.isHose ? pieces * piece : order,
      ...(empty === undefined ? {} : { mass: empty * length, filled: (empty + water) * length }),
      remark: `${pieces} of ${of}${allowance}${sideBySide}`,
    },
    ...(between === 0
      ? []
      : [count(line, stock.joint, pipe.name, between, between, "between pieces, before cuts for fittings")]),
    ...(stock.isHose ? [count(line, "flanged end for hose", pipe.name, 2 * runs, 2 * runs, "one at each end")] : []),
  ];
}

function fittingRows(
  line: TakeOffRow["line"],
  { pipe, fittings, runs = 1 }: LineSegment,
  joints: Map<string, Joint>,
): readonly TakeOffRow[] {
  const stock = stockOf(pipe);
  return fittings.flatMap(({ fitting, count: ofOne }) => {
    const number = ofOne * runs;
    const part = fittingPart(fitting.name);
    if (!part.isPart || number === 0) return [];
    if (part.joined === "flanged") addJoints(joints, pipe, part.joints * number);
    const remark =
      part.joined === "flanged"
        ? `flanged, ${part.joints} joint${part.joints === 1 ? "" : "s"} each`
        : part.joined === "coupling"
          ? "as the line lists it"
          : part.joints === 0
            ? "a part to be named; its joints are not counted"
            : `${part.joints * number} × ${stock.joint}`;
    return [count(line, fitting.name, pipe.name, number, number, remark)];
  });
}

/** A change of nominal size that no fitting of the line makes, or of the number of runs. */
function changeOf(line: TakeOffRow["line"], from: LineSegment, to: LineSegment): TakeOffRow | undefined {
  const [here, beyond] = [runsOf(from), runsOf(to)];
  if (here !== beyond) {
    const size = `${here} × ${from.pipe.name} to ${beyond} × ${to.pipe.name}`;
    return count(line, "manifold", size, 1, 1, "its loss is in the line only where a fitting stands for it");
  }
  if (nominal(from.pipe) === nominal(to.pipe)) return undefined;
  if ([...from.fittings, ...to.fittings].some(({ fitting }) => changesSize(fitting.name))) return undefined;
  const remark =
    line === "suction"
      ? "flanged both ends; eccentric, flat side up; its loss is not in the line"
      : "flanged both ends; its loss is not in the line";
  return count(line, "reducer", `${from.pipe.name} to ${to.pipe.name}`, here, here, remark);
}

function jointRows(
  joints: readonly Joint[],
  flangeClass: FlangeClass | null,
  system: RatingSystem,
  findings: Finding[],
): readonly TakeOffRow[] {
  return joints.flatMap(({ size, inches, count: number }) => {
    const dn = system === "US" || inches === undefined ? undefined : nominalDiameter(inches);
    const named = dn === undefined ? size : `DN${dn}`;
    const title = flangeClass === null ? named : `${named} ${flangeClass.name}`;
    const joint = count("both", "flanged joint", title, number, number, "two flanges each");
    if (flangeClass === null) return [joint];
    const { size: _, ...plain } = flangeClass;
    const held =
      inches === undefined ? undefined : flangeDimensions({ size: `NPS ${inches}`, drilling: plain, system });
    if (held?.ok !== true) {
      findings.push({ code: "bolting-not-held", kind: "check", subject: "flanged joint", given: title });
      return [joint];
    }
    const { bolts, boltSize, studLength } = held.value;
    const studs = number * bolts;
    const long = studLength === undefined ? "" : ` × ${lengthText(studLength, boltSize)}`;
    const bolt = boltSizeText(boltSize);
    const spareStuds = Math.ceil(studs * (1 + SPARE_STUDS) * (1 - ROUNDING));
    const spareGaskets = Math.ceil(number * (1 + SPARE_GASKETS) * (1 - ROUNDING));
    return [
      joint,
      count(
        "both",
        "stud",
        `${bolt}${long}`,
        studs,
        spareStuds,
        `${bolts} a joint; length for two like steel flanges, others by drawing`,
      ),
      count("both", "nut", bolt, 2 * studs, 2 * spareStuds, "two a stud"),
      count("both", "gasket", title, number, spareGaskets, "flat ring, or full face where the face is flat"),
    ];
  });
}

/** Inch studs are ordered in inches, metric ones in millimetres. */
function lengthText(length: number, boltSize: string): string {
  if (boltOf(boltSize)?.isMetric === true) return `${Math.round(length / unitOf("mm").factor)} mm`;
  return `${Math.round((length / unitOf("in").factor) * 100) / 100} in`;
}

function addJoints(joints: Map<string, Joint>, pipe: Pipe, number: number): void {
  const inches = pipe.nominalInches;
  const size = inches === undefined ? pipe.name : `NPS ${inches}`;
  const held = joints.get(size) ?? { size, inches, count: 0 };
  held.count += number;
  joints.set(size, held);
}

function nominal(pipe: Pipe): number | string {
  return pipe.nominalInches ?? pipe.name;
}

interface Stock {
  readonly feet: number;
  readonly metres: number;
  readonly allowance: number;
  readonly joint: string;
  readonly isHose: boolean;
}

function stockOf(pipe: Pipe): Stock {
  if (pipe.collapsible === true) return { ...LAY_FLAT_STOCK, allowance: 0, isHose: true };
  if (pipe.make?.material === "hose") return { ...HOSE_STOCK, allowance: 0, isHose: true };
  const material = wallMaterialOf(pipe);
  if (pipe.make?.rule === "quick coupling" && material === "steel") return { ...QUICK_CONNECT_STOCK, isHose: false };
  if (material !== undefined && material !== "cast iron") {
    return { ...PIPE_STOCK[material], isHose: false };
  }
  return { ...PIPE_STOCK.steel, joint: "joint of a pipe of unknown make", isHose: false };
}

function count(
  line: TakeOffRow["line"],
  item: string,
  size: string,
  quantity: number,
  order: number,
  remark: string,
): TakeOffRow {
  return { line, item, size, quantity, isLength: false, order, remark };
}
