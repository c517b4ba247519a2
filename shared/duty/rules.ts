import { SPECIFIC_GRAVITY_REFERENCE } from "../../src/basis/constants.ts";
import { outOfRange } from "../../src/basis/method.ts";
import type { Finding, Side } from "../../src/basis/result.ts";
import { temperatureOfName } from "../../src/liquid/stated-temperature.ts";
import { leastOf } from "../../src/numeric/extremes.ts";
import type { Pipe } from "../../src/pipework/pipe.ts";
import { slurryMixture } from "../../src/slurry/slurry-mixture.ts";
import { FIELDS, type FieldKey, type FieldValues } from "./fields.ts";

/** What a field must be held against beside its own bounds: the errors, or else the remarks, to be said at its box. */
interface Rule {
  readonly field: FieldKey;
  readonly findings: (values: FieldValues, pipes: readonly Pipe[]) => readonly Finding[];
}

const NONE: readonly Finding[] = [];

/** Levels typed to a hundredth may meet the static head to a rounding of it. */
const ROUNDING = 1e-9;

function beyond(key: FieldKey, value: number, side: Side, limit: number): readonly Finding[] {
  const { label, quantity = "ratio" } = FIELDS[key];
  return [outOfRange(label, quantity, value, side, limit)];
}

function staticHeadRule(field: "leastStaticHead" | "greatestStaticHead", side: "at most" | "at least"): Rule {
  return {
    field,
    findings: ({ [field]: value, deliveryLevel, sourceLevel }) => {
      if (value === undefined || deliveryLevel === undefined || sourceLevel === undefined) return NONE;
      const staticHead = deliveryLevel - sourceLevel;
      const excess = side === "at most" ? value - staticHead : staticHead - value;
      return excess <= ROUNDING * Math.max(1, Math.abs(staticHead)) ? NONE : beyond(field, value, side, staticHead);
    },
  };
}

/** What makes a slurry, the boxes to mend first before those that are nearly always stated. */
const COMPOSITION = ["slurryGravity", "solidsByVolume", "solidsGravity"] as const;

/** Figures of a slurry that no slurry has, or that contradict each other, said at one of them. */
function compositionRule(field: (typeof COMPOSITION)[number]): Rule {
  return {
    field,
    findings: (values) => {
      const { liquid, temperature, solids } = values;
      const isFirst = COMPOSITION.find((key) => values[key] !== undefined) === field;
      if (!isFirst || liquid === undefined || temperature === undefined) return NONE;
      const { solidsByVolume, solidsGravity: solidsSG, slurryGravity: mixtureSG } = values;
      const known = {
        // A blank box stands for none.
        ...(solids !== undefined && solids > 0 && { solidsByWeight: solids }),
        ...(solidsByVolume !== undefined && { solidsByVolume }),
        ...(solidsSG !== undefined && { solidsSG }),
        ...(mixtureSG !== undefined && { mixtureSG }),
      };
      const state = liquid.at(temperature);
      if (!state.ok || Object.keys(known).length < 2) return NONE;
      const liquidSG = state.value.density / SPECIFIC_GRAVITY_REFERENCE;
      return slurryMixture({ ...known, liquidSG }).findings.filter(({ kind }) => kind === "error");
    },
  };
}

/** Pipes that go by their C, which a roughness leaves as they are. */
function notAged(pipes: readonly Pipe[]): readonly Finding[] {
  const names = new Set(pipes.filter(({ hazenWilliams }) => hazenWilliams !== undefined).map(({ name }) => name));
  if (names.size === 0) return NONE;
  const given = [...names].join("”, “");
  return [{ code: "aged-roughness-not-of-c", kind: "check", subject: FIELDS.agedRoughness.label, given }];
}

export const RULES: readonly Rule[] = [
  ...COMPOSITION.map(compositionRule),
  {
    field: "coarseSize",
    findings: ({ coarseSize, medianSize }) =>
      coarseSize === undefined || medianSize === undefined || coarseSize >= medianSize
        ? NONE
        : beyond("coarseSize", coarseSize, "at least", medianSize),
  },
  {
    field: "temperature",
    findings: ({ liquid, temperature }) => {
      if (liquid === undefined || temperature === undefined) return NONE;
      const contradiction = temperatureOfName("liquid", liquid, temperature);
      if (contradiction !== undefined) return [contradiction];
      const state = liquid.at(temperature);
      return state.ok ? NONE : state.findings.filter(({ kind }) => kind === "error");
    },
  },
  {
    field: "highestSourceLevel",
    findings: ({ highestSourceLevel, sourceLevel }) =>
      highestSourceLevel === undefined || sourceLevel === undefined || highestSourceLevel >= sourceLevel
        ? NONE
        : beyond("highestSourceLevel", highestSourceLevel, "at least", sourceLevel),
  },
  staticHeadRule("leastStaticHead", "at most"),
  staticHeadRule("greatestStaticHead", "at least"),
  {
    field: "curveFlow",
    findings: ({ curveFlow, flow }) =>
      curveFlow === undefined || flow === undefined || curveFlow >= flow
        ? NONE
        : beyond("curveFlow", curveFlow, "at least", flow),
  },
  {
    field: "weightEfficiency",
    findings: ({ weightEfficiency, weightNearness, weightNpshMargin, weightTrim }) => {
      const weights = [weightEfficiency, weightNearness, weightNpshMargin, weightTrim];
      return weights.every((weight) => weight === 0) ? beyond("weightEfficiency", 0, "above", 0) : NONE;
    },
  },
  {
    field: "agedRoughness",
    findings: ({ agedRoughness }, pipes) => {
      const half = leastOf(pipes.map(({ bore }) => bore)) / 2;
      if (agedRoughness === undefined) return NONE;
      return agedRoughness < half ? notAged(pipes) : beyond("agedRoughness", agedRoughness, "below", half);
    },
  },
];
