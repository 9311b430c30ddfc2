import { useMemo, useState } from 'react'
import { batchBox, batchesFor, mixedUses, unitsPerBatch } from '../../../core/quantities/batch-box.ts'
import { Segments } from '../../parts/Picks.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { useWords } from '../../words/use-words.tsx'
import { fieldWay } from '../fields/field-way.ts'
import { useFieldInSight } from '../fields/use-field-in-sight.ts'
import { usePlan } from '../fields/plan-in-hand.ts'
import { NumberField } from '../fields/PlanField.tsx'
import { KeyFigure } from '../working/Worked.tsx'
import { BatchPicture } from './BatchPicture.tsx'
import { Caution } from './Caution.tsx'
import { quartersText } from './fraction-text.ts'
import { litreWay } from '../fields/litre-way.ts'
import { stepInHand } from './next-work.ts'
import { ReadAloud } from './ReadAloud.tsx'
import type { SiteSheetProps } from './site-sheet-props.ts'
import { SunTool } from './SunTool.tsx'

const MEASURES = ['pan', 'bucket', 'barrow'] as const
const HOLDS = { pan: 'ground.panM3', bucket: 'built.bucketM3', barrow: 'ground.barrowM3' } as const
const HOLDS_AT = { pan: 'ground.panM3', bucket: 'built.batch.bucketM3', barrow: 'ground.barrowM3' } as const

/** One batch in the measures of the site, the swelling of damp sand counted in. */
export function BatchSheet({ worked, onClose, field }: SiteSheetProps) {
  const words = useWords()
  const { say, named, share } = words
  const { plan, set } = usePlan()
  const { needs } = worked
  useFieldInSight(field)
  const uses = useMemo(() => mixedUses(needs), [needs])
  const [use, setUse] = useState(() => uses.find((one) => one.use === field)?.use ?? usualUse(worked))
  const chosen = uses.find((one) => one.use === use) ?? uses[0]
  const batch = useMemo(() => batchBox(plan, chosen?.mix ?? 'concrete'), [plan, chosen?.mix])
  if (chosen === undefined) return null
  const count = batchesFor(batch, needs, chosen.use)
  const units = needs.find(({ item, use: of }) => item === 'wall-unit' && of === 'walls')
  const lays = chosen.use === 'joints' && units !== undefined ? unitsPerBatch(batch, needs, units.net) : null
  const { measure, bags, dampM, settledM } = plan.built.batch
  const holds = HOLDS[measure]
  return (
    <Sheet
      title={say(`build.batch-of.${chosen.mix}`)}
      closeLabel={say('app.close')}
      onClose={onClose}
      height="full"
      tools={<SunTool />}
    >
      <Segments
        name={say('build.batch-for')}
        isNameShown
        choices={uses.map((one) => ({ key: one.use, label: capital(named(`use.${one.use}`)) }))}
        chosen={chosen.use}
        onChoose={setUse}
      />
      <div className="figs step-figs">
        {lays !== null && <KeyFigure label={say('build.lays')} of={lays} />}
        {count !== null && <KeyFigure label={say('build.batches')} of={count} />}
        <KeyFigure label={say('build.batch-yield')} of={batch.yield} />
      </div>
      <div className="batch-frame" aria-live="polite">
        <BatchPicture batch={batch} measure={measure} />
      </div>
      <Caution>{named('task-caution.cement')}</Caution>
      {batch.bags !== null && (
        <Segments
          name={say('build.batch-size')}
          isNameShown
          choices={[0.5, 1, 2].map((n) => ({
            key: String(n),
            label: say('build.bag-count', { bags: quartersText(n), count: n }),
          }))}
          chosen={String(bags)}
          onChoose={(n) => set({ 'built.batch.bags': Number(n) })}
        />
      )}
      <Segments
        name={say('build.measure-with')}
        isNameShown
        choices={MEASURES.map((key) => ({ key, label: say(`build.measure.${key}`) }))}
        chosen={measure}
        onChoose={(key) => set({ 'built.batch.measure': key })}
      />
      <NumberField
        id={HOLDS_AT[measure]}
        name={say(`build.holds.${measure}`)}
        value={
          measure === 'bucket'
            ? plan.built.batch.bucketM3
            : measure === 'pan'
              ? plan.ground.panM3
              : plan.ground.barrowM3
        }
        way={litreWay(holds)}
        onChange={(next) => set({ [HOLDS_AT[measure]]: next })}
        help={say('build.holds-how')}
      />
      <section className="stack">
        <h2>{say('build.damp-sand', { share: share(batch.bulking.value) })}</h2>
        <p>{say('build.damp-how')}</p>
        <div className="fields">
          <NumberField
            id="built.batch.dampM"
            name={say('build.damp-height')}
            value={dampM}
            way={fieldWay('built.sandM', words)}
            onChange={(next) => set({ 'built.batch.dampM': next })}
          />
          <NumberField
            id="built.batch.settledM"
            name={say('build.settled-height')}
            value={settledM}
            way={fieldWay('built.sandM', words)}
            onChange={(next) => set({ 'built.batch.settledM': next })}
            help={settledM > dampM ? say('build.settled-more') : undefined}
          />
        </div>
      </section>
      <ReadAloud
        text={[
          say(`build.batch-of.${chosen.mix}`),
          ...batch.parts.map(
            ({ part, filled }) =>
              `${named(`item.${part}`)}: ${say('build.measures', { count: quartersText(filled), filled, measure })}`,
          ),
          named('task-caution.cement'),
        ].join('. ')}
      />
    </Sheet>
  )
}

const capital = (text: string): string => text.charAt(0).toLocaleUpperCase() + text.slice(1)

/** What is mixed in the step at hand. */
function usualUse(worked: SiteSheetProps['worked']): string {
  const step = stepInHand(worked)
  if (step?.kind === 'cast-lintels') return 'lintels'
  return step?.kind === 'walls' || step?.kind === 'walls-below' ? 'joints' : 'footing'
}
