import { describe, expect, it } from "vitest";
import { type DutyText, EMPTY_DUTY, type Place } from "../../../shared/duty/duty-text.ts";
import { sumTree } from "../../../shared/duty/sums/sum-parser.ts";
import type { PaneContext } from "../../../taskpane/pane/context.ts";
import { next, openingState, type PaneState } from "../../../taskpane/pane/state.ts";
import { sumsWith } from "../../../taskpane/pane/sums.ts";
import { fieldView } from "../../../taskpane/pane/views/field.ts";
import { lineEditorView } from "../../../taskpane/pane/views/line-editor.ts";
import { workedOut } from "../../../taskpane/pane/worked.ts";
import { markup } from "../../support/markup.ts";

const LENGTH: Place = { line: "dischargeLine", row: 0, column: "length" };

function flow(text: string): DutyText {
  return { ...EMPTY_DUTY, fields: { ...EMPTY_DUTY.fields, flow: text } };
}

/** The state after typing, with its sums worked out. */
async function typed(place: Place, text: string, from: PaneState = openingState()): Promise<PaneState> {
  const state = next(from, { type: "typed", place, text });
  let isReady = (): void => undefined;
  const ready = new Promise<void>((resolve) => {
    isReady = resolve;
  });
  const settle = sumsWith(async () => ({ sumTree }), isReady);
  if (settle(state.duty) === undefined) await ready;
  const settled = settle(state.duty);
  return settled === undefined ? state : next(state, { type: "sums-settled", settled });
}

function shown(state: PaneState, view: (context: PaneContext) => unknown): string {
  const context = { state, worked: workedOut(state.duty) } as unknown as PaneContext;
  return markup(view(context)).replace(/\s+/g, " ");
}

describe("what works out sums", () => {
  it("is loaded when a text first needs it, and once", async () => {
    let loads = 0;
    let calls = 0;
    const settle = sumsWith(
      async () => {
        loads += 1;
        return { sumTree };
      },
      () => {
        calls += 1;
      },
    );
    expect(settle(flow("1000"))?.duty.fields.flow).toBe("1000");
    expect(loads).toBe(0);
    expect(settle(flow("2*500"))).toBeUndefined();
    expect(settle(flow("2*500"))).toBeUndefined();
    await new Promise((resolve) => setTimeout(resolve));
    expect([loads, calls]).toEqual([1, 1]);
    expect(settle(flow("2*500"))?.duty.fields.flow).toBe("2*500 = 1000");
  });

  it("says so where it cannot be loaded, and tries again at the next letter", async () => {
    let loads = 0;
    const settle = sumsWith(
      async () => {
        loads += 1;
        throw new Error("offline");
      },
      () => undefined,
    );
    expect(settle(flow("2*500"))).toBeUndefined();
    await new Promise((resolve) => setTimeout(resolve));
    expect(settle(flow("2*500"))?.refused.get("flow")?.code).toBe("sum-not-loaded");
    expect(settle(flow("2*501"))).toBeUndefined();
    expect(loads).toBe(2);
  });
});

describe("a sum in a box of the pane", () => {
  it("is shown with what it comes to, which describes the box too", async () => {
    const text = shown(await typed({ field: "flow" }, "2*500"), (context) => fieldView(context, "flow"));
    expect(text).toContain('<p class="sum-line" id=duty-flow-sum>= 1000 US gpm</p>');
    expect(text).toMatch(/aria-describedby=duty-flow-unit duty-flow-sum duty-flow-help/);
  });

  it("is one step back with what it comes to", async () => {
    const state = await typed(
      { field: "flow" },
      "2*500",
      next(openingState(), { type: "typed", place: LENGTH, text: "1" }),
    );
    expect(state.duty.fields.flow).toBe("2*500 = 1000");
    expect(next(state, { type: "undone" }).duty.fields.flow).toBe("");
    expect(next(state, { type: "undone" }).duty.dischargeLine[0]?.length).toBe("1");
  });

  it("says in words why it cannot be worked out", async () => {
    const text = shown(await typed({ field: "flow" }, "500/0"), (context) => fieldView(context, "flow"));
    expect(text).toContain("the sum divides by zero");
    expect(text).not.toContain("sum-line");
  });

  it("says nothing more of it once it is mended", async () => {
    const wrong = await typed({ field: "flow" }, "500/0");
    expect((await typed({ field: "flow" }, "500", wrong)).refusedSums.size).toBe(0);
  });
});

describe("several lengths in the box of one", () => {
  it("are added after asking, as one step", async () => {
    const state = await typed(LENGTH, "120 ft; 80 ft; 35");
    expect(state.duty.dischargeLine[0]?.length).toBe("120 ft; 80 ft; 35");
    const asked = shown(state, (context) => lineEditorView(context, "dischargeLine"));
    expect(asked).toContain("3 lengths in one box: add them up?");
    expect(asked).toMatch(/<button[^>]*> 120 ft \+ 80 ft \+ 35 <\/button>/);
    const sum = next(state, { type: "lengths-added", place: LENGTH, sum: "120 ft + 80 ft + 35" });
    const settled = sumsWith(
      async () => ({ sumTree }),
      () => undefined,
    );
    settled(sum.duty);
    await new Promise((resolve) => setTimeout(resolve));
    expect(settled(sum.duty)?.duty.dischargeLine[0]?.length).toBe("120 ft + 80 ft + 35 = 235 ft");
    expect(next(sum, { type: "undone" }).duty).toBe(state.duty);
  });

  it("are asked about nowhere else", async () => {
    const text = shown(await typed(LENGTH, "1,200"), (context) => lineEditorView(context, "dischargeLine"));
    expect(text).not.toContain("add them up");
  });
});
