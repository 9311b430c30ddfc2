import { addWords } from './catalogue.ts'
import { planWords } from './en/plan-words.ts'

// Whatever imports this file needs the words of a plan, and brings them with it.
addWords(planWords)
