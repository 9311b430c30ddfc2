import fc from 'fast-check'

// A gate must give the same answer twice: laws run from one seed here, and from any seed where LAWS_SEED asks for it ("random" or a number).
const asked = process.env['LAWS_SEED']
if (asked !== 'random') fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: Number(asked ?? 20_261_125) })
