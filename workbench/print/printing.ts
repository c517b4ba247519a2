import "./print.css";
import type { Paper } from "../../shared/ports/sheet-spec.ts";
import { textWidth } from "../../shared/ports/text-width.ts";
import type { Wait } from "../files.ts";
import type { PageGrid } from "../page-grid.ts";
import type { Strip } from "../strip.ts";
import { pagesMarkup } from "./page-markup.ts";
import { pagesOf } from "./pages.ts";
import { seenSheet } from "./seen-sheet.tsx";

export interface Printing {
  /** Hands the sheet in front to the browser's print dialogue, once it is calculated. */
  readonly print: () => Promise<void>;
}

interface Services {
  readonly wait: Wait;
  readonly say: Strip["say"];
  readonly fileName: () => string;
}

const WAIT = '<p class="print-wait">The sheet is still being calculated: print it again in a moment.</p>';

/** Prints the sheet in front as it defines it, from our button and from the browser's own command. */
export function startPrinting(place: HTMLElement, grid: PageGrid, { wait, say, fileName }: Services): Printing {
  const { host } = grid;
  const size = document.createElement("style");
  document.head.append(size);
  place.style.fontFamily = FONT;
  let words: string | undefined;

  const fill = (): void => {
    words = undefined;
    if (!host.isSettled()) {
      place.innerHTML = WAIT;
      return;
    }
    const sheet = seenSheet(grid, host);
    const pages = pagesOf(sheet, usualPaper(navigator.language));
    const now = new Date();
    const facts = {
      file: fileName(),
      date: now.toLocaleDateString(),
      time: now.toLocaleTimeString(),
      letters: letterScale(),
    };
    size.textContent = `@page { size: ${pages.paper} ${pages.isLandscape ? "landscape" : "portrait"}; margin: 0 }`;
    place.innerHTML = pagesMarkup(sheet, pages, facts);
    const count = pages.rows.length === 1 ? "1 page" : `${pages.rows.length} pages`;
    words = `“${sheet.name}” was handed to the browser to print: ${count}, ${pages.paper}. Leave margins at “Default” and scale at 100 there.`;
  };
  const clear = (): void => {
    place.replaceChildren();
  };
  window.addEventListener("beforeprint", fill);
  window.addEventListener("afterprint", clear);

  return {
    print: async () => {
      while (!host.isSettled())
        if (!(await wait("Waiting for the calculation to end …", host.settled()))) {
          say("Nothing was printed.");
          return;
        }
      window.print();
      if (words !== undefined) say(words);
    },
  };
}

/** Arial, or what is as wide. */
const FONT = 'Arial, Helvetica, "Liberation Sans", "Nimbus Sans", sans-serif';
/** A text with letters as they come. */
const SPECIMEN = "Static head 76.00 ft; NPSH margin and the maximum shaft power of all states, 1,235.3 US gpm";

/** Heights and widths of a sheet are those of Arial: where a machine has only wider letters they are set smaller. */
function letterScale(): number {
  const pen = document.createElement("canvas").getContext("2d");
  if (pen === null) return 1;
  pen.font = `100px ${FONT}`;
  return Math.min(1, textWidth(SPECIMEN, { size: 100 }) / pen.measureText(SPECIMEN).width);
}

/** Where a sheet names no paper (CLDR, territories of US Letter). */
const LETTER = /-(US|CA|MX|BZ|CL|CO|CR|GT|NI|PA|PH|PR|SV|VE)\b/i;

function usualPaper(language: string): Paper {
  return LETTER.test(language) ? "Letter" : "A4";
}
