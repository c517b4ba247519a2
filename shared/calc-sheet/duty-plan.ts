import type { Duty, DutyPump } from "../duty/duty.ts";
import { FIELD_KEYS, FIELDS, type FieldKey, fieldsOf, withoutUse } from "../duty/fields.ts";
import { paperOf } from "../duty/paper.ts";
import { headItems } from "./head-calculation.ts";
import { onceStated } from "./once-stated.ts";
import { type PackageSection, placed, waitsFor } from "./package-section.ts";
import { type CalcSheetPlan, itemsBySheet, type PlanItem, statement } from "./plan.ts";
import { boltingSection } from "./sections/bolting.ts";
import { boosters } from "./sections/boosters.ts";
import { caseCurves } from "./sections/case-curves.ts";
import { hasCaseHours } from "./sections/case-energy.ts";
import { caseInputs } from "./sections/case-inputs.ts";
import { caseResults } from "./sections/case-results.ts";
import { caseFigures, caseRunning } from "./sections/case-states.ts";
import { cautions } from "./sections/cautions.ts";
import { drawnCurves } from "./sections/drawn-curves.ts";
import { driveSection } from "./sections/drive.ts";
import { caseStatesOf } from "./sections/duty-cases.ts";
import { acceptance, dutyRegion } from "./sections/duty-region.ts";
import { dutyStates } from "./sections/duty-states.ts";
import { estimateSection, isInternal } from "./sections/estimate.ts";
import { fieldSection } from "./sections/field.ts";
import { flowLimits } from "./sections/flow-limits.ts";
import { foundList, toVerify } from "./sections/found-lists.ts";
import { materialsSection } from "./sections/materials.ts";
import { hasMoney } from "./sections/money.ts";
import { isNpshTyped, npshMarginRule } from "./sections/npsh.ts";
import { operatingPoint } from "./sections/operating-point.ts";
import { otherPumpInputs } from "./sections/other-pump-inputs.ts";
import { pipeSection } from "./sections/pipe.ts";
import { pressureSection } from "./sections/pressure.ts";
import { primingSection } from "./sections/priming.ts";
import { chosenPump, pumpCurveTable, rangeToCover } from "./sections/pump.ts";
import { pumpFigures } from "./sections/pump-figures.ts";
import { pumpStops } from "./sections/pump-stops.ts";
import { referencesOf } from "./sections/references.ts";
import { findings } from "./sections/remarks.ts";
import { routeSection } from "./sections/route.ts";
import { otherSiphons } from "./sections/route-siphons.ts";
import { settings, settingsUsed } from "./sections/settings.ts";
import { slurrySection } from "./sections/slurry.ts";
import { stationTable } from "./sections/station-states.ts";
import { summary } from "./sections/summary/summary.ts";
import { sumpSection } from "./sections/sump.ts";
import { lineVariants, systemCases } from "./sections/system-cases.ts";
import { speltPlan } from "./spelt-plan.ts";
import { verdictWorkings } from "./verdicts/verdict-items.ts";

/** What turns the pump into a package, in the order of the sheet and of the pane; each part where enough is stated. */
export const PACKAGE_SECTIONS: readonly PackageSection[] = [
  slurrySection,
  sumpSection,
  routeSection,
  pressureSection,
  pipeSection,
  boltingSection,
  driveSection,
  primingSection,
  materialsSection,
  fieldSection,
  estimateSection,
];

/** What a duty comes to: the whole calculation, said once, in reading order, without what only a printed sheet says of it. */
export function dutyCalculation(duty: Duty): CalcSheetPlan {
  // All settings stand ready: to look for those in use takes as long as to work the duty out.
  const items = workedItems(duty, () => fieldsOf("settings"));
  return speltPlan(calculationOf(duty, items), duty);
}

/** What is worked out for a duty, and the workings that it is judged by. */
interface WorkedItems {
  readonly worked: readonly PlanItem[];
  readonly judged: readonly PlanItem[];
}

function workedItems(duty: Duty, settingsIn: (items: readonly PlanItem[]) => readonly FieldKey[]): WorkedItems {
  const judged = verdictWorkings(duty);
  const sections = onceStated([
    ...headItems(duty),
    ...(duty.pump === undefined ? casesStated(duty) : pumpOnTheDuty(duty, duty.pump)),
    ...PACKAGE_SECTIONS.flatMap((section) => placed(section, duty)),
  ]);
  return { worked: [...sections, ...settings(duty, settingsIn([...sections, ...judged])), ...findings(duty)], judged };
}

function calculationOf(duty: Duty, { worked, judged }: WorkedItems): CalcSheetPlan {
  const { item, project, revision, date } = duty.texts;
  return {
    tag: item.trim() || project.trim(),
    title: duty.pump === undefined ? "Duty: total head and suction" : "Duty: total head, suction and pump",
    unitSet: duty.unitSet,
    issue: { project, item, revision, date },
    paper: paperOf(duty),
    items: [...summary(duty, itemsBySheet(worked).duty), ...worked, ...foundList(duty, worked), ...judged],
  };
}

/** The calc sheets of a duty: its calculation, and after it what that rests on, leaves unused and cautions of. */
export function dutyPlan(duty: Duty): CalcSheetPlan {
  const items = workedItems(duty, settingsUsed);
  const { worked } = items;
  const calculation = calculationOf(duty, items);
  const on = itemsBySheet(worked);
  const references = referencesOf(on.duty, duty);
  const ofEstimate = referencesOf(on.estimate, duty, "estimate");
  const unused = fieldsNotUsed(duty, [...worked, ...items.judged]);
  const plan: CalcSheetPlan = {
    ...calculation,
    references: new Map([...references.of, ...ofEstimate.of]),
    items: [
      ...calculation.items,
      ...toVerify(on.duty, duty),
      ...notUsed(
        duty,
        unused.filter(({ key }) => !isInternal(key)),
      ),
      ...references.items,
      ...cautions(duty),
      ...notUsed(
        duty,
        unused.filter(({ key }) => isInternal(key)),
        "estimate",
      ),
      ...ofEstimate.items,
    ],
  };
  return speltPlan(plan, duty);
}

function casesStated(duty: Duty): readonly PlanItem[] {
  return [...caseInputs(duty), ...caseFigures(duty, caseStatesOf(duty))];
}

/** The chosen pump against all that was worked out above. */
function pumpOnTheDuty(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  return [
    ...chosenPump(duty, pump),
    ...rangeToCover(duty),
    ...casesStated(duty),
    ...pumpCurveTable(duty, pump),
    ...otherPumpInputs(duty),
    ...pumpFigures(pump),
    ...(isNpshTyped(duty) ? [] : npshMarginRule(duty)),
    ...drawnCurves(duty, pump),
    ...lineVariants(duty),
    ...otherSiphons(duty),
    ...caseCurves(duty, pump, caseStatesOf(duty)),
    ...caseRunning(duty, caseStatesOf(duty)),
    ...systemCases(duty, pump),
    ...stationTable(duty, pump),
    ...pumpStops(duty, pump),
    dutyStates(duty, pump),
    ...operatingPoint(duty, pump),
    ...flowLimits(duty, pump),
    ...boosters(duty, pump),
    ...dutyRegion(duty, pump),
    ...caseResults(duty, pump),
    ...acceptance(duty, pump),
  ];
}

/** A box that was filled and that nothing on the sheet rests on, with the reason. */
export interface NotUsed {
  readonly key: FieldKey;
  /** A sentence. */
  readonly reason: string;
}

/** Boxes that were filled for nothing: none disappears in silence. */
export function fieldsNotUsed(duty: Duty, items: readonly PlanItem[]): readonly NotUsed[] {
  const stands = new Set(items.flatMap((item) => (item.kind === "input" ? [item.of ?? item.key] : [])));
  const statedSettings = fieldsOf("settings").filter((key) => duty.state[key] === "stated");
  if (statedSettings.length > 0) {
    const used = settingsUsed(items);
    for (const key of statedSettings) if (!used.includes(key)) stands.delete(key);
  }
  // These go in words: on the title block, and beside every amount of money, where there is one.
  const inWords = new Set<FieldKey>([...fieldsOf("job"), ...(hasMoney(duty, items) ? (["currency"] as const) : [])]);
  const ofOne: Reason = { fields: ["stages"], reason: "the pumps do not stand in series" };
  const byCases: Reason = { fields: ["runningHours"], reason: "the cases say how long each of them lasts" };
  const reasons = [
    ...waiting(duty),
    ...(duty.pump === undefined ? [] : [ofOne]),
    ...(hasCaseHours(duty) ? [byCases] : []),
    ...REASONS,
  ];
  return FIELD_KEYS.filter((key) => duty.state[key] === "stated" && !inWords.has(key) && !stands.has(key)).map(
    (key) => {
      const reason = withoutUse(key, duty.texts) ?? reasons.find(({ fields }) => fields.includes(key))?.reason ?? "";
      return { key, reason: sentence(reason) };
    },
  );
}

interface Reason {
  readonly fields: readonly FieldKey[];
  readonly reason: string;
}

/** The boxes of steps that are withheld until another box is mended. */
function waiting(duty: Duty): readonly Reason[] {
  const range = { id: "range", decidedBy: [], isOfPump: true } as const;
  return [range, ...PACKAGE_SECTIONS].flatMap((step) => {
    const waits = waitsFor(step, duty);
    return waits.length === 0 ? [] : [{ fields: fieldsOf(step.id), reason: `waits for ${waits.join(", ")}` }];
  });
}

/** Why the boxes of a step may have no use. */
const REASONS: readonly Reason[] = [
  { fields: fieldsOf("suction"), reason: "no NPSH required is stated, and no pump selected whose curve gives one" },
  { fields: fieldsOf("cases"), reason: "no case is stated, or no pump selected" },
  { fields: fieldsOf("ranking"), reason: "the pumps to choose from are ranked by it, and none of them is selected" },
  { fields: fieldsOf("settings"), reason: "nothing on the sheet rests on it" },
  { fields: fieldsOf("range"), reason: "select a pump: the range is that of its operating point" },
  {
    fields: fieldsOf("estimate"),
    reason:
      "state what goes with it: hours and a selected pump for energy and fuel, a direct cost and a margin for a price, years and a discount rate for the cost of a life",
  },
  ...PACKAGE_SECTIONS.map(({ id, missing }) => ({ fields: fieldsOf(id), reason: missing })),
];

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}${/[.!?]$/.test(text) ? "" : "."}`;
}

/** Those with one reason in one sentence. */
function notUsed(duty: Duty, found: readonly NotUsed[], sheet?: "estimate"): readonly PlanItem[] {
  if (found.length === 0) return [];
  const reasons = new Map<string, string[]>();
  for (const { key, reason } of found)
    reasons.set(reason, [...(reasons.get(reason) ?? []), `${FIELDS[key].label}, ${duty.texts[key].trim()}`]);
  return [
    { kind: "section", id: "notUsed", text: "Stated, but not used", ...(sheet && { sheet }) },
    ...[...reasons].flatMap(([reason, boxes]) =>
      inParts(boxes, IN_ONE_SENTENCE).map((some) => statement(`${some.join("; ")}: ${reason}`)),
    ),
  ];
}

/** Boxes of one sentence: some five lines of the page, which no page end may cut. */
const IN_ONE_SENTENCE = 12;

function inParts<T>(all: readonly T[], most: number): readonly (readonly T[])[] {
  const starts = Array.from({ length: Math.ceil(all.length / most) }, (_, i) => i * most);
  return starts.map((start) => all.slice(start, start + most));
}
