/** A message as Lingui compiles it: texts and arguments in turn. */
export type Message = (string | Argument)[]
type Argument = [name: string, kind?: string, format?: string | Record<string, Message>]

/** Signs that no text holds: they open, part and close an argument, open and part one of its choices, and stand for its count. */
export const SIGNS = ['\u0001', '\u0002', '\u0003', '\u0004', '\u0005', '\u0006'] as const
const [OPEN, PART, CLOSE, CASE, SAYS, COUNT] = SIGNS
const isSign: ReadonlySet<string> = new Set(SIGNS)

/** The sign for no letters shared with the name before: printable, and not a line's end. */
export const NONE_SHARED = 35

/** Messages from the text that the build packed, a line each. */
export const readMessages = (text: string): Message[] => text.split('\n').map((line) => new Reader(line).message())

/** One line, read from its start. */
class Reader {
  private at = 0
  private readonly line: string

  constructor(line: string) {
    this.line = line
  }

  message(): Message {
    const tokens: Message = []
    for (;;) {
      const text = this.text()
      if (text !== '') tokens.push(text)
      if (this.takes(OPEN)) tokens.push(this.argument())
      else if (this.takes(COUNT)) tokens.push('#')
      else return tokens
    }
  }

  private argument(): Argument {
    const argument: Argument = [this.text()]
    if (this.takes(PART)) argument.push(this.text())
    if (this.takes(PART)) argument.push(this.line[this.at] === CASE ? this.choices() : this.text())
    this.takes(CLOSE)
    return argument
  }

  private choices(): Record<string, Message> {
    const choices: Record<string, Message> = {}
    while (this.takes(CASE)) {
      const key = this.text()
      this.takes(SAYS)
      choices[key] = this.message()
    }
    return choices
  }

  private takes(sign: string): boolean {
    const isNext = this.line[this.at] === sign
    if (isNext) this.at++
    return isNext
  }

  private text(): string {
    const from = this.at
    while (this.at < this.line.length && !isSign.has(this.line.charAt(this.at))) this.at++
    return this.line.slice(from, this.at)
  }
}

/** Names in order from the text that the build packed: each line says how much it shares with the one before. */
export function readNames(text: string): string[] {
  let before = ''
  return text.split('\n').map((line) => {
    before = before.slice(0, (line.codePointAt(0) ?? NONE_SHARED) - NONE_SHARED) + line.slice(1)
    return before
  })
}
