/** How far a search came: no plan costs less than `bound`. */
export interface Searched {
  readonly bound: number
  readonly proven: boolean
  readonly nodes: number
}
