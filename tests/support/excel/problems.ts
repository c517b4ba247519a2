/** Why Excel ends a request, as the library hands it on. */
export interface RequestProblem {
  readonly Code: string;
  readonly Message: string;
}

/** Excel's own sentence for each of its codes (the maker's page on the errors of the application-specific APIs; wording near it, from memory). */
const SENTENCES = {
  AccessDenied: "You cannot perform the requested operation.",
  ApiNotFound:
    "The API you are trying to use could not be found. It may be available in a newer version of the application.",
  FormulaLengthExceedsLimit: "The bytecode of the applied formula exceeds the maximum length limit.",
  GeneralException: "There was an internal error while processing the request.",
  InvalidArgument: "The argument is invalid or missing or has an incorrect format.",
  InvalidOperation: "The operation attempted is invalid on the object.",
  InvalidOperationInCellEditMode:
    "Excel is in cell-editing mode. Press ENTER or TAB or select another cell, then try again.",
  ItemAlreadyExists: "The resource being created already exists.",
  ItemNotFound: "The requested resource doesn't exist.",
  MergedRangeConflict: "Cannot complete the operation: the range overlaps merged cells.",
  RequestPayloadSizeLimitExceeded: "The request payload size has exceeded the limit.",
  ResponsePayloadSizeLimitExceeded: "The response payload size has exceeded the limit.",
  ServiceNotAvailable: "The service is unavailable.",
} as const;

export type ProblemCode = keyof typeof SENTENCES;

/** @param detail what was wrong, which Excel itself does not say */
export function problem(Code: ProblemCode, detail: string): RequestProblem {
  return { Code, Message: `${SENTENCES[Code]} (${detail})` };
}

export function invalid(detail: string): RequestProblem {
  return problem("InvalidArgument", detail);
}

/** What this workbook has not learnt yet: a gap of the tests, not of Excel. */
export function unknown(what: string): RequestProblem {
  return problem("ApiNotFound", `the workbook in memory does not know ${what}`);
}
