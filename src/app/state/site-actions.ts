export { canSpeak, hush, speak } from '../../device/site/speech.ts'
export { canStayAwake, stayAwake } from '../../device/site/stay-awake.ts'
