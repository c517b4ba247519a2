export declare function git(root: string, ...args: readonly string[]): string;
export declare function treeProblems(root: string): readonly string[];
export declare function commitOf(root: string): { readonly name: string; readonly date: Date; readonly build: number };
