import { ASPUMPED } from "../../catalogue/entries/as-pumped.ts";
import { SLURRYCLASS } from "../../catalogue/entries/slurry-duty.ts";
import type { Duty } from "../../duty/duty.ts";
import { callOf, handles, part, ratio, spillOf } from "../expression.ts";
import { LIQUID } from "../field-handles.ts";
import { type PlanItem, remark, spill } from "../plan.ts";
import { IN_SERIES } from "./drawn-curves.ts";
import { POINT } from "./operating-point.ts";
import { PUMP } from "./pump.ts";

const SLURRY_PUMP = handles({ slurryDutyNotes: null, slurryServiceNotes: null });

/** What the slurry does to a pump known on water, and the class of service the chosen one is for. */
export function slurryOnThePump({ pump }: Duty): readonly PlanItem[] {
  const hasImpeller = pump?.impellerDiameter !== undefined;
  const call = callOf(ASPUMPED, { ...LIQUID, ...(hasImpeller && { impellerDiameter: PUMP.runningDiameter }) });
  return [
    remark(SLURRY_PUMP.slurryDutyNotes, "Head and power on slurry", call),
    ...(pump?.speed !== undefined && hasImpeller ? SERVICE_CLASSES : []),
  ];
}

const SERVICE = spillOf("slurryService", SLURRYCLASS);

const SERVED = callOf(SLURRYCLASS, {
  headPerStage: ratio(POINT.headAtDuty, IN_SERIES),
  impellerDiameter: PUMP.runningDiameter,
  speed: PUMP.runningSpeed,
});

const CLASSES = ["1, light", "2, medium", "3, heavy", "4, very heavy"] as const;

const CLASS_COLUMNS = [
  { key: "tipSpeed", label: "tip speed", quantity: "velocity" },
  { key: "verdict", label: "this pump at the duty flow" },
  { key: "head", label: "maximum head", quantity: "head" },
  { key: "metal", label: "tip speed, metal", quantity: "velocity" },
  { key: "elastomer", label: "elastomer", quantity: "velocity" },
] as const;

const SERVICE_CLASSES: readonly PlanItem[] = [
  spill(SERVICE, "Slurry service classes", SERVED, CLASSES.length + 1),
  {
    kind: "table",
    key: "serviceClasses",
    heading: "service class",
    columns: CLASS_COLUMNS,
    rows: CLASSES.map((label, row) => ({ label, cells: CLASS_COLUMNS.map(({ key }) => part(SERVICE, key, row)) })),
  },
  remark(SLURRY_PUMP.slurryServiceNotes, "Service class", SERVED),
];
