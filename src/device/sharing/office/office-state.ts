/** How this phone stands with the office. 'away': no way there now, work goes on; 'refused': the office does not take this key. */
export interface OfficeState {
  readonly kind: 'joined' | 'away' | 'refused'
  readonly plans: number
  /** Whether everything that was changed here has arrived there. */
  readonly isSent: boolean
}
