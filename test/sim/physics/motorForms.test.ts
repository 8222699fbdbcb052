// scratch
import { expect, it } from 'vitest'
import { oracle } from '../../checks/files.ts'
import { flatOut, look, plantWith, runTrial, settled, STEADY } from './lab.ts'
