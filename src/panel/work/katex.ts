import katex from 'katex';
import 'katex/dist/katex.min.css';

/** Typesets TeX into an element. In a chunk of its own: the functions, and the panel without the work, do without it. */
export function typeset(tex: string, element: HTMLElement): void {
  katex.render(`\\displaystyle ${tex}`, element, { throwOnError: false, strict: false, displayMode: false });
}
