import { evaluateLine, refused } from "./evaluate/evaluate-line.ts";
import { answerLines } from "./lines/answer-lines.ts";

/**
 * Reads JSON lines such as {"call":"FRICTIONHEAD","args":[1200,"10in HDPE DR17",1800]} on standard input and writes
 * one JSON line for each, in order: the value (with notes, where there are any) or the error and its message.
 * null leaves an argument out; a range is rows of cells. A line that cannot be read gets an error line.
 */
process.exitCode = await answerLines(import.meta.url, { answerTo: evaluateLine, refused, mostAtOnce: 256 });
