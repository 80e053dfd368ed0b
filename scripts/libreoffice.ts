/** LibreOffice as a second opinion: recalculates workbooks, whatever values are stored in them. */
import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { pathToFileURL } from 'node:url';

/** Without this setting it keeps the stored values of files that say they come from Excel. */
const ALWAYS_RECALCULATE = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>`;

const MODULE = `<?xml version="1.0" encoding="UTF-8"?>
<!DOCTYPE script:module PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "module.dtd">
<script:module xmlns:script="http://openoffice.org/2000/script" script:name="Module1" script:language="StarBasic">
`;

/** An installation of its own: two runs cannot share one. */
export class LibreOffice {
  private readonly profile = mkdtempSync(join(tmpdir(), 'moldsheet-libreoffice-'));

  constructor() {
    mkdirSync(join(this.profile, 'user'));
    writeFileSync(join(this.profile, 'user', 'registrymodifications.xcu'), ALWAYS_RECALCULATE);
  }

  /** Writes each file, recalculated, under its own name into a folder; tells for which that did not happen. */
  async recalculate(files: readonly string[], folder: string, seconds: number): Promise<string[]> {
    mkdirSync(folder, { recursive: true });
    await this.run([...files], folder, seconds);
    return files.filter((file) => !existsSync(join(folder, basename(file))));
  }

  /** Runs lines of its Basic, as the body of a procedure: what a person does with the menus. */
  async basic(lines: readonly string[], seconds: number): Promise<void> {
    const library = join(this.profile, 'user', 'basic', 'Standard');
    // The first start of an installation writes over what is there.
    if (!existsSync(library)) await this.start(['--terminate_after_init'], seconds);
    const body = lines.join('\n').replaceAll('&', '&amp;').replaceAll('<', '&lt;');
    writeFileSync(join(library, 'Module1.xba'), `${MODULE}Sub Work\n${body}\nEnd Sub</script:module>`);
    await this.start(['macro:///Standard.Module1.Work()'], seconds);
  }

  dispose(): void {
    rmSync(this.profile, { recursive: true, force: true });
  }

  private run(files: readonly string[], folder: string, seconds: number): Promise<void> {
    return this.start(['--convert-to', 'xlsx:Calc MS Excel 2007 XML', '--outdir', folder, ...files], seconds);
  }

  private start(wanted: readonly string[], seconds: number): Promise<void> {
    const args = [
      `-env:UserInstallation=${pathToFileURL(this.profile).href}`,
      '--headless',
      '--norestore',
      ...wanted,
    ];
    return new Promise((resolve, reject) => {
      const child = spawn('soffice', args, { stdio: 'ignore', detached: true });
      // The program starts another of its own, so the whole group has to go.
      const timer = setTimeout(() => {
        if (child.pid !== undefined) process.kill(-child.pid, 'SIGKILL');
      }, seconds * 1000);
      child.on('error', reject);
      child.on('close', () => {
        clearTimeout(timer);
        resolve();
      });
    });
  }
}
