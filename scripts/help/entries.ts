import { exampleCheck } from '../../src/call/example';
import { definitionHelp, toolHelp } from '../../src/call/helpEntry';
import { tools } from '../../src/call/tools';
import { validate } from '../../src/call/validation';
import { worksheetFunctions } from '../../src/call/functions';
import { catalogue } from '../../src/catalogue';
import type { Checks } from '../../src/core/checks';
import type { HelpEntry } from '../../src/derive/help';
import { chartOf, pictureOf } from '../../src/derive/pictures';
import { seatChartPicture } from '../../src/derive/pictures/seatChart';
import { calculateFormulas } from '../../src/workbook/calculateFormulas';

/** The functions whose choice of a draft the chart of the seat helps with. */
const WITH_SEAT_CHART = ['SEAT.SINK', 'SEAT.RELEASE', 'SEAT.HEIGHT', 'SEAT.FREEDRAFT'];

/** What the help says of every function, examples calculated as they are typed. */
export async function helpEntries(checks: readonly Checks[]): Promise<HelpEntry[]> {
  const drafts = [
    ...catalogue.map((definition) => definitionHelp(definition, exampleCheck(definition, checks))),
    ...tools.map(toolHelp),
  ];
  const answers = await calculateFormulas(
    drafts.map(({ typed }) => typed),
    worksheetFunctions,
  );
  const lines = validate(checks);
  return drafts.map(({ entry }, i) => {
    const whole = withPictures(entry(answers[i] ?? []));
    return { ...whole, checks: lines.filter(({ id }) => id === whole.id) };
  });
}

function withPictures(entry: HelpEntry): HelpEntry {
  const { lines, system } = entry.example;
  const picture = system && pictureOf(entry.id, lines, system);
  const chart = system && chartOf(entry.id, lines, system);
  return {
    ...entry,
    pictures: [
      ...(picture === undefined ? [] : [picture]),
      ...(chart === undefined ? [] : [chart]),
      ...(WITH_SEAT_CHART.includes(entry.id) ? [seatChartPicture()] : []),
    ],
  };
}
