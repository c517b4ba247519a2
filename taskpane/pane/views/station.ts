import { html } from "lit";
import { fieldsOf } from "../../../shared/duty/fields.ts";
import type { StepContent } from "../context.ts";
import { fieldsView } from "./fields.ts";

const FIELDS = fieldsOf("station");

/** How many pumps the station has, and how they stand. */
export const station: StepContent = {
  brief: ({ worked: { duty } }) => {
    const { pumpsRunning, pumpsStandby = 0 } = duty;
    if (pumpsRunning === undefined) return "";
    return `${pumpsRunning} running${pumpsStandby === 0 ? "" : `, ${pumpsStandby} standby`}`;
  },
  view: (context) => html`${fieldsView(context, FIELDS)}`,
};
