import { sectionsOf } from '../../../core/documents/drawings/sheet-view.ts'
import type { CuttingPlan } from '../../../core/cutting/length-job.ts'
import type { RollPlan } from '../../../core/cutting/roll-job.ts'
import type { CutSheet, SheetPlan } from '../../../core/cutting/sheet-job.ts'
import type { Purchase } from '../../../core/purchase/purchase.ts'
import { BoardDrawing, RollDrawing, SheetDrawing } from '../../drawings/CuttingDrawing.tsx'
import { MoneyRow } from '../../parts/MoneyRow.tsx'
import { useWords } from '../../words/use-words.tsx'
import { cutSteps, marksText, proofText, rollProofText } from './cut-text.ts'
import './cutting.css'

/** Everything that is cut: each board, roll and sheet drawn with its marks in the order of cutting, what is left, and the proof that no plan costs less. */
export function CutPlans({ purchase }: { readonly purchase: Purchase }) {
  const { named } = useWords()
  return (
    <>
      {[...purchase.cutting].map(([item, plan]) =>
        plan.patterns.length === 0 ? null : (
          <section key={item} className="stack">
            <h3>{named(`item.${item}`)}</h3>
            <Lengths plan={plan} />
          </section>
        ),
      )}
      {[...purchase.flat].map(([item, flat]) => (
        <section key={item} className="stack">
          <h3>{named(`item.${item}`)}</h3>
          {flat.kind === 'sheets' ? (
            <Sheets plan={flat.plan} />
          ) : (
            flat.rolls.map(({ widthM, plan }) => <Roll key={widthM} widthM={widthM} plan={plan} />)
          )}
        </section>
      ))}
    </>
  )
}

function Lengths({ plan }: { readonly plan: CuttingPlan }) {
  const words = useWords()
  const { say, length } = words
  return (
    <>
      <p>{proofText(plan, words)}</p>
      {plan.patterns.map((pattern, index) => (
        <div key={index} className="stack">
          {pattern.stockKey.startsWith('owned ') && <p className="quiet">{say('cut.at-hand')}</p>}
          <BoardDrawing pattern={pattern} />
          <p>{say('cut.mark', { marks: marksText(pattern.marksM, words), count: pattern.marksM.length })}</p>
        </div>
      ))}
      <div>
        <MoneyRow name={say('cut.bought')}>{length(plan.boughtM)}</MoneyRow>
        <MoneyRow name={say('cut.pieces')}>{length(plan.piecesM)}</MoneyRow>
        <MoneyRow name={say('cut.saw')}>{length(plan.kerfM)}</MoneyRow>
        <MoneyRow name={say('cut.kept')}>{length(plan.keptM)}</MoneyRow>
        <MoneyRow name={say('cut.waste')}>{length(plan.wasteM)}</MoneyRow>
      </div>
      <p className="quiet">{say('cut.set-ups', { count: plan.setUps })}</p>
    </>
  )
}

function Roll({ widthM, plan }: { readonly widthM: number; readonly plan: RollPlan }) {
  const words = useWords()
  const { say, length, share } = words
  return (
    <>
      <p>{rollProofText(plan, words)}</p>
      {plan.joined.map(({ piece, strips, lapM, lastStripWidthM }) => (
        <p key={piece}>{say('cut.joined', { strips, lap: length(lapM), last: length(lastStripWidthM) })}</p>
      ))}
      {plan.rolls.map((pattern, index) => (
        <div key={index} className="stack">
          <RollDrawing pattern={pattern} />
          <p>{say('cut.mark', { marks: marksText(pattern.marksM, words), count: pattern.marksM.length })}</p>
        </div>
      ))}
      {sectionsOf({ widthM, plan }).map((section, index) => (
        <OneSheet key={index} sheet={section} />
      ))}
      <div>
        <MoneyRow name={say('cut.bought')}>{length(plan.boughtM)}</MoneyRow>
        <MoneyRow name={say('cut.used')}>{length(plan.usedM)}</MoneyRow>
        <MoneyRow name={say('cut.roll-waste')}>{share(plan.wasteShare)}</MoneyRow>
      </div>
    </>
  )
}

function Sheets({ plan }: { readonly plan: SheetPlan }) {
  const words = useWords()
  const { say } = words
  const area = (valueM2: number) => words.inLine(valueM2, 'm2')
  return (
    <>
      <p>{proofText(plan, words)}</p>
      {plan.sheets.map((sheet, index) => (
        <OneSheet key={index} sheet={sheet} />
      ))}
      <div>
        <MoneyRow name={say('cut.bought')}>{area(plan.boughtM2)}</MoneyRow>
        <MoneyRow name={say('cut.pieces')}>{area(plan.piecesM2)}</MoneyRow>
        <MoneyRow name={say('cut.saw')}>{area(plan.kerfM2)}</MoneyRow>
        <MoneyRow name={say('cut.over')}>{area(plan.offcutsM2)}</MoneyRow>
      </div>
    </>
  )
}

function OneSheet({ sheet }: { readonly sheet: CutSheet }) {
  const words = useWords()
  return (
    <div className="stack">
      {sheet.key.startsWith('owned ') && <p className="quiet">{words.say('cut.at-hand')}</p>}
      <SheetDrawing sheet={sheet} />
      <ol className="cut-steps">
        {cutSteps(sheet, words).map((step, index) => (
          <li key={index}>{step}</li>
        ))}
      </ol>
    </div>
  )
}
