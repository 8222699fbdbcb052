// The commands of a page of documentation: each line of its shell blocks, taken apart as a shell would.

/** Words of a line, quotes taken off; what follows a # standing alone is a remark. */
function words(line: string): string[] {
  const found = [...line.matchAll(/(?:[^\s"']|"[^"]*"|'[^']*')+/g)].map(([word]) => word)
  const remark = found.indexOf('#')
  return (remark < 0 ? found : found.slice(0, remark)).map((word) => word.replaceAll(/["']/g, ''))
}

export interface Command {
  readonly line: string
  /** Name of the script in package.json: "job". */
  readonly script: string
  /** What it is given. */
  readonly args: readonly string[]
}

/** Every `npm run …` and `npm test` of the shell blocks, in order. */
export function commandsOf(page: string): readonly Command[] {
  const blocks = [...page.matchAll(/^```(?:sh|bash)?\n([\s\S]*?)^```/gm)].map(([, block]) => block)
  return blocks.flatMap((block) =>
    block.split('\n').flatMap((line): readonly Command[] => {
      const [npm, ...rest] = words(line)
      if (npm !== 'npm') return []
      const [verb, ...args] = rest.filter((word) => word !== '-s' && word !== '--silent')
      if (verb === 'test' || verb === 'start') return [{ line, script: verb, args }]
      if (verb !== 'run') return []
      const [script, ...given] = args
      return [{ line, script, args: given[0] === '--' ? given.slice(1) : given }]
    }),
  )
}
