// The odex package is CommonJS and has no usable types: odexLibrary.d.ts declares what we use of it.
export { Solver } from 'odex'
