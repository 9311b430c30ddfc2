import { useState } from 'react'
import { PickList } from '../parts/PickList.tsx'
import { chooseLanguage, LANGUAGES, NOT_YET_CHECKED, type Language } from '../words/language.ts'
import { useLanguage, useWords } from '../words/use-words.tsx'

const CHOICES = Object.entries(LANGUAGES).map(([key, label]) => ({ key: key as Language, label }))

/** The language of the words, changed in place, with the truth about who has checked them. */
export function LanguageChoice() {
  const { say } = useWords()
  const language = useLanguage()
  const [hasFailed, setHasFailed] = useState(false)
  const choose = async (next: Language) => {
    try {
      await chooseLanguage(next)
      setHasFailed(false)
    } catch {
      setHasFailed(true)
    }
  }
  return (
    <div className="language">
      <PickList
        name={say('settings.language')}
        value={language}
        options={CHOICES}
        onChange={(next) => void choose(next)}
      />
      {hasFailed && <p role="alert">{say('settings.language-failed')}</p>}
      {NOT_YET_CHECKED.has(language) && <p className="quiet">{say('settings.language-unchecked')}</p>}
    </div>
  )
}
