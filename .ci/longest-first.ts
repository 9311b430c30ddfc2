import { BaseSequencer, type TestSpecification } from 'vitest/node'

/** Files that take longest, longest first: begun last, one of them would run alone while the other workers have nothing to do. */
const LONG = [
  'browser/every-screen',
  'browser/every-state',
  'browser/hand-over',
  'browser/paper',
  'browser/languages',
  'browser/build-place',
  'browser/office',
  'browser/keeping',
  'browser/offline',
  'laws/layout',
  'laws/wild-plans',
  'reference/cutting-milp',
  'laws/money',
  'device/estimate',
  'device/sharing/hostile',
  'laws/cutting',
  'laws/site-work',
].map((name) => `tests/${name}.test.ts`)

/** One project after the other, those in a browser first: a worker goes on with the next file of its project at little cost. */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const place = ({ project, moduleId }: TestSpecification) => {
      const at = LONG.findIndex((name) => moduleId.endsWith(name))
      return ['browser', 'core', 'parts'].indexOf(project.name) * 100 + (at < 0 ? 99 : at)
    }
    const sorted = await super.sort(files)
    return sorted.toSorted((one, other) => place(one) - place(other))
  }
}
