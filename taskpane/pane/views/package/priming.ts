import { packageStep } from "./package-step.ts";

export const priming = packageStep({
  key: "priming",
  title: "Priming",
  fields: ["airPump", "casingVolume", "solids"],
  missing: "The pump stands at or below its liquid: it is flooded and needs no priming.",
  caution: "Hot or volatile liquid, and places where gas may burn, need their own check before any priming device.",
});
