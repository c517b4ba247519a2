import { html } from "lit";
import { fieldsOf } from "../../../shared/duty/fields.ts";
import type { Step } from "../context.ts";
import { fieldsView } from "./fields.ts";

const FIELDS = fieldsOf("station");

/** How many pumps the station has, and how they stand. */
export const station: Step = {
  key: "station",
  title: "Station",
  holds: FIELDS,
  brief: ({ worked: { duty } }) => {
    const { pumpsRunning, pumpsStandby = 0 } = duty;
    if (pumpsRunning === undefined) return "";
    return `${pumpsRunning} running${pumpsStandby === 0 ? "" : `, ${pumpsStandby} standby`}`;
  },
  view: (context) => html`${fieldsView(context, FIELDS)}`,
};
