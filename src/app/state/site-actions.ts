export { canSpeak, hush, speak } from '../../device/site/speech.ts'
export { stayAwake } from '../../device/site/stay-awake.ts'
