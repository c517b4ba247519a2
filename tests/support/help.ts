import { readFileSync } from "node:fs";
import { helpFiles, helpPages } from "../../shared/help/help-files.ts";
import type { HelpSources, Raised } from "../../shared/help/raised.ts";
// @ts-expect-error: a module of the build without types
import { raisedFindings } from "../../tools/build/raised-findings.mjs";

/** What the sources tell of findings, as the build reads it. */
export const RAISED: Raised = raisedFindings(process.cwd());

const sources: HelpSources = { raised: RAISED, terms: readFileSync("docs/terms.md", "utf8") };

export const HELP_PAGES = helpPages(sources);
export const HELP_FILES = helpFiles(sources);
