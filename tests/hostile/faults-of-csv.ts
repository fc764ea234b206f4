const HEADS = 'gore,layers,side,line,edge,kind,from,to,down,across,along,out,length';
/** Columns that hold numbers, or nothing. */
const FIRST_NUMBER = 8;

/** What is wrong with `chalk.csv` as a table: rows that do not fit it, numbers that are none, cells that a spreadsheet would run. */
export function faultsOfCsv(text: string): string[] {
  const rows = rowsOf(text);
  const faults: string[] = [];
  if (rows[0]?.join(',') !== HEADS) faults.push('its heads are not those that scripts know');
  for (const row of rows.slice(1)) {
    if (row.length !== rows[0]!.length) faults.push(`a row of ${row.length} cells: ${row.join('|')}`);
    row.forEach((cell, column) => {
      const isFit =
        column >= FIRST_NUMBER ? /^(?:-?\d+(?:\.\d+)?)?$/.test(cell) : !/^[\s]*[=+\-@]|\p{Cc}/u.test(cell);
      if (!isFit)
        faults.push(`a cell that is no ${column >= FIRST_NUMBER ? 'number' : 'plain text'}: ${cell}`);
    });
  }
  return faults;
}

/** RFC 4180. */
function rowsOf(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  for (const [, quoted, plain = '', end = ''] of text.matchAll(
    /(?:"((?:[^"]|"")*)"|([^,\r\n"]*))(,|\r\n|$)/g,
  )) {
    if (end === '' && quoted === undefined && plain === '' && row.length === 0) break;
    row.push(quoted === undefined ? plain : quoted.replaceAll('""', '"'));
    if (end !== ',') {
      rows.push(row);
      row = [];
    }
  }
  return rows;
}
