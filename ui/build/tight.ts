// Templates, style sheets and example jobs of a build without their indentation: the same page from fewer bytes.
import { readFileSync } from 'node:fs'
import { parseAst, type Plugin, Visitor } from 'vite'

/** Stands for a hole of a template while its fixed parts are read as one text. */
const HOLE = '\0'
/** What HTML and CSS take for white space: not the spaces that hold two words together. */
const RUN = /[ \t\n\r\f]+/g
/** A comment, a tag whole with its attributes, and what lies between. */
const HTML = /<!--[\s\S]*?-->|<[/a-z](?:"[^"]*"|'[^']*'|[^"'>])*>|(?:(?!<!--|<[/a-z])[\s\S])+/gi
const QUOTED = /("[^"]*"|'[^']*')/

/** Code outside quotes changed, what is quoted kept. */
const outside = (text: string, change: (code: string) => string): string =>
  text
    .split(QUOTED)
    .map((part, n) => (n % 2 === 0 ? change(part) : part))
    .join('')

/** A run of white space becomes one space; none before the end of a tag, which ends what stands before it. */
function tightHtml(text: string): string {
  if (/<(pre|textarea|script|style)\b/i.test(text)) return text
  return text.replace(HTML, (piece) =>
    piece.startsWith('<!--')
      ? piece
      : piece.startsWith('<')
        ? outside(piece, (code) => code.replace(RUN, ' ').replace(/ >$/, '>'))
        : piece.replace(RUN, ' '),
  )
}

/** No comments, and no white space where CSS needs none. */
const tightCss = (text: string): string =>
  outside(text.replace(/\/\*[\s\S]*?\*\//g, ''), (code) =>
    code
      .replace(RUN, ' ')
      .replace(/ ?([{};]) ?/g, '$1')
      .replace(/([,:]) /g, '$1'),
  )
    .replaceAll(';}', '}')
    .trim()

const TIGHT: Readonly<Record<string, (text: string) => string>> = {
  html: tightHtml,
  svg: tightHtml,
  css: tightCss,
}

/** The fixed parts of a template under a tag, tightened; as many as went in. */
export function tightParts(tag: string, parts: readonly string[]): readonly string[] {
  const text = parts.join(HOLE)
  return (TIGHT[tag]?.(text) ?? text).split(HOLE)
}

/** A module's text with its templates tightened. */
export function tightModule(code: string): string {
  const edits: { from: number; was: string; is: string }[] = []
  new Visitor({
    TaggedTemplateExpression({ tag, quasi: { quasis } }) {
      if (tag.type !== 'Identifier') return
      const parts = tightParts(
        tag.name,
        quasis.map(({ value }) => value.raw),
      )
      // A part begins with the ` or } before it.
      quasis.forEach(({ start, value }, n) => {
        edits.push({ from: start + 1, was: value.raw, is: parts[n] })
      })
    },
  }).visit(parseAst(code, { lang: 'ts' }))
  return edits
    .sort((one, other) => other.from - one.from)
    .reduce((all, { from, was, is }) => all.slice(0, from) + is + all.slice(from + was.length), code)
}

/** Tightens the page's own modules, and files of JSON whose text it holds. */
export const tight = (): Plugin => ({
  name: 'tight',
  apply: 'build',
  enforce: 'pre',
  load: {
    filter: { id: /\.json\?raw$/ },
    handler: (id) => {
      const json = JSON.parse(readFileSync(id.slice(0, -'?raw'.length), 'utf8'))
      return `export default ${JSON.stringify(JSON.stringify(json))}`
    },
  },
  transform: {
    filter: { id: /\/ui\/[^?]*\.ts$/ },
    handler: (code) => ({ code: tightModule(code), map: null }),
  },
})
