import { acceptanceGradeNamed } from "../../../src/pump/acceptance.ts";
import { ACCEPTANCE_GRADES } from "../../../src/tables/acceptance-grades.ts";
import { amount, meant } from "../field.ts";
import { FLOW, STATIC_HEAD } from "./bounds.ts";

export const range = {
  leastStaticHead: amount({
    label: "Minimum static head",
    quantity: "head",
    bounds: STATIC_HEAD,
    help: "At the highest source and lowest delivery level; the pump runs out furthest here.",
  }),
  greatestStaticHead: amount({
    label: "Maximum static head",
    quantity: "head",
    bounds: STATIC_HEAD,
    help: "At the lowest source and highest delivery level; the pump gives least here.",
  }),
  agedRoughness: amount({
    isSeldom: true,
    label: "Roughness of aged pipe",
    quantity: "size",
    // The bore of the lines decides how much it may be.
    bounds: { above: 0 },
    help: "Absolute roughness after years of use, for the aged end of the range; the lines as stated are the new end.",
  }),
  leastPumpFlow: amount({
    isSeldom: true,
    label: "Maker's minimum flow",
    quantity: "flow",
    bounds: FLOW,
    help: "Minimum continuous flow that the maker states for one pump as it runs, or the start of its allowable region.",
  }),
  greatestPumpFlow: amount({
    isSeldom: true,
    label: "Maker's maximum flow",
    quantity: "flow",
    bounds: FLOW,
    help: "Maximum flow that the maker allows one pump as it runs: the end of its allowable region.",
  }),
  acceptanceGrade: meant((grade) => acceptanceGradeNamed(grade), {
    label: "Acceptance grade",
    choices: ACCEPTANCE_GRADES.map(({ grade }) => grade),
    help: "Grade of ISO 9906 that the pump is bought to, such as 2B; its tolerances widen the operating range.",
  }),
};
