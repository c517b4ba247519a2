import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import type { Argument } from "../../shared/cells/cell.ts";
import { SAMPLE_DUTIES } from "../../shared/duty/samples.ts";
import { answerOf } from "../../shared/help/worked-call.ts";

const README = readFileSync("README.md", "utf8").replace(/ +/g, " ");

const LINE: Argument = [["8in suction hose", 30, "1 entrance bell, 2 hose bend"]];
const CELLS: readonly (readonly [formula: string, id: string, args: readonly Argument[]])[] = [
  ['=DUTY.FRICTIONHEAD(1200, "10in HDPE DR17", 1800)', "FRICTIONHEAD", [1200, "10in HDPE DR17", 1800]],
  ["=DUTY.NPSHA(1200, 12, A5:C5, 850)", "NPSHA", [1200, 12, LINE, 850]],
  ['=DUTY.FLANGECLASS("ductile iron", 255, 70)', "FLANGECLASS", ["ductile iron", 255, 70]],
  ['=DUTY.VELOCITY("45 L/s", "DN150 sch40", "SI")', "VELOCITY", ["45 L/s", "DN150 sch40", "SI"]],
];

it.each(CELLS)("the README answers %s as the function does", (formula, id, args) => {
  expect(README).toContain(`| \`${formula}\` | ${answerOf(id, args)} |`);
});

it("the README starts from the first sample by its name", () => {
  expect(README).toContain(`“${SAMPLE_DUTIES[0]?.name}”`);
});
