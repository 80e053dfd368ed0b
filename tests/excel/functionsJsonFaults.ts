/**
 * What is wrong with a functions.json. Excel leaves out the function, or the whole file, mostly without a word.
 * The rules are those of Microsoft's JSON reference, of its generator and of the schema of the unified manifest; where
 * two differ, the stricter.
 */
export const functionsJsonFaults = (file: unknown, builtIn: ReadonlySet<string>): string[] => {
  const top = asObject(file);
  const functions = asList(top['functions']).map(asObject);
  return [
    // Pick lists are refused here: Excel shows none for a parameter of type any, which all of ours are.
    ...unknownKeys('file', top, ['functions', 'allowErrorForDataTypeAny', 'allowCustomDataForDataTypeAny']),
    ...(Array.isArray(top['functions']) ? [] : ['file: functions is missing']),
    ...(functions.length <= 20_000 ? [] : ['file: more than 20,000 functions']),
    ...(top['allowErrorForDataTypeAny'] === true
      ? []
      : ['file: errors in arguments would not reach the functions']),
    ...repeated(functions.map((fn) => textOf(fn['id']))).map((id) => `id ${id} is there twice`),
    ...repeated(functions.map((fn) => textOf(fn['name']))).map((name) => `name ${name} is there twice`),
    ...repeated(functions.map((fn) => textOf(fn['id']).replaceAll('.', '_'))).map(
      (id) => `${id}: two ids differ only in dot against underscore, and are stored alike`,
    ),
    ...functions.flatMap((fn) => functionFaults(fn, builtIn)),
  ];
};

type Loose = Readonly<Record<string, unknown>>;

const functionFaults = (fn: Loose, builtIn: ReadonlySet<string>): string[] => {
  const id = textOf(fn['id']);
  const parameters = asList(fn['parameters']).map(asObject);
  return [
    ...unknownKeys(id, fn, ['id', 'name', 'description', 'helpUrl', 'parameters', 'result', 'options']),
    ...(/^[A-Z][A-Z0-9._]{2,63}$/.test(id)
      ? []
      : [`"${id}" is not an id: 3 to 64 capitals, digits, dots, underscores`]),
    ...(fn['name'] === id ? [] : [`${id}: the name must be the id`]),
    ...nameFaults(id, builtIn),
    ...sized(`${id}: description`, fn['description'], 1024),
    ...(textOf(fn['helpUrl']).startsWith('https://') ? [] : [`${id}: the address of the help must be https`]),
    ...(Array.isArray(fn['parameters']) ? [] : [`${id}: parameters is missing`]),
    ...(parameters.length <= 128 ? [] : [`${id}: more than 128 parameters`]),
    ...(fn['result'] === undefined ? [`${id}: result is missing`] : []),
    ...typeFaults(`${id}: result`, asObject(fn['result'])),
    ...parameters.flatMap((parameter) => parameterFaults(id, parameter)),
    ...orderFaults(id, parameters),
    ...optionFaults(id, asObject(fn['options']), asObject(fn['result'])),
  ];
};

/** Words of the old macro language that Excel keeps for itself. */
const MACRO_WORDS = new Set(
  'ALERT ARGUMENT BEEP CALL ECHO EVALUATE EXEC FORMULA GOTO HALT INITIATE INPUT POKE REGISTER REQUEST RESULT RETURN RUN STEP'.split(
    ' ',
  ),
);

const nameFaults = (id: string, builtIn: ReadonlySet<string>): string[] => [
  ...(isCellReference(id) ? [`${id} reads as a cell reference`] : []),
  ...(MACRO_WORDS.has(id) ? [`${id} is a word of the old macro language`] : []),
  ...(builtIn.has(id) ? [`${id} is a built-in function`] : []),
];

const isCellReference = (name: string): boolean => {
  const [, letters = '', digits = ''] = /^([A-Z]{1,3})([0-9]+)$/.exec(name) ?? [];
  const column = Array.from(letters).reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
  const inSheet = column >= 1 && column <= 16_384 && Number(digits) >= 1 && Number(digits) <= 1_048_576;
  return inSheet || /^R[0-9]*C[0-9]*$/.test(name);
};

const parameterFaults = (id: string, parameter: Loose): string[] => {
  const called = `${id}(${textOf(parameter['name'])})`;
  return [
    ...unknownKeys(called, parameter, [
      ...['name', 'description', 'type', 'dimensionality', 'optional', 'repeating', 'cellValueType'],
    ]),
    ...sized(`${called}: name`, parameter['name'], 64),
    ...sized(`${called}: description`, parameter['description'], 512),
    ...typeFaults(called, parameter),
    ...(parameter['cellValueType'] === undefined || parameter['type'] === 'any'
      ? []
      : [`${called}: cellValueType needs type any`]),
    ...(parameter['repeating'] !== true || parameter['dimensionality'] === 'matrix'
      ? []
      : [`${called}: a repeating parameter must be a matrix`]),
  ];
};

const orderFaults = (id: string, parameters: readonly Loose[]): string[] => {
  const optional = parameters.map((parameter) => parameter['optional'] === true);
  return [
    ...(optional.includes(true) && optional.indexOf(true) < optional.lastIndexOf(false)
      ? [`${id}: a required parameter after an optional one`]
      : []),
    ...(parameters.slice(0, -1).some((parameter) => parameter['repeating'] === true)
      ? [`${id}: only the last parameter may repeat`]
      : []),
  ];
};

const typeFaults = (called: string, typed: Loose): string[] => [
  ...oneOf(`${called}: type`, typed['type'], ['boolean', 'number', 'string', 'any']),
  ...oneOf(`${called}: dimensionality`, typed['dimensionality'], ['scalar', 'matrix']),
];

const OPTIONS = [
  ...[
    'stream',
    'cancelable',
    'volatile',
    'requiresAddress',
    'requiresParameterAddresses',
    'requiresStreamAddress',
  ],
  ...[
    'requiresStreamParameterAddresses',
    'capturesCallingObject',
    'excludeFromAutoComplete',
    'linkedEntityLoadService',
  ],
];

const optionFaults = (id: string, options: Loose, result: Loose): string[] => {
  const on = (name: string): boolean => options[name] === true;
  return [
    // Among what is refused here: supportSync, which is a preview and not for production.
    ...unknownKeys(`${id}: options`, options, OPTIONS),
    ...(on('stream') && on('cancelable') ? [`${id}: stream and cancelable exclude each other`] : []),
    ...(on('volatile') ? [`${id}: a volatile function recalculates at every edit`] : []),
    ...(on('requiresParameterAddresses') && result['dimensionality'] !== 'matrix'
      ? [`${id}: requiresParameterAddresses needs a matrix result`]
      : []),
  ];
};

const textOf = (value: unknown): string => (typeof value === 'string' ? value : '');
const asList = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
const asObject = (value: unknown): Loose =>
  typeof value === 'object' && value !== null ? (value as Loose) : {};

const unknownKeys = (called: string, object: Loose, known: readonly string[]): string[] =>
  Object.keys(object)
    .filter((key) => !known.includes(key))
    .map((key) => `${called}: Excel knows no ${key}`);

const sized = (called: string, text: unknown, limit: number): string[] => {
  const { length } = textOf(text);
  return length >= 1 && length <= limit
    ? []
    : [`${called} has ${length} characters, 1 to ${limit} are allowed`];
};

const oneOf = (called: string, value: unknown, words: readonly string[]): string[] =>
  words.includes(textOf(value)) ? [] : [`${called} must be one of ${words.join(', ')}`];

const repeated = (names: readonly string[]): string[] => [
  ...new Set(
    names.filter((name, i) => names.findIndex((other) => other.toLowerCase() === name.toLowerCase()) < i),
  ),
];
