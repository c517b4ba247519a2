import { dutyAnswer, isFailure, refused } from "./duties/duty-answer.ts";
import { SheetFolder } from "./duties/sheet-folder.ts";
import { answerLines, UNUSABLE } from "./lines/answer-lines.ts";

/**
 * `npm run -s duties -- [--sheets DIR]`: reads saved duties, one a line, on standard input and writes one JSON line for
 * each, in order: its figures, findings and what is missing, or an error with the boxes at fault. With a folder, the
 * calc sheets go there too, each a workbook.
 */
async function main(args: readonly string[]): Promise<number> {
  const [option, folder] = args;
  if (args.length > 0 && (args.length !== 2 || option !== "--sheets" || folder === undefined)) {
    process.stderr.write(
      "Usage: npm run -s duties -- [--sheets DIR] < DUTIES.jsonl\n" +
        "  --sheets DIR  writes each calc sheet as a workbook into this folder too\n" +
        "Exit codes: 0 all answered, 1 some lines in error (each names its line), 2 wrong use or no line to answer\n",
    );
    return UNUSABLE;
  }
  let sheets: SheetFolder | undefined;
  try {
    sheets = folder === undefined ? undefined : new SheetFolder(folder);
  } catch (error) {
    process.stderr.write(`${folder} cannot be made a folder for the sheets: ${(error as Error).message}\n`);
    return UNUSABLE;
  }
  return answerLines(import.meta.url, {
    answerTo: (line) => dutyAnswer(line, sheets),
    refused,
    isFailure,
    mostAtOnce: 1,
  });
}

process.exitCode = await main(process.argv.slice(2));
