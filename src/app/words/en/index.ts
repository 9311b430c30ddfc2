import app from './app.json'
import catalogue from './catalogue.json'
import drawings from './drawings.json'
import field from './field.json'
import fishFindings from './fish-findings.json'
import fishWorking from './fish-working.json'
import front from './front.json'
import groundWorking from './ground-working.json'
import newPlan from './new-plan.json'
import sheet from './sheet.json'
import unit from './unit.json'

/** Every message in English, by its name. Each room of the product keeps its own file. */
export const english = {
  ...app,
  ...catalogue,
  ...drawings,
  ...field,
  ...fishFindings,
  ...fishWorking,
  ...front,
  ...groundWorking,
  ...newPlan,
  ...sheet,
  ...unit,
}
