/** What reads XML hears, tag by tag. */
export type Attributes = Readonly<Record<string, string>>;

export interface OpenTag {
  readonly name: string;
  /** As written, with its colon; empty where there is none. */
  readonly prefix: string;
  readonly attributes: Attributes;
  readonly selfClosing: boolean;
  readonly start: number;
  readonly end: number;
}

export interface XmlHandler {
  open(tag: OpenTag): void;
  text(text: string): void;
  /** `start` and `end` bound the closing tag; both are the end of the opening tag where that closed itself. */
  close(name: string, start: number, end: number): void;
}
