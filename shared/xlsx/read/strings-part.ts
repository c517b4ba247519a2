import { readCellText } from "../xml-text.ts";
import type { Archive } from "./archive.ts";
import type { Limits } from "./limits.ts";
import { refuse } from "./refusal.ts";
import { checkText, withinText } from "./text-length.ts";
import { readPart } from "./xml-part.ts";

const A_TEXT = (): string => "A text of the workbook";

/** The texts that cells call by number. Runs of rich text are joined; readings of East Asian words are left out. */
export function readStrings(archive: Archive, path: string | undefined, limits: Limits): readonly string[] {
  const strings: string[] = [];
  if (path === undefined || !archive.has(path)) return strings;
  let text = "";
  let inText = false;
  let readings = 0;
  readPart(
    archive,
    path,
    {
      open: (name) => {
        if (name === "si") text = "";
        else if (name === "rPh") readings += 1;
        else if (name === "t" && readings === 0) inText = true;
      },
      text: (piece) => {
        if (!inText) return;
        text += piece;
        checkText(text, A_TEXT, limits);
      },
      close: (name) => {
        if (name === "t") inText = false;
        else if (name === "rPh") readings -= 1;
        else if (name === "si") {
          if (strings.length >= limits.strings)
            refuse("too-large", `The workbook has more than ${limits.strings} texts.`);
          strings.push(withinText(readCellText(text), A_TEXT, limits));
        }
      },
    },
    limits,
  );
  return strings;
}
