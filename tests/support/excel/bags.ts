import type { Book, Members, NodeOf } from "./node.ts";
import { invalid, unknown } from "./problems.ts";
import { checkOpen } from "./protection.ts";
import { checkSetting } from "./values.ts";

type Bag = NodeOf<"bag">;

/** Parts of parts: the font of a format, the title of an axis. Settings keep the way they came. */
function within(parent: Bag, path: string, prefix: string): Bag {
  return { ...parent, path, set: (key, value) => parent.set(`${prefix}.${key}`, value) };
}

const inside =
  (name: string) =>
  (parent: Bag): Bag =>
    within(parent, name, name);

const EDGES = /^(Edge(Top|Bottom|Left|Right)|Inside(Horizontal|Vertical)|Diagonal(Down|Up))$/;

function border(parent: Bag, [edge]: readonly unknown[]): Bag {
  if (parent.path !== "borders") throw unknown(`${parent.path}.getItem`);
  if (!EDGES.test(String(edge))) throw invalid(`border ${String(edge)}`);
  return within(parent, "border", String(edge));
}

/** Whatever only takes settings. */
export const BAG: Members<"bag"> = {
  steps: {
    font: inside("font"),
    fill: inside("fill"),
    protection: inside("protection"),
    line: inside("line"),
    rule: inside("rule"),
    title: inside("title"),
    format: inside("format"),
    borders: inside("borders"),
    custom: (parent) => ({ ...parent, path: "custom" }),
    "": border,
    getItem: border,
  },
};

/** Any setting of a bag: it is of the kind its part takes, and the sheet may be changed. */
export function setInBag({ sheet, path, set }: Bag, key: string, value: unknown, book: Book): void {
  checkOpen(book, sheet);
  checkSetting(path, key, value);
  set(key, value);
}
