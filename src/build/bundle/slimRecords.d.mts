export declare function slimRecords(text: string, name?: string): string;
export declare const RECORD_FILES: RegExp;
