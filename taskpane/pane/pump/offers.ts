import { type RankingView, USUAL_RANKING_VIEW } from "../../../shared/pump-table/ranking-table.ts";
import type { Finding } from "../../../src/basis/result.ts";
import { type Candidates, candidateNamed } from "./candidates.ts";

/** Where pumps are read from, how that goes, and which are laid side by side. No part of the duty. */
export interface Offers {
  /** Sheets and ranges as typed; blank for every sheet that has the headings. */
  readonly places: string;
  readonly candidates: Candidates | undefined;
  readonly reading: Reading;
  /** Names of pumps to compare, in the order they were picked. */
  readonly compared: readonly string[];
  /** How the table of the ranking is sorted and filtered. */
  readonly view: RankingView;
  /** Name of the pump whose row is open. */
  readonly openRow: string | undefined;
  /** The table is loaded when it is first shown: whether that went wrong. */
  readonly table: "wanted" | "loaded" | "not loaded";
}

export type Reading =
  | { readonly kind: "idle" }
  | {
      readonly kind: "busy";
      readonly what: string;
      /** Breaks it off, where that can be done. */
      readonly stop?: AbortController;
      /** From 0 to 1, where that is known. */
      readonly share?: number;
    }
  /** Sheets that were added on the way. */
  | { readonly kind: "read"; readonly sheets: readonly string[] }
  | { readonly kind: "failed"; readonly reason: string; readonly findings: readonly Finding[] };

export type OffersEvent =
  | { readonly type: "places-typed"; readonly text: string }
  | { readonly type: "offers-asked"; readonly what: string; readonly stop?: AbortController }
  | { readonly type: "offers-progress"; readonly share: number }
  | {
      readonly type: "offers-read";
      readonly candidates: Candidates;
      readonly sheets?: readonly string[];
    }
  | { readonly type: "offers-failed"; readonly reason: string; readonly findings: readonly Finding[] }
  | { readonly type: "compared"; readonly name: string; readonly isCompared: boolean }
  | { readonly type: "ranking-viewed"; readonly view: Partial<RankingView> }
  | { readonly type: "ranking-row-opened"; readonly name: string | undefined }
  | { readonly type: "ranking-table"; readonly table: Offers["table"] };

export const MOST_COMPARED = 4;

export const NO_OFFERS: Offers = {
  places: "",
  candidates: undefined,
  reading: { kind: "idle" },
  compared: [],
  view: USUAL_RANKING_VIEW,
  openRow: undefined,
  table: "wanted",
};

/** The offers after an event. A reading that fails leaves the pumps read before. */
export function nextOffers(offers: Offers, event: OffersEvent): Offers {
  switch (event.type) {
    case "places-typed":
      return { ...offers, places: event.text };
    case "offers-asked":
      return { ...offers, reading: { kind: "busy", what: event.what, ...(event.stop && { stop: event.stop }) } };
    case "offers-progress":
      return offers.reading.kind === "busy"
        ? { ...offers, reading: { ...offers.reading, share: event.share } }
        : offers;
    case "offers-read": {
      const { candidates, sheets = [] } = event;
      const compared = offers.compared.filter((name) => candidateNamed(candidates, name) !== undefined);
      return { ...offers, candidates, compared, openRow: undefined, reading: { kind: "read", sheets } };
    }
    case "offers-failed":
      return { ...offers, reading: { kind: "failed", reason: event.reason, findings: event.findings } };
    case "compared": {
      const others = offers.compared.filter((name) => name !== event.name);
      if (!event.isCompared) return { ...offers, compared: others };
      if (others.length >= MOST_COMPARED) return offers;
      return { ...offers, compared: [...others, event.name] };
    }
    case "ranking-viewed":
      return { ...offers, view: { ...offers.view, ...event.view } };
    case "ranking-row-opened":
      return { ...offers, openRow: event.name };
    case "ranking-table":
      return { ...offers, table: event.table };
  }
}
