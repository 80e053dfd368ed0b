/** Writes the design sheets, calculated, beside their descriptions: `npm run samples [name…]`. */
import { writeFileSync } from 'node:fs';
import { calculated } from './calculated';
import { designs } from './designs';

const wanted = process.argv.slice(2);
for (const design of designs.filter(({ file }) => wanted.length === 0 || wanted.includes(file))) {
  const { bytes, errors } = await calculated(design);
  if (errors.length > 0) {
    process.stderr.write(
      `${design.file}.xlsx is left as it was:\n${errors.map((one) => `  ${one}\n`).join('')}`,
    );
    process.exitCode = 1;
    continue;
  }
  writeFileSync(new URL(`${design.file}.xlsx`, import.meta.url), bytes);
  process.stdout.write(`${design.file}.xlsx, ${bytes.length} bytes\n`);
}
