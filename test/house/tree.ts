// The project's own files as text, for the tests that read the house.
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

/** The project's top folder, with a separator at its end. */
export const root = fileURLToPath(new URL('../..', import.meta.url))

/** Every TypeScript file under the given top folders: path with forward slashes → text. */
export function sources(...folders: string[]): Map<string, string> {
  const found = new Map<string, string>()
  for (const folder of folders)
    for (const name of readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' }))
      if (name.endsWith('.ts'))
        found.set(`${folder}/${name.replaceAll('\\', '/')}`, readFileSync(join(root, folder, name), 'utf8'))
  return found
}
