import path from 'node:path'
import { BaseSequencer, type TestSpecification } from 'vitest/node'

/** The room's own tests first, then those of the core, the sources', the laws; small files before large. */
export class NearestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const room = process.env['MUTANTS_ROOM'] ?? ''
    const rank = ({ moduleId }: TestSpecification): number => {
      const name = moduleId.split(path.sep).join('/')
      if (name.includes(`/core/${room}/`)) return 0
      return ['/core/', '/reference/', '/laws/'].findIndex((folder) => name.includes(`/tests${folder}`)) + 1
    }
    return Promise.resolve(files.toSorted((a, b) => rank(a) - rank(b)))
  }
}
