import { storedText, storeText } from "../taskpane/pane/browser-storage.ts";

export const PANE_WIDTH = { least: 320, usual: 380, most: 560 } as const;

const STEP = 20;
const KEPT_AS = "dutybook.pane-width";

/** Lets the user set the width of the side pane, by mouse, touch or arrow keys, and remembers it. */
export function startDivider(divider: HTMLElement, layout: HTMLElement): void {
  let width: number = PANE_WIDTH.usual;
  const setWidth = (wanted: number): void => {
    width = Math.round(Math.min(PANE_WIDTH.most, Math.max(PANE_WIDTH.least, wanted)));
    layout.style.setProperty("--pane-width", `${width}px`);
    divider.setAttribute("aria-valuenow", String(width));
    divider.setAttribute("aria-valuetext", `${width} pixels`);
  };
  divider.setAttribute("aria-valuemin", String(PANE_WIDTH.least));
  divider.setAttribute("aria-valuemax", String(PANE_WIDTH.most));
  setWidth(Number(storedText("localStorage", KEPT_AS)) || PANE_WIDTH.usual);

  // Not kept, it is the usual width again next time: nothing to tell.
  const keep = (): void => {
    storeText("localStorage", KEPT_AS, String(width));
  };
  divider.addEventListener("keydown", (event) => {
    const to = {
      ArrowLeft: width + STEP,
      ArrowRight: width - STEP,
      Home: PANE_WIDTH.least,
      End: PANE_WIDTH.most,
    }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    setWidth(to);
    keep();
  });
  divider.addEventListener("pointerdown", (start) => {
    start.preventDefault();
    divider.setPointerCapture(start.pointerId);
    const from = width;
    const move = (event: PointerEvent): void => setWidth(from + start.clientX - event.clientX);
    divider.addEventListener("pointermove", move);
    divider.addEventListener(
      "lostpointercapture",
      () => {
        divider.removeEventListener("pointermove", move);
        keep();
      },
      { once: true },
    );
  });
  divider.addEventListener("dblclick", () => {
    setWidth(PANE_WIDTH.usual);
    keep();
  });
}
