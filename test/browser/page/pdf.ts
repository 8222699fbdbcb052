// Pages of a PDF: its page objects (ISO 32000-1:2008, table 30: /Type /Page).

/** How many pages it has. */
export const pagesOf = (pdf: Buffer): number =>
  pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0
