/**
 * How many random cases a law is tried on: as many as the gate has time for, or so many times more where LAWS_TIMES says so
 * (`npm run laws` takes ten times as many from a seed of its own each time).
 */
export const cases = (usual: number): number => Math.max(1, Math.round(usual * Number(process.env['LAWS_TIMES'] ?? 1)))
