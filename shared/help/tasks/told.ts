import type { Argument } from "../../cells/cell.ts";
import { FIELDS } from "../../duty/fields.ts";
import { type Html, list, type Page, section, steps, table } from "../html.ts";
import { inline } from "../links.ts";
import { shownCall } from "../shown-call.ts";
import { entryOf } from "../worked-call.ts";

/** Titles of the pane's steps that the pages speak of, as the pane writes them. */
export const STEP_TITLES = [
  "Job",
  "Liquid and site",
  "Flow, levels and pressures",
  "Station",
  "Suction line",
  "Discharge line",
  "Head and NPSH",
  "Pump table and ranking",
  "Selected pump",
  "Operating range",
  "Cases",
  "Slurry",
  "Sump and suction bell",
  "Route",
  "Pressure and flanges",
  "Pipe and hose",
  "Flanges and bolting",
  "Drive",
  "Priming",
  "Materials",
  "Field check",
  "Quantities and cost",
  "Settings",
  "To confirm with the customer",
  "Calc sheet",
  "Trace a curve",
] as const;

/**
 * A line of a task page: as `inline`, and {flow} for the pane's box of that key, [[Drive]] for its step of that title.
 * A box or a step that there is not stops the build.
 */
export function told(text: string): Html {
  const named = text
    .replace(/\{(\w+)\}/g, (_, key: string) => {
      const field = (FIELDS as Readonly<Record<string, { readonly label: string }>>)[key];
      if (field === undefined) throw new Error(`no box ${key}`);
      return `**${field.label}**`;
    })
    .replace(/\[\[(.+?)\]\]/g, (_, title: string) => {
      if (!(STEP_TITLES as readonly string[]).includes(title)) throw new Error(`no step ${title}`);
      return `“${title}”`;
    });
  return inline(named);
}

export function para(text: string): Html {
  return `<p>${told(text)}</p>`;
}

export function points(...texts: readonly string[]): Html {
  return list(texts.map(told));
}

export function numbered(...texts: readonly string[]): Html {
  return steps(texts.map(told));
}

export function caution(text: string): Html {
  return `<p class="caution"><strong>Caution.</strong> ${told(text)}</p>`;
}

export function toldTable(caption: string, head: readonly string[], rows: readonly (readonly string[])[]): Html {
  return table(
    caption,
    head,
    rows.map((row) => row.map(told)),
  );
}

/** A call worked out where the page is made. */
export function worked(id: string, asks: string, args: readonly Argument[]): Html {
  return shownCall(entryOf(id), { asks, args });
}

export interface TaskText {
  readonly file: string;
  readonly title: string;
  readonly summary: string;
  readonly words?: readonly string[];
  readonly parts: readonly (readonly [heading: string, ...content: readonly Html[]])[];
}

export function taskPage({ parts, ...facts }: TaskText): Page {
  const main = parts.map(([heading, ...content]) => section(heading, content.join("\n"))).join("\n");
  return { ...facts, kind: "task", main };
}
