// Equivalent lengths L/D of fittings and valves: K = (L/D) f_T, f_T the friction factor of fully rough flow in clean
// steel of that bore. Technical Paper 410, appendix on resistance coefficients. Written from memory; every figure
// but those of the tees and of the Y-pattern globe valve was then held against the general-purpose fluids library for
// Python, which carries the same table. Grouped by kind; the names are ours.
//
// Where a row goes by nominal size (inches) it names the printed bands; between two bands the cut is midway.

/** L/D for nominal sizes from and to, inches. */
export interface SizeBand {
  readonly from: number;
  readonly to: number;
  readonly ratio: number;
}

export interface EquivalentLengthRow {
  readonly name: string;
  readonly also: readonly string[];
  readonly ratio: number | readonly SizeBand[];
  /** √ρ · V that holds the disc fully open, √(kg/m³) · m/s (metric printing of the same work). */
  readonly heldOpenFrom?: number;
}

function row(name: string, ratio: EquivalentLengthRow["ratio"], also: readonly string[] = []): EquivalentLengthRow {
  return { name, also, ratio };
}

function check(
  name: string,
  ratio: EquivalentLengthRow["ratio"],
  heldOpenFrom: number,
  also: readonly string[] = [],
): EquivalentLengthRow {
  return { name, also, ratio, heldOpenFrom };
}

function bands(upTo8: number, upTo14: number, larger: number, largest: number): readonly SizeBand[] {
  return [
    { from: 2, to: 8, ratio: upTo8 },
    { from: 10, to: 14, ratio: upTo14 },
    { from: 16, to: largest, ratio: larger },
  ];
}

export const EQUIVALENT_LENGTHS: readonly EquivalentLengthRow[] = [
  // Elbows and bends
  row("elbow 90", 30, ["elbow", "standard elbow", "elbow 90 standard", "elbow 90 threaded", "90", "1/4 bend"]),
  row("elbow 90 short", 20, ["elbow short", "elbow 90 r/D 1", "elbow r/D 1", "90 short"]),
  row("elbow 90 long", 14, ["elbow long", "elbow 90 r/D 1.5", "elbow r/D 1.5", "90 long"]),
  row("elbow 90 r/D 2", 12, ["elbow r/D 2"]),
  row("elbow 90 r/D 3", 12, ["elbow r/D 3"]),
  row("elbow 90 r/D 4", 14, ["elbow r/D 4"]),
  row("elbow 90 r/D 6", 17, ["elbow r/D 6"]),
  row("elbow 90 r/D 8", 24, ["elbow r/D 8"]),
  row("elbow 90 r/D 10", 30, ["elbow r/D 10"]),
  row("elbow 90 r/D 12", 34, ["elbow r/D 12"]),
  row("elbow 90 r/D 14", 38, ["elbow r/D 14"]),
  row("elbow 90 r/D 16", 42, ["elbow r/D 16"]),
  row("elbow 90 r/D 20", 50, ["elbow r/D 20"]),
  row("elbow 45", 16, ["elbow 45 standard", "elbow 45 threaded", "45", "1/8 bend"]),
  row("return bend", 50, ["elbow 180", "close return", "close return bend", "return bend 180"]),
  row("mitre 15", 4, ["mitre elbow 15"]),
  row("mitre 30", 8, ["mitre elbow 30"]),
  row("mitre 45", 15, ["mitre elbow 45"]),
  row("mitre 60", 25, ["mitre elbow 60"]),
  row("mitre 75", 40, ["mitre elbow 75"]),
  row("mitre 90", 60, ["mitre elbow 90"]),
  // Tees
  row("tee run", 20, ["tee through", "tee straight", "tee straight through", "tee flow through run"]),
  row("tee branch", 60, ["tee side", "tee side outlet", "tee flow through branch"]),
  // Isolating and regulating valves
  row("gate", 8, ["gate valve", "full bore gate valve", "wedge gate valve", "sluice valve", "sluice", "GV"]),
  row("ball", 3, ["ball valve", "full bore ball valve"]),
  row("plug", 18, ["plug valve", "plug straight", "plug cock"]),
  row("plug three-way run", 30, ["three-way plug straight"]),
  row("plug three-way branch", 90, ["three-way plug branch"]),
  row("butterfly", bands(45, 35, 25, 24), ["butterfly valve", "butterfly centric", "butterfly concentric", "BFV"]),
  row("butterfly double offset", bands(74, 52, 43, 24), ["double eccentric butterfly", "high performance butterfly"]),
  row("butterfly triple offset", bands(218, 96, 55, 24), ["triple eccentric butterfly"]),
  row("globe", 340, ["globe valve"]),
  row("globe Y", 55, ["Y globe valve", "Y-pattern globe valve", "oblique globe valve"]),
  row("angle", 150, ["angle valve"]),
  row("angle straightened", 55, ["straightened angle valve", "angle valve clear"]),
  row("diaphragm weir", 149, ["weir diaphragm valve"]),
  row("diaphragm straight", 39, ["straight-through diaphragm valve"]),
  // Check and foot valves
  check("swing check", 100, 45, ["check", "check valve", "non-return valve", "NRV", "swing check conventional"]),
  check("swing check clearway", 50, 75, ["swing check straight", "clearway check valve"]),
  check("lift check", 600, 50, ["lift check globe", "globe lift check"]),
  check("lift check angle", 55, 170, ["angle lift check"]),
  check("tilting check 5", bands(40, 30, 20, 48), 100, ["tilting disc check 5", "tilting check", "tilting disc check"]),
  check("tilting check 15", bands(120, 90, 60, 48), 40, ["tilting disc check 15"]),
  check("stop check globe", 400, 70, ["globe stop check"]),
  check("stop check globe angled", 300, 75, ["angled globe stop check"]),
  check("stop check globe Y", 55, 170, ["Y stop check", "Y-pattern globe stop check"]),
  check("stop check angle", 200, 95, ["angle stop check"]),
  check("stop check angle guided", 350, 75, ["guided angle stop check"]),
  check("stop check angle clear", 55, 170, ["clear angle stop check"]),
  check("foot valve", 75, 45, ["foot valve hinged", "hinged foot valve", "foot valve with strainer"]),
  check("foot valve poppet", 420, 20, ["poppet foot valve"]),
];
