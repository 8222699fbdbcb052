// The licences of all that a build ships, as text beside the page, the faces' apart: taken from the packages that went into it.
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Plugin } from 'vite'

const project = fileURLToPath(new URL('../..', import.meta.url))
const FILE = 'licences.txt'
const FACES = 'licences-faces.txt'
const RULE = `\n\n${'='.repeat(72)}\n\n`

/** Folder of the package a module is in; null for the project's own. */
const packageOf = (id: string): string | null =>
  /^\0?(.*\/node_modules\/(?:@[^/]+\/)?[^/?]+)\//.exec(id.replaceAll('\\', '/'))?.[1] ?? null

/** The licence text in a package's folder; throws where it has none: what is shipped without is not ours to ship. */
function textIn(folder: string): string {
  const file = readdirSync(folder).find((name) => /^(licen[cs]e|copying)(\.(md|txt))?$/i.test(name))
  if (!file) throw new Error(`${folder} has no licence text`)
  return readFileSync(join(folder, file), 'utf8').trim()
}

/** A package's name, version, licence, and its text. */
function entryOf(folder: string): string {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'))
  return `${name} ${version} (${license})\n\n${textIn(folder)}`
}

/** Packages whose files a style sheet names: the faces. Their modules are no modules of a chunk. */
function faces(): string[] {
  const sheet = readFileSync(join(project, 'ui/fonts.css'), 'utf8')
  return [...sheet.matchAll(/url\("\.\.\/(node_modules\/[^"]+)"\)/g)].flatMap(
    ([, path]) => packageOf(project + path) ?? [],
  )
}

/** Adds both lists to the site. */
export function licences(): Plugin {
  return {
    name: 'licences',
    apply: 'build',
    generateBundle(_, bundle) {
      const list = (fileName: string, entries: readonly string[]) =>
        this.emitFile({ type: 'asset', fileName, source: `${entries.join(RULE)}\n` })
      const each = (folders: readonly string[]) => [...new Set(folders)].sort().map(entryOf)
      const inCode = Object.values(bundle).flatMap((one) =>
        one.type === 'chunk' ? one.moduleIds.flatMap((id) => packageOf(id) ?? []) : [],
      )
      const own = `Dutywright (MIT)\n\n${textIn(project)}`
      list(FILE, [own, ...each(inCode), `The faces: see ${FACES} beside this file.`])
      const signs = readFileSync(join(project, 'ui/fonts/OFL.txt'), 'utf8').trim()
      list(FACES, [...each(faces()), `The signs beside both faces, ui/fonts (OFL-1.1)\n\n${signs}`])
    },
  }
}
