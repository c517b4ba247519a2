import { it } from "vitest";
import { call } from "../../../shared/catalogue/call.ts";
import { entryNamed } from "../../../shared/catalogue/catalogue.ts";
import { noteText } from "../../../shared/text/finding-text.ts";
it("x", () => {
  const show = (id: string, ...args: any[]) => {
    const o = call(entryNamed(id)!, args) as any;
    console.log(id, JSON.stringify(args), "\n", o.ok ? JSON.stringify(o.value, null, 1) : o.error.message, "\n", o.findings.map((f: any) => noteText(f, o.unitSet)).join("\n"));
  };
  const L = [["ID 152.4 mm rough 0.045 mm", 11]];
  show("PRIMETIME", L, 5, 23.6, 60, null, null, null, "SI");
  show("PRIMETIME", L, 7, "23.6 L/s, blank-off 40 kPa(a)", 60, null, null, null, "SI");
  show("PRIMETIME", L, 12, 23.6, 60, null, null, null, "SI");
  show("PRIMETIME", L, 5, "50 cfm, blank-off 26 inHg, leak 2 cfm", null, 3000, null, 50, "SI");
  show("PRIMETIME", L, 10.2, 23.6, 60, null, null, null, "SI");
  show("PRIMETIME", L, -1, 23.6, 60, null, null, null, "SI");
  show("PRIMETIME", L, 5, "50 cfm, blank-off 10 kPa", 60, null, null, null, "SI");
  show("PRIMETIME", [["6in sch40", 20]], 20, 50, 10);
  show("PRIMING", 15, [["6in suction hose", 40, "1 strainer"]], "rags");
  show("PRIMING", 2, [["6in sch40", 4]], 0, null, null, null, "SI");
  show("PRIMING", 2, [["6in sch40", 4]], 5, null, null, 70, "SI");
  show("PRIMING", 12, [["6in sch40", 14]], 5, null, null, null, "SI");
  show("PRIMING", -2, [["6in sch40", 14]], 5, null, null, null, "SI");
  show("PRIMING", 2, [["6in sch40", 14]], 70, null, null, null, "SI");
  show("PRIMING", 2, [["6in sch40", 14]], "bananas", null, null, null, "SI");
});
