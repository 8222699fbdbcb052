// Who says so: the standards behind what is said of safety. "From memory": nobody here had the page.

export const SAFETY = {
  practice: 'common practice, no source',
  bonding: 'IEC 60204-1, clause 8 (protective bonding; from memory)',
  overtemperature: 'IEC 60204-1, 7.3 (overtemperature protection; from memory)',
  restart: 'IEC 60204-1, 7.5 (no restart by itself; from memory)',
  charged: 'IEC 60204-1, 6.2.4 (60 V within 5 s, else a warning with the time; from memory)',
  pins: 'IEC 60204-1, 6.2.4 (exposed pins: 1 s; from memory)',
  burns: 'ISO 13732-1 (bare metal touched for ten seconds; from memory)',
  castRim: 'cast rims 33 m/s, Machinery’s Handbook (from memory)',
  wheel: 'EN 12413 and ANSI B7.1: never over the speed marked on the wheel (from memory)',
  sockets: 'NEC table 210.21(B)(3) and IEC 60309 (from memory)',
  eyes: 'EN 166 and ANSI Z87.1 (goggles; from memory)',
} as const
