import type { HeadFindings } from "../../../src/basis/finding-code.ts";
import type { WordsOf } from "../words.ts";

export const headWords: WordsOf<keyof HeadFindings> = {
  "line-lossless": (f) => `${f.subject} has no filled rows and is taken to lose no head`,
  "exit-not-counted": (f, say) =>
    `${f.subject} lists no exit, so the velocity head at its outlet, ${say.amount(f.found)}, is not counted; add “1 exit” to its last row, free or submerged alike`,
  "exit-counted-twice": (f) =>
    `${f.subject} counts ${f.facts.exits} exits; the velocity head is lost once, where the liquid leaves the line`,
  "exit-in-suction": (f) =>
    `${f.subject} counts ${f.facts.exits} exits; the liquid leaves a suction line into the pump, where no exit loss arises`,
  "velocity-high": (f, say) =>
    `the velocity in the ${f.subject} reaches ${say.amount(f.found)}, above the usual ${say.amount(f.limit)}`,
  "lay-flat-in-suction": (f) =>
    `${f.subject} holds “${f.given}”, which collapses under vacuum; use suction hose or pipe unless pressure stands over it throughout`,
  "head-leans-on-fall": (f, say) =>
    `${f.subject} with the pressures is ${say.amount(f.found)}: the fall pays part of the losses only while its leg runs full; a line that takes in air or runs part-full requires more head`,
  "total-head-not-positive": (f, say) =>
    `total head is ${say.amount(f.found)}: gravity delivers this flow without a pump`,
  "route-too-short": (f) => `${f.subject} needs at least two rows, its start and its outlet`,
  "chainage-not-increasing": (f, say) =>
    `${f.subject} has a chainage of ${say.amount(f.found)} after one of ${say.amount(f.facts.before)}; chainages must increase from row to row`,
  "route-outlet-level-missing": (f) =>
    `${f.subject} says no level at its outlet; give one in its last row, the outlet or the liquid over it`,
  "route-start-level-missing": (f) =>
    `${f.subject} is a line, which says where each row ends, not where the first starts; give its start level`,
  "levels-interpolated": (f) =>
    `${f.subject}: no level at the end of row ${f.facts.runs}, taken on the slope between its neighbours; a summit inside such a run is not seen`,
  "outlet-levels-differ": (f, say) =>
    `${f.subject} ends at a level of ${say.amount(f.found)} above the ${say.amount(f.limit)} given for the outlet or the liquid over it; that of the line is used: which is right?`,
  "route-pipe-missing": (f) => `${f.subject} names no pipe in its first row; give one, such as “6in sch40”`,
  "route-last-pipe-unused": (f) =>
    `${f.subject} names “${f.given}” in its last row, where no reach starts; a pipe serves from its own row to the next`,
  "route-exit-midway": (f, say) =>
    `${f.subject} lists an exit at chainage ${say.amount(f.facts.chainage)}, before its end; the liquid leaves once, at the last row`,
  "route-steep": (f, say) =>
    `${f.subject} rises or falls by more than its length in plan after chainage ${say.amount(f.facts.chainage)}; check the figures`,
  "route-at-sea-level": () =>
    "vacuum is judged against the atmosphere at sea level; higher up the limits are narrower: head the column “elevation above sea level” where it is that",
  "separation-not-judged": () =>
    "the liquid states no vapour pressure, so column separation is judged against an absolute pressure of zero",
  "column-separation": (f, say) =>
    `at chainage ${say.amount(f.facts.chainage)} the absolute pressure comes to ${say.amount(f.found)}, at or below the vapour pressure of ${say.amount(f.limit)}: the column separates, these results are invalid there, and the pump must be given the head to that summit`,
  "lay-flat-under-vacuum": (f, say) =>
    `at chainage ${say.amount(f.facts.chainage)} “${f.given}” stands under a vacuum of ${say.amount(f.found)}: the hose collapses`,
  "air-release": (f, say) =>
    `at chainage ${say.amount(f.facts.chainage)} the absolute pressure comes to ${say.amount(f.found)}, below ${say.amount(f.limit)}: air comes out of solution and the siphon must not be counted on`,
  "siphon-too-high": (f, say) =>
    `at chainage ${say.amount(f.facts.chainage)} the line stands ${say.amount(f.found)} above its grade line, more than the ${say.amount(f.limit)} up to which a siphon is counted on`,
  "falling-leg-part-full": (f, say) =>
    `the leg that falls from chainage ${say.amount(f.facts.chainage)} has a Froude number of ${say.amount(f.facts.froude)}, below the ${say.amount(f.limit)} that clears it of air: air stays in it and it may run part full, so that the pump sees the summit`,
  "start-head-does-not-fill": (f, say) =>
    `to fill the line over chainage ${say.amount(f.facts.chainage)} at this flow takes a start head of ${say.amount(f.limit)}; ${say.amount(f.found)} was given`,
  "filling-takes-more": (f, say) =>
    `to fill the line over chainage ${say.amount(f.facts.chainage)} at this flow takes a start head of ${say.amount(f.limit)}, more than the ${say.amount(f.found)} of the running line`,
  "air-valve-on-each-run": (f) =>
    `each of the ${f.facts.runs} runs side by side needs ${f.subject} of its own: air and orifice are those of one run`,
  "line-does-not-fill": (f, say) =>
    `the line does not fill: ${f.subject} is ${say.amount(f.found)} short of the head to its summit`,
  "throttle-while-filling": (f, say) =>
    `the empty line lets the ${f.subject} run off its curve at first: throttle it to ${say.amount(f.found)} until the line is filled so far; the time counts on that`,
  "siphons-on": (f, say) =>
    `the outlet lies ${say.amount(f.found)} below the source: the line goes on running by gravity after a stop, which is a flood, unless air gets in at a summit or a valve shuts`,
  "column-separates-on-surge": (f, say) =>
    `${f.subject}: a sudden stop takes the pressure to the vapour pressure, ${say.amount(f.found)}, where the column parts; what it does as it closes again is not bounded here: needs a surge study`,
  "start-head-does-not-deliver": (f, say) =>
    `the grade line ends ${say.amount(f.found)} below the outlet: the start head does not carry this flow there`,
  "start-head-too-high": (f, say) =>
    `the grade line ends ${say.amount(f.found)} above the outlet: at a free outlet the ${f.subject} is too high by it and every pressure shown with it, or the outlet is throttled or under pressure`,
  "hose-beyond-vacuum": (f, say) =>
    `${f.subject}: “${f.given}” stands under a vacuum of ${say.amount(f.found)}; such hose usually stands ${say.amount(f.limit)}: ask its maker, or take hose with a wire helix`,
  "pipe-vacuum-collapses": (f, say) =>
    `${f.subject}: “${f.given}” stands under a vacuum of ${say.amount(f.found)}${f.facts.chainage === undefined ? "" : ` at ${say.amount(f.facts.chainage)}`}; at 73 °F (23 °C) it buckles at ${say.amount(f.limit)} within 50 years and at best at ${say.amount(f.facts.atBest)}, and practice requires twice its vacuum: take a thicker wall, or hold it by COLLAPSEPRESSURE for its duration`,
  "surface-pressure-atmospheric": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is one atmosphere over the air: a surface open to the air is 0; an absolute pressure is written as “14.7 psia” or “1.013 bar(a)”`,
};
