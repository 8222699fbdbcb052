// The campaigns in full, of which `npm test` runs a slice. `npm run campaign -- [NAME …]`, resumed where it was left.
import { parseArgs } from 'node:util'
import { attempt, type Campaign, failuresOf, sumUp, wrongWith } from './campaigns/campaign.ts'
import { codeNow, forget, load, save } from './campaigns/kept.ts'
import { CAMPAIGNS } from './campaigns/registry.ts'
import { writeCampaigns } from './campaigns/table.ts'

const USAGE = `npm run campaign -- [NAME …] [options]
  NAME       a campaign, or how several begin; all of them if none is named
  --count N  so many seeds instead of the whole count
  --seed N   the first seed (1)
  --only N   one seed alone: everything it comes to, and its job
  --anew     forget what is kept in .campaign/
  --list     the campaigns and their counts
  --help
  --write    put what is kept into README.md, and run nothing`

/** Time between two looks at the disk, ms. */
const SAVE = 5000
const MOST_TOLD = 5

const say = (text: string) => process.stdout.write(`${text}\n`)

/** Runs the seeds that are not yet kept; a line about all of them. True if all is well. */
async function whole(campaign: Campaign, first: number, count: number): Promise<boolean> {
  const { name } = campaign
  const kept = load(name)
  const now = codeNow()
  let [looked, saved] = [performance.now(), performance.now()]
  const keep = () => {
    kept.ms += performance.now() - looked
    looked = saved = performance.now()
    save(name, kept)
  }
  for (let seed = first; seed < first + count; seed++) {
    if (kept.trials.has(seed)) continue
    const trial = await attempt(campaign, seed)
    kept.trials.set(seed, trial)
    kept.codes.add(now)
    if (wrongWith(campaign, trial) !== null || performance.now() > saved + SAVE) keep()
    if (process.stderr.isTTY) process.stderr.write(`\r${name}: ${seed}\x1b[K\r`)
  }
  keep()
  const trials = new Map([...kept.trials].filter(([seed]) => seed >= first && seed < first + count))
  const failures = failuresOf(campaign, trials)
  const { words, wrong } = sumUp(campaign, trials)
  const mixed = [...kept.codes].some((code) => code !== now)
  say(
    [
      `${name}: seeds ${first} to ${first + count - 1}`,
      `${failures.length} failed`,
      words,
      `${(kept.ms / 60_000).toFixed(1)} min`,
      ...(mixed ? ['some by an earlier state of sim/ (--anew runs all again)'] : []),
      ...(wrong === null ? [] : [wrong]),
      failures.length === 0 && wrong === null ? 'pass' : 'FAIL',
    ].join('; '),
  )
  for (const failure of failures.slice(0, MOST_TOLD)) say(`  ${failure}`)
  if (failures.length > MOST_TOLD) say(`  and ${failures.length - MOST_TOLD} more`)
  if (failures.length > 0) say(`  to repeat one: npm run campaign -- ${name} --only SEED`)
  return failures.length === 0 && wrong === null
}

/** One seed and everything it comes to. True if it is well. */
async function only(campaign: Campaign, seed: number): Promise<boolean> {
  const trial = await attempt(campaign, seed)
  const wrong = wrongWith(campaign, trial)
  say(`${campaign.name}, seed ${seed}: ${wrong ?? 'good'}`)
  for (const [name, value] of Object.entries(trial.measures)) say(`  ${name}: ${value}`)
  if (campaign.show) say(campaign.show(seed))
  return wrong === null
}

async function main(): Promise<number> {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: {
      count: { type: 'string' },
      seed: { type: 'string' },
      only: { type: 'string' },
      anew: { type: 'boolean' },
      list: { type: 'boolean' },
      write: { type: 'boolean' },
      help: { type: 'boolean' },
    },
  })
  const chosen = CAMPAIGNS.filter(
    ({ name }) => positionals.length === 0 || positionals.some((start) => name.startsWith(start)),
  )
  const numbers = [values.count, values.seed, values.only].filter((text) => text !== undefined)
  if (values.help) {
    say(USAGE)
    return 0
  }
  if (chosen.length === 0 || numbers.some((text) => !/^[1-9]\d{0,8}$/.test(text))) {
    say(USAGE)
    return 2
  }
  if (values.list) {
    for (const { name, about, whole, slice } of chosen) say(`${name}: ${about}; ${whole}, slice ${slice}`)
    return 0
  }
  if (values.write) {
    writeCampaigns()
    return 0
  }
  let good = true
  for (const campaign of chosen) {
    if (values.anew && !values.only) forget(campaign.name)
    const done = values.only
      ? await only(campaign, Number(values.only))
      : await whole(campaign, Number(values.seed ?? 1), Number(values.count ?? campaign.whole))
    good &&= done
  }
  return good ? 0 : 1
}

process.exitCode = await main().catch((error: Error) => {
  say(`${error.message}\n\n${USAGE}`)
  return 2
})
