import type { Quantity } from "../../src/basis/quantities.ts";
import type { FieldKey } from "./duty-text.ts";

/** What a field of the duty is: label, quantity, default, and words of help. */
export interface Field {
  readonly label: string;
  /** Absent for plain texts. */
  readonly quantity?: Quantity;
  readonly kind: "text" | "liquid" | "quantity";
  /** A blank optional field takes this value, in engine units, and the sheet says it was assumed. */
  readonly whenBlank?: number | string;
  readonly required: boolean;
  readonly help: string;
}

export const FIELDS: Readonly<Record<FieldKey, Field>> = {
  project: { label: "Project", kind: "text", required: false, help: "Name of the job." },
  customer: { label: "Customer", kind: "text", required: false, help: "Who asked." },
  item: { label: "Item", kind: "text", required: false, help: "Pump or item number, such as P-101." },
  reference: { label: "Reference", kind: "text", required: false, help: "Enquiry or quotation number." },
  revision: { label: "Revision", kind: "text", required: false, help: "Revision of this calculation." },
  preparedBy: { label: "Prepared by", kind: "text", required: false, help: "Your name or initials." },
  date: { label: "Date", kind: "text", required: false, help: "Date of this calculation, as you write it." },
  liquid: {
    label: "Liquid",
    kind: "liquid",
    required: false,
    whenBlank: "water",
    help: 'A name such as water or sea water, or a description such as "SG 1.12, 3.5 cP, pv 2.3 kPa".',
  },
  temperature: {
    label: "Liquid temperature",
    kind: "quantity",
    quantity: "temperature",
    required: false,
    whenBlank: 293.15,
    help: "Hottest liquid to be pumped; it decides the vapour pressure.",
  },
  altitude: {
    label: "Site altitude",
    kind: "quantity",
    quantity: "elevation",
    required: false,
    whenBlank: 0,
    help: "Height of the site above sea level; it decides the atmospheric pressure.",
  },
  flow: { label: "Flow", kind: "quantity", quantity: "flow", required: true, help: "Flow the pump must give." },
  sourceLevel: {
    label: "Source liquid level",
    kind: "quantity",
    quantity: "elevation",
    required: true,
    help: "Lowest liquid surface pumped from, above any datum you like.",
  },
  pumpLevel: {
    label: "Pump level",
    kind: "quantity",
    quantity: "elevation",
    required: true,
    help: "Shaft centre line of a horizontal pump, above the same datum.",
  },
  deliveryLevel: {
    label: "Delivery level",
    kind: "quantity",
    quantity: "elevation",
    required: true,
    help: "Liquid surface pumped to, or centre line of a free outlet, above the same datum.",
  },
  sourcePressure: {
    label: "Source pressure",
    kind: "quantity",
    quantity: "gaugePressure",
    required: false,
    whenBlank: 0,
    help: "Gauge pressure over the source liquid; 0 where it is open to the air.",
  },
  deliveryPressure: {
    label: "Delivery pressure",
    kind: "quantity",
    quantity: "gaugePressure",
    required: false,
    whenBlank: 0,
    help: "Gauge pressure at the delivery surface; 0 where it is open to the air.",
  },
  frictionMargin: {
    label: "Margin on losses",
    kind: "quantity",
    quantity: "percent",
    required: false,
    whenBlank: 0,
    help: "Added to the losses of both lines as a line of its own, in per cent.",
  },
  npshRequired: {
    label: "NPSH required",
    kind: "quantity",
    quantity: "head",
    required: false,
    help: "From the pump's curve at this flow, where it is known.",
  },
  npshMargin: {
    label: "NPSH margin wanted",
    kind: "quantity",
    quantity: "head",
    required: false,
    whenBlank: 1,
    help: "Least difference between NPSH available and required.",
  },
  curveFlow: {
    label: "System curve up to",
    kind: "quantity",
    quantity: "flow",
    required: false,
    help: "Greatest flow of the system curve; one and a half times the flow where left blank.",
  },
  leastStaticHead: {
    label: "Least static head",
    kind: "quantity",
    quantity: "head",
    required: false,
    help: "At the highest source and lowest delivery level; the pump runs out furthest here.",
  },
  greatestStaticHead: {
    label: "Greatest static head",
    kind: "quantity",
    quantity: "head",
    required: false,
    help: "At the lowest source and highest delivery level; the pump gives least here.",
  },
  agedRoughness: {
    label: "Roughness of aged pipe",
    kind: "quantity",
    quantity: "size",
    required: false,
    help: "Absolute roughness after years of use, for the aged end of the range; the lines as stated are the new end.",
  },
  acceptanceGrade: {
    label: "Acceptance grade",
    kind: "text",
    required: false,
    help: "Grade of ISO 9906 that the pump is bought to, such as 2B; its tolerances widen the duty region.",
  },
};
