/** A part of the pane that draws itself, once it has been loaded. */
export interface Part<S> {
  /** What the pane lends it has changed. */
  readonly update: (surroundings: S) => void;
}

interface Place<S> {
  surroundings: S;
  isOpen: boolean;
  part?: Part<S>;
}

/** Where a part that few need stands in the pane. It is loaded when it is first opened, and kept. */
export interface LaterPart<S> {
  /** For every drawing of the pane. */
  readonly lend: (element: HTMLElement, surroundings: S) => void;
  readonly open: (element: HTMLElement) => Promise<void>;
}

/** @param notLoaded said in its place where it cannot be loaded; opening it again tries once more */
export function laterPart<S>(
  load: () => Promise<(element: HTMLElement, surroundings: S) => Part<S>>,
  notLoaded: string,
): LaterPart<S> {
  const places = new WeakMap<Element, Place<S>>();
  return {
    lend: (element, surroundings) => {
      const place = places.get(element);
      if (place === undefined) places.set(element, { surroundings, isOpen: false });
      else {
        place.surroundings = surroundings;
        place.part?.update(surroundings);
      }
    },
    open: async (element) => {
      const place = places.get(element);
      if (place === undefined || place.isOpen) return;
      place.isOpen = true;
      try {
        const mount = await load();
        element.replaceChildren();
        place.part = mount(element, place.surroundings);
      } catch {
        element.textContent = notLoaded;
        place.isOpen = false;
      }
    },
  };
}
