import type { Plan } from '../../../core/plan/schema.ts'
import { Button, LinkButton } from '../../parts/Button.tsx'
import { Icon } from '../../parts/Icon.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { chooseAnswer } from '../../state/difference-actions.ts'
import { useApp } from '../../state/use-app.ts'
import { showWhen } from '../../words/dates.ts'
import { useWords } from '../../words/use-words.tsx'
import { valueAt } from '../fields/value-at.ts'
import { placeHref } from '../route.ts'
import type { PlanRoute } from '../PlanHere.tsx'
import { useCloseCard } from '../use-close-card.ts'
import { useNow } from '../use-now.ts'
import { answerText } from './answer-text.ts'
import { decisionName } from './decision-name.ts'
import './differences.css'
import { whoText } from './who.ts'

/** Decisions that two phones answered without knowing of each other: both answers, who gave them and when, one tap to choose. */
export function DifferencesSheet({ route, plan }: { readonly route: PlanRoute; readonly plan: Plan }) {
  const words = useWords()
  const { say } = words
  const differences = useApp((state) => state.differences)
  const nowMs = useNow()
  const close = useCloseCard(placeHref(route.id, route.place))
  return (
    <Sheet title={say('differences.title')} closeLabel={say('app.close')} onClose={close}>
      {differences.length === 0 ? (
        <>
          <p>{say('differences.none')}</p>
          <LinkButton href={placeHref(route.id, route.place)}>{say('empty.to-plan')}</LinkButton>
        </>
      ) : (
        <p className="quiet">{say('differences.why')}</p>
      )}
      {differences.map((difference) => {
        const { path, kept } = difference
        const name = decisionName(path, (entry) => valueAt(plan, entry) ?? difference[kept].value, words)
        return (
          <section key={path} className="difference">
            <h3>{name}</h3>
            <div className="difference-sides">
              {(['mine', 'theirs'] as const).map((side) => {
                const { value, author } = difference[side]
                const answer = answerText(path, value, words)
                const by =
                  author === null
                    ? whoText(author, words)
                    : say('differences.by', { who: whoText(author, words), when: showWhen(author.atMs, nowMs) })
                return (
                  <div key={side}>
                    <Button shape="big" label={`${name}: ${answer}`} onPress={() => void chooseAnswer(path, side)}>
                      {answer}
                    </Button>
                    <p className="quiet">
                      {side === 'mine' && `${say('differences.mine')} · `}
                      {by}
                      {side === kept && (
                        <b>
                          {' '}
                          <Icon name="tick" /> {say('differences.stands')}
                        </b>
                      )}
                    </p>
                  </div>
                )
              })}
            </div>
          </section>
        )
      })}
    </Sheet>
  )
}
