import { availableParallelism } from "node:os";
import type { Writable } from "node:stream";
import { Worker } from "node:worker_threads";
import type { Line } from "./line-splitter.ts";
import type { Answered, Asked } from "./messages.ts";

/** Batches a thread has at hand: while one is answered, the next is there already. */
const BATCHES_EACH = 2;

/** Batches a thread that are read ahead or wait behind a slower one. */
const READ_AHEAD = 8;

interface Batch {
  readonly count: number;
  text: string;
  isDone: boolean;
}

interface Hand {
  readonly thread: Worker;
  /** Oldest first. */
  readonly batches: Batch[];
}

/** Threads that answer lines side by side, and their answers put back in order. */
export class Crew {
  readonly #module: string;
  readonly #mostAtOnce: number;
  readonly #out: Writable;
  readonly #size = availableParallelism();
  readonly #hands: Hand[] = [];
  /** In the order of the lines. */
  readonly #unwritten: Batch[] = [];
  #waiting: Line[] = [];
  /** Lines asked and not answered in full. */
  #open = 0;
  #asked = 0;
  #failed = 0;
  #isFull = false;
  #fault: Error | undefined;
  #wake: (() => void) | undefined;

  constructor(module: string, mostAtOnce: number, out: Writable) {
    this.#module = module;
    this.#mostAtOnce = mostAtOnce;
    this.#out = out;
  }

  /** Lines taken in so far. */
  get asked(): number {
    return this.#asked;
  }

  /** Lines whose answer says why there is none. */
  get failed(): number {
    return this.#failed;
  }

  /** Takes lines in; waits where more are open than are read ahead. */
  async ask(lines: readonly Line[]): Promise<void> {
    this.#open += lines.length;
    this.#asked += lines.length;
    for (const line of lines) this.#waiting.push(line);
    this.#handOut();
    const most = READ_AHEAD * this.#size * this.#mostAtOnce;
    await this.#until(() => this.#open < most);
  }

  /** Waits until every line is answered and written. */
  async finish(): Promise<void> {
    await this.#until(() => this.#open === 0 && !this.#isFull);
  }

  /** Ends the threads. */
  async end(): Promise<void> {
    await Promise.all(this.#hands.map(({ thread }) => thread.terminate()));
  }

  async #until(isSo: () => boolean): Promise<void> {
    while (!isSo()) {
      if (this.#fault !== undefined) throw this.#fault;
      await new Promise<void>((resolve) => {
        this.#wake = resolve;
      });
    }
    if (this.#fault !== undefined) throw this.#fault;
  }

  #handOut(): void {
    while (this.#waiting.length > 0 && !this.#isFull) {
      const hand = this.#nextHand();
      if (hand === undefined) return;
      // Few lines are shared out, so that none waits behind another while a thread is idle.
      const share = Math.ceil(this.#waiting.length / (BATCHES_EACH * this.#size));
      const lines = this.#waiting.splice(0, Math.min(share, this.#mostAtOnce));
      const batch: Batch = { count: lines.length, text: "", isDone: false };
      hand.batches.push(batch);
      this.#unwritten.push(batch);
      hand.thread.postMessage({ lines } satisfies Asked);
    }
  }

  /** An idle thread, a new one, or the one with least at hand. */
  #nextHand(): Hand | undefined {
    const [least] = [...this.#hands].sort((a, b) => a.batches.length - b.batches.length);
    if (least !== undefined && least.batches.length === 0) return least;
    if (this.#hands.length < this.#size) return this.#newHand();
    return least !== undefined && least.batches.length < BATCHES_EACH ? least : undefined;
  }

  #newHand(): Hand {
    const thread = new Worker(new URL(this.#module), { argv: process.argv.slice(2) });
    const hand: Hand = { thread, batches: [] };
    thread.on("message", (answered: Answered) => this.#take(hand, answered));
    thread.on("error", (error) => {
      this.#fault = error;
      this.#wake?.();
    });
    this.#hands.push(hand);
    return hand;
  }

  #take({ batches }: Hand, { text, failed, isLast }: Answered): void {
    const [batch] = batches;
    if (batch === undefined) return;
    this.#failed += failed;
    batch.text += text;
    if (isLast) {
      batch.isDone = true;
      batches.shift();
    }
    this.#write();
    this.#handOut();
    this.#wake?.();
  }

  /** Writes what is ready: all of the batches at the front, and what there is of the first unfinished one. */
  #write(): void {
    let ready = "";
    for (let [batch] = this.#unwritten; batch !== undefined; [batch] = this.#unwritten) {
      ready += batch.text;
      batch.text = "";
      if (!batch.isDone) break;
      this.#open -= batch.count;
      this.#unwritten.shift();
    }
    if (ready === "" || this.#out.write(ready)) return;
    this.#isFull = true;
    this.#out.once("drain", () => {
      this.#isFull = false;
      this.#handOut();
      this.#wake?.();
    });
  }
}
