// The band of a number, without a reading and with it, on one scale: what measuring it is worth.
import { css, html, type TemplateResult } from 'lit'
import type { Known } from '../../sim/identify/known.ts'
import type { MotorNumber } from '../../sim/identify/motor.ts'
import { bandWords, MOTOR_NUMBERS, originWords } from '../../sim/say/motor.ts'
import type { Units } from '../../sim/say/units.ts'

export const bandStyle = css`
  .bands {
    display: grid;
    grid-template-columns: auto minmax(60px, 1fr);
    gap: 2px 12px;
    align-items: center;
    margin-top: 4px;
  }
  .bands > .name {
    grid-column: 1 / -1;
    font: var(--type-note-strong);
  }
  .bands .band {
    grid-column: 2;
    margin-bottom: 4px;
  }
  .bands .with.band {
    color: var(--ink);
    font-weight: 600;
  }
  .track {
    position: relative;
    height: 10px;
    border-bottom: 1px solid var(--rule);
  }
  .track i {
    position: absolute;
    bottom: 2px;
    height: 6px;
    min-width: 3px;
    border: 1px solid var(--ink3);
    border-radius: 1px;
    background: color-mix(in srgb, var(--hatch) 45%, transparent);
  }
  .track.with i {
    border-color: var(--act);
    background: var(--act);
  }
  .bands .origin {
    grid-column: 1 / -1;
  }
`

/** Room on both ends of the scale, as a factor. */
const ROOM = 1.12

/** The bands; `before` is null where no reading has been made, or while it is worked out. */
export function bandBars(name: MotorNumber, now: Known, before: Known | null, units: Units): TemplateResult {
  const { label, dimension } = MOTOR_NUMBERS[name]
  const all = before ? [before, now] : [now]
  const low = Math.min(...all.map((one) => one.low)) / ROOM
  const high = Math.max(...all.map((one) => one.high)) * ROOM
  const drawn = low > 0
  const place = (value: number): number => (100 * Math.log(value / low)) / Math.log(high / low)
  const row = (one: Known, when: string, look: string) => html`<span class="note">${when}</span>
    ${
      drawn
        ? html`<span class="track ${look}"><i style="left:${place(one.low)}%;width:${place(one.high) - place(one.low)}%"></i></span>`
        : html`<span></span>`
    }
    <span class="note band ${look}">${bandWords(one, dimension, units)}</span>`
  return html`<div class="bands">
    <span class="name">${label}</span>
    ${before ? row(before, 'without it', '') : ''} ${row(now, before ? 'with it' : 'known now', before ? 'with' : '')}
    <span class="note origin">${originWords(now)}</span>
  </div>`
}
