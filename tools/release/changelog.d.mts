export declare function releasedChanges(text: string, version: string, date: Date): string;
