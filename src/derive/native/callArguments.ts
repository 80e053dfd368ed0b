import type { NativeArgument, NativeUnits } from './arguments';

/** What a call is given, as its native form is to read it. */
export interface CallArguments {
  /** In the order of the definition's inputs; undefined where left out. */
  readonly args: readonly (NativeArgument | undefined)[];
  readonly units: NativeUnits;
  /** Cells that are blank now, so that their arguments are left out; the native form refuses whatever is put there. */
  readonly leftOut?: readonly { readonly name: string; readonly text: string; readonly isList: boolean }[];
  /** Values of names that were left out, by input. */
  readonly defaults: readonly unknown[];
}
