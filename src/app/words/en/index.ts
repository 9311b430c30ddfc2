import app from './app.json'
import build from './build.json'
import buy from './buy.json'
import catalogue from './catalogue.json'
import drawings from './drawings.json'
import field from './field.json'
import fishFindings from './fish-findings.json'
import fishWorking from './fish-working.json'
import front from './front.json'
import groundFindings from './ground-findings.json'
import groundWorking from './ground-working.json'
import keeping from './keeping.json'
import moneyFindings from './money-findings.json'
import moneyWorking from './money-working.json'
import newPlan from './new-plan.json'
import plan from './plan.json'
import run from './run.json'
import settings from './settings.json'
import sheet from './sheet.json'
import unit from './unit.json'

/** Every message in English, by its name. Each room of the product keeps its own file. */
export const english = {
  ...app,
  ...build,
  ...buy,
  ...catalogue,
  ...drawings,
  ...field,
  ...fishFindings,
  ...fishWorking,
  ...front,
  ...groundFindings,
  ...groundWorking,
  ...keeping,
  ...moneyFindings,
  ...moneyWorking,
  ...newPlan,
  ...plan,
  ...run,
  ...settings,
  ...sheet,
  ...unit,
}
