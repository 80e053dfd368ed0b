/** The grid forgets all but twenty steps, and the acts of ours that stand before them. */
const CAPACITY = /const STACK_CAPACITY = 20;/g;

module.exports = function longUndo(source) {
  if (source.match(CAPACITY)?.length !== 1)
    throw new Error('The grid counts its steps at another place than it did: look at webpack/loaders.');
  return source.replace(CAPACITY, 'const STACK_CAPACITY = 200;');
};
