// The command line of grids: two inputs of a job against one of its figures. `npm run grid -- FILE --x PATH=RANGE --y PATH=RANGE`
import { nearest } from '../sim/nearest.ts'
import type { Problem } from '../sim/problem.ts'
import { gridLines } from '../sim/say/grid.ts'
import type { Scenario } from '../sim/scenario.ts'
import { FIGURE_NAMES, FIGURES, type FigureName } from '../sim/studies/figures.ts'
import { gridSpec } from '../sim/studies/grid.ts'
import { type Axis, axisOf, MOST_VALUES } from '../sim/studies/grid/axis.ts'
import { points } from '../sim/studies/points.ts'
import { titleOf } from './open.ts'
import { type Command, command, oneJob, refused, SHARED } from './options.ts'
import { drive, say } from './terminal.ts'

const USAGE = `npm run grid -- [FILE] --x PATH=RANGE --y PATH=RANGE [options]     no file: the apple mill demo
  --x belt.machinePulley=5in..12in   an input of the job file and what it goes through; or "5 in, 9 in, 10 in";
  --y heat.cooling                   a choice alone goes through all its words
  --figure NAME     firstOpening unless said; one of: ${FIGURE_NAMES.join(', ')}
  --nx 9, --ny 7    steps of a range
${SHARED}
JSON holds the axes, the figure's value at each crossing, row by row, and every other figure (SI, °C).`

const TEXT = { type: 'string' } as const
const STEPS = { nx: 9, ny: 7 } as const

const isFigure = (name: string): name is FigureName => Object.hasOwn(FIGURES, name)

/** An axis from its option; or what is amiss. */
function axisFrom(scenario: Scenario, asked: Command, name: 'x' | 'y'): Axis | Problem | string {
  const given = asked.text(name)
  if (given === undefined) return `--${name} says which input goes along ${name}.`
  const steps = asked.text(`n${name}`)
  const count = steps === undefined ? STEPS[`n${name}`] : Number(steps)
  if (!Number.isInteger(count) || count < 2 || count > MOST_VALUES)
    return `--n${name} is a number of steps, from 2 to ${MOST_VALUES}.`
  const at = given.indexOf('=')
  return axisOf(scenario, at < 0 ? given : given.slice(0, at), at < 0 ? null : given.slice(at + 1), count)
}

function main(): number {
  const asked = command(USAGE, { x: TEXT, y: TEXT, figure: TEXT, nx: TEXT, ny: TEXT })
  if (typeof asked === 'number') return asked
  const figure = asked.text('figure') ?? 'firstOpening'
  if (!isFigure(figure)) {
    const guess = nearest(figure, FIGURE_NAMES)
    return asked.fail(`No figure is called "${figure}".${guess ? ` Did you mean ${guess}?` : ''}`)
  }
  const opened = oneJob(asked)
  if (typeof opened === 'number') return opened
  const { file, scenario, variant } = opened
  const { units, json } = asked
  const x = axisFrom(scenario, asked, 'x')
  const y = axisFrom(scenario, asked, 'y')
  for (const axis of [x, y]) {
    if (typeof axis === 'string') return asked.fail(axis)
    if ('wrong' in axis) return refused(file, [axis], json)
  }
  const spec = gridSpec(scenario, variant, x as Axis, y as Axis)
  if ('ok' in spec) return refused(file, spec.problems, json)
  const found = drive(points<'grid'>(spec), 'Working the grid out', 'points')
  if (json) {
    const values = found.map((point) => (point.ok ? point.figures[figure] : null))
    const line = { file, ok: true, x: spec.x, y: spec.y, figure, values, points: found }
    process.stdout.write(`${JSON.stringify(line)}\n`)
  } else {
    const title = titleOf(opened)
    say(gridLines(title, spec, found, figure, units).join('\n'))
  }
  return 0
}

process.exitCode = main()
