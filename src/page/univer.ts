/** The grid's library, with the parts of it that the page uses. */
import { LocaleType, LogLevel, mergeLocales, Plugin, Univer, UniverInstanceType } from '@univerjs/core';
import { UniverFormulaEnginePlugin, UniverSheetsCorePreset } from '@univerjs/preset-sheets-core';
import enUS from '@univerjs/preset-sheets-core/locales/en-US';
import { UniverSheetsDataValidationPlugin } from '@univerjs/sheets-data-validation';
import validationText from '@univerjs/sheets-data-validation/locale/en-US';
import { UniverSheetsDataValidationUIPlugin } from '@univerjs/sheets-data-validation-ui';
import validationUIText from '@univerjs/sheets-data-validation-ui/locale/en-US';
import { UniverSheetsTablePlugin } from '@univerjs/sheets-table';
import '@univerjs/preset-sheets-core/lib/index.css';
import '@univerjs/sheets-data-validation-ui/lib/index.css';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { fontMenu } from './fonts';
import { functionDescriptions } from './functionDescriptions';
import { gridTheme } from './theme';

export function createUniver({
  container,
  functions,
  dark,
  onStarting,
}: {
  readonly container: HTMLElement;
  readonly functions: readonly WorksheetFunction[];
  readonly dark: boolean;
  /** The plugins start, with the first workbook. */
  readonly onStarting: () => void;
}): Univer {
  const univer = new Univer({
    theme: gridTheme,
    darkMode: dark,
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: mergeLocales(enUS, validationText, validationUIText) },
    logLevel: LogLevel.ERROR,
  });
  const preset = UniverSheetsCorePreset({
    container,
    ribbonType: 'simple',
    customFontFamily: { override: true, list: fontMenu(navigator.language) },
    formula: {
      description: functionDescriptions(functions),
    },
  });
  for (const plugin of preset.plugins) {
    if (!Array.isArray(plugin)) univer.registerPlugin(plugin);
    // The calculation is ours: the grid shows it.
    else if (plugin[0] === UniverFormulaEnginePlugin)
      univer.registerPlugin(UniverFormulaEnginePlugin, { notExecuteFormula: true });
    else univer.registerPlugin(plugin[0], plugin[1]);
  }
  univer.registerPlugin(calculationPlugin(univer, onStarting));
  univer.registerPlugin(UniverSheetsTablePlugin);
  // Rules are shown and kept; changing them would not reach the file, so their menus stay away.
  univer.registerPlugin(UniverSheetsDataValidationPlugin);
  univer.registerPlugin(UniverSheetsDataValidationUIPlugin, {
    menu: { 'sheet.menu.data-validation': { hidden: true } },
    showEditOnDropdown: false,
  });
  return univer;
}

/** Rules for entries ask for their formulas as soon as the grid's plugins start. */
function calculationPlugin(univer: Univer, start: () => void) {
  return class extends Plugin {
    static override readonly pluginName = 'MOLDSHEET_CALCULATION';
    static override readonly type = UniverInstanceType.UNIVER_SHEET;
    protected override readonly _injector = univer.__getInjector();

    override onStarting(): void {
      start();
    }
  };
}
