import { findingsOn, type Finding } from '../basics/finding.ts'
import type { Plan } from '../plan/schema.ts'
import { productAt } from './drying.ts'
import { FISH_DATA } from './fish-data.ts'

const finding = findingsOn('catch')

const dryFor = (hours: number): Finding['remedies'][number] => ({
  kind: 'set-dry-hours',
  args: { hours },
  set: { 'firing.dryHours': hours },
})

/** Is there drying to do, how long does the product keep, and are the stages as hot and as long as published practice? */
export function dryingFindings({ catch: fish, firing }: Plan): Finding[] {
  const found: Finding[] = []
  const kind = productAt(fish.moistureFinal)
  if (fish.moistureFinal >= fish.moistureFresh)
    found.push(
      finding('problem', 'no-drying', { before: fish.moistureFresh, after: fish.moistureFinal }, [
        { kind: 'set-final-moisture', args: { moisture: 0.1 }, set: { 'catch.moistureFinal': 0.1 } },
      ]),
    )
  if (fish.moistureFinal > 0.4)
    found.push(finding('caution', 'keeps-days-only', { days: 3, moisture: fish.moistureFinal }))
  else if (kind.keepsDays === null) found.push(finding('caution', 'keeping-unknown', { moisture: fish.moistureFinal }))
  else found.push(finding('good', 'keeps-months', { from: kind.keepsDays.from / 30, to: kind.keepsDays.to / 30 }))
  const hours = firing.cookHours + firing.dryHours
  if (hours < kind.hours.from)
    found.push(
      finding('caution', 'hours-short', { hours, from: kind.hours.from, to: kind.hours.to }, [
        dryFor(kind.hours.from - firing.cookHours),
      ]),
    )
  const { cook, dry } = FISH_DATA.stages
  const outside = (degC: number, { fromDegC, toDegC }: { fromDegC: number; toDegC: number }) =>
    degC < fromDegC ? fromDegC : degC > toDegC ? toDegC : null
  const mend = (stage: 'cook' | 'dry', degC: number, band: { fromDegC: number; toDegC: number }) => {
    const near = outside(degC, band)
    if (near === null) return
    found.push(
      finding('caution', `${stage}-temperature`, { degC, from: band.fromDegC, to: band.toDegC }, [
        { kind: `set-${stage}-temperature`, args: { degC: near }, set: { [`firing.${stage}DegC`]: near } },
      ]),
    )
  }
  const { wood } = FISH_DATA
  if (firing.woodMoisture > wood.dryMoisture + 1e-9) {
    const dry = wood.ncvDry - wood.ncvSlope * wood.dryMoisture
    const less = (wood.ncvSlope * (firing.woodMoisture - wood.dryMoisture)) / dry
    found.push(
      finding('caution', 'wood-wet', { moisture: firing.woodMoisture, dry: wood.dryMoisture, less }, [
        {
          kind: 'set-wood-moisture',
          args: { moisture: wood.dryMoisture },
          set: { 'firing.woodMoisture': wood.dryMoisture },
        },
      ]),
    )
  }
  mend('cook', firing.cookDegC, cook)
  if (firing.dryHours > 0) mend('dry', firing.dryDegC, dry)
  return found
}
