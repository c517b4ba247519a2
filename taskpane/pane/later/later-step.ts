import type { Step, StepPlace } from "../context.ts";
import { notHereView } from "./not-here.ts";

/** A step whose content is in the part that is loaded after the first screen. */
export function laterStep(place: StepPlace): Step {
  return {
    ...place,
    brief: (context) =>
      typeof context.later === "string" ? "" : (context.later.steps[place.key]?.brief?.(context) ?? ""),
    view: (context) => {
      if (typeof context.later === "string") return notHereView(context, context.later);
      const content = context.later.steps[place.key];
      if (content === undefined) throw new Error(`the step “${place.key}” has no content`);
      return content.view(context);
    },
  };
}
