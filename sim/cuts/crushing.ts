// Grain and fruit milling: energy for each kilogram that goes through.
import { CRUSHING } from '../handbook/roughLoads.ts'
import { batch } from './batch.ts'

export const crushing = batch('Grain and fruit milling', CRUSHING, 'apples')
