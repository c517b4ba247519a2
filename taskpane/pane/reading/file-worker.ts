import { type FileAsked, readFile } from "../../../shared/file-reading/read-file.ts";
import type { FromWorker } from "./messages.ts";

// Reads files in a thread of its own, so that the page stays alive and the user can break it off.

interface Scope {
  postMessage(message: FromWorker): void;
  onmessage: ((event: { readonly data: FileAsked }) => void) | null;
}

const scope = self as unknown as Scope;
scope.onmessage = ({ data }) => {
  const answer = readFile(data, (share) => scope.postMessage({ share }));
  scope.postMessage({ answer });
};
