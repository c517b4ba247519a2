import { checkInputs, type Method } from "../basis/method.ts";
import { type Finding, type Result, succeed } from "../basis/result.ts";
import { SERVICE_CLASSES, SERVICE_CLASSES_CITE } from "../tables/slurry-service-classes.ts";

type ServiceLimits = (typeof SERVICE_CLASSES)[number];

export const serviceClassMethod = {
  cites: [SERVICE_CLASSES_CITE],
  inputs: {
    headPerStage: { name: "head per stage", symbol: "H", quantity: "head", atLeast: 0 },
    tipSpeed: { name: "impeller tip speed", symbol: "u_2", quantity: "velocity", atLeast: 0 },
  },
} as const satisfies Method<keyof ServiceClassInputs>;

export interface ServiceClassInputs {
  /** m */
  readonly headPerStage: number;
  /** m/s */
  readonly tipSpeed: number;
}

/** A class with its limits and what a pump does to them: "within", "head above; tip speed above for elastomer". */
export interface JudgedServiceClass extends ServiceLimits {
  readonly verdict: string;
}

/**
 * Every class held against a pump, mildest first: the class of the slurry itself is read from the standard's chart of
 * mixture SG against d50, which is not held here.
 * Fails: out-of-range inputs as the method bounds them.
 * Warns: caution service-class-from-memory, always.
 * Source: ANSI/HI 12.1-12.6, suggested limits of the service classes (from memory).
 */
export function serviceClassesFor(pump: ServiceClassInputs): Result<readonly JudgedServiceClass[]> {
  const checked = checkInputs(serviceClassMethod, pump);
  if (!checked.ok) return checked;
  return succeed(
    SERVICE_CLASSES.map((limits) => ({ ...limits, verdict: verdictOf(pump, limits) })),
    [FROM_MEMORY],
  );
}

const FROM_MEMORY: Finding = {
  code: "service-class-from-memory",
  kind: "check",
  subject: "the limits of the service classes",
  cites: SERVICE_CLASSES_CITE,
};

function verdictOf({ headPerStage, tipSpeed }: ServiceClassInputs, limits: ServiceLimits): string {
  const fast = (["metal", "elastomer"] as const).filter((parts) => tipSpeed > limits[parts]);
  const beyond = [
    ...(headPerStage > limits.headPerStage ? ["head above"] : []),
    ...(fast.length > 0 ? [`tip speed above for ${fast.join(" and ")}`] : []),
  ];
  return beyond.length === 0 ? "within" : beyond.join("; ");
}
