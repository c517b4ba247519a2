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

/** What Excel offers for formulas of ours that it read before the functions were there. */
export interface FunctionRepair {
  /** How many cells call our functions and show that their name is not known. */
  readonly count: () => Promise<number>;
  /** Enters them again, and nothing else. */
  readonly repair: () => Promise<RepairReport>;
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

function formulas(count: number): string {
  return count === 1 ? "1 formula" : `${count} formulas`;
}
