// Names of saved files: every file system takes them, whatever the job is called.
import { expect, it } from 'vitest'
import { fileName } from '../../../ui/keep/download.ts'

it.each([
  ['Orchard workshop apple mill', 'Orchard-workshop-apple-mill.csv'],
  ['Müller’s Töpferscheibe', 'Müller-s-Töpferscheibe.csv'],
  ['../../etc/passwd', 'etc-passwd.csv'],
  ['C:\\windows\\con', 'C-windows-con.csv'],
  ['con', 'job-con.csv'],
  ['LPT1', 'job-LPT1.csv'],
  ['  ', 'job.csv'],
  ['=cmd|" /C calc"!A0', 'cmd-C-calc-A0.csv'],
  ['\u202egpj.exe', 'gpj-exe.csv'],
  ['旋盤', '旋盤.csv'],
])('%s', (title, name) => expect(fileName(title, 'csv')).toBe(name))

it('a long name is cut between letters', () => {
  const name = fileName('𝔸'.repeat(300), 'json')
  expect([...name]).toHaveLength(85)
  expect(name).toMatch(/^𝔸+\.json$/u)
})
