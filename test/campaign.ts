// The campaigns in full: what `npm test` runs a fixed slice of. `npm run campaign`
import { mapCampaign } from './sim/studies/mapCampaign.ts'
import { warmUpCampaign } from './sim/identify/warmUpCampaign.ts'
import { type Protocol, RECOMMENDED } from './sim/identify/warmUpTwin.ts'

const TRIALS = 200
/** True values inside the stated 8-in-10 band, and median half-width over median error, that a fit is held to. */
const INSIDE = 0.75
const WIDTH = 3

const protocols: Readonly<Record<string, Protocol>> = {
  'can only, heating and cooling': RECOMMENDED,
  'can and winding ohms': { ...RECOMMENDED, ohms: true },
  'heating only': { ...RECOMMENDED, cooling: 0 },
}

let failed = 0
for (const [name, protocol] of Object.entries(protocols)) {
  const started = performance.now()
  const { all, refused } = warmUpCampaign(TRIALS, protocol)
  const good = all.inside >= INSIDE && all.halfWidth <= WIDTH * all.error
  if (!good) failed++
  process.stdout.write(
    `warm-up fits, ${name}: seeds 1 to ${TRIALS}, ${(100 * all.inside).toFixed(1)} % inside, half-width ${(all.halfWidth / all.error).toFixed(2)} times the error, ${refused} refused, ${((performance.now() - started) / 60000).toFixed(1)} min  ${good ? 'pass' : 'FAIL'}\n`,
  )
}
const map = mapCampaign(TRIALS)
if (!map.good) failed++
process.stdout.write(`${map.words}  ${map.good ? 'pass' : 'FAIL'}\n`)
process.stdout.write(`${Object.keys(protocols).length + 1 - failed} passed, ${failed} failed\n`)
process.exitCode = failed > 0 ? 1 : 0
