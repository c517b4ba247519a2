import type { TemplateResult } from "lit";
import type { Duty } from "../../../../shared/duty/duty.ts";
import { fieldsOf } from "../../../../shared/duty/fields.ts";
import { solidsMap } from "../../../../shared/package/solids-map.ts";
import { solidsMapPicture } from "../../pictures/solids-map.ts";
import { packageStep } from "./package-step.ts";

export const materials = packageStep({
  key: "materials",
  title: "Materials",
  fields: fieldsOf("materials"),
  elsewhere: "Solids by weight are stated under Slurry.",
  picture: mapOf,
  missing: "State the pH: nothing is ranked on a guess. Temperature, chlorides and solids count too.",
  caution: "Rules of thumb for a first choice: have every wetted part confirmed by the maker and a corrosion engineer.",
});

function mapOf(duty: Duty, width: number): TemplateResult | undefined {
  const shown = solidsMap(duty);
  return shown === undefined ? undefined : solidsMapPicture(shown, width);
}
