/**
 * How fast the page stands, in a Chromium that has never seen it: the first paint, the first sample with the values of its
 * file, the same calculated. Milliseconds after the address was entered, and the processor's share of them, which other
 * work on the machine falsifies less. `npm run bench` ends with it; by itself: `node scripts/bench/page.mjs`, after a build.
 */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { tsImport } from 'tsx/esm/api';
import { findChromium } from '../chromium.mjs';

const ROUNDS = 5;

const page = fileURLToPath(new URL('../../dist/page', import.meta.url));
const executablePath = findChromium();
if (!existsSync(join(page, 'index.html')) || !executablePath) {
  console.log('The page was not measured: it takes a build and a Chromium.');
  process.exit();
}

const { staticServer } = await tsImport('../../src/cli/staticServer.ts', import.meta.url);
const server = staticServer(page);
await new Promise((resolve) => server.listen(0, 'localhost', resolve));
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });

/** One visit of a newcomer, until the sample is calculated. */
async function visit() {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  const tab = await context.newPage();
  const session = await context.newCDPSession(tab);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  await tab.goto(`http://localhost:${server.address().port}`, { waitUntil: 'commit' });
  await tab.waitForFunction(() => globalThis.performance.getEntriesByName('moldsheet calculated').length > 0);
  const { metrics } = await session.send('Performance.getMetrics');
  const times = await tab.evaluate(() => {
    const at = (name) => globalThis.performance.getEntriesByName(name)[0].startTime;
    const files = globalThis.performance.getEntriesByType('resource');
    return {
      painted: at('first-contentful-paint'),
      shown: at('moldsheet shown'),
      calculated: at('moldsheet calculated'),
      kB: files.reduce((sum, { decodedBodySize }) => sum + decodedBodySize, 0) / 1000,
    };
  });
  await context.close();
  return { ...times, busy: 1000 * metrics.find(({ name }) => name === 'TaskDuration').value };
}

const visits = [];
for (let round = 0; round < ROUNDS; round++) visits.push(await visit());
await browser.close();
server.close();

function median(key) {
  const sorted = visits.map((one) => one[key]).sort((a, b) => a - b);
  return sorted[ROUNDS >> 1].toFixed(0);
}
console.log(`\nThe page for a newcomer, milliseconds, median of ${ROUNDS} visits\n`);
console.log(`first paint             ${median('painted')}`);
console.log(`sample, stored values   ${median('shown')}`);
console.log(`sample, calculated      ${median('calculated')}`);
console.log(`processor time by then  ${median('busy')}`);
console.log(`loaded by then          ${median('kB')} kB, unpacked`);
