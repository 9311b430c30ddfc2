import { useState } from 'react'
import { groupAccount } from '../../../core/costs/group-account.ts'
import { OTHER_THINGS, type ItemSpending } from '../../../core/costs/spending.ts'
import type { Spending } from '../../../core/plan/money-records.ts'
import type { PurchaseLine } from '../../../core/purchase/line.ts'
import { isItemKey, itemOf } from '../../../core/quantities/items.ts'
import { Button } from '../../parts/Button.tsx'
import { MoneyRow } from '../../parts/MoneyRow.tsx'
import { NoticeBox } from '../../parts/NoticeBox.tsx'
import { PickList } from '../../parts/PickList.tsx'
import { Segments } from '../../parts/Picks.tsx'
import { TextField } from '../../parts/TextField.tsx'
import { todayIso } from '../../words/dates.ts'
import { useWords } from '../../words/use-words.tsx'
import { gotText } from '../buy/got-text.ts'
import { itemName, lotText } from '../buy/line-text.ts'
import { newKey } from '../buy/new-key.ts'
import { DayField } from '../fields/DayField.tsx'
import { MoneyField } from '../fields/MoneyField.tsx'
import { NumberField } from '../fields/PlanField.tsx'
import { usePlan } from '../fields/plan-in-hand.ts'
import { dropHalfTyped, halfTyped, keepHalfTyped, type HalfTyped } from './half-typed.ts'
import type { MoneySheetProps } from './MoneySheet.tsx'
import { lotsStillMissing, payLot, plannedMinor } from './pay-lot.ts'
import { ReceiptPart } from './ReceiptPart.tsx'
import { RecordFrame } from './RecordFrame.tsx'
import { memberChoices } from './record-text.ts'
import { useSpending } from './use-spending.ts'
import { useTakeAway } from './use-take-away.ts'

const SELLERS = ['block-maker', 'hardware', 'timber', 'sand-stone', 'labour'] as const
const BOX = ''
/** Before the item of a record that is not there yet. */
const NEW = 'new.'

/** The beginning of a record: as many lots of the list as are still missing, today, paid from the box. */
function firstRecord(item: string, line: PurchaseLine | undefined, own: ItemSpending | undefined): Spending {
  const perLot = line === undefined ? 1 : line.bought.value / line.lots.value
  const lots = line === undefined || own === undefined ? 1 : lotsStillMissing(line, own.missing.value, own.got.value)
  const quantity = lots * perLot
  return {
    kind: 'purchase',
    item,
    quantity,
    paidMinor: plannedMinor(line, quantity) ?? 0,
    seller: line?.seller ?? (isItemKey(item) ? itemOf(item).seller : 'hardware'),
    sellerName: line?.sellerName ?? '',
    instead: '',
    day: todayIso(),
    paidBy: null,
    receipt: null,
  }
}

/** What was bought or given back: quantity, money, who paid. The list's lots and prices are the beginning; anything else can be typed. */
export function PaySheet({ item, id, worked, onClose }: MoneySheetProps & { item: string; id: string | null }) {
  const words = useWords()
  const { say, named, money } = words
  const { plan, set } = usePlan()
  const own = useSpending(worked).items.find((one) => one.item === item)
  const lines = own?.lines ?? []
  const kept = id === null ? undefined : plan.spending[id]
  const [at, setAt] = useState(0)
  const line = lines[at]
  const record = id ?? `${NEW}${item}`
  const atFirst = (): HalfTyped => {
    const draft = kept ?? firstRecord(item, line, own)
    const paid = kept === undefined && line?.cost === null ? null : draft.paidMinor
    return { draft, paid, isPaidTyped: kept !== undefined }
  }
  const [begun, setBegun] = useState(() => halfTyped(plan.id, record, kept))
  const [{ draft, paid, isPaidTyped }, setHalf] = useState(() => begun ?? atFirst())
  const takeAway = useTakeAway(onClose)
  const { perLot, way } = payLot(item, line, words)
  const name = itemName(item, plan, words)
  const isOther = item === OTHER_THINGS
  const isReturn = draft.kind === 'return'

  const write = (half: HalfTyped) => {
    setHalf(half)
    keepHalfTyped(plan.id, record, kept, half)
  }
  const change = (fields: Partial<Spending>, from = line) => {
    const next = { ...draft, ...fields }
    write({ draft: next, paid: isPaidTyped ? paid : plannedMinor(from, next.quantity), isPaidTyped })
  }
  const drop = () => {
    dropHalfTyped(plan.id, record)
  }
  const takeLine = (index: number) => {
    const chosen = lines[index]
    setAt(index)
    if (chosen !== undefined)
      change({ quantity: chosen.bought.value, seller: chosen.seller, sellerName: chosen.sellerName }, chosen)
  }
  const missing =
    paid === null ? say('spent.needs-paid') : draft.quantity <= 0 && !isReturn ? say('spent.needs-quantity') : null
  const keep = () => {
    if (paid === null || !set({ [`spending.${id ?? newKey()}`]: { ...draft, paidMinor: paid } })) return
    drop()
    onClose()
  }
  const boxMinor = groupAccount(plan).cashInBox.value + undone(kept) - undone({ ...draft, paidMinor: paid ?? 0 })
  return (
    <RecordFrame
      title={id === null ? say('spent.record') : say('spent.recorded')}
      keep={
        id === null ? say(isReturn ? 'spent.keep-return' : 'spent.keep', { paid: money(paid ?? 0) }) : say('spent.save')
      }
      missing={missing}
      onKeep={keep}
      onTakeAway={
        id === null
          ? undefined
          : () => {
              drop()
              takeAway(`spending.${id}`, name)
            }
      }
      onClose={onClose}
    >
      <h3 className="pay-what">{name}</h3>
      {begun !== null && (
        <NoticeBox
          icon="info"
          action={
            <Button
              onPress={() => {
                drop()
                setBegun(null)
                setAt(0)
                setHalf(atFirst())
              }}
            >
              {say('spent.begin-anew')}
            </Button>
          }
        >
          {say('spent.half-typed')}
        </NoticeBox>
      )}
      {own && own.got.value > 0 && <p>{gotText(own, words)}</p>}
      {lines.length > 1 && (
        <PickList
          name={say('spent.which-lot')}
          value={String(at)}
          options={lines.map((one, index) => ({ key: String(index), label: lineText(one, words) }))}
          onChange={(key) => {
            takeLine(Number(key))
          }}
        />
      )}
      <NumberField
        {...(id !== null && { id: `spending.${id}.quantity` })}
        name={say(isReturn ? 'spent.how-many-back' : 'spent.how-many')}
        value={draft.quantity / perLot}
        way={way}
        onChange={(lots) => {
          change({ quantity: lots * perLot })
        }}
        help={quantityHelp(draft.quantity, perLot, line, words)}
      />
      <MoneyField
        id={id === null ? 'spending.paid' : `spending.${id}.paidMinor`}
        name={say(isReturn ? 'spent.paid-back' : 'spent.paid-all')}
        minor={paid}
        isTakenAtOnce
        onChange={(minor) => {
          write({ draft, paid: minor, isPaidTyped: true })
        }}
        help={isReturn ? undefined : priceHelp(paid, plannedMinor(line, draft.quantity), words)}
      />
      <PickList
        name={say(isReturn ? 'spent.who-got' : 'spent.who-paid')}
        value={draft.paidBy ?? BOX}
        options={[{ key: BOX, label: say('spent.box') }, ...memberChoices(plan, draft.paidBy)]}
        onChange={(key) => {
          change({ paidBy: key === BOX ? null : key })
        }}
      />
      <MoneyRow name={say('spent.box-after')}>{money(boxMinor)}</MoneyRow>
      <div className="fields">
        <DayField
          name={say('spent.day')}
          day={draft.day}
          onChange={(day) => {
            change({ day })
          }}
        />
        <Segments
          name={say('spent.kind')}
          isNameShown
          choices={[
            { key: 'purchase', label: say('spent.purchase') },
            { key: 'return', label: say('spent.return') },
          ]}
          chosen={draft.kind}
          onChoose={(kind) => {
            change({ kind })
          }}
        />
        <PickList
          name={say('offer.seller')}
          value={draft.seller}
          options={SELLERS.map((key) => ({ key, label: named(`seller.${key}`) }))}
          onChange={(seller) => {
            change({ seller })
          }}
        />
        <TextField
          name={say('offer.seller-name')}
          value={draft.sellerName}
          most={80}
          isTakenAtOnce
          onChange={(sellerName) => {
            change({ sellerName })
          }}
        />
        <TextField
          name={say(isOther ? 'spent.what' : 'spent.instead')}
          value={draft.instead}
          most={80}
          isTakenAtOnce
          help={isOther ? undefined : say('spent.instead-why')}
          onChange={(instead) => {
            change({ instead })
          }}
        />
        <TextField
          name={say('spent.note')}
          value={draft.note ?? ''}
          most={80}
          isTakenAtOnce
          onChange={(note) => {
            change({ note })
          }}
        />
      </div>
      <ReceiptPart
        planId={plan.id}
        receipt={draft.receipt}
        what={name}
        onChange={(receipt) => {
          change({ receipt })
        }}
      />
    </RecordFrame>
  )
}

type Words = ReturnType<typeof useWords>

/** What a record took out of the box. */
const undone = (record: Spending | undefined): number =>
  record === undefined || record.paidBy !== null ? 0 : record.kind === 'purchase' ? record.paidMinor : -record.paidMinor

function lineText(line: PurchaseLine, words: Words): string {
  const lot = lotText(line, words)
  const name = words.named(`lot.${line.lotName}`, { count: 1 })
  return [lot === '' ? name : `${lot} ${name}`, line.sellerName].filter((part) => part !== '').join(', ')
}

/** Two bags are 100 kg: said where the lot is not the unit itself. */
const quantityHelp = (quantity: number, perLot: number, line: PurchaseLine | undefined, words: Words) =>
  perLot === 1 || line === undefined ? undefined : words.inLine(quantity, line.bought.unit)

function priceHelp(paid: number | null, planned: number | null, words: Words): string | undefined {
  if (planned === null || paid === null) return undefined
  const { say, money } = words
  if (paid === planned) return say('spent.as-planned')
  return say(paid > planned ? 'spent.more' : 'spent.less', {
    by: money(Math.abs(paid - planned)),
    planned: money(planned),
  })
}
