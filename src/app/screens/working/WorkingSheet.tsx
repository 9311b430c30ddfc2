import type { Derived } from '../../../core/basics/derived.ts'
import { Button } from '../../parts/Button.tsx'
import { Icon } from '../../parts/Icon.tsx'
import { Num } from '../../parts/Num.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { showShare } from '../../words/figure.ts'
import { inLine, type Figure } from '../../words/show.ts'
import { useWords } from '../../words/use-words.tsx'
import type { Words } from '../../words/words.ts'
import { isShare, limitOf } from '../fields/field-way.ts'
import { formulaInNumbers, formulaInSymbols } from './formula.ts'
import { TRUST } from '../route.ts'
import { sourceText } from './source-text.ts'
import './working.css'

/** A typed share is said in per cent, as it was typed; every other number in the reader's units. */
function figureOf(derived: Derived, words: Words): Figure {
  if (derived.field !== undefined && derived.unit === '1' && isShareField(derived.field))
    return showShare(derived.value)
  return words.figure(derived.value, derived.unit)
}

function isShareField(field: string): boolean {
  try {
    return isShare(limitOf(field))
  } catch {
    return false
  }
}

/** Why a number is what it is: its formula, the same in numbers, each number it is made of, its source, and the way to whatever was typed. */
export function WorkingSheet({
  path,
  onOpen,
  onBack,
  onClose,
  onChange,
}: {
  readonly path: readonly Derived[]
  readonly onOpen: (derived: Derived) => void
  readonly onBack: () => void
  readonly onClose: () => void
  /** Leads to the field that was typed. */
  readonly onChange: (field: string) => void
}) {
  const words = useWords()
  const { say } = words
  const shown = path.at(-1)
  if (shown === undefined) return null
  const { field, source } = shown
  return (
    <Sheet
      title={words.nameOf(shown)}
      closeLabel={say('sheet.close')}
      onClose={onClose}
      onCancel={onBack}
      back={path.length > 1 ? { label: say('sheet.back'), onBack } : undefined}
    >
      <Value figure={figureOf(shown, words)} />
      <Made of={shown} onOpen={onOpen} />
      {source !== undefined && (
        <p className="source-line">
          <Icon name="info" />
          <span>{sourceText(source)}</span>
        </p>
      )}
      <p>
        <a className="trust-link" href={TRUST}>
          {say('sheet.trust')}
        </a>
      </p>
      {field !== undefined && (
        <>
          <p className="source-line">
            <Icon name="pencil" />
            <span>{say('sheet.typed')}</span>
          </p>
          <Button
            shape="big"
            onPress={() => {
              onChange(field)
            }}
          >
            {say('sheet.change')}
          </Button>
        </>
      )}
    </Sheet>
  )
}

function Value({ figure: { figure, unit, isUnitFirst = false } }: { readonly figure: Figure }) {
  const sign = unit !== '' && <span className="of">{unit}</span>
  return (
    <p className="worked-value">
      {isUnitFirst && sign} {figure} {!isUnitFirst && sign}
    </p>
  )
}

function Made({ of: shown, onOpen }: { readonly of: Derived; readonly onOpen: (derived: Derived) => void }) {
  const words = useWords()
  const { say } = words
  const inputs = Object.entries(shown.inputs)
  const text = (derived: Derived) => inLine(figureOf(derived, words))
  if (inputs.length === 0) {
    return shown.field === undefined && shown.source === undefined ? (
      <p className="quiet">{say('sheet.counted')}</p>
    ) : null
  }
  return (
    <>
      {shown.addends === true ? (
        <p className="quiet">{say('sheet.added')}</p>
      ) : (
        shown.formula !== undefined && (
          <p className="worked-formula">
            <span className="quiet">{formulaInSymbols(shown.formula)}</span>
            <b>{say('sheet.is', { formula: formulaInNumbers(shown, text), value: text(shown) })}</b>
          </p>
        )
      )}
      <ul className="sum">
        {inputs.map(([symbol, input]) => (
          <li key={symbol}>
            <span className="name">
              {shown.addends !== true && <span className="symbol">{symbol}</span>}
              <span>{words.nameOf(input)}</span>
            </span>
            <InputNum derived={input} onOpen={onOpen} />
          </li>
        ))}
        {shown.addends === true && (
          <li className="total">
            <span className="name">{words.nameOf(shown)}</span>
            <span>{text(shown)}</span>
          </li>
        )}
      </ul>
    </>
  )
}

function InputNum({ derived, onOpen }: { readonly derived: Derived; readonly onOpen: (derived: Derived) => void }) {
  const words = useWords()
  return (
    <Num
      label={words.nameOf(derived)}
      {...figureOf(derived, words)}
      onOpen={() => {
        onOpen(derived)
      }}
    />
  )
}
