import { citationText } from "../../../src/basis/citation.ts";
import { andThen, type Finding, fail, type Result, succeed } from "../../../src/basis/result.ts";
import { FITTING_FORMS } from "../../../src/pipework/fitting-forms.ts";
import { frictionFactor, frictionFactorMethod } from "../../../src/pipework/friction-factor.ts";
import { hazenWilliamsHead, hazenWilliamsMethod } from "../../../src/pipework/hazen-williams.ts";
import { KNOWN_FITTINGS } from "../../../src/pipework/known-fittings.ts";
import { type LineLoss, lineLoss } from "../../../src/pipework/line-loss.ts";
import { pipeFriction, pipeFrictionMethod, zeroLength } from "../../../src/pipework/pipe-friction.ts";
import { pipesOf } from "../../../src/pipework/pipe-name.ts";
import { pipeSize, pipeSizeMethod } from "../../../src/pipework/pipe-size.ts";
import { pipeVelocity, pipeVelocityMethod, tooFast } from "../../../src/pipework/pipe-velocity.ts";
import { runFriction } from "../../../src/slurry/run-friction.ts";
import { defineEntry } from "../entry.ts";
import { quantity, text } from "../parameter.ts";
import { fitting, fittings } from "../parameters/fittings.ts";
import { line, ROWS_IN_WORDS } from "../parameters/line.ts";
import { liquid, temperature } from "../parameters/liquid.ts";
import { pipe as pipeParameter } from "../parameters/pipe.ts";
import { share } from "../parameters/share.ts";

const flow = quantity("flow", {
  about: "Flow through the pipe",
  example: '1200, or "45 L/s"',
  range: "0 or more",
});
const pipe = pipeParameter("The pipe or hose");
const length = quantity("length", {
  about: "Developed length of the pipe, fittings not counted",
  example: '500, or "150 m"',
  range: "0 or more; 0 brings a caution",
});
const FRICTION_TABLE =
  "friction table for 1-1/2 in steel pipe, as reproduced in Mackay, The Practical Pumping Handbook (2004), fig. 14.2";
const EXACT_COLEBROOK = "Darcy–Weisbach with the Colebrook factor solved to 40 digits, worked apart from this product";

/** The remarks of a flow in a pipe, joined to those there are; most flows bring none. */
function remarking<T>(value: T, findings: readonly Finding[], more: readonly (Finding | undefined)[]): Result<T> {
  const found = more.filter((finding) => finding !== undefined);
  return succeed(value, found.length === 0 ? findings : [...findings, ...found]);
}

/** The head a line loses, with a caution for each segment that runs too fast. */
function headOfLine(loss: Result<LineLoss>): Result<number> {
  if (!loss.ok) return loss;
  return remarking(
    loss.value.total,
    loss.findings,
    loss.value.segments.map(({ friction, segment }) => tooFast(friction.velocity, segment.pipe)),
  );
}

export const VELOCITY = defineEntry({
  id: "VELOCITY",
  group: "Pipe and friction",
  summary: "Mean velocity of a flow in a full pipe",
  method:
    "Flow over the area of the true bore. No caution is given here for a fast or slow flow; FRICTIONHEAD gives one.",
  cites: pipeVelocityMethod.cites,
  parameters: { flow, pipe },
  answer: { kind: "quantity", name: "velocity", quantity: "velocity" },
  examples: [
    { args: [24, "ID 1.61 in rough 0.0018 in"], answer: 3.78, within: 0.005, source: FRICTION_TABLE },
    { args: [25, "ID 102.26 mm rough 0.045 mm", "SI"], answer: 3.04395726199, within: 1e-9, source: EXACT_COLEBROOK },
  ],
  run: pipeVelocity,
});

export const REYNOLDS = defineEntry({
  id: "REYNOLDS",
  group: "Pipe and friction",
  summary: "Reynolds number of a flow in a full pipe",
  method:
    "Density times mean velocity times bore, over dynamic viscosity. Up to 2000 the flow is laminar, from 4000 on turbulent.",
  cites: [{ source: "darcy-weisbach", at: "Reynolds number of pipe flow" }],
  parameters: { flow, pipe, liquid, temperature },
  answer: { kind: "number", name: "Reynolds number" },
  examples: [
    {
      args: [25, "ID 102.26 mm rough 0.045 mm", "1000 kg/m3, 1.13859280103 cSt", null, "SI"],
      answer: 273385.769986,
      within: 1e-3,
      source: EXACT_COLEBROOK,
    },
  ],
  run: (inputs) =>
    andThen(inputs.liquid.at(inputs.temperature), (state) =>
      andThen(pipeFriction({ flow: inputs.flow, pipe: inputs.pipe, length: 0, liquid: state }), ({ reynolds }) =>
        succeed(reynolds),
      ),
    ),
});

export const FRICTIONFACTOR = defineEntry({
  id: "FRICTIONFACTOR",
  group: "Pipe and friction",
  summary: "Darcy friction factor at a Reynolds number and a relative roughness",
  method:
    "64/Re up to a Reynolds number of 2000. From 4000 on, the Colebrook formula solved to the last digits. Between the two, straight from one to the other, with a caution. Four times the Fanning factor. A relative roughness above 0.05 is beyond the Moody chart and brings a warning.",
  cites: frictionFactorMethod.cites,
  unitless: true,
  parameters: {
    reynoldsNumber: quantity("ratio", { about: "Reynolds number", example: "100000", range: "above 0" }),
    relativeRoughness: quantity("ratio", {
      about: "Roughness of the wall over the bore",
      example: "0.0005",
      range: "0 to 0.05; below 0.5 with a warning",
    }),
  },
  answer: { kind: "number", name: "Darcy friction factor" },
  examples: [
    {
      args: [100000, 0.0005],
      answer: 0.02032700015817038,
      within: 1e-15,
      source: "Colebrook (1939), solved to 40 digits apart from this product",
    },
    { args: [500, 0.001], answer: 0.128, within: 1e-15, source: "Hagen–Poiseuille, 64/Re" },
  ],
  run: ({ reynoldsNumber: reynolds, relativeRoughness }) => frictionFactor({ reynolds, relativeRoughness }),
});

export const FRICTIONHEAD = defineEntry({
  id: "FRICTIONHEAD",
  group: "Pipe and friction",
  summary: "Head lost to friction in a pipe",
  method:
    "Darcy–Weisbach, f (L/D) V²/2g, with the friction factor of FRICTIONFACTOR at the true bore and the roughness of the pipe, in head of the liquid pumped. A corrugated hose multiplies the factor. Any liquid. A pipe that states its C, “8in sch40 C 120”, goes by Hazen–Williams as in HAZENHEAD, cold water alone. Fittings are not in it: see FITTINGHEAD and LINEHEAD. A velocity above 6 m/s (20 ft/s) and a flow in the critical zone bring a caution.",
  cites: pipeFrictionMethod.cites,
  parameters: { flow, pipe, length, liquid, temperature },
  answer: { kind: "quantity", name: "friction head", quantity: "head" },
  examples: [
    {
      args: [24, "ID 1.61 in rough 0.0018 in", 100, "999.0 kg/m3, 1.12213897246 cSt"],
      answer: 4.14,
      within: 0.0414,
      source: FRICTION_TABLE,
    },
    {
      args: [25, "ID 102.26 mm rough 0.045 mm", 250, "1000 kg/m3, 1.13859280103 cSt", null, "SI"],
      answer: 20.7833184784,
      within: 1e-7,
      source: EXACT_COLEBROOK,
    },
  ],
  run: (inputs) => {
    const state = inputs.liquid.at(inputs.temperature);
    if (!state.ok) return state;
    const friction = runFriction({
      flow: inputs.flow,
      pipe: inputs.pipe,
      length: inputs.length,
      liquid: state.value,
    });
    if (!friction.ok) return friction;
    const { velocity, head } = friction.value;
    const fast = tooFast(velocity, inputs.pipe);
    const blank = zeroLength(inputs.length, "length");
    const { findings } = friction;
    if (fast === undefined && blank === undefined && state.findings.length === 0) return succeed(head, findings);
    return remarking(head, [...state.findings, ...findings], [blank, fast]);
  },
});

/** C where none is given. */
const NEW_STEEL_OR_PLASTIC = 140;

export const HAZENHEAD = defineEntry({
  id: "HAZENHEAD",
  group: "Pipe and friction",
  summary: "Head water loses to friction in a pipe by Hazen–Williams",
  method:
    "For water near 15 °C alone. V = 1.318 C R^0.63 S^0.54 in feet and seconds, solved for the slope without rounding its exponents; the common 0.2083 form differs from it by up to 2 %. The roughness of the pipe does not enter: C does, about 140 to 150 for new plastic or lined pipe, 120 to 140 for new steel, 100 for old steel. Cautions outside C 40 to 160, below 50 mm (2 in) bore, and outside 0.3 to 3 m/s (1 to 10 ft/s). A row of a line goes by the same law where its pipe states a C, “8in sch40 C 120”.",
  cites: hazenWilliamsMethod.cites,
  parameters: {
    flow,
    pipe,
    length,
    C: quantity("ratio", {
      about: "Hazen–Williams coefficient",
      example: "120",
      range: "40 to 160",
      whenLeftOut: { value: null, shown: "140, or the C that the pipe states" },
    }),
  },
  answer: { kind: "quantity", name: "friction head", quantity: "head" },
  examples: [
    {
      args: [500, "ID 6.065 in rough 0.0018 in", 100, 120],
      answer: 2.26174834636,
      within: 1e-7,
      source: "definition by Williams and Hazen, worked apart from this product",
    },
    {
      args: [15, "ID 1.049 in rough 0.0018 in", 100, 100],
      answer: 24.64,
      within: 0.05,
      source: "public trade friction chart, 1 in schedule 40, C = 100",
    },
  ],
  run: (inputs) => {
    const { flow: flowing, pipe: inPipe, length: along } = inputs;
    const C = inputs.C ?? inPipe.hazenWilliams ?? NEW_STEEL_OR_PLASTIC;
    if (inPipe.hazenWilliams !== undefined && inPipe.hazenWilliams !== C) {
      const facts = { coefficient: C };
      return fail([{ code: "pipe-c-stated-twice", kind: "error", subject: "pipe", given: inPipe.name, facts }]);
    }
    const head = hazenWilliamsHead({ flow: flowing, pipe: inPipe, length: along, coefficient: C });
    return head.ok ? remarking(head.value, head.findings, [zeroLength(along, "length")]) : head;
  },
});

export const FITTINGK = defineEntry({
  id: "FITTINGK",
  group: "Pipe and friction",
  summary: "Loss coefficient K of a fitting in a pipe",
  method:
    "K on the velocity head in the bore of the pipe. Most fittings by equivalent length, K = (L/D) f_T with f_T of fully rough flow in clean steel of that bore; entrances, exits and hose fittings by a fixed K; changes of size by their area ratio, carried over to the pipe's own bore; valves by Cv or Kv. FITTINGS lists them. Methods for one fitting differ by some 30 %. Figures of the trade without a source bring a caution. 3-K fittings need a flow: use FITTINGHEAD.",
  cites: [
    { source: "tp-410", at: "resistance coefficients, K = (L/D) f_T" },
    { source: "borda-carnot", at: "sudden expansion" },
    { source: "iec-60534-2-1", at: "definitions of Cv and Kv" },
  ],
  unitless: true,
  parameters: { fitting, pipe },
  answer: { kind: "number", name: "loss coefficient K" },
  examples: [
    {
      args: ["globe", "ID 4.026 in rough 0.0018 in"],
      answer: 5.44,
      within: 0.12,
      source: "Technical Paper 410: 340 f_T with the tabled f_T of 0.016 for 4 in, rounded to three decimals",
    },
    {
      args: ["sudden expansion to 7.981 in", "ID 6.065 in rough 0.0018 in"],
      answer: 0.178511867924,
      within: 1e-10,
      source: "Borda–Carnot, worked apart from this product",
    },
    {
      args: ["Kv 500", "ID 154 mm rough 0.045 mm"],
      answer: 3.6,
      within: 0.011,
      source: "Technical Paper 410M, example 7-2",
    },
  ],
  run: (inputs) => inputs.fitting.lossCoefficient(inputs.pipe),
});

export const FITTINGHEAD = defineEntry({
  id: "FITTINGHEAD",
  group: "Pipe and friction",
  summary: "Head lost in fittings of one bore",
  method:
    "The sum of the coefficients of FITTINGK times the velocity head in the pipe. Coefficients of the 3-K method, such as “3K elbow 90 flanged”, are taken at the Reynolds number of the flow; they suit viscous liquids and small sizes, and are not to be mixed with the others in one line. An exit counts one velocity head.",
  cites: [
    { source: "tp-410", at: "head lost in valves and fittings, K V²/2g" },
    { source: "darby-2001", at: "3-K coefficients" },
  ],
  parameters: { flow, pipe, fittings, liquid, temperature },
  answer: { kind: "quantity", name: "fitting head", quantity: "head" },
  examples: [
    {
      args: [75, "ID 1.61 in rough 0.0018 in", "1 exit"],
      answer: 2.17,
      within: 0.005,
      source: `velocity head from the ${FRICTION_TABLE}`,
    },
  ],
  run: (inputs) =>
    andThen(inputs.liquid.at(inputs.temperature), (state) =>
      headOfLine(
        lineLoss({
          flow: inputs.flow,
          line: [{ pipe: inputs.pipe, length: 0, fittings: inputs.fittings }],
          liquid: state,
        }),
      ),
    ),
});

export const LINEHEAD = defineEntry({
  id: "LINEHEAD",
  group: "Pipe and friction",
  summary: "Head lost in a whole line by pipe friction and fittings",
  method: `Each row of the line by Darcy–Weisbach at its own bore, plus its fittings on its own velocity head, added up. The velocity head at the end counts where the line lists an exit. ${ROWS_IN_WORDS} No static head is in it: see TDH.`,
  cites: [...pipeFrictionMethod.cites, { source: "tp-410", at: "head lost in valves and fittings, K V²/2g" }],
  parameters: { flow, line: line("The line"), liquid, temperature },
  answer: { kind: "quantity", name: "line head", quantity: "head" },
  examples: [
    {
      args: [
        25,
        [
          ["pipe", "length", "fittings"],
          ["ID 102.26 mm rough 0.045 mm", 150, null],
          ["ID 102.26 mm rough 0.045 mm", 100, "K 0"],
        ],
        "1000 kg/m3, 1.13859280103 cSt",
        null,
        "SI",
      ],
      answer: 20.7833184784,
      within: 1e-7,
      source: EXACT_COLEBROOK,
    },
  ],
  run: (inputs) =>
    andThen(inputs.liquid.at(inputs.temperature), (state) =>
      headOfLine(lineLoss({ flow: inputs.flow, line: inputs.line, liquid: state })),
    ),
});

export const PIPESIZE = defineEntry({
  id: "PIPESIZE",
  group: "Pipe and friction",
  summary: "Smallest pipe of a family that keeps within a velocity and a friction gradient",
  method:
    "The sizes of the family in rising bore, until the mean velocity and, where one is given, the friction head per length are within their limits. Sizes are named by inches with US units, by DN or millimetres with SI and METRIC. Where no size will do, the answer is an error that names the largest.",
  cites: pipeSizeMethod.cites,
  parameters: {
    flow: quantity("flow", {
      about: "Flow through the pipe",
      example: '1200, or "45 L/s"',
      range: "above 0",
    }),
    family: text({ about: "Family of pipe, as PIPES lists it", example: '"sch40"' }, (given) => succeed(given)),
    maximumVelocity: quantity("velocity", {
      about: "Maximum mean velocity",
      example: '8, or "2.4 m/s"',
      range: "above 0",
      whenLeftOut: { value: 8 * 0.3048, shown: "8 ft/s (2.44 m/s), common practice" },
    }),
    maximumGradient: share({
      about: "Maximum friction head over length",
      example: '2, or "2 %"',
      range: "above 0",
      whenLeftOut: { value: null, shown: "no limit" },
    }),
    liquid,
    temperature,
  },
  answer: { kind: "text", name: "pipe" },
  examples: [
    {
      args: [500, "sch40", 8],
      answer: "6in sch40",
      source: "area at 8 ft/s is 20.05 in², a bore of 5.05 in; ASME B36.10M has 5.047 in at 5 in and 6.065 in at 6 in",
    },
  ],
  run: (inputs, { unitSet }) =>
    andThen(pipesOf(inputs.family, unitSet === "US" ? "inch" : "metric"), (pipes) =>
      andThen(inputs.liquid.at(inputs.temperature), (state) =>
        andThen(
          pipeSize({
            flow: inputs.flow,
            family: inputs.family,
            pipes,
            maxVelocity: inputs.maximumVelocity,
            maxGradient: inputs.maximumGradient,
            liquid: state,
          }),
          ({ name }) => succeed(name),
        ),
      ),
    ),
});

export const FITTINGS = defineEntry({
  id: "FITTINGS",
  group: "Lists",
  summary: "Every fitting that can be named, with its coefficient and source",
  method:
    "One row a fitting. Basis L/D: the value times the friction factor of fully rough flow gives K. Basis K: the value is K. Basis K1, Ki, Kd: K = K1/Re + Ki (1 + Kd/Dn^0.3), Dn in inches. The last rows show the forms that carry their own figure or size. Order of words, upper or lower case and “valve” do not matter.",
  cites: [{ source: "tp-410", at: "resistance coefficients" }],
  unitless: true,
  parameters: {},
  answer: {
    kind: "table",
    name: "fittings",
    columns: {
      name: { name: "name" },
      alsoCalled: { name: "also called" },
      basis: { name: "basis" },
      value: { name: "value" },
      source: { name: "source", isTitle: true },
    },
  },
  examples: [
    { args: [], part: [1, 0], answer: "elbow 90", source: "first row of the list" },
    { args: [], part: [1, 3], answer: 30, within: 0, source: "Technical Paper 410: standard 90° elbow" },
  ],
  run: () =>
    succeed([
      ...KNOWN_FITTINGS.map(({ fitting: { name, cites }, also, basis, value }) => ({
        name,
        alsoCalled: also.join("; "),
        basis,
        value,
        source: citationText(cites),
      })),
      ...FITTING_FORMS.map(({ example, also: alsoCalled, basis, value, cites }) => ({
        name: example,
        alsoCalled,
        basis,
        value,
        source: citationText(cites),
      })),
    ]),
});
