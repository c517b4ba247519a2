import type { Citation } from "../basis/citation.ts";
import { amount, type Finding } from "../basis/result.ts";
import { flowIn, type Line, type LineSegment } from "../pipework/line.ts";
import { meanVelocity } from "../pipework/pipe-velocity.ts";
import { velocityHead } from "./velocity-head.ts";

/** Fastest usual velocity in a suction line, m/s (8 ft/s), and in a discharge line, m/s (20 ft/s). */
export const FASTEST_SUCTION = 2.4;
export const FASTEST_DISCHARGE = 6;

const VELOCITY_PRACTICE: Citation = {
  source: "practice",
  at: "suction lines up to 2.4 m/s (8 ft/s), discharge lines up to 6 m/s (20 ft/s)",
};

export const LAY_FLAT_PRACTICE: Citation = {
  source: "practice",
  at: "lay-flat hose collapses under any vacuum and serves above atmospheric pressure alone",
};

/**
 * What a suction line gives cause to say, whatever the level it draws from.
 * Warns: line-lossless, velocity-high above 2.4 m/s, exit-in-suction.
 * Source: common practice.
 */
export function suctionLineRemarks(line: Line, flow: number): readonly Finding[] {
  const subject = "suction line";
  const findings: Finding[] = [...linePresence(line, subject), ...velocityRemark(line, flow, FASTEST_SUCTION, subject)];
  const exits = exitsIn(line);
  if (exits > 0) findings.push({ code: "exit-in-suction", kind: "check", subject, facts: { exits } });
  return findings;
}

/**
 * What a discharge line gives cause to say. The velocity head at its outlet is lost once: a jet or a submerged end.
 * Warns: line-lossless, velocity-high above 6 m/s, exit-not-counted, exit-counted-twice.
 * Source: common practice.
 */
export function dischargeLineRemarks(line: Line, flow: number): readonly Finding[] {
  const subject = "discharge line";
  const findings: Finding[] = [
    ...linePresence(line, subject),
    ...velocityRemark(line, flow, FASTEST_DISCHARGE, subject),
  ];
  const outlet = line.at(-1);
  if (outlet === undefined) return findings;
  const exits = exitsIn(line);
  const found = amount("head", velocityHead(flowIn(outlet, flow), outlet.pipe.bore));
  if (exits === 0) findings.push({ code: "exit-not-counted", kind: "check", subject, found });
  if (exits > 1) findings.push({ code: "exit-counted-twice", kind: "check", subject, facts: { exits } });
  return findings;
}

/** The first collapsible hose of a line. */
export function layFlatIn(line: Line): LineSegment | undefined {
  return line.find(({ pipe }) => pipe.collapsible === true);
}

function linePresence(line: Line, subject: string): readonly Finding[] {
  return line.length === 0 ? [{ code: "line-lossless", kind: "check", subject }] : [];
}

function exitsIn(line: Line): number {
  let exits = 0;
  for (const { fittings } of line) for (const { fitting, count } of fittings) if (fitting.isExit) exits += count;
  return exits;
}

function velocityRemark(line: Line, flow: number, most: number, subject: string): readonly Finding[] {
  const fastest = line.reduce((top, run) => Math.max(top, meanVelocity(flowIn(run, flow), run.pipe.bore)), 0);
  if (!(fastest > most)) return [];
  const found = amount("velocity", fastest);
  const limit = { quantity: "velocity", value: most, side: "at most" } as const;
  return [{ code: "velocity-high", kind: "check", subject, found, limit, cites: VELOCITY_PRACTICE }];
}
