import type { FunctionHost } from "../../functions/register.ts";
import { type OfficeAnswer, type OfficeRequest, officePage } from "./office-library.ts";

/** What Excel would be sent for one call. */
export interface CalcAnswer {
  readonly ok: boolean;
  /** The value, or the words of a refusal. */
  readonly value: unknown;
  /** Excel's number for the error value: 1 for #N/A, 7 for #VALUE! … as the library gives it. */
  readonly code?: number;
}

/** An error value in a cell, as Excel hands it to a function. */
export function errorCell(code: string): object {
  return { code, type: "CustomFunctionError" };
}

/** The same where data types are on. */
export function errorDataType(code: string): object {
  return { type: "Error", basicType: "Error", basicValue: code };
}

interface Bridge {
  readonly sendMessageToHost: (message: string) => void;
  onMessageFromHost: ((message: string) => void) | null;
}

type SentResult = readonly [id: number, ok: boolean, value: unknown, code?: number];

/** Error cells reach the function, and data types too, as functions.json asks. */
const CALL_FLAGS = 4 + 8;

/** Sends calls through the maker's own runtime for custom functions and reads back what Excel would be sent. */
export class CalcHost {
  readonly functions: FunctionHost;
  readonly #bridge: Bridge = { sendMessageToHost: () => undefined, onMessageFromHost: null };
  readonly #waiting = new Map<number, (answer: CalcAnswer) => void>();
  #next = 0;

  constructor() {
    const window = officePage(["office.js", "excel-web-16.00.js"], (request) => this.#receive(request));
    const library = window as unknown as {
      readonly CustomFunctions: FunctionHost;
      readonly OfficeExtension: { readonly HostBridge: { init(bridge: Bridge): void } };
    };
    library.OfficeExtension.HostBridge.init(this.#bridge);
    this.functions = library.CustomFunctions;
  }

  /** One batch, as Excel sends a recalculation. The arguments are those declared, in order; null where left out. */
  calculate(calls: readonly (readonly [name: string, args: readonly unknown[]])[]): Promise<readonly CalcAnswer[]> {
    const ids = calls.map(() => this.#next++);
    const answers = ids.map((id) => new Promise<CalcAnswer>((resolve) => this.#waiting.set(id, resolve)));
    const entries = calls.map(([name, args], i) => {
      const call = [ids[i], name, args.map(packed), "Sheet1!A1", CALL_FLAGS];
      return [1, 1000, "", call, null];
    });
    this.#bridge.onMessageFromHost?.(JSON.stringify({ type: 3, message: { entries } }));
    return Promise.all(answers);
  }

  #receive({ Actions }: OfficeRequest): OfficeAnswer {
    for (const { Name, ArgumentInfo } of Actions) {
      if (Name !== "SetInvocationArrayResults") continue;
      for (const [id, ok, value, code] of (ArgumentInfo?.Arguments?.[0] ?? []) as readonly SentResult[]) {
        this.#waiting.get(id)?.({ ok, value, ...(ok || code === undefined ? {} : { code }) });
        this.#waiting.delete(id);
      }
    }
    const Results = Actions.map(({ Id }) => ({ ActionId: Id, Value: null }));
    return { ErrorCode: "", ErrorMessage: "", Headers: {}, Body: { Results } };
  }
}

/** Data types travel as text inside an object. */
function packed(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(packed);
  return typeof value === "object" && value !== null ? { value: JSON.stringify(value) } : value;
}
