import { citationText } from "../../../src/basis/citation.ts";
import { succeed } from "../../../src/basis/result.ts";
import { type HousingListRow, housingList } from "../../../src/drive/housing-list.ts";
import { type MotorFrameRow, motorFrameList } from "../../../src/drive/motor-frame-list.ts";
import { defineEntry } from "../entry.ts";

const HOUSINGS = { source: "sae-j617", at: "housing flanges" } as const;
const FLYWHEELS = { source: "sae-j620", at: "drive rings" } as const;
const NEMA = { source: "nema-mg1", at: "Part 4, T, TS, JM and JP frames; Part 13, ratings" } as const;
const IEC = { source: "iec-60072-1", at: "frames 71 to 315 with FF flange" } as const;

export const FLYWHEELHOUSINGS = defineEntry({
  id: "FLYWHEELHOUSINGS",
  group: "Lists",
  summary: "Flywheel housings and flywheels of industrial engines, with dimensions, usual pairs and engines seen",
  method:
    "One row a housing of SAE J617, largest first, then one a flywheel of SAE J620. Pilot and bolt circle are the bore of a housing and the drive ring of a flywheel. Depth: crankshaft flange to housing face, or flywheel coupling face to housing face (recess). Unit set US reads the printed inches, SI and METRIC the printed millimetres. What goes with what, and the engine power and torque seen, are common practice: the engine maker's torque and drawing decide, and adapters exist. A pump and an engine must have the same housing number.",
  cites: [HOUSINGS, FLYWHEELS, { source: "practice", at: "flywheels, power and torque seen with each housing" }],
  parameters: {},
  answer: {
    kind: "table",
    name: "flywheel housings",
    columns: {
      part: { name: "part" },
      number: { name: "number" },
      pilot: { name: "pilot", quantity: "size" },
      boltCircle: { name: "bolt circle", quantity: "size" },
      outsideDiameter: { name: "outside diameter", quantity: "size" },
      holes: { name: "holes" },
      thread: { name: "thread" },
      depth: { name: "depth", quantity: "size" },
      usuallyWith: { name: "usually goes with" },
      enginesFrom: { name: "engines from", quantity: "power" },
      enginesTo: { name: "engines to", quantity: "power" },
      torqueSeen: { name: "torque seen to", quantity: "torque" },
      howVerified: { name: "how verified" },
      source: { name: "source", isTitle: true },
    },
  },
  examples: [
    {
      args: ["SI"],
      part: [4, 3],
      answer: 530.22,
      within: 1e-6,
      source: "SAE J617, No. 1: bolt circle 530.22 mm, read in a summary of the standard",
    },
    {
      args: [],
      part: [14, 3],
      answer: 13.125,
      within: 1e-9,
      source: "SAE J620, size 11.5: bolt circle 13.125 in, read in an extract of the standard",
    },
  ],
  run: (_, { unitSet }) => succeed(housingList(unitSet === "US" ? "inches" : "millimetres").map(housingRow)),
});

export const MOTORFRAMES = defineEntry({
  id: "MOTORFRAMES",
  group: "Lists",
  summary: "Motor frames of NEMA and IEC with shaft, feet and flange",
  method:
    "NEMA MG 1 T and TS foot frames (TS: short shaft, for a coupling alone, never belts), close-coupled pump frames JM (short shaft, seal on the shaft) and JP (long shaft), then IEC 60072-1 frames 71 to 315 with their FF flange (B3 foot, B5 flange, B35 both). NEMA dimensions are printed in inches, IEC in millimetres; the other system is converted. Seal diameter is the shaft behind the impeller; spigot is the rabbet of a NEMA face. The last column names the ratings that have the frame, by poles (open and enclosed NEMA motors at 60 Hz, enclosed IEC motors at 50 Hz); frames above IEC 315 are the maker's. The maker's drawing decides before metal is cut.",
  cites: [NEMA, IEC],
  parameters: {},
  answer: {
    kind: "table",
    name: "motor frames",
    columns: {
      standard: { name: "standard" },
      frame: { name: "frame" },
      kind: { name: "kind" },
      shaftHeight: { name: "shaft height", quantity: "size" },
      holesAcross: { name: "foot holes across", quantity: "size" },
      holesAlong: { name: "foot holes along", quantity: "size" },
      shaftDiameter: { name: "shaft diameter", quantity: "size" },
      shaftLength: { name: "shaft length", quantity: "size" },
      sealDiameter: { name: "seal diameter", quantity: "size" },
      flange: { name: "flange or face" },
      boltCircle: { name: "bolt circle", quantity: "size" },
      spigot: { name: "spigot", quantity: "size" },
      howVerified: { name: "how verified" },
      source: { name: "source", isTitle: true },
      ratings: { name: "ratings in it" },
    },
  },
  examples: [
    {
      args: [],
      part: [1, 6],
      answer: 0.875,
      within: 1e-9,
      source: "NEMA MG 1, frame 143T: shaft 0.875 in, read in a data book",
    },
  ],
  run: () => succeed(motorFrameList().map(frameRow)),
});

function housingRow(row: HousingListRow) {
  return {
    part: row.part,
    number: row.number,
    pilot: row.pilot,
    boltCircle: row.boltCircle,
    outsideDiameter: row.outsideDiameter,
    holes: row.holes,
    thread: row.thread,
    depth: row.depth,
    usuallyWith: row.goesWith,
    enginesFrom: row.power?.from,
    enginesTo: row.power?.to,
    torqueSeen: row.torqueTo,
    howVerified: row.verified,
    source: citationText(row.part === "housing" ? HOUSINGS : FLYWHEELS),
  };
}

function frameRow(row: MotorFrameRow) {
  return {
    standard: row.standard,
    frame: row.frame,
    kind: row.kind,
    shaftHeight: row.shaftHeight,
    holesAcross: row.holesAcross,
    holesAlong: row.holesAlong,
    shaftDiameter: row.shaftDiameter,
    shaftLength: row.shaftLength,
    sealDiameter: row.sealDiameter,
    flange: row.flange,
    boltCircle: row.boltCircle,
    spigot: row.spigot,
    howVerified: row.verified,
    source: citationText(row.standard === "NEMA MG 1" ? NEMA : IEC),
    ratings: row.ratings,
  };
}
