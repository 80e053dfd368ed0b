// When the build was done: bundlers leave unchanged files as they are, so their own times do not tell.
import { writeFileSync } from 'node:fs';

writeFileSync('dist/.built', '');
