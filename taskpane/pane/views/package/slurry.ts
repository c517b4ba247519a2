import { fieldsOf } from "../../../../shared/duty/fields.ts";
import { settlingRuns } from "../../../../shared/package/settling.ts";
import { settlingBars } from "../../pictures/settling-bars.ts";
import { packageStep } from "./package-step.ts";

export const slurry = packageStep({
  key: "slurry",
  title: "Slurry",
  fields: fieldsOf("slurry"),
  picture: (duty, width) => {
    const runs = settlingRuns(duty);
    return runs === undefined ? undefined : settlingBars(runs, duty.unitSet, width);
  },
  missing:
    "State solids by weight, SG of the dry solids and d50: settling, friction and the pump's loss of head are then worked out.",
  caution:
    "Each fit scatters by 25 to 30 %: have the slurry tested before a line or pump is bought. Flush before every stop.",
});
