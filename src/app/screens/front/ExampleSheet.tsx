import { Button } from '../../parts/Button.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { EXAMPLE_KEYS, openExample } from '../../state/file-actions.ts'
import { useWords } from '../../words/use-words.tsx'
import { placeHref } from '../route.ts'
import { goTo } from '../use-route.ts'

/** Whole plans to look at and change. */
export function ExampleSheet({ onClose }: { readonly onClose: () => void }) {
  const { say, named } = useWords()
  const open = async (key: string) => {
    const id = await openExample(key)
    onClose()
    goTo(placeHref(id, 'plan'))
  }
  return (
    <Sheet title={say('front.examples')} closeLabel={say('app.close')} onClose={onClose}>
      <p className="quiet">{say('front.examples-why')}</p>
      <div className="choices">
        {EXAMPLE_KEYS.map((key) => (
          <Button key={key} shape="big" icon="block" onPress={() => void open(key)}>
            {named(`example.${key}`)}
          </Button>
        ))}
      </div>
    </Sheet>
  )
}
