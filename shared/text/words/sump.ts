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
      : `an older rule, by the entrance velocity of ${say.amount(f.found)}, asks for ${say.amount(f.facts.needed)} of water over the inlet`,
  "bell-clearances": (f, say) =>
    `keep the rim ${say.amount(f.facts.floorLeast)} to ${say.amount(f.facts.floorMost)} over the floor and ${say.amount(f.facts.backWall)} from the back wall, in a bay ${say.amount(f.facts.width)} wide; an end high over the floor needs more water over it, and a strainer needs no less`,
};
