import unit from './unit.json'

export const english = { ...unit }
