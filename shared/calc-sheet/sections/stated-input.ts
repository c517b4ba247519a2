import { printedUnit, type Quantity, UNIT_SETS } from "../../../src/basis/quantities.ts";
import { fromEngine } from "../../../src/basis/units.ts";
import type { CellError } from "../../cells/cell.ts";
import type { Duty } from "../../duty/duty.ts";
import { FIELDS, type FieldKey } from "../../duty/fields.ts";
import { bareNumber } from "../../duty/read-amount.ts";
import { sumIn } from "../../duty/sums/written-sum.ts";
import { figures } from "../../text/figure.ts";
import type { InputItem } from "../plan.ts";

export interface Stated {
  readonly key: string;
  readonly box?: string;
  readonly label: string;
  readonly quantity?: Quantity;
  readonly typed: string;
  /** In the engine's unit. */
  readonly value: number;
  readonly basis: string;
}

/** A stated figure as an input cell: as it was typed where it is a plain number, converted where it has its own unit, and with a sum beside it where it was one. */
export function statedNumber({ key, box, label, quantity, typed, value, basis }: Stated, duty: Duty): InputItem {
  const plain = bareNumber(typed);
  const isAsTyped = plain !== undefined && sumIn(typed) === undefined;
  const givenAs = isAsTyped || typed.trim() === "" ? "" : `; given as ${typed.trim()}`;
  return {
    kind: "input",
    key,
    ...(box === undefined ? {} : { box }),
    label,
    ...(quantity === undefined ? {} : { quantity }),
    value: plain ?? inUnitSet(value, quantity ?? "ratio", duty),
    basis: `${basis}${givenAs}`,
  };
}

/** An amount in the duty's unit set, without the trace that conversion leaves in the last digit. */
export function inUnitSet(value: number, quantity: Quantity, { unitSet }: Pick<Duty, "unitSet">): number {
  return Number(fromEngine(value, UNIT_SETS[unitSet][quantity]).toPrecision(15));
}

/** Fields of the duty as input cells with their basis; none for a blank one that may be left out. */
export function stated(duty: Duty, ...keys: readonly FieldKey[]): readonly InputItem[] {
  return keys.flatMap((key): readonly InputItem[] => {
    const value = duty[key];
    const { label, quantity, required } = FIELDS[key];
    const basis = basisOf(duty, key);
    const onceChanged = onceChangedFrom(duty, key, basis);
    const change = onceChanged === undefined ? {} : { onceChanged };
    if (value === undefined) {
      const isGiven = duty.state[key] !== "blank" || required === true;
      return isGiven ? [{ kind: "input", key, label, value: waitingFor(label), basis, ...change }] : [];
    }
    if (typeof value !== "number") {
      const name = typeof value === "string" ? value : "name" in value ? value.name : value.grade;
      return [{ kind: "input", key, label, value: figureOf(name) ?? name, basis, ...change }];
    }
    const facts = { key, label, typed: duty.texts[key], value, basis };
    return [{ ...statedNumber(quantity === undefined ? facts : { ...facts, quantity }, duty), ...change }];
  });
}

/** Of an input that nobody stated, once a cell of the sheet states it; of a setting from what. */
function onceChangedFrom(duty: Duty, key: FieldKey, basis: string): string | undefined {
  if (duty.state[key] !== "assumed" || basis !== ownWords(duty, key)) return undefined;
  return changedFrom(duty, key) ?? STATED;
}

/** A name that is a figure, such as a flange class of 150, stands as a number: the functions take either. */
function figureOf(name: string): number | undefined {
  const figure = bareNumber(name);
  return figure !== undefined && String(figure) === name.trim() ? figure : undefined;
}

/** Stands in a cell whose box is still to be filled or mended, and in all that follows from it. */
export function waitingFor(label: string): CellError {
  return { error: "#N/A", message: `Waits for ${label}.`, waitsFor: label };
}

/** In one word, where two stand side by side. */
export const ASSUMED_WORD = "assumed";
export const ASSUMED = `${ASSUMED_WORD} (no input)`;
const STATED = "stated";

/** What is said of a figure where nobody says where it comes from. */
export const GENERAL_BASES: ReadonlySet<string> = new Set([ASSUMED, STATED]);

/** The same, by whether anything was typed. */
export function generalBasis(typed: string): string {
  return typed.trim() === "" ? ASSUMED : STATED;
}

/** Where a figure comes from, in the estimator's words or ours. */
export function basisOf(duty: Duty, key: FieldKey): string {
  return duty.basis[key]?.trim() || ownWords(duty, key);
}

function ownWords(duty: Duty, key: FieldKey): string {
  if (duty.state[key] !== "assumed") return STATED;
  const { help, usual } = FIELDS[key];
  return usual === undefined ? ASSUMED : `${help} ${usual}`;
}

/** What is said of a setting that was changed on the sheet: the source of what is usual is none of it. */
function changedFrom({ unitSet }: Duty, key: FieldKey): string | undefined {
  const field = FIELDS[key];
  if (field.usual === undefined || field.kind !== "amount" || typeof field.whenBlank !== "number") return undefined;
  const { quantity = "ratio", whenBlank } = field;
  const unit = printedUnit(quantity, unitSet);
  return `${field.help} Changed from ${figures(inUnitSet(whenBlank, quantity, { unitSet }))}${unit === "" ? "" : ` ${unit}`}.`;
}
