export declare function slimRecords(text: string, name?: string): string;
