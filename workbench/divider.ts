import { storedText, storeText } from "../taskpane/pane/browser-storage.ts";

/** The widths of the side pane, px: from the least it is drawn for to half the page. */
export const PANE_WIDTH = { least: 320, usual: 380 } as const;

const STEP = 20;
const KEPT_AS = "dutybook.pane-width";

/** Lets the user set the width of the side pane, by mouse, touch or arrow keys, and remembers it. */
export function startDivider(divider: HTMLElement, layout: HTMLElement): void {
  /** As set last; a page too narrow for it shows less, and all of it once there is room again. */
  let wanted: number = PANE_WIDTH.usual;
  const most = (): number => Math.max(PANE_WIDTH.least, Math.floor(window.innerWidth / 2));
  const shown = (): number => Math.round(Math.min(most(), Math.max(PANE_WIDTH.least, wanted)));
  const show = (): void => {
    layout.style.setProperty("--pane-width", `${shown()}px`);
    divider.setAttribute("aria-valuemax", String(most()));
    divider.setAttribute("aria-valuenow", String(shown()));
    divider.setAttribute("aria-valuetext", `${shown()} pixels`);
  };
  const setWidth = (width: number): void => {
    wanted = width;
    show();
  };
  divider.setAttribute("aria-valuemin", String(PANE_WIDTH.least));
  setWidth(Number(storedText("localStorage", KEPT_AS)) || PANE_WIDTH.usual);
  window.addEventListener("resize", show);

  // Not kept, it is the usual width again next time: nothing to tell.
  const keep = (): void => {
    wanted = shown();
    storeText("localStorage", KEPT_AS, String(wanted));
  };
  divider.addEventListener("keydown", (event) => {
    const to = {
      ArrowLeft: shown() + STEP,
      ArrowRight: shown() - STEP,
      Home: PANE_WIDTH.least,
      End: most(),
    }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    setWidth(to);
    keep();
  });
  divider.addEventListener("pointerdown", (start) => {
    start.preventDefault();
    divider.setPointerCapture(start.pointerId);
    const from = shown();
    const move = (event: PointerEvent): void => setWidth(from + start.clientX - event.clientX);
    divider.addEventListener("pointermove", move);
    divider.addEventListener(
      "lostpointercapture",
      () => {
        divider.removeEventListener("pointermove", move);
        if (shown() !== from) keep();
      },
      { once: true },
    );
  });
  divider.addEventListener("dblclick", () => {
    setWidth(PANE_WIDTH.usual);
    keep();
  });
}
