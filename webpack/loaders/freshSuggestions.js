/**
 * The grid's list of functions lags behind the keys by 300 ms. Who typed on meanwhile and pressed Enter got the first
 * name of the old list in place of their own: `=MOLD.SEAT.FREEDRAFT(0.1)` became MOLD.SEAT.FORCE. The list takes keys
 * only as long as it belongs to the text that stands in the editor; else Enter ends the entry as it was typed.
 */
const CHANGES = [
  // Every input counts; a search notes which one it is for.
  [
    'const d = editor.input$.pipe(debounceTime(300)).subscribe(() => {\n\t\t\t\tconst selections = editor.getSelectionRanges();',
    'const d = editor.input$.pipe(map((input) => { editor.inputs = (editor.inputs ?? 0) + 1; return input; }), debounceTime(300)).subscribe(() => {\n\t\t\t\teditor.searched = editor.inputs;\n\t\t\t\tconst selections = editor.getSelectionRanges();',
  ],
  [
    'const operationId = `sheet.formula-embedding-editor.search_function.${editorId}`;',
    'const operationId = `sheet.formula-embedding-editor.search_function.${editorId}`;\n\t\tconst belongsTo = editor.searched;',
  ],
  [
    'id: operationId,\n\t\t\t\tbinding: keyCode,\n\t\t\t\tpreconditions: () => true,\n\t\t\t\tpriority: 1e3,',
    'id: operationId,\n\t\t\t\tbinding: keyCode,\n\t\t\t\tpreconditions: () => editor.inputs === belongsTo,\n\t\t\t\tpriority: 1e3,',
  ],
];

module.exports = function freshSuggestions(source) {
  return CHANGES.reduce((text, [from, to]) => {
    if (text.split(from).length !== 2)
      throw new Error('The grid suggests functions at another place than it did: look at webpack/loaders.');
    return text.replace(from, () => to);
  }, source);
};
