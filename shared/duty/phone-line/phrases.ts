import type { Quantity } from "../../../src/basis/quantities.ts";
import type { FieldKey } from "../fields.ts";
import type { Height } from "./said.ts";

/** Words before or behind a figure that say what it is. Common practice of the trade, no source. */
interface Phrase {
  readonly quantity: Quantity;
  readonly before?: RegExp;
  readonly after?: RegExp;
}

/** Figures of one box. */
export const FIELD_PHRASES: readonly (Phrase & { readonly key: FieldKey })[] = [
  { key: "npshMargin", quantity: "head", before: /^npsh margin\b/i, after: /^npsh margin\b/i },
  {
    key: "npshRequired",
    quantity: "head",
    before: /^(?:npsh ?-?r(?:eq(?:uired|'d|d)?\.?)?|npsh3|npsh required|required npsh)(?!\w)/i,
    after: /^(?:npsh ?-?r(?:eq(?:uired|'d|d)?\.?)?|npsh3|npsh required|required npsh)(?!\w)/i,
  },
  {
    key: "altitude",
    quantity: "elevation",
    before: /^(?:site )?(?:altitude|elevation of (?:the )?site)\b|^site elevation\b/i,
    after: /^(?:altitude|site elevation|above (?:mean )?sea level|amsl|asl)\b/i,
  },
  {
    key: "frictionMargin",
    quantity: "percent",
    before: /^(?:friction|loss(?:es)?) margin\b|^margin on (?:the )?(?:friction|loss(?:es)?)\b/i,
    after: /^(?:friction|loss(?:es)?) margin\b|^(?:margin )?on (?:the )?(?:friction|loss(?:es)?)\b/i,
  },
  {
    key: "sourcePressure",
    quantity: "gaugePressure",
    before: /^(?:source pressure|pressure (?:at|in|on) (?:the )?source)\b/i,
    after: /^(?:at|on|in|over) (?:the )?source\b/i,
  },
  {
    key: "deliveryPressure",
    quantity: "gaugePressure",
    before:
      /^(?:delivery pressure|(?:end )?pressure at (?:the )?(?:far end|end|delivery|outlet|nozzle)|(?:delivers |pumps )?against)\b/i,
    after: /^(?:at|on|in|over) (?:the )?(?:far end|end|delivery|outlet|nozzle|header)\b/i,
  },
  {
    key: "solids",
    quantity: "percent",
    before: /^solids by (?:weight|mass)\b/i,
    after: /^(?:solids (?:by )?(?:weight|mass|wt\.?|w\/w)|(?:by )?(?:weight|mass|wt\.?|w\/w) (?:of )?solids)(?!\w)/i,
  },
  {
    key: "solidsByVolume",
    quantity: "percent",
    before: /^solids by vol(?:ume)?\b/i,
    after: /^(?:solids (?:by )?(?:volume|vol\.?|v\/v)|(?:by )?(?:volume|vol\.?|v\/v) (?:of )?solids)(?!\w)/i,
  },
  {
    key: "solidsGravity",
    quantity: "ratio",
    before:
      /^(?:(?:dry )?solids (?:SG|s\.g\.|specific gravity)|(?:SG|specific gravity) of (?:the )?(?:dry )?solids)(?!\w)/i,
  },
  {
    key: "slurryGravity",
    quantity: "ratio",
    before: /^(?:slurry (?:SG|s\.g\.|specific gravity)|(?:SG|specific gravity) of (?:the )?slurry)(?!\w)/i,
  },
  { key: "medianSize", quantity: "size", before: /^d ?50\b/i, after: /^d ?50\b/i },
  { key: "coarseSize", quantity: "size", before: /^d ?85\b/i, after: /^d ?85\b/i },
  { key: "fines", quantity: "percent", before: /^fines\b/i, after: /^fines\b/i },
];

const STATIC = /^(?:total )?static(?: head| lift| height)?\b/i;
const LEVEL_WORDS = "(?: liquid)?(?:(?: surface| level| elevation| el\\.?)+(?: at| is)?| at)";

/** Heights and levels, the words that tell most first. */
export const HEIGHT_PHRASES: readonly (Omit<Phrase, "quantity"> & { readonly kind: Height })[] = [
  {
    kind: "flooded",
    before: /^(?:flooded(?: suction)?(?: by)?|(?:positive |static )?suction head)\b/i,
    after: /^(?:flooded(?: suction)?|(?:positive |static )?suction head)\b/i,
  },
  { kind: "lift", before: /^(?:static )?suction lift\b/i, after: /^(?:static )?suction lift\b/i },
  {
    kind: "rise",
    before: /^(?:(?:then )?up|rises?|rising|uphill|static discharge(?: head)?|discharge static(?: head)?)\b/i,
    after: /^(?:up|rise|uphill|static discharge(?: head)?|discharge static(?: head)?|above (?:the )?pump)\b/i,
  },
  {
    kind: "drop",
    before: /^(?:(?:then )?down|drops?|downhill)\b/i,
    after: /^(?:down|drop|downhill|below (?:the )?pump)\b/i,
  },
  { kind: "static", before: STATIC, after: STATIC },
  { kind: "either", before: /^lift(?:s|ing)?\b/i, after: /^lift\b/i },
  {
    kind: "source level",
    before: new RegExp(
      `^(?:source|(?:water|sump|suction|pond|pit|river|lake|intake)(?=${LEVEL_WORDS}))(?:${LEVEL_WORDS})?(?!\\w)`,
      "i",
    ),
  },
  {
    kind: "pump level",
    before: new RegExp(`^pump(?: centre ?line| center ?line| shaft)?(?:${LEVEL_WORDS})?(?!\\w)`, "i"),
  },
  {
    kind: "delivery level",
    before: new RegExp(
      `^(?:delivery|(?:discharge|outlet|outfall|tank|header|end)(?=${LEVEL_WORDS}))(?:${LEVEL_WORDS})?(?!\\w)`,
      "i",
    ),
  },
];

/** Words beside a figure that name it without saying which box it is of, and what to say. */
export const OPEN_PHRASES: readonly (Phrase & {
  readonly remark: string;
  readonly instead: (amount: string) => readonly string[];
})[] = [
  {
    quantity: "head",
    before: /^(?:discharge|delivery|total|vertical|static total) lift\b/i,
    after: /^(?:discharge|delivery|total|vertical) lift\b/i,
    remark: "from the pump or from the liquid pumped? Say which",
    instead: (amount) => [`up ${amount}`, `static ${amount}`],
  },
  {
    quantity: "head",
    before: /^(?:TDH|total (?:dynamic )?head|pump head|head)\b/i,
    after: /^(?:TDH|total (?:dynamic )?head|of head|head)\b/i,
    remark: "the total head is worked out from levels and lines, and has no box. A height is said as",
    instead: (amount) => [`static ${amount}`],
  },
  {
    quantity: "gaugePressure",
    before: /^(?:discharge|suction|pump|outlet|inlet) pressure\b/i,
    after: /^(?:(?:at|on) (?:the )?)?(?:discharge|suction|pump)(?: pressure| side)?\b/i,
    remark: "beside the pump or at the end of the line? The boxes take those at the ends",
    instead: (amount) => [`${amount} at delivery`, `${amount} at source`],
  },
  {
    quantity: "percent",
    before: /^solids\b/i,
    after: /^solids\b/i,
    remark: "by weight or by volume? Say which",
    instead: (amount) => [`${amount} solids by weight`, `${amount} solids by volume`],
  },
  {
    quantity: "percent",
    before: /^margin\b/i,
    after: /^margin\b/i,
    remark: "a margin on what? On the losses it is said as",
    instead: (amount) => [`${amount} margin on losses`],
  },
];
