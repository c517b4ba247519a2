/** Something that is otherwise in a later duty than in an earlier one, in words; a blank text where nothing stood or stands. */
export interface Change {
  /** "Flow", "Suction line, row 2: length". */
  readonly label: string;
  readonly before: string;
  readonly after: string;
  /** Of prices and costs: for nobody outside the firm. */
  readonly isInternal: boolean;
}

/** "Flow: 1200 US gpm, now 1400 US gpm". */
export function changeText({ label, before, after }: Omit<Change, "isInternal">): string {
  if (before === "") return `${label}: now ${after}`;
  return `${label}: ${before}, now ${after === "" ? "blank" : after}`;
}
