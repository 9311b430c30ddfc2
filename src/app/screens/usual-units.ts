/** Units most markets have, one of each kind: offered first. */
export const USUAL_UNITS: readonly string[] = [
  'hollow-450-150-225',
  'brick-215-102-65',
  'earth-290-140-90',
  'adobe-290-140-110',
]
