// Kneading dough: energy for each kilogram of a batch.
import { KNEADING } from '../handbook/roughLoads.ts'
import { batch } from './batch.ts'

export const kneading = batch('Kneading dough', KNEADING, 'bread dough')
