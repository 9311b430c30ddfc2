/** Does this phone read aloud? Many do without a network. */
export const canSpeak = (): boolean => 'speechSynthesis' in globalThis && 'SpeechSynthesisUtterance' in globalThis

/** Reads a text aloud in a language, with a voice that lives on the phone where there is one. Tells when it is through or was stopped. */
export function speak(text: string, language: string, onEnd: () => void): void {
  hush()
  const utterance = new SpeechSynthesisUtterance(text)
  utterance.lang = language
  const voices = speechSynthesis.getVoices().filter(({ lang }) => lang.replace('_', '-').startsWith(language))
  const voice = voices.find(({ localService }) => localService) ?? voices[0]
  if (voice !== undefined) utterance.voice = voice
  utterance.addEventListener('end', onEnd)
  utterance.addEventListener('error', onEnd)
  speechSynthesis.speak(utterance)
}

export function hush(): void {
  if (canSpeak()) speechSynthesis.cancel()
}
