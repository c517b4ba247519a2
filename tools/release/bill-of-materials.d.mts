export declare function billOfMaterials(root: string, date: Date): string;
