/** Fonts that workbooks name, and what stands in where a computer has none of them: metrics alike come first. */
const STAND_INS: Readonly<Record<string, readonly string[]>> = {
  Calibri: ['Carlito', 'Liberation Sans', 'Arial', 'Helvetica'],
  Aptos: ['Segoe UI', 'Carlito', 'Liberation Sans', 'Arial', 'Helvetica'],
  'Aptos Narrow': [
    'Carlito',
    'Liberation Sans Narrow',
    'Arial Narrow',
    'Liberation Sans',
    'Arial',
    'Helvetica',
  ],
  Arial: ['Liberation Sans', 'Helvetica'],
  Consolas: ['Cascadia Mono', 'DejaVu Sans Mono', 'Liberation Mono', 'Courier New'],
  Cambria: ['Caladea', 'Liberation Serif', 'Times New Roman', 'Times'],
};

const FACES = [
  { suffix: '', weight: 'normal', style: 'normal' },
  { suffix: ' Bold', weight: 'bold', style: 'normal' },
  { suffix: ' Italic', weight: 'normal', style: 'italic' },
  { suffix: ' Bold Italic', weight: 'bold', style: 'italic' },
] as const;

/** Makes the fonts of workbooks known to the canvas that the cells are drawn on; nothing is loaded from anywhere. */
export async function loadLocalFonts(): Promise<void> {
  const faces = Object.entries(STAND_INS).flatMap(([family, others]) =>
    FACES.map(({ suffix, weight, style }) => {
      const local = [family, ...others].map((name) => `local("${name}${suffix}")`);
      return new FontFace(family, local.join(', '), { weight, style });
    }),
  );
  // A face of which no font is at hand fails to load, and the browser's own choice stays.
  const loaded = await Promise.allSettled(faces.map((face) => face.load()));
  for (const face of loaded) if (face.status === 'fulfilled') document.fonts.add(face.value);
}

const LATIN = [
  'Aptos',
  'Arial',
  'Calibri',
  'Cambria',
  'Consolas',
  'Courier New',
  'Georgia',
  'Tahoma',
  'Times New Roman',
  'Verdana',
];

/** Fonts for scripts of their own, by the beginning of a language's tag. */
const OTHERS: Readonly<Record<string, readonly string[]>> = {
  zh: ['Microsoft YaHei', 'SimSun', 'SimHei', 'KaiTi'],
  ja: ['Yu Gothic', 'Meiryo', 'MS Mincho'],
  ko: ['Malgun Gothic', 'Batang'],
};

/** The fonts that are offered: those of the reader's own script. */
export function fontMenu(language: string): { readonly value: string; readonly label: string }[] {
  return [...LATIN, ...(OTHERS[language.slice(0, 2)] ?? [])].map((name) => ({ value: name, label: name }));
}
