export declare const REPLACED: string;
export declare function generate(options?: {
  readonly alsoOthers?: boolean;
}): Promise<{ readonly text: string; readonly files: readonly string[] }>;
