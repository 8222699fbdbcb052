// Printing the page: the report, once its zone is there; where there is no answer yet, the sheet as it stands.

/** Fetches the report if need be and prints it. */
export async function printReport(): Promise<void> {
  await import('../zone/report.ts')
  const zone = document.querySelector('report-zone')
  await zone?.updateComplete
  if (zone?.ready) await zone.ask()
  else print()
}
