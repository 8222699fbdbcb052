// The cells of a table kept as text with delimiters: quotes hold what would part a cell, and are doubled within them.

export type Delimiter = ';' | '\t' | ','

/**
 * The cells, row by row, of comma-, semicolon- or tab-separated text (RFC 4180, with any line end). A row may be
 * shorter or longer than another; a quote left open holds the rest of the text.
 */
export function rowsIn(text: string, delimiter: Delimiter): string[][] {
  const body = text.replace(/\r?\n?$/, '')
  const cell = new RegExp(`(?:"([^"]*(?:""[^"]*)*)"?|([^${delimiter}\\r\\n]*))(\\r\\n|[\\s\\S]|$)`, 'y')
  const rows: string[][] = [[]]
  for (;;) {
    const [, quoted, plain, end] = cell.exec(body) as RegExpExecArray
    rows[rows.length - 1].push(quoted?.replaceAll('""', '"') ?? plain)
    if (end === '') return rows
    if (end !== delimiter) rows.push([])
  }
}
