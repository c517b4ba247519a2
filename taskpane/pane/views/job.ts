import { html } from "lit";
import { fieldsOf } from "../../../shared/duty/fields.ts";
import type { Step } from "../context.ts";
import { fieldView } from "./field.ts";

const FIELDS = fieldsOf("job");

/** The title block of the sheet. */
export const job: Step = {
  key: "job",
  title: "Job",
  holds: FIELDS,
  brief: ({ state }) => state.duty.fields.item.trim() || state.duty.fields.project.trim(),
  view: (context) => html`${FIELDS.map((key) => fieldView(context, key))}`,
};
