import type { Duty } from "../../duty/duty.ts";
import { constant, ifError, join, part } from "../expression.ts";
import { waitsFor } from "../package-section.ts";
import { materialsSection } from "../sections/materials.ts";
import { statedParts } from "../sections/stated-parts.ts";
import { isWettedDutyKnown, wettedDutyOf } from "../sections/wetted-duty.ts";
import { type Criterion, openPoint, worded } from "./criterion.ts";

/** What each stated wetted part stands of the liquid: casing, impeller, seal, elastomers, bolts, lines. */
export function materialsCriteria(duty: Duty): readonly Criterion[] {
  const of = "materials";
  const waits = waitsFor(materialsSection, duty);
  if (waits.length > 0) {
    return [worded({ of, state: "open", what: "wetted parts", why: `waits for ${waits.join(", ")}` })];
  }
  const isUnstated = duty.state.casingMaterial === "assumed" || duty.state.casingMaterial === "blank";
  if (!isWettedDutyKnown(wettedDutyOf(duty))) {
    const missing = [...(isUnstated ? (["casingMaterial"] as const) : []), "pH" as const, "makeUp" as const];
    return [openPoint({ of, what: "wetted parts", missing })];
  }
  return [
    ...(isUnstated ? [openPoint({ of, what: "casing", missing: ["casingMaterial"] })] : []),
    ...statedParts(duty).map(({ label, material, record }) =>
      worded({
        of,
        state: part(record, "state"),
        what: join(constant(`${label} `), ifError(material, "unread")),
        why: ifError(part(record, "text"), "not worked out; see its cell"),
      }),
    ),
  ];
}
