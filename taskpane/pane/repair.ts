/** Cells of a sheet that stayed as they were. */
export interface NotRepaired {
  readonly sheet: string;
  readonly cells: number;
  readonly isProtected: boolean;
}

export interface RepairReport {
  /** Formulas entered again. */
  readonly repaired: number;
  readonly refused: readonly NotRepaired[];
}

/** A name that no function has, and the one of ours that was meant by it. */
export interface MisspeltName {
  readonly written: string;
  readonly meant: string;
  readonly cells: number;
}

/** Formulas of a workbook that show that a name is not known. */
export interface BrokenFormulas {
  /** Cells that call our functions by their names. */
  readonly cells: number;
  /** What the others call, which the reader has to say yes to. */
  readonly misspelt: readonly MisspeltName[];
}

/** What Excel offers for formulas whose functions it does not know. */
export interface FunctionRepair {
  readonly look: () => Promise<BrokenFormulas>;
  /** Enters those that it read before the functions were there again, or those whose names were misspelt as they were meant; nothing else. */
  readonly repair: (which: "read before" | "misspelt") => Promise<RepairReport>;
}

/** "95 formulas entered again; sheet “Data” is protected: unprotect it and repeat." */
export function repairWords({ repaired, refused }: RepairReport): string {
  if (repaired === 0 && refused.length === 0) return "No DUTY formula of this workbook needs to be entered again.";
  const parts = [
    ...(repaired > 0 ? [`${formulas(repaired)} entered again`] : []),
    ...refused.map(({ sheet, cells, isProtected }) =>
      isProtected
        ? `sheet “${sheet}” is protected (${formulas(cells)}): unprotect it and repeat`
        : `sheet “${sheet}” would not take ${formulas(cells)}: enter them by hand with F2 and Enter`,
    ),
  ];
  const text = parts.join("; ");
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

/** What is offered where cells are found. */
export function offerWords(cells: number): string {
  return cells === 1 ? "1 DUTY formula shows #NAME?." : `${cells} DUTY formulas show #NAME?.`;
}

/** "“FRICTIONHEAD” (2 formulas): DUTY.FRICTIONHEAD?" */
export function misspeltWords({ written, meant, cells }: MisspeltName): string {
  return `“${written}” (${formulas(cells)}): ${meant}?`;
}

function formulas(count: number): string {
  return count === 1 ? "1 formula" : `${count} formulas`;
}
