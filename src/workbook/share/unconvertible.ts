/** Why a formula has no native form; a sentence without its end. */
export class Unconvertible extends Error {}
