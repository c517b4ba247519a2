export declare function packed(folder: string, date: Date): Uint8Array;
