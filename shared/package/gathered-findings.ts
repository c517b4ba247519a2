import { type Finding, gravestFirst } from "../../src/basis/result.ts";
import { placeLabel } from "../duty/place-label.ts";
import type { WorkedDuty } from "./worked-duty.ts";

/** A finding, and where it was found. */
export interface Gathered {
  readonly finding: Finding;
  /** Boxes and rows it concerns, as they are headed, each once. */
  readonly at: readonly string[];
}

/** What was found in the boxes of a duty and in its calculation: each finding once, the gravest first. */
export function gatheredFindings(
  ofBoxes: Iterable<readonly [place: string, found: readonly Finding[]]>,
  { plan, findings }: WorkedDuty,
): readonly Gathered[] {
  const found = [
    ...[...ofBoxes].map(([place, here]) => ({ at: placeLabel(place), here })),
    ...plan.items.flatMap((item) =>
      item.kind === "finding" ? [{ at: item.label, here: findings.get(item.key) ?? [] }] : [],
    ),
  ];
  const places = new Map<string, Set<string>>();
  for (const { at, here } of found) {
    for (const finding of here) {
      const same = JSON.stringify(finding);
      places.set(same, (places.get(same) ?? new Set()).add(at));
    }
  }
  return gravestFirst(found.flatMap(({ here }) => here)).map((finding) => ({
    finding,
    at: [...(places.get(JSON.stringify(finding)) ?? [])],
  }));
}
