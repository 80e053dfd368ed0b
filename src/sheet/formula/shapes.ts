/** Formulas compiled once a shape. */
import { NAMESPACE } from '../../cells/namespace';
import type { Shape } from '../graph/nodes';
import { Keep } from '../values';
import type { Compiler, Directory } from './code';
import { compile } from './compile';
import type { At, Place } from './places';
import { shapeKey } from './shape';
import { readFormula, type Node } from './syntax';

const OURS = new RegExp(`(?:^|[^\\w.])${NAMESPACE}\\.`, 'i');

export class Shapes {
  private readonly known = new Map<string, Shape>();

  constructor(private readonly book: Directory) {}

  /** `lifts`: operations go over arrays cell by cell, as in dynamic and in old array formulas. */
  of(text: string, at: At, lifts: boolean): Shape {
    const key = this.key(text, at, lifts);
    let shape = this.known.get(key);
    if (!shape) {
      shape = compileShape(text, at, lifts, this.book);
      this.known.set(key, shape);
    }
    return shape;
  }

  private key(text: string, at: At, lifts: boolean): string {
    const key = `${lifts ? '' : '@'}${at.sheet} ${shapeKey(text, at.row, at.column, this.book.cellLike)}`;
    // `[@Qty]` means the table around the cell.
    return /(?:^|[^\w\]'.])\[/.test(text) ? `${this.book.tableAt(at)?.name ?? ''} ${key}` : key;
  }
}

function compileShape(text: string, from: At, lifts: boolean, book: Directory): Shape {
  const reads: Place[] = [];
  let isVolatile = false;
  let isOurs = false;
  const compiler = (state: Omit<Compiler, 'compile' | 'with' | 'isVolatile' | 'isOurs'>): Compiler => {
    const here: Compiler = {
      ...state,
      isVolatile: () => {
        isVolatile = true;
      },
      isOurs: () => {
        isOurs = true;
      },
      compile: (node) => compile(node, here),
      with: (changes) => compiler({ ...state, ...changes }),
    };
    return here;
  };
  const to = compiler({
    book,
    from,
    isName: false,
    lifts,
    scope: [],
    names: new Map(),
    reads: (place) => reads.push(place),
  });
  let tree: Node | undefined;
  let run: Shape['run'];
  try {
    tree = readFormula(text);
    run = compile(tree, to).value;
  } catch (error) {
    if (!(error instanceof Keep || error instanceof RangeError)) throw error;
    const keep = error instanceof Keep ? error : new Keep('It is nested too deeply.');
    run = () => {
      throw keep;
    };
    if (tree) readAll(tree, to);
    isOurs ||= OURS.test(text);
  }
  return { run, reads, isVolatile, isOurs };
}

/** What an unknown function reads counts all the same: its stored value no longer holds when that changes. */
function readAll(tree: Node, to: Compiler): void {
  const open: unknown[] = [tree];
  for (let node = open.pop(); node !== undefined; node = open.pop()) {
    if (typeof node !== 'object' || node === null) continue;
    if ((node as Node).type === 'ReferenceIdentifier') {
      try {
        compile(node as Node, to);
      } catch (error) {
        if (!(error instanceof Keep)) throw error;
      }
    } else open.push(...(Object.values(node) as unknown[]));
  }
}
