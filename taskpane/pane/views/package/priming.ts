import { fieldsOf } from "../../../../shared/duty/fields.ts";
import { risingWater } from "../../../../shared/package/rising-water.ts";
import { risingWaterPicture } from "../../pictures/rising-water.ts";
import { packageStep } from "./package-step.ts";

export const priming = packageStep({
  key: "priming",
  title: "Priming",
  fields: fieldsOf("priming"),
  elsewhere: "Solids by weight are stated under Slurry.",
  picture: (duty, width) => {
    const water = risingWater(duty);
    return water === undefined ? undefined : risingWaterPicture(water, duty.unitSet, width);
  },
  missing: "The pump stands at or below its liquid: it is flooded and needs no priming.",
  caution: "Hot or volatile liquid, and places where gas may burn, need their own check before any priming device.",
});
