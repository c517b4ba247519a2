import { fieldsOf } from "../../../../shared/duty/fields.ts";
import { powerLadder } from "../../../../shared/package/power-ladder.ts";
import { powerLadderPicture } from "../../pictures/power-ladder.ts";
import { packageStep } from "./package-step.ts";

export const drive = packageStep({
  key: "drive",
  title: "Drive",
  fields: fieldsOf("drive"),
  picture: (duty, width) => {
    const ladder = powerLadder(duty);
    return ladder === undefined ? undefined : powerLadderPicture(ladder, width);
  },
  missing: "Choose a pump whose curve gives efficiency or power.",
  caution:
    "Guard every turning part, lock out before work, and keep exhaust and hot surfaces away from people and fuel.",
});
