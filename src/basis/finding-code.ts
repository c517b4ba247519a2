/**
 * Every finding the engine can raise, by the part that raises it. A code keeps its meaning once released.
 * Its words are in shared/text/words/, one file a part; a code without words does not compile.
 */

/** Input that cannot be read or lies where the method does not hold. */
export type InputCode =
  | "not-a-number"
  | "out-of-range"
  | "outside-usual-range"
  | "left-out"
  | "wrong-kind"
  | "unit-missing"
  | "unit-unknown"
  | "unit-ambiguous"
  | "unit-wrong-kind"
  | "number-ambiguous"
  | "name-unknown"
  | "choice-unknown"
  | "shapes-differ"
  | "not-a-single-value"
  | "too-many-arguments";

export type FindingCode = InputCode;
