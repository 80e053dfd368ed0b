const ts = require('typescript');

/**
 * Leaves of definitions, tables and tools what their numbers need: the texts for people, the equations (compiled
 * elsewhere) and the sources fall away, and so does the code of the tools that come late. Which part of a definition is
 * which is told by what stands beside it in the same object.
 */
const SOURCES = new Set(['published', 'secondHand', 'derived', 'fromMemory', 'commonPractice']);

/** What falls away of an object that has all of these names. */
const SHAPES = [
  // A definition, a tool.
  {
    of: ['name', 'summary'],
    drop: [
      'summary',
      'sources',
      'notes',
      'related',
      'cautions',
      'valid',
      'changes',
      'method',
      'constants',
      'native',
      'example',
    ],
  },
  { of: ['method', 'run'], drop: ['steps'] },
  { of: ['late', 'run'], drop: ['run'] },
  // A step.
  { of: ['gives', 'expr', 'says'], drop: ['expr', 'says', 'fitted'] },
  { of: ['gives', 'cases', 'says'], drop: ['cases', 'says', 'fitted'] },
  { of: ['gives', 'equation', 'says'], drop: ['equation', 'says'] },
  // What a name stands for, and what copies look it up among.
  { of: ['gives', 'says', 'from'], drop: ['says'] },
  { of: ['read', 'names'], drop: ['names'] },
  // A condition that refuses; its sentence stays.
  { of: ['when', 'argument', 'says'], drop: ['when'] },
  { of: ['holds', 'says'], drop: ['holds', 'says'] },
];

/** The last argument of these holds what is said of an input. */
const INPUTS = new Set(['input', 'choice', 'named', 'list', 'set']);
const OF_AN_INPUT = ['says', 'whenLeftOut'];
/** What falls away wherever it stands. */
const ANYWHERE = ['usual', 'noUsual', 'notes', 'related', 'changes', 'method', 'summary'];

const nameOf = (property) => property.name?.text;

module.exports = function numbersAlone(source) {
  const file = ts.createSourceFile(this.resourcePath, source, ts.ScriptTarget.Latest, true);
  const transform = (context) => (root) => {
    const without = (object, names) =>
      context.factory.updateObjectLiteralExpression(
        object,
        object.properties.filter((property) => !names.includes(nameOf(property))),
      );
    const visit = (node) => {
      if (ts.isCallExpression(node) && ts.isIdentifier(node.expression)) {
        if (SOURCES.has(node.expression.text)) return context.factory.createNumericLiteral(0);
        // A step without a value is called by its symbol alone.
        if (node.expression.text === 'notFinite') {
          const [symbol] = node.arguments[0].text.split(' = ');
          const args = [context.factory.createStringLiteral(symbol)];
          return context.factory.updateCallExpression(node, node.expression, node.typeArguments, args);
        }
        // Of a tool's parameter what is said of it.
        if (node.expression.text === 'parameter' && node.arguments.length > 1) {
          const [name, , ...more] = node.arguments;
          const args = [name, context.factory.createStringLiteral(''), ...more];
          return context.factory.updateCallExpression(node, node.expression, node.typeArguments, args);
        }
        const last = node.arguments.at(-1);
        if (INPUTS.has(node.expression.text) && last && ts.isObjectLiteralExpression(last)) {
          const args = [...node.arguments.slice(0, -1), without(last, OF_AN_INPUT)];
          return ts.visitEachChild(
            context.factory.updateCallExpression(node, node.expression, node.typeArguments, args),
            visit,
            context,
          );
        }
      }
      if (ts.isObjectLiteralExpression(node)) {
        const names = node.properties.map(nameOf);
        const drop = SHAPES.filter(({ of }) => of.every((name) => names.includes(name))).flatMap(
          (shape) => shape.drop,
        );
        return ts.visitEachChild(without(node, [...drop, ...ANYWHERE]), visit, context);
      }
      return ts.visitEachChild(node, visit, context);
    };
    return ts.visitNode(root, visit);
  };
  const { transformed } = ts.transform(file, [transform]);
  return ts.createPrinter().printFile(transformed[0]);
};
