interface Options {
  readonly alsoOthers?: boolean;
}
interface Generated {
  readonly text: string;
  readonly files: readonly string[];
}
export declare const REPLACED: string;
export declare function generate(options?: Options): Promise<Generated>;
export declare function generateOrKept(options?: Options): Promise<Generated>;
