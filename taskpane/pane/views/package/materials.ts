import { packageStep } from "./package-step.ts";

export const materials = packageStep({
  key: "materials",
  title: "Materials",
  fields: ["pH", "chlorides", "solidsHardness"],
  missing: "State the pH: nothing is ranked on a guess. Temperature, chlorides and solids count too.",
  caution: "Rules of thumb for a first choice: have every wetted part confirmed by the maker and a corrosion engineer.",
});
