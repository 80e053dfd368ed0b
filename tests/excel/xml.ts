import { SaxesParser } from 'saxes';

export interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: Element[];
  text: string;
}

export const parseXml = (xml: string): Element => {
  const root: Element = { name: '', attributes: {}, children: [], text: '' };
  const open = [root];
  const parser = new SaxesParser();
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name, attributes }) => {
    const element: Element = { name, attributes, children: [], text: '' };
    open.at(-1)?.children.push(element);
    open.push(element);
  });
  parser.on('text', (text) => {
    const element = open.at(-1);
    if (element) element.text += text;
  });
  parser.on('closetag', () => open.pop());
  parser.write(xml).close();
  const [top] = root.children;
  if (!top) throw new Error('no element');
  return top;
};

/** An element and everything below it, in document order. */
export const within = (element: Element): Element[] => [element, ...element.children.flatMap(within)];
