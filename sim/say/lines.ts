// Text broken into lines that fit a terminal.

const WIDTH = 107

/** Words of a text in lines of the terminal's width, each behind `before`. */
export function indent(text: string, before: string): string[] {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(' ')) {
    if (line !== '' && before.length + line.length + word.length >= WIDTH) {
      lines.push(before + line)
      line = ''
    }
    line = line === '' ? word : `${line} ${word}`
  }
  return [...lines, before + line]
}
