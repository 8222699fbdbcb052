// The choices of an input from the rows of a handbook table.

/** Row keys and their labels, as a choice wants them. */
export const optionsOf = <K extends string>(
  rows: Readonly<Record<K, { readonly label: string }>>,
): Readonly<Record<K, string>> =>
  Object.fromEntries(
    Object.entries<{ readonly label: string }>(rows).map(([key, { label }]) => [key, label]),
  ) as Record<K, string>
