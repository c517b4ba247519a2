import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { type DOMWindow, JSDOM } from "jsdom";

const require = createRequire(import.meta.url);

export function officeScript(file: string): string {
  return readFileSync(require.resolve(`@microsoft/office-js/dist/${file}`), "utf8");
}

/** What the library's client sends: objects by path, and what to do with them. */
export interface OfficeRequest {
  readonly ObjectPaths: Readonly<Record<string, ObjectPath>>;
  readonly Actions: readonly Action[];
}

export interface ObjectPath {
  /** 1 for the root. */
  readonly ObjectPathType: number;
  readonly Name: string;
  readonly ParentObjectPathId?: number;
  readonly ArgumentInfo?: ArgumentInfo;
}

export interface Action {
  readonly Id: number;
  /** 1 instantiate, 2 query, 3 call a method, 4 set a property. */
  readonly ActionType: number;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly ArgumentInfo?: ArgumentInfo;
  readonly QueryInfo?: QueryInfo;
}

export interface ArgumentInfo {
  readonly Arguments?: readonly unknown[];
  readonly ReferencedObjectPathIds?: readonly (number | null)[];
}

export interface QueryInfo {
  readonly Select?: readonly string[];
  readonly Expand?: readonly string[];
}

export interface OfficeAnswer {
  readonly ErrorCode: string;
  readonly ErrorMessage: string;
  readonly Headers: object;
  readonly Body: unknown;
}

/** How a request came: its size as text, and the library's marks on it. */
export interface SentAs {
  readonly bytes: number;
  readonly flags: number;
}

/**
 * A page in memory with the maker's own library in it, whose requests go to `answer` instead of to Excel. Everything
 * up to the request — proxies, load and sync, argument checks, error objects — is the library's own doing.
 */
export function officePage(
  scripts: readonly string[],
  answer: (request: OfficeRequest, sent: SentAs) => OfficeAnswer | Promise<OfficeAnswer>,
): DOMWindow {
  const page =
    '<!doctype html><head><script src="https://localhost:3000/office/office.js"></script></head><body></body>';
  const { window } = new JSDOM(page, {
    url: "https://localhost:3000/",
    runScripts: "outside-only",
    pretendToBeVisual: true,
  });
  const silent = (): void => undefined;
  Object.assign(window["console"], { log: silent, warn: silent, error: silent, info: silent });
  for (const script of scripts) window.eval(officeScript(script));
  // A private hook of the library; the package is pinned for its sake.
  const { OfficeExtension } = window as unknown as { OfficeExtension: { SessionBase: Record<string, unknown> } };
  OfficeExtension.SessionBase["_overrideSession"] = {
    _resolveRequestUrlAndHeaderInfo: () => Promise.resolve({ url: "https://workbook.test/", headers: {} }),
    _createRequestExecutorOrNull: () => ({
      executeAsync: async (_data: unknown, flags: number, message: { readonly Body: OfficeRequest }) => {
        // The real way is text, so nothing that does not survive it may be relied on.
        const text = JSON.stringify(message.Body);
        return answer(JSON.parse(text) as OfficeRequest, { bytes: Buffer.byteLength(text), flags });
      },
    }),
  };
  return window;
}
