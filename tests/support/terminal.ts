import { type ChildProcessWithoutNullStreams, spawn } from "node:child_process";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const ROOT = join(dirname(fileURLToPath(import.meta.url)), "..", "..");

/** A terminal command under way: what it has answered so far, and how it ended. */
export interface Running {
  readonly write: (text: string) => void;
  readonly end: (text?: string) => void;
  /** Waits for so many whole lines of answers; fewer where it ends before. */
  readonly lines: (count: number) => Promise<readonly string[]>;
  readonly ended: Promise<{ readonly code: number | null; readonly lines: readonly string[]; readonly errors: string }>;
  readonly process: ChildProcessWithoutNullStreams;
}

/** Starts `npm run -s NAME -- ARGS` without npm. */
export function started(name: string, ...args: readonly string[]): Running {
  const child = spawn(process.execPath, ["tools/run.mjs", name, ...args], { cwd: ROOT });
  let answered = "";
  let errors = "";
  const wholeLines = (): readonly string[] => answered.split("\n").slice(0, -1);
  child.stdout.setEncoding("utf8").on("data", (text: string) => {
    answered += text;
  });
  child.stderr.setEncoding("utf8").on("data", (text: string) => {
    errors += text;
  });
  const ended = new Promise<Awaited<Running["ended"]>>((resolve) => {
    child.on("close", (code) => resolve({ code, lines: wholeLines(), errors }));
  });
  return {
    process: child,
    write: (text) => child.stdin.write(text),
    end: (text = "") => child.stdin.end(text),
    lines: async (count) => {
      const isOver = ended.then(() => true);
      while (wholeLines().length < count) {
        const soon = new Promise<boolean>((resolve) => child.stdout.once("data", () => resolve(false)));
        if (await Promise.race([isOver, soon])) break;
      }
      return wholeLines();
    },
    ended,
  };
}
