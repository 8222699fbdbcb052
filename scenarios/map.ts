// The command line of the map: a job file in, minutes until the cutoff opens by speed and torque out. `npm run map -- FILE`
import { mapLines } from '../sim/say/mapReport.ts'
import { panelSentence } from '../sim/say/map.ts'
import { GRID, heatMap, mapSpec } from '../sim/studies/map.ts'
import { points } from '../sim/studies/points.ts'
import { titleOf } from './open.ts'
import { command, oneJob, SHARED } from './options.ts'
import { drive, say } from './terminal.ts'

const USAGE = `npm run map -- [FILE] [options]     no file: the apple mill demo
${SHARED}
  --speeds N        columns of the grid that JSON holds (${GRID.speeds})
  --torques N       rows of it (${GRID.torques})
JSON holds every point of the grid, as fitted and with the cooling beside it (SI, °C; null: never).`

/** Rows and columns a grid may have. */
const FEWEST = 2
const MOST = 400

function main(): number {
  const asked = command(USAGE, { speeds: { type: 'string' }, torques: { type: 'string' } })
  if (typeof asked === 'number') return asked
  const count = (name: 'speeds' | 'torques') => Number(asked.text(name) ?? GRID[name])
  const size = { speeds: count('speeds'), torques: count('torques') }
  for (const [name, value] of Object.entries(size))
    if (!(Number.isInteger(value) && value >= FEWEST && value <= MOST))
      return asked.fail(`--${name}: a whole number from ${FEWEST} to ${MOST}.`)
  const opened = oneJob(asked)
  if (typeof opened === 'number') return opened
  const { file, reading } = opened
  const { units, json } = asked
  const { job } = reading
  const spec = mapSpec(job, json ? size : { speeds: 3, torques: 3 })
  const map = heatMap(job, spec, drive(points<'map'>(spec), 'Working out the map'))
  const title = titleOf(opened)
  if (json) {
    const { parts: _, ...rest } = map
    const panels = map.panels.map((panel) => ({
      ...panel,
      columns: panel.columns.map((column) => ({
        ...column,
        seconds: [...column.seconds],
        classAt: [...column.classAt],
        speed: [...column.speed],
        limitedAt: [...column.limitedAt],
      })),
      sentence: panelSentence(map, panel, units),
    }))
    process.stdout.write(`${JSON.stringify({ file, ok: true, name: title, ...rest, panels })}\n`)
  } else say(mapLines(title, map, units).join('\n'))
  return 0
}

process.exitCode = main()
