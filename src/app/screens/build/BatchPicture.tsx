import type { Batch, Measure } from '../../../core/quantities/batch-box.ts'
import { useWords } from '../../words/use-words.tsx'
import { quartersText } from './fraction-text.ts'

/** More measures than this are told as a number alone. */
const MOST_DRAWN = 12

/** One batch as it goes on the board: bags, measures drawn one by one, water. */
export function BatchPicture({ batch, measure }: { readonly batch: Batch; readonly measure: Measure }) {
  const { say, named, number } = useWords()
  return (
    <ul className="batch">
      {batch.parts.map(({ part, filled }) => {
        const isBag = part === 'cement' && batch.bags !== null
        const count = isBag ? batch.bags : filled
        return (
          <li key={part}>
            <b>{named(`item.${part}`)}</b>
            <span className="batch-signs" aria-hidden="true">
              {count <= MOST_DRAWN &&
                Array.from({ length: Math.ceil(count) }, (_, index) => (
                  <Sign key={index} kind={isBag ? 'bag' : part} share={Math.min(1, count - index)} />
                ))}
            </span>
            <span className="site-text">
              {isBag
                ? say('build.bags', {
                    bags: quartersText(count),
                    count,
                    measures: quartersText(filled),
                    filled,
                    measure,
                  })
                : say('build.measures', { count: quartersText(filled), filled, measure })}
            </span>
          </li>
        )
      })}
      <li>
        <b>{named('item.water')}</b>
        <span className="batch-signs" />
        <span className="site-text">
          {batch.water === null
            ? say('build.water-clay')
            : say('build.water', { most: number(batch.water.value, 0), damp: batch.bulking.value > 0 ? 'yes' : 'no' })}
        </span>
      </li>
    </ul>
  )
}

function Sign({
  kind,
  share,
}: {
  readonly kind: 'bag' | 'cement' | 'clay' | 'sand' | 'stone'
  readonly share: number
}) {
  const level = 20 - 16 * share
  return (
    <svg viewBox="0 0 32 24" focusable="false">
      {kind === 'bag' ? (
        <path className="edge" d="M5 8l4-5h14l4 5v13H5z" />
      ) : (
        <>
          <path
            className={`fill ${kind}`}
            d={`M${String(2 + ((level - 4) * 6) / 16)} ${String(level)}L8 20H24L${String(30 - ((level - 4) * 6) / 16)} ${String(level)}z`}
          />
          <path className="edge" d="M2 4L8 20H24L30 4z" />
        </>
      )}
      {kind === 'bag' && share < 1 && (
        <text x="16" y="18" textAnchor="middle">
          {quartersText(share)}
        </text>
      )}
    </svg>
  )
}
