import { noChange } from "lit";
import { Directive, directive, type ElementPart, type PartInfo, PartType } from "lit/directive.js";
import { placeAfter, type Readable, readingAt, readingText } from "./readable.ts";

/**
 * Reads a chart where the pointer is, or where the arrow keys have led: the element lies over the picture, as wide as it,
 * and what is read stands in the `.chart-readout` of its figure. A chart drawn again is read again at the same place, so
 * that no old reading stands beside a new curve. What is read stays when the pointer leaves: nothing below the chart moves
 * away from under it.
 */
class Reader extends Directive {
  #chart: Readable | undefined;
  #at: number | undefined;
  #element: HTMLElement | undefined;

  constructor(part: PartInfo) {
    super(part);
    if (part.type !== PartType.ELEMENT) throw new Error("a chart is read by an element");
  }

  override update({ element }: ElementPart, [chart]: [Readable]): unknown {
    this.#chart = chart;
    if (this.#element !== element) {
      this.#element = element as HTMLElement;
      this.#listen(this.#element);
    }
    this.#show();
    return noChange;
  }

  render(_chart: Readable): unknown {
    return noChange;
  }

  #listen(element: HTMLElement): void {
    element.addEventListener("pointermove", (event) => this.#moveTo(this.#placeOf(event)));
    element.addEventListener("pointerdown", (event) => this.#moveTo(this.#placeOf(event)));
    element.addEventListener("focus", () => this.#moveTo(this.#at ?? this.#chart?.start));
    element.addEventListener("keydown", (event) => {
      if (this.#chart === undefined || event.ctrlKey || event.altKey || event.metaKey) return;
      const next = placeAfter(this.#chart, this.#at ?? this.#chart.start, event.key);
      if (next === undefined) return;
      event.preventDefault();
      this.#moveTo(next);
    });
  }

  #placeOf({ clientX }: PointerEvent): number | undefined {
    if (this.#chart === undefined || this.#element === undefined) return undefined;
    const { x } = this.#chart;
    const { left, width } = this.#element.getBoundingClientRect();
    const [first, last] = x.places;
    // The picture may be drawn smaller than its own measure.
    const place = ((clientX - left) * Number(this.#element.dataset["width"])) / width;
    const part = (place - first) / (last - first);
    return x.ends[0] + part * (x.ends[1] - x.ends[0]);
  }

  #moveTo(at: number | undefined): void {
    this.#at = at;
    this.#show();
  }

  #show(): void {
    const [chart, element] = [this.#chart, this.#element];
    if (chart === undefined || element === undefined) return;
    const reading = readingAt(chart, this.#at ?? chart.start);
    const [least, most] = chart.x.ends;
    element.setAttribute("aria-valuemin", String(least));
    element.setAttribute("aria-valuemax", String(most));
    element.setAttribute("aria-valuenow", String(reading.at));
    element.setAttribute("aria-valuetext", readingText(reading));
    const isRead = this.#at !== undefined;
    element.toggleAttribute("data-read", isRead);
    element.style.setProperty("--at", `${(100 * chart.x(reading.at)) / Number(element.dataset["width"])}%`);
    const readout = element.closest("figure")?.querySelector(".chart-readout");
    if (readout) readout.textContent = isRead ? readingText(reading) : READ_IT;
  }
}

export const READ_IT = "Point at the chart, or use the arrow keys on it, to read values.";

export const reader = directive(Reader);
