/** A line above the grid that stands until it is answered, closed or no longer true. */
export interface Notice {
  readonly text: string;
  readonly kind?: "plain" | "error";
  readonly actions?: readonly { readonly label: string; readonly act: () => void }[];
}

export interface Notices {
  /** One of a key at a time: the latest. */
  readonly show: (key: string, notice: Notice) => void;
  readonly drop: (key: string) => void;
}

export function startNotices(place: HTMLElement): Notices {
  const shown = new Map<string, HTMLElement>();
  const drop = (key: string): void => {
    shown.get(key)?.remove();
    shown.delete(key);
  };
  const button = (label: string, act: () => void): HTMLButtonElement => {
    const made = document.createElement("button");
    made.type = "button";
    made.textContent = label;
    made.addEventListener("click", act);
    return made;
  };
  return {
    drop,
    show: (key, { text, kind = "plain", actions = [] }) => {
      const words = document.createElement("span");
      words.className = "words";
      words.textContent = text;
      if (shown.get(key)?.firstChild?.textContent === text) return;
      drop(key);
      const line = document.createElement("div");
      line.className = `told ${kind}`;
      const close = button("×", () => drop(key));
      close.setAttribute("aria-label", "Close this notice");
      line.append(words, ...actions.map(({ label, act }) => button(label, act)), close);
      shown.set(key, line);
      place.append(line);
    },
  };
}
