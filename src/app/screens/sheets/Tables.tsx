import { useState } from 'react'
import { viewOf, viewsOf } from '../../../core/documents/drawings/views.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { useWriting } from '../../drawings/use-writing.ts'
import { Button } from '../../parts/Button.tsx'
import { fileName, saveFile, spreadsheetFile } from '../../state/paper-actions.ts'
import { useWords } from '../../words/use-words.tsx'
import { inkOnPage } from './ink-on-page.tsx'
import { listCsv, listRows } from './list-rows.ts'
import { drawingFile } from './drawing-file.tsx'
import { resultData } from './result-data.ts'

/** The list and the results for an office: separated values, a spreadsheet, data, drawings to scale. */
export function Tables({ worked }: { readonly worked: WorkedOut }) {
  const words = useWords()
  const { writing } = useWriting()
  const { say, named } = words
  const [told, setTold] = useState('')
  const { plan } = worked
  const put = (file: File) => {
    try {
      saveFile(file)
      setTold(named('sheets.saved', { file: file.name }))
    } catch {
      setTold(say('sheets.save-failed'))
    }
  }
  const putSpreadsheet = async () => {
    try {
      put(await spreadsheetFile(plan.name, say('print.title'), listRows(worked, words)))
    } catch {
      setTold(say('sheets.not-made'))
    }
  }
  const name = fileName(plan.name)
  const putDrawings = () => {
    const page = inkOnPage({ ...plan.show, currency: plan.currency })
    for (const view of viewsOf(worked).filter((key) => key !== 'inside'))
      put(drawingFile(`${name}-${view}`, viewOf(view, worked, []), writing, page.ink))
    page.done()
  }
  return (
    <section className="stack">
      <h3>{say('sheets.tables')}</h3>
      <div className="choices">
        <Button
          onPress={() => {
            put(new File([`\uFEFF${listCsv(worked, words)}`], `${name}.csv`, { type: 'text/csv' }))
          }}
        >
          {say('sheets.csv')}
        </Button>
        <Button onPress={() => void putSpreadsheet()}>{say('sheets.xlsx')}</Button>
        <Button
          onPress={() => {
            put(
              new File([JSON.stringify(resultData(worked), null, 2)], `${name}-results.json`, {
                type: 'application/json',
              }),
            )
          }}
        >
          {say('sheets.json')}
        </Button>
        <Button onPress={putDrawings}>{say('sheets.svg')}</Button>
      </div>
      <p role="status" className="told">
        {told}
      </p>
    </section>
  )
}
