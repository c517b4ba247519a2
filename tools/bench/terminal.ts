import { type ChildProcessWithoutNullStreams, spawn, spawnSync } from "node:child_process";
import { once } from "node:events";
import { availableParallelism } from "node:os";
import { SAMPLE_DUTIES } from "../../shared/duty/samples.ts";
import { saveDuty } from "../../shared/duty/saved.ts";
import { dutyAnswer } from "../duties/duty-answer.ts";

const DUTIES = 1000;
/** Answered in this thread for the rate of one core. */
const ON_ONE_CORE = 300;
const LINES = 1_000_000;
const LINES_AT_ONCE = 1000;

export interface DutyRates {
  readonly cores: number;
  /** Duties a second: in this thread alone, and through the command with its start counted. */
  readonly onOneCore: number;
  readonly onAll: number;
}

/** 1,000 unlike duties with pumps through `npm run -s duties`. */
export async function dutyRates(): Promise<DutyRates> {
  const lines = dutyLines();
  for (const line of lines.slice(0, 30)) dutyAnswer(line, undefined);
  const start = performance.now();
  for (const line of lines.slice(0, ON_ONE_CORE)) dutyAnswer(line, undefined);
  const onOneCore = (1000 * ON_ONE_CORE) / (performance.now() - start);
  const begun = performance.now();
  const command = started("duties");
  command.stdin.end(lines.join("\n"));
  const answered = await answersOf(command);
  if (answered !== DUTIES) throw new Error(`duties answered ${answered} of ${DUTIES} lines`);
  return { cores: availableParallelism(), onOneCore, onAll: (1000 * DUTIES) / (performance.now() - begun) };
}

/** The samples that have a pump, each line with a flow of its own. */
function dutyLines(): readonly string[] {
  const withPump = SAMPLE_DUTIES.map(({ duty }) => duty).filter(({ pump }) => pump !== undefined);
  return Array.from({ length: DUTIES }, (_, i) => {
    const duty = withPump[i % withPump.length] as (typeof withPump)[number];
    const flow = String(Number.parseFloat(duty.fields.flow.replace(",", "")) * (1 + i / (20 * DUTIES)));
    return JSON.stringify({ id: i, ...JSON.parse(saveDuty({ ...duty, fields: { ...duty.fields, flow } })) });
  });
}

export interface EvaluatorRun {
  readonly perSecond: number;
  /** Greatest resident memory, bytes, while the first and the last quarter of the answers came. */
  readonly firstQuarter: number;
  readonly lastQuarter: number;
}

/** 1,000,000 lines through `npm run -s evaluate`. */
export async function evaluatorRun(): Promise<EvaluatorRun> {
  const command = started("evaluate");
  const quarters = [0, 0, 0, 0];
  let answered = 0;
  const start = performance.now();
  const looking = setInterval(() => {
    const quarter = Math.min(3, Math.floor((4 * answered) / LINES));
    quarters[quarter] = Math.max(quarters[quarter] as number, residentBytes(command.pid));
  }, 200);
  const finished = answersOf(command, (so) => {
    answered = so;
  });
  for (let i = 0; i < LINES; i += LINES_AT_ONCE) {
    const piece = Array.from({ length: LINES_AT_ONCE }, (_, j) => evaluatorLine(i + j)).join("");
    if (!command.stdin.write(piece)) await once(command.stdin, "drain");
  }
  command.stdin.end();
  const all = await finished;
  clearInterval(looking);
  if (all !== LINES) throw new Error(`the evaluator answered ${all} of ${LINES} lines`);
  return {
    perSecond: (1000 * LINES) / (performance.now() - start),
    firstQuarter: quarters[0] as number,
    lastQuarter: quarters[3] as number,
  };
}

function evaluatorLine(i: number): string {
  return `{"call":"FRICTIONHEAD","args":[${200 + (i % 1500)},"10in HDPE DR17",1800]}\n`;
}

function started(name: string): ChildProcessWithoutNullStreams {
  return spawn(process.execPath, ["tools/run.mjs", name], { stdio: "pipe" });
}

/** Counts the answers as they come. */
async function answersOf(
  { stdout, stderr }: ChildProcessWithoutNullStreams,
  tell: (answered: number) => void = () => undefined,
): Promise<number> {
  let answered = 0;
  stderr.pipe(process.stderr);
  for await (const piece of stdout as AsyncIterable<Buffer>) {
    for (const byte of piece) if (byte === 10) answered += 1;
    tell(answered);
  }
  return answered;
}

/** As the system counts it; 0 where it cannot be asked. */
function residentBytes(pid: number | undefined): number {
  const { stdout } = spawnSync("ps", ["-o", "rss=", "-p", String(pid)], { encoding: "utf8" });
  return 1024 * (Number.parseInt(stdout, 10) || 0);
}
