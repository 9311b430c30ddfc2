import { Button, LinkButton } from '../../parts/Button.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { TextField } from '../../parts/TextField.tsx'
import { deletePlan, duplicatePlan, renamePlan } from '../../state/actions.ts'
import type { PlanRow } from '../../state/app-state.ts'
import { useWords } from '../../words/use-words.tsx'
import { savePlanFile } from '../../state/save-plan-file.ts'
import { FRONT, handOverHref, historyHref, placeHref } from '../route.ts'
import { goTo } from '../use-route.ts'

const MOST_NAME = 80

/** What can be done to a plan from outside it. Nothing here asks "are you sure": putting away can be undone. */
export function PlanTools({
  row,
  sheetsHref,
  onClose,
}: {
  readonly row: Pick<PlanRow, 'id' | 'name'>
  /** Where its sheets are made, from inside the plan. */
  readonly sheetsHref?: string
  readonly onClose: () => void
}) {
  const { say } = useWords()
  const another = async () => {
    const made = await duplicatePlan(row.id)
    onClose()
    if (made.ok) goTo(placeHref(made.value, 'plan'))
  }
  return (
    <Sheet title={row.name} closeLabel={say('app.close')} onClose={onClose}>
      <TextField
        name={say('front.name')}
        value={row.name}
        most={MOST_NAME}
        refuse={(name) => (name === '' ? say('front.name-needed') : null)}
        onChange={(name) => void renamePlan(row.id, name)}
      />
      <div className="choices">
        {sheetsHref !== undefined && (
          <Button
            shape="big"
            icon="print"
            onPress={() => {
              onClose()
              goTo(sheetsHref)
            }}
          >
            {say('front.sheets')}
          </Button>
        )}
        <LinkButton shape="big" icon="share" href={handOverHref(row.id)}>
          {say('front.hand-over')}
        </LinkButton>
        <LinkButton shape="big" icon="days" href={historyHref(row.id)}>
          {say('front.history')}
        </LinkButton>
        <Button shape="big" icon="block" onPress={() => void another()}>
          {say('front.duplicate')}
        </Button>
        <Button shape="big" icon="file" onPress={() => void savePlanFile(row.id)}>
          {say('front.export')}
        </Button>
        <Button
          shape="big"
          icon="undo"
          onPress={() => {
            void deletePlan(row.id)
            onClose()
            goTo(FRONT)
          }}
        >
          {say('front.delete')}
        </Button>
      </div>
      <p className="quiet">{say('front.delete-why')}</p>
    </Sheet>
  )
}
