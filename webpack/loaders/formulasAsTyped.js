/**
 * The grid's editor respells the numbers of a typed formula (`1.0` becomes `1`) and then cuts the texts that follow at
 * places counted before: `=IF(3>1.0,"yes","no")` was kept as `=IF(3>1,","y",","")`. Formulas stay as they are typed.
 */
const RESPELLS =
  'else if (typeof parsedValue.v === "number" && (parsedValue.z === void 0 || !numfmt.getFormatInfo(parsedValue.z).isDate))';

module.exports = function formulasAsTyped(source) {
  if (source.split(RESPELLS).length !== 2) {
    throw new Error(
      'The grid respells typed formulas at another place than it did: look at webpack/loaders.',
    );
  }
  return source.replace(RESPELLS, 'else if (false)');
};
