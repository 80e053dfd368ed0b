/** What is to be known of functions of an add-in in Excel: said in the panel and in the help alike. */
export const WITHOUT_ADD_IN =
  'A colleague without the add-in sees the results as they were saved. Whoever of them changes an input turns the MOLD cells that read it to #NAME?, for everybody who has the workbook open at the same time.';

export const OWN_WHAT_IF =
  'Excel’s own Goal Seek gives wrong numbers with MOLD functions, without a warning, and its data tables stay empty.';

/** Each thing that a person meets, and what to do. */
export const EXCEL_HELP: readonly (readonly [heading: string, ...says: string[]])[] = [
  [
    'A workbook is shared',
    WITHOUT_ADD_IN,
    'The cells come back when somebody with the add-in clicks Recalculate all. So share the native copy (panel, Share) beside it, or in its place: it holds the worksheet’s own formulas.',
  ],
  [
    'Cells show #NAME?',
    'They were calculated while the add-in was missing. Recalculate all on the ribbon enters them again; a protected sheet must be unprotected first.',
    'Where they stay: Excel keeps a list of the functions up to a day, and this one is newer. The panel’s tab Check has a button that makes Excel fetch the list when the workbook is opened again.',
  ],
  [
    'Goal Seek and data tables',
    OWN_WHAT_IF,
    'Use the panel’s tab What if, or TRY.SOLVE and TRY.TABLE. A rule of conditional formatting cannot call a function of an add-in: let it look at the cell that does.',
  ],
  [
    'A thread becomes a date',
    "Excel takes 10-32 or 1/4 for a date as it is typed. Type an apostrophe first, as in '10-32, or format the cell as text beforehand: forms do so, and the panel does it for the cells that the selected formula reads.",
  ],
  [
    'A blank cell counts as 0',
    'Excel hands a blank cell to a function of an add-in as 0 and not as left out. The tab Check names the inputs where that makes a difference. In a form an input that is emptied takes its default, and one without a default is refused as blank.',
  ],
  [
    'Another sign between arguments',
    'Where numbers have a decimal comma, a semicolon most often stands between arguments; the panel shows the one that holds here. In text, numbers keep their point: "0.5 mm".',
  ],
  [
    'It takes long',
    'Each cell that waits for another MOLD cell costs about half a second, however quick the functions; with the panel closed, more. One call that spills a table is quicker than a column of cells that build on one another.',
  ],
];
