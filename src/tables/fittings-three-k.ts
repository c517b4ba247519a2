// Darby's 3-K coefficients: K = K1/Re + Ki (1 + Kd/Dn^0.3), Dn the nominal size in inches. R. Darby, Chemical
// Engineering (1999, 2001). Held row by row against the general-purpose fluids library (python), which carries the
// same table; not read in the paper itself. In the order of that library; the names are ours.

export interface ThreeKRow {
  readonly name: string;
  readonly k1: number;
  readonly ki: number;
  /** in^0.3 */
  readonly kd: number;
}

function row(name: string, k1: number, ki: number, kd: number): ThreeKRow {
  return { name, k1, ki, kd };
}

export const THREE_K: readonly ThreeKRow[] = [
  row("3K elbow 90 threaded", 800, 0.14, 4),
  row("3K elbow 90 threaded long", 800, 0.071, 4.2),
  row("3K elbow 90 flanged", 800, 0.091, 4),
  row("3K elbow 90 r/D 2", 800, 0.056, 3.9),
  row("3K elbow 90 r/D 4", 800, 0.066, 3.9),
  row("3K elbow 90 r/D 6", 800, 0.075, 4.2),
  row("3K mitre 90 one weld", 1000, 0.27, 4),
  row("3K mitre 90 two welds", 800, 0.068, 4.1),
  row("3K mitre 90 three welds", 800, 0.035, 4.2),
  row("3K elbow 45 threaded", 500, 0.071, 4.2),
  row("3K elbow 45 long", 500, 0.052, 4),
  row("3K mitre 45 one weld", 500, 0.086, 4),
  row("3K mitre 45 two welds", 500, 0.052, 4),
  row("3K return bend threaded", 1000, 0.23, 4),
  row("3K return bend flanged", 1000, 0.12, 4),
  row("3K return bend r/D 1.5", 1000, 0.1, 4),
  row("3K tee branch threaded", 500, 0.274, 4),
  row("3K tee branch r/D 1.5", 800, 0.14, 4),
  row("3K tee branch flanged", 800, 0.28, 4),
  row("3K tee branch stub-in", 1000, 0.34, 4),
  row("3K tee run threaded", 200, 0.091, 4),
  row("3K tee run flanged", 150, 0.05, 4),
  row("3K tee run stub-in", 100, 0, 0),
  row("3K angle 45", 950, 0.25, 4),
  row("3K angle 90", 1000, 0.69, 4),
  row("3K globe", 1500, 1.7, 3.6),
  row("3K plug branch", 500, 0.41, 4),
  row("3K plug", 300, 0.084, 3.9),
  row("3K plug three-way", 300, 0.14, 4),
  row("3K gate", 300, 0.037, 3.9),
  row("3K ball", 300, 0.017, 3.5),
  row("3K diaphragm", 1000, 0.69, 4.9),
  row("3K swing check", 1500, 0.46, 4),
  row("3K lift check", 2000, 2.85, 3.8),
];
