import type { SumpFindings } from "../../../src/basis/finding-code.ts";
import { inWords, type WordsOf } from "../words.ts";

export const sumpWords: WordsOf<keyof SumpFindings> = {
  "submergence-short": (f, say) => {
    const { short, bell, flow } = f.facts;
    const cures = [
      ...(bell === undefined ? [] : [`a bell of ${say.amount(bell)}`]),
      ...(flow === undefined ? [] : [`no more than ${say.amount(flow)}`]),
      "more water over it, or a vortex plate",
    ];
    return `the water stands ${say.amount(f.found)} over the bell and ${say.amount(f.limit)} is needed, ${say.amount(short)} short: a vortex draws air into the pump; what would do: ${inWords(cures)}`;
  },
  "submergence-not-judged": () =>
    "the water over the bell at the lowest level is not stated, so nothing is said of a vortex",
  "bell-velocity-outside": (f, say) =>
    `${f.subject} is ${say.amount(f.found)}; ${say.amount(f.facts.least)} to ${say.amount(f.facts.most)} is usual for this flow, ${say.amount(f.facts.wanted)} best`,
  "submergence-by-velocity": (f, say) =>
    f.facts.needed === undefined
      ? `an older rule goes by the entrance velocity and ends at 5 ft/s (1.52 m/s), below the ${say.amount(f.found)} here`
      : `an older rule, by the entrance velocity of ${say.amount(f.found)}, requires ${say.amount(f.facts.needed)} of water over the inlet`,
  "sump-too-few-levels": (f) => `${f.subject} needs two levels or more, or one plan area for all`,
  "sump-levels-not-ascending": (f, say) =>
    `${f.subject} has a level of ${say.amount(f.found)} after one of ${say.amount(f.facts.before)}; sort the rows from the lowest level up`,
  "sump-not-drawn-down": (f, say) =>
    `an ${f.subject} of ${say.amount(f.found)} is as much as the pumps move at the start level, ${say.amount(f.limit)}: the level does not fall`,
  "sump-level-held": (f, say) =>
    `the level never goes below ${say.amount(f.limit)}: there the pumps move no more than the inflow of ${say.amount(f.facts.inflow)}, so ${say.amount(f.found)} is not reached`,
  "sump-flow-jumps": () =>
    "between these levels the curves cross more than once, and the flow may jump from one crossing to the other: draw down in two steps, or take a pump whose head falls throughout",
  "inflow-taken-as-stopped": () => "no inflow is stated; it is taken as stopped during the test",
  "pump-never-stops": (f, say) =>
    `an ${f.subject} of ${say.amount(f.found)} is not below the ${say.amount(f.limit)} of the pump: it never stops`,
  "sump-short-cycles": (f, say) =>
    `the ${say.amount(f.found)} that run back from the line fill the ${say.amount(f.limit)} between the levels: the pump starts again at once; a check valve, or a larger volume`,
  "sump-unreadable": (f) =>
    `${f.subject} “${f.given}” is not a plan of a sump that is known; write it as ${inWords(f.suggestions ?? [])}`,
  "bell-clearances": (f, say) =>
    `keep the rim ${say.amount(f.facts.floorLeast)} to ${say.amount(f.facts.floorMost)} over the floor and ${say.amount(f.facts.backWall)} from the back wall, in a bay ${say.amount(f.facts.width)} wide; an end high over the floor needs more water over it, and a strainer needs no less`,
};
