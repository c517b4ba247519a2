import { expect } from "vitest";
import type { PublishedAmount, PublishedCase } from "./published-cases.ts";

/** An input that is an amount with its unit. */
export function inputAmount({ id, inputs }: PublishedCase, name: string): PublishedAmount {
  const input = inputs[name];
  if (typeof input !== "object") throw new Error(`${id} has no amount ${name}`);
  return input;
}

/** Holds a figure against the exact value of the case, and against what the source prints where it prints one. */
export function expectPublished(actual: number, name: string, of: PublishedCase): void {
  const { value, published } = amountExpected(name, of);
  // A verification table that is itself the value is good to half of its last figure.
  const printed = value === published ? halfOfLastFigure(value) : 0;
  expectWithin(actual, value, Math.max(allowed(of.tolerance.value, value), printed), `${of.id} ${name}`);
  if (value !== published) expectAsPrinted(actual, name, of);
}

/** Holds a figure against what the source prints alone. */
export function expectAsPrinted(actual: number, name: string, of: PublishedCase): void {
  const { published } = amountExpected(name, of);
  if (published === undefined || of.tolerance.published === undefined) return;
  expectWithin(actual, published, allowed(of.tolerance.published, published), `${of.id} ${name} as printed`);
}

function amountExpected(name: string, of: PublishedCase): PublishedAmount {
  const expected = of.expected[name];
  if (expected === undefined) throw new Error(`${of.id} expects no ${name}`);
  return expected;
}

function allowed({ rel, abs }: { readonly rel?: number; readonly abs?: number }, expected: number): number {
  return abs ?? (rel === undefined ? Number.NaN : rel * Math.abs(expected));
}

function halfOfLastFigure(printed: number): number {
  const decimals = /\.(\d+)$/.exec(String(printed))?.[1]?.length ?? 0;
  return 0.5 * 10 ** -decimals;
}

function expectWithin(actual: number, expected: number, most: number, what: string): void {
  expect(Math.abs(actual - expected), `${what}: ${actual} for ${expected}`).toBeLessThanOrEqual(most);
}
