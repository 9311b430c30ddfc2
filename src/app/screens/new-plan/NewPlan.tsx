import { useMemo, useState, type ReactNode } from 'react'
import { chambersFor } from '../../../core/fish/load.ts'
import { CATALOGUE_SOILS, CATALOGUE_UNITS } from '../../../core/plan/catalogue.ts'
import { newPlan } from '../../../core/plan/defaults.ts'
import { workOut } from '../../../core/work-out.ts'
import { MiniKiln } from '../../drawings/MiniKiln.tsx'
import { Button } from '../../parts/Button.tsx'
import { Header } from '../../parts/Header.tsx'
import { PickList } from '../../parts/PickList.tsx'
import { Picks } from '../../parts/Picks.tsx'
import { createPlan } from '../../state/actions.ts'
import { useApp } from '../../state/use-app.ts'
import { CURRENCY_CODES, currencyName, currencyOf, localCurrency } from '../../words/currencies.ts'
import { useWords } from '../../words/use-words.tsx'
import { fieldWay } from '../fields/field-way.ts'
import { NumberField } from '../fields/PlanField.tsx'
import { Page } from '../Page.tsx'
import { PicketPicture, ThumbPicture } from '../pictures/GroundPicture.tsx'
import { SoilPicture } from '../pictures/SoilPicture.tsx'
import { UnitPicture } from '../pictures/UnitPicture.tsx'
import { FRONT, NEW, placeHref } from '../route.ts'
import { replaceWith } from '../use-route.ts'
import { USUAL_UNITS } from '../usual-units.ts'
import { freeName } from './free-name.ts'
import { FIRST_GROUND, PICKETS, soilFrom, THUMBS } from './ground-answer.ts'
import './new-plan.css'

const OTHER_SOILS = ['gravel-sandy', 'laterite', 'rock-soft', 'not-to-build']
const FISH = 'catch.freshKgPerDay'

const firstUnit = (): string =>
  (USUAL_UNITS.map(unitOf).find((unit) => unit !== undefined) ?? CATALOGUE_UNITS[0])?.key ?? ''
const unitOf = (key: string) => CATALOGUE_UNITS.find((unit) => unit.key === key)

/** A plan from three answers: the catch, the wall unit, the ground. The last line says at once what they make. */
export function NewPlan() {
  const words = useWords()
  const { say, named, sizes } = words
  const rows = useApp((state) => state.rows)
  const isReady = useApp((state) => state.phase === 'ready')
  const [freshKgPerDay, setFresh] = useState(80)
  const [unitKey, setUnitKey] = useState(firstUnit)
  const [ground, setGround] = useState(FIRST_GROUND)
  const [code, setCode] = useState(() => localCurrency().code)
  const [isMaking, setIsMaking] = useState(false)
  const soil = soilFrom(ground)
  const first = useMemo(
    () => ({
      name: freeName(
        say('new.name-first'),
        rows.map(({ name }) => name),
      ),
      freshKgPerDay,
      unitKey,
      soil,
      currency: currencyOf(code),
    }),
    [say, rows, freshKgPerDay, unitKey, soil, code],
  )
  const make = async () => {
    setIsMaking(true)
    const id = await createPlan(first)
    replaceWith(placeHref(id, 'plan'))
  }
  const unitChoice = (unit: (typeof CATALOGUE_UNITS)[number]) => ({
    key: unit.key,
    title: named(`family.${unit.family}`),
    detail: sizes(unit.lengthM, unit.widthM, unit.heightM),
    picture: <UnitPicture unit={unit} />,
  })
  return (
    <Page
      path={NEW}
      title={`${say('new.title')} · ${say('app.name')}`}
      kind="single"
      header={
        <Header
          title={<h1>{say('new.title')}</h1>}
          safety={{ kind: 'plain', text: say('new.nothing-yet') }}
          back={{ href: FRONT, label: say('app.back-to-plans'), icon: 'close' }}
        />
      }
      foot={
        <footer className="dock">
          <Preview first={first} />
          <Button tone="fire" shape="big" disabled={!isReady || isMaking} onPress={() => void make()}>
            {say('new.make')}
          </Button>
        </footer>
      }
    >
      <Question number={1} title={say('new.fish')}>
        <NumberField
          name={say('new.fish-field')}
          value={freshKgPerDay}
          way={fieldWay(FISH, words)}
          onChange={setFresh}
          help={say('new.fish-help')}
        />
      </Question>
      <Question number={2} title={say('new.unit')}>
        <Picks
          name={say('new.unit')}
          isNameShown={false}
          choices={CATALOGUE_UNITS.filter(({ key }) => USUAL_UNITS.includes(key)).map(unitChoice)}
          chosen={unitKey}
          onChoose={setUnitKey}
        />
        <details>
          <summary className="more">{say('new.unit-more')}</summary>
          <Picks
            name={say('new.unit-more')}
            isNameShown={false}
            choices={CATALOGUE_UNITS.filter(({ key }) => !USUAL_UNITS.includes(key)).map(unitChoice)}
            chosen={unitKey}
            onChoose={setUnitKey}
          />
        </details>
      </Question>
      <Question number={3} title={say('new.ground')}>
        <p className="quiet">{say('new.ground-how')}</p>
        <Picks
          name={say('new.picket')}
          isNameShown={false}
          choices={PICKETS.map((key) => ({
            key,
            title: say(`new.picket.${key}`),
            detail: say(`new.picket.${key}-why`),
            picture: <PicketPicture depth={key} />,
          }))}
          chosen={ground.other === null ? ground.picket : null}
          onChoose={(picket) => {
            setGround({ ...ground, picket, other: null })
          }}
        />
        <Picks
          name={say('new.thumb')}
          choices={THUMBS.map((key) => ({
            key,
            title: say(`new.thumb.${key}`),
            detail: say(`new.thumb.${key}-why`),
            picture: <ThumbPicture depth={key} />,
          }))}
          chosen={ground.other === null ? ground.thumb : null}
          onChoose={(thumb) => {
            setGround({ ...ground, thumb, other: null })
          }}
        />
        <details>
          <summary className="more">{say('new.ground-other')}</summary>
          <Picks
            name={say('new.ground-other')}
            isNameShown={false}
            choices={CATALOGUE_SOILS.filter(({ key }) => OTHER_SOILS.includes(key)).map(({ key }) => ({
              key,
              title: named(`soil.${key}`),
              detail: named(`soil-test.${key}`),
              picture: <SoilPicture soil={key} />,
            }))}
            chosen={ground.other}
            onChoose={(other) => {
              setGround({ ...ground, other })
            }}
          />
        </details>
        <p>
          <b>{say('new.taken-as', { soil: named(`soil.${soil}`) })}</b>
        </p>
      </Question>
      <PickList
        name={say('new.money')}
        value={code}
        options={CURRENCY_CODES.map((key) => ({ key, label: currencyName(key) }))}
        onChange={setCode}
      />
    </Page>
  )
}

function Question({
  number,
  title,
  children,
}: {
  readonly number: number
  readonly title: string
  readonly children: ReactNode
}) {
  return (
    <section className="stack">
      <h2 className="question">
        <span className="question-number">{number}</span>
        <span>{title}</span>
      </h2>
      {children}
    </section>
  )
}

/** What the answers make, worked out by the core as they are given. */
function Preview({ first }: { readonly first: Parameters<typeof createPlan>[0] }) {
  const { say, length, mass, number } = useWords()
  const made = useMemo(() => {
    const bare = newPlan({ ...first, id: 'preview' })
    const enough = chambersFor(bare)
    const plan = { ...bare, chambers: { ...bare.chambers, count: enough.count } }
    return { plan, carries: enough.carries, worked: workOut(plan) }
  }, [first])
  const { count, clearSideM } = made.plan.chambers
  const { counts } = made.worked.layout
  return (
    <div className="preview" aria-live="polite">
      <MiniKiln plan={made.plan} unitsPerM={count > 3 ? 24 : 44} />
      <p>
        <b>{say('new.preview', { chambers: count, side: length(clearSideM) })}</b>
        <br />
        {made.carries
          ? say('new.preview-more', {
              mass: mass(made.worked.fish.freshPerDay.value),
              units: number(counts.bought),
              count: counts.bought,
            })
          : say('new.too-much', { chambers: count })}
      </p>
    </div>
  )
}
