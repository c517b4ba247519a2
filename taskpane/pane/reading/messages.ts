import type { FileAnswer } from "../../../shared/file-reading/read-file.ts";

/** From the worker: how far it has come, and at last the answer. */
export type FromWorker = { readonly share: number } | { readonly answer: FileAnswer };
