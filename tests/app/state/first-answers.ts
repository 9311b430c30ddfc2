/** The answers that the plans of tests begin with. */
export const FIRST = {
  name: 'By the landing',
  freshKgPerDay: 60,
  unitKey: 'hollow-450-150-225',
  soil: 'clay-firm',
  currency: { code: 'XXX', digits: 2 },
}
