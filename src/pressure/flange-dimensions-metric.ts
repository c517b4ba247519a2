import { type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { FLANGES_PN } from "../tables/flange-dimensions-pn.ts";
import { FLANGE_DRILLINGS, type OtherDrilling } from "../tables/flange-drillings.ts";
import type { FlangeClassName, RatingSystem } from "../tables/flange-rating-table.ts";
import { boltOf } from "./bolt-size.ts";
import type { FlangeDimensions } from "./flange-facts.ts";
import { type FlangeSize, flangeSizeUnknown } from "./flange-size.ts";
import type { JointMaterial } from "./joint-material.ts";
import { jointStudLength, STUD_STEPS } from "./stud-length.ts";

const millimetre = unitOf("mm").factor;

/** Thickness of the gasket that studs of PN flanges are reckoned with, and what is allowed for their own length, m. */
const GASKET_THICKNESS = 2 * millimetre;
const STUD_TOLERANCE = 1.5 * millimetre;

type PnRow = (typeof FLANGES_PN)[number];

/** What both kinds of metric flange are looked up by. */
interface Wanted {
  readonly size: FlangeSize;
  readonly given: string;
  readonly system: RatingSystem;
}

/**
 * Dimensions of a PN flange, m: hole, raised face, thickness and bolts of the material it is made of, steel where none is
 * stated. Stud length from the parts of a like pair with a gasket of 2 mm.
 * Fails: a size that EN 1092 does not have.
 * Warns: cautions on what mates with what, on DN65 with four or eight holes, on larger ductile-iron rims, from memory.
 * Source: EN 1092-1, EN 1092-2, EN 1514-1.
 */
export function pnFlange(
  name: FlangeClassName,
  wanted: Wanted,
  material: JointMaterial | undefined,
): Result<FlangeDimensions> {
  const rows = FLANGES_PN.filter(({ pn }) => pn === name);
  const row = rows.find(({ dn }) => dn === wanted.size.dn);
  if (row === undefined) return notHeld(wanted, rows, "EN 1092");
  const isIron = material !== undefined && material !== "steel";
  const isFourHoled = isIron && row.dn === 65 && (name === "PN10" || name === "PN16");
  const dimensions: FlangeDimensions = {
    size: wanted.size,
    ...shared(row),
    bolts: isFourHoled ? 4 : row.bolts,
    holeDiameter: (isIron ? row.ironHole : row.steelHole) * millimetre,
    ...lengths({
      raisedFace: isIron ? row.ironFace : row.steelFace,
      steelThickness: row.type11,
      plateThickness: row.type01,
      ductileThickness: row.ductile,
      greyThickness: row.grey,
      gasketOutside: row.gasketOutside,
      gasketInside: row.gasketInside,
    }),
    ...studLength(row, material),
  };
  return succeed(dimensions, remarksOn(row, material));
}

/**
 * Drilling of a flange of AS 2129, AS/NZS 4087 or JIS B 2220, m.
 * Fails: a size the table does not have.
 * Warns: that it is drilling alone, and does not mate with what looks like it.
 * Source: AS 2129, AS/NZS 4087, JIS B 2220.
 */
export function drilledFlange(name: OtherDrilling, wanted: Wanted): Result<FlangeDimensions> {
  const rows = FLANGE_DRILLINGS.filter(({ of }) => of === name);
  const row = rows.find(({ dn }) => dn === wanted.size.dn);
  if (row === undefined) return notHeld(wanted, rows, name);
  const { hole, raisedFace, thickness } = row;
  const dimensions: FlangeDimensions = {
    size: wanted.size,
    ...shared(row),
    bolts: row.bolts,
    holeDiameter: hole * millimetre,
    ...lengths({ raisedFace, plateThickness: thickness }),
  };
  const findings: Finding[] = [{ code: "flange-drilling-only", kind: "check", subject: "flange", facts: { name } }];
  return succeed(dimensions, row.read ? findings : [...findings, fromMemory("drilling")]);
}

function notHeld({ given, system }: Wanted, rows: readonly { readonly dn: number }[], standard: string): Result<never> {
  return fail([flangeSizeUnknown({ given, system, subject: "size", sizes: rows, standard })]);
}

function shared({ outside, circle, boltSize }: Pick<PnRow, "outside" | "circle" | "boltSize">) {
  return {
    outsideDiameter: outside * millimetre,
    boltCircle: circle * millimetre,
    boltSize,
    boltDiameter: boltOf(boltSize)?.diameter ?? 0,
  };
}

/** Millimetres in m, without those the standard does not have. */
function lengths<K extends string>(of: Readonly<Record<K, number | null>>): Partial<Record<K, number>> {
  const held = (Object.entries(of) as [K, number | null][]).flatMap(([key, value]) =>
    value === null ? [] : [[key, value * millimetre] as const],
  );
  return Object.fromEntries(held) as Partial<Record<K, number>>;
}

function studLength(row: PnRow, material: JointMaterial | undefined): { readonly studLength?: number } {
  const thickness = { steel: row.type11, "ductile iron": row.ductile, "grey iron": row.grey }[material ?? "steel"];
  const bolt = boltOf(row.boltSize);
  if (thickness === null || bolt === undefined) return {};
  const length = jointStudLength({
    thicknesses: [thickness * millimetre, thickness * millimetre],
    gasketThickness: GASKET_THICKNESS,
    between: 0,
    boltDiameter: bolt.diameter,
    pitch: bolt.pitch,
    tolerance: STUD_TOLERANCE,
    step: STUD_STEPS.metric,
  });
  return length.ok ? { studLength: length.value } : {};
}

/** Other PNs whose flanges of this size are drilled alike. */
function alike(row: PnRow): readonly string[] {
  return FLANGES_PN.filter(
    ({ pn, dn, circle, bolts, boltSize }) =>
      pn !== row.pn && dn === row.dn && circle === row.circle && bolts === row.bolts && boltSize === row.boltSize,
  ).map(({ pn }) => pn);
}

/** Type 11 of these is thinner in the edition of 2001. */
const THICKNESS_CHANGED = { pn: "PN16", dns: [450, 500, 600] } as const;
const DUCTILE_RIMS: Readonly<Record<number, number>> = { 250: 0.4, 300: 0.455 };

function remarksOn(row: PnRow, material: JointMaterial | undefined): readonly Finding[] {
  const { pn: name, dn } = row;
  const others = alike(row);
  const flange = { kind: "check", subject: "flange" } as const;
  const isLow = name === "PN10" || name === "PN16";
  const rim = DUCTILE_RIMS[dn];
  const isChanged = name === THICKNESS_CHANGED.pn && THICKNESS_CHANGED.dns.some((one) => one === dn);
  return [
    { code: "flange-mates-pn", ...flange, facts: { name, ...(others.length > 0 && { others: others.join(", ") }) } },
    ...(isLow && dn === 65 ? [{ code: "flange-holes-differ", ...flange, facts: { name } } as const] : []),
    ...(isLow && rim !== undefined && material !== "steel"
      ? [{ code: "flange-rim-differs", ...flange, found: { quantity: "size", value: rim } } as const]
      : []),
    ...(isChanged ? [{ code: "flange-thickness-changed", ...flange } as const] : []),
    fromMemory(
      row.drilling ? "faces, holes in iron, thickness and gasket" : "bolt circle, bolts, faces, thickness and gasket",
    ),
  ];
}

function fromMemory(what: string): Finding {
  return { code: "flange-dimensions-from-memory", kind: "check", subject: "flange", facts: { what } };
}
