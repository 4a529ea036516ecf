import type { Pattern } from "sprigwright";

export declare function patternsOf(page: string, library: object): Promise<Pattern[]>;
