import type { Citation } from "../basis/citation.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { all, amount, andThen, type Finding, type Result, succeed } from "../basis/result.ts";

/** Lining or parts that the slurry wears. */
export type WearParts = "metal" | "elastomer";

export type ServiceClass = 1 | 2 | 3 | 4;

interface ServiceLimits {
  readonly service: string;
  /** Suggested greatest head a stage, m. */
  readonly headPerStage: number;
  /** Suggested greatest speed of the impeller tip, m/s. */
  readonly tipSpeed: Readonly<Record<WearParts, number>>;
}

/**
 * Suggested limits by service class, as the slurry pump standard ANSI/HI 12.1-12.6 groups them. All figures from memory
 * and not yet held against the standard, so they bring cautions and never refuse. The class itself is read from the
 * standard's chart of mixture SG against d50, which is not held here.
 */
export const SERVICE_CLASSES: Readonly<Record<ServiceClass, ServiceLimits>> = {
  1: { service: "light", headPerStage: 123, tipSpeed: { metal: 43, elastomer: 31 } },
  2: { service: "medium", headPerStage: 66, tipSpeed: { metal: 38, elastomer: 28 } },
  3: { service: "heavy", headPerStage: 52, tipSpeed: { metal: 33, elastomer: 26 } },
  4: { service: "very heavy", headPerStage: 40, tipSpeed: { metal: 28, elastomer: 23 } },
};

const LIMITS: Citation = { source: "ansi-hi-12", at: "service classes, suggested limits; figures from memory" };

export const serviceClassMethod = {
  title: "Wear limits of a slurry service class",
  cites: [LIMITS],
  inputs: {
    headPerStage: { name: "head per stage", symbol: "H", quantity: "head", atLeast: 0 },
    tipSpeed: { name: "impeller tip speed", symbol: "u_2", quantity: "velocity", atLeast: 0 },
  },
} as const satisfies Method<"headPerStage" | "tipSpeed">;

export interface ServiceClassInputs {
  readonly serviceClass: ServiceClass;
  readonly wearParts: WearParts;
  /** m */
  readonly headPerStage: number;
  /** m/s */
  readonly tipSpeed: number;
}

/** A class with its limits and what a pump does to them: "within", "head above; tip speed above for elastomer". */
export interface JudgedServiceClass extends ServiceLimits {
  readonly serviceClass: ServiceClass;
  readonly verdict: string;
}

/** Every class held against a pump, mildest first: the class of the slurry is read from the standard's chart. */
export function serviceClassesFor(
  pump: Pick<ServiceClassInputs, "headPerStage" | "tipSpeed">,
): Result<readonly JudgedServiceClass[]> {
  const classes: readonly ServiceClass[] = [1, 2, 3, 4];
  const judged = all(
    classes.map((serviceClass) =>
      andThen(serviceLimits({ ...pump, serviceClass, wearParts: "metal" }), (limits) =>
        succeed({ ...limits, serviceClass, verdict: verdictOf(pump, limits) }),
      ),
    ),
  );
  return judged.ok ? succeed(judged.value, [FROM_MEMORY]) : judged;
}

const FROM_MEMORY: Finding = {
  code: "service-class-from-memory",
  severity: "caution",
  subject: "the limits of the service classes",
  cites: LIMITS,
};

function verdictOf({ headPerStage, tipSpeed }: { headPerStage: number; tipSpeed: number }, of: ServiceLimits): string {
  const head = headPerStage > of.headPerStage ? ["head above"] : [];
  const fast = (Object.keys(of.tipSpeed) as WearParts[]).filter((parts) => tipSpeed > of.tipSpeed[parts]);
  const speed = fast.length === 0 ? [] : [`tip speed above for ${fast.join(" and ")}`];
  const beyond = [...head, ...speed];
  return beyond.length === 0 ? "within" : beyond.join("; ");
}

/** The limits of a class, with a caution for each that the pump goes beyond. */
export function serviceLimits(inputs: ServiceClassInputs): Result<ServiceLimits> {
  const { serviceClass, wearParts, headPerStage, tipSpeed } = inputs;
  const checked = checkInputs(serviceClassMethod, { headPerStage, tipSpeed });
  if (!checked.ok) return checked;
  const limits = SERVICE_CLASSES[serviceClass];
  const findings: Finding[] = [];
  const facts = { serviceClass, service: limits.service };
  if (headPerStage > limits.headPerStage) {
    findings.push({
      code: "service-class-exceeded",
      severity: "caution",
      subject: serviceClassMethod.inputs.headPerStage.name,
      found: amount("head", headPerStage),
      limit: { quantity: "head", value: limits.headPerStage, side: "at most" },
      facts,
      cites: LIMITS,
    });
  }
  if (tipSpeed > limits.tipSpeed[wearParts]) {
    findings.push({
      code: "service-class-exceeded",
      severity: "caution",
      subject: serviceClassMethod.inputs.tipSpeed.name,
      found: amount("velocity", tipSpeed),
      limit: { quantity: "velocity", value: limits.tipSpeed[wearParts], side: "at most" },
      facts,
      cites: LIMITS,
    });
  }
  return succeed(limits, findings);
}
