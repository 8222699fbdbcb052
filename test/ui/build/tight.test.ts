// A build's templates without their indentation: the same words, tags, attributes and rules, on made-up cases and on the page's own.
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parseAst, Visitor } from 'vite'
import { expect, it } from 'vitest'
import { tightModule, tightParts } from '../../../ui/build/tight.ts'
import { root } from '../../house/tree.ts'

const one = (tag: string, text: string): string => tightParts(tag, [text])[0]

it('makes one space of a run between words and tags, never none; none at the end of a tag', () => {
  expect(one('html', '<p>\n      one\n      two <b>three</b>\n      <i>four</i>\n    </p>')).toBe(
    '<p> one two <b>three</b> <i>four</i> </p>',
  )
  expect(one('svg', '<path\n  class="a  b"\n  d="M0,0 L1  1"\n  />')).toBe(
    '<path class="a  b" d="M0,0 L1  1" />',
  )
  expect(one('html', '<a\n  href="x"\n>a > b,  c</a>')).toBe('<a href="x">a > b, c</a>')
  expect(one('html', "<a title='1  >  2'  >3\u00a0\u00a0mm</a>")).toBe(
    "<a title='1  >  2'>3\u00a0\u00a0mm</a>",
  )
})

it('keeps what is shown as written', () => {
  for (const text of ['<pre>\n  a\n</pre>', '<textarea>\n  a\n</textarea>', '<!-- a\n  b -->'])
    expect(one('html', text)).toBe(text)
})

it('reads a template over its holes and leaves their places', () => {
  expect(tightParts('html', ['<p class=', '\n  id="a  ', '  b"  title=', '>\n  ', '\n</p>'])).toEqual([
    '<p class=',
    ' id="a  ',
    '  b" title=',
    '> ',
    ' </p>',
  ])
  expect(tightParts('html', ['<br class=', '\n  />'])).toEqual(['<br class=', ' />'])
})

it('leaves CSS the spaces that mean something', () => {
  expect(
    one(
      'css',
      `
      /* why */
      :host(.a) > p:hover,
      p :focus-visible + b {
        margin: calc(1px + 2px) 0; content: ' ;  } ';
      }
      @media (width >= 600px) and (hover: none) {
        a { --x: url("a, b"); }
      }`,
    ),
  ).toBe(
    `:host(.a) > p:hover,p :focus-visible + b{margin:calc(1px + 2px) 0;content:' ;  } '}@media (width >= 600px) and (hover:none){a{--x:url("a, b")}}`,
  )
  expect(tightParts('css', ['a { top: ', 'px; }\n  ', ' { left: 0 }'])).toEqual(['a{top:', 'px}', '{left:0}'])
})

it('changes no other text, and a template within a template', () => {
  expect(tightModule('const a = `x\n  y`; b`<p  >`; const n: number = 1')).toBe(
    'const a = `x\n  y`; b`<p  >`; const n: number = 1',
  )
  expect(tightModule(`html\`<p  >\${a ? html\`<b  >→  \${"a  b"}</b>\` : ""}  </p>\``)).toBe(
    `html\`<p>\${a ? html\`<b>→ \${"a  b"}</b>\` : ""} </p>\``,
  )
})

const WORDS = /[ \t\n\r\f]+/
/** The templates of a module: tag, and fixed parts as they are read. */
function templates(code: string): { tag: string; parts: readonly string[] }[] {
  const found: { tag: string; parts: readonly string[] }[] = []
  new Visitor({
    TaggedTemplateExpression({ tag, quasi }) {
      if (tag.type === 'Identifier')
        found.push({ tag: tag.name, parts: quasi.quasis.map(({ value }) => value.cooked ?? '') })
    },
  }).visit(parseAst(code, { lang: 'ts' }))
  return found
}

/** The same but for the length of runs of white space: what stands apart stays apart, what touches goes on touching. */
const likeHtml = (part: string): readonly string[] => part.replace(/\s+>/g, '>').split(WORDS)
const likeCss = (text: string): string =>
  text
    .replace(/\/\*[\s\S]*?\*\//g, ' ')
    .replace(/\s*([{};,:])\s*/g, '$1')
    .replaceAll(';}', '}')
    .split(WORDS)
    .join(' ')
    .trim()

it('leaves every template of the page saying the same', () => {
  const files = readdirSync(join(root, 'ui'), { recursive: true, encoding: 'utf8' }).filter((file) =>
    file.endsWith('.ts'),
  )
  let compared = 0
  for (const file of files) {
    const code = readFileSync(join(root, 'ui', file), 'utf8')
    const [before, after] = [templates(code), templates(tightModule(code))]
    expect(after.map(({ tag }) => tag)).toEqual(before.map(({ tag }) => tag))
    before.forEach(({ tag, parts }, n) => {
      const now = after[n].parts
      if (tag === 'css') expect(likeCss(now.join('§')), file).toBe(likeCss(parts.join('§')))
      else expect(now.map(likeHtml), file).toEqual(parts.map(likeHtml))
      compared++
    })
  }
  expect(compared).toBeGreaterThan(500)
})
