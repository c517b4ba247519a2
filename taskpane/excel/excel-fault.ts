import { faultSentence, HostFault } from "../../shared/ports/host-fault.ts";

/** What Excel's codes mean for somebody who reads or writes sheets, and what would do. */
const KNOWN: Readonly<Record<string, readonly [what: string, remedy: string]>> = {
  AccessDenied: [
    "Excel refused it: the workbook or the sheet is protected, or open for reading only.",
    "Take the protection off (Review, Protect Workbook or Unprotect Sheet), or save a copy of your own, and try again.",
  ],
  InvalidOperationInCellEditMode: ["A cell is being edited.", "Press Enter or Esc to leave the cell and try again."],
  ItemAlreadyExists: ["Another sheet took the name meanwhile.", "Try again: the sheets then take the next free name."],
  ItemNotFound: [
    "A sheet or a name that was to be read is no longer there.",
    "Look at the tabs of the workbook: bring it back, or write the sheets again.",
  ],
  RequestPayloadSizeLimitExceeded: [
    "The sheets are larger than this Excel takes at once.",
    "Open the workbook in Excel on the desktop and write them there.",
  ],
  ServiceNotAvailable: ["Excel does not answer at present.", "Wait a minute and try again."],
};

/** What Excel, or its library, failed with, in words; its own sentence where the code is none of the known. */
export function excelFault(fault: unknown): HostFault {
  if (fault instanceof HostFault) return fault;
  const code = typeof fault === "object" && fault !== null && "code" in fault ? String(fault.code) : "";
  const [what, remedy] = KNOWN[code] ?? [
    `Excel stopped: ${faultSentence(fault)}`,
    "Try it once more; if it fails again, save the workbook, close and open it, and try there.",
  ];
  return new HostFault(what, remedy, { cause: fault });
}

/** The same call, whose failure is said in words. */
export async function told<T>(call: () => Promise<T>): Promise<T> {
  try {
    return await call();
  } catch (fault) {
    throw excelFault(fault);
  }
}
