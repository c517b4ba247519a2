import { html } from "lit";
import type { Step } from "../context.ts";
import { fieldView } from "./field.ts";

const FIELDS = ["project", "customer", "item", "reference", "revision", "preparedBy", "date"] as const;

/** The title block of the sheet. */
export const job: Step = {
  key: "job",
  title: "Job",
  holds: FIELDS,
  brief: ({ state }) => state.duty.fields.item.trim() || state.duty.fields.project.trim(),
  view: (context) => html`${FIELDS.map((key) => fieldView(context, key))}`,
};
