import { execFileSync } from "node:child_process";

/** Runs git in a folder and gives what it says. */
export function git(root, ...args) {
  return execFileSync("git", args, { cwd: root, encoding: "utf8", stdio: ["ignore", "pipe", "pipe"] }).trim();
}

/**
 * Why what stands in a folder cannot be released, in words; empty where it can. A release is of a commit, and its
 * number counts the commits up to that.
 *
 * @param {string} root
 * @returns {readonly string[]}
 */
export function treeProblems(root) {
  try {
    git(root, "rev-parse", "HEAD");
  } catch {
    return ["this folder has no commit to release"];
  }
  const changed = git(root, "status", "--porcelain").split("\n").filter(Boolean);
  const isShallow = git(root, "rev-parse", "--is-shallow-repository") === "true";
  return [
    ...(changed.length === 0 ? [] : [`not committed: ${changed.map((line) => line.trim()).join(", ")}`]),
    ...(isShallow ? ["the history is cut short, and the number of the build with it: git fetch --unshallow"] : []),
  ];
}

/**
 * The commit to be released: its name, its date, and how many lead up to it.
 *
 * @param {string} root
 */
export function commitOf(root) {
  const [name, date] = git(root, "log", "-1", "--format=%H %cI").split(" ");
  return { name, date: new Date(date), build: Number(git(root, "rev-list", "--count", "HEAD")) };
}
