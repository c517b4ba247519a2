import { html } from "lit";
import { fieldsOf } from "../../../shared/duty/fields.ts";
import type { StepContent } from "../context.ts";
import { fieldView } from "./field.ts";
import { logoView } from "./logo.ts";
import { revisionHistoryView } from "./revision-history.ts";

const FIELDS = fieldsOf("job");

/** The title block of the sheet. */
export const job: StepContent = {
  brief: ({ state }) => state.duty.fields.item.trim() || state.duty.fields.project.trim(),
  view: (context) =>
    html`${logoView(context)} ${FIELDS.map((key) => fieldView(context, key))} ${revisionHistoryView(context)}`,
};
