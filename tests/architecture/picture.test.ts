import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { expect, it } from 'vitest'
import { picture } from './order.ts'

const root = path.resolve(import.meta.dirname, '../..')

// `npx vitest run -u --project core tests/architecture/picture.test.ts` draws it anew from the imports as they are.
it('the picture of the rooms in the guide is drawn from the imports', async () => {
  const files = readdirSync(path.join(root, 'src'), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => path.relative(root, path.join(entry.parentPath, entry.name)).split(path.sep).join('/'))
  const drawn = picture(new Map(files.map((file) => [file, readFileSync(path.join(root, file), 'utf8')])))
  expect(drawn).toContain('app/screens -->')
  await expect(`# Rooms, and what each takes from\n\n${drawn}`).toMatchFileSnapshot(
    path.join(import.meta.dirname, 'rooms.md'),
  )
})
