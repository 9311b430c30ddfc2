import build from './build.json'
import buildFindings from './build-findings.json'
import buildSite from './build-site.json'
import buildWorking from './build-working.json'
import buy from './buy.json'
import catalogue from './catalogue.json'
import catching from './catch.json'
import compare from './compare.json'
import cutting from './cutting.json'
import field from './field.json'
import fishFindings from './fish-findings.json'
import fishWorking from './fish-working.json'
import ground from './ground.json'
import handOver from './hand-over.json'
import groundFindings from './ground-findings.json'
import groundWorking from './ground-working.json'
import help from './help.json'
import history from './history.json'
import moneyFindings from './money-findings.json'
import moneyWorking from './money-working.json'
import newPlan from './new-plan.json'
import phone from './phone.json'
import plan from './plan.json'
import prices from './prices.json'
import range from './range.json'
import run from './run.json'
import sheet from './sheet.json'
import sheets from './sheets.json'
import spending from './spending.json'
import trust from './trust.json'
import views from './views.json'

import walls from './walls.json'
import within from './within.json'

/** What is said inside a plan: loaded with the screens of a plan. */
export const planWords = {
  ...build,
  ...buildFindings,
  ...buildSite,
  ...buildWorking,
  ...buy,
  ...catalogue,
  ...catching,
  ...compare,
  ...cutting,
  ...field,
  ...fishFindings,
  ...fishWorking,
  ...ground,
  ...groundFindings,
  ...groundWorking,
  ...handOver,
  ...help,
  ...history,
  ...moneyFindings,
  ...moneyWorking,
  ...newPlan,
  ...phone,
  ...plan,
  ...prices,
  ...range,
  ...run,
  ...sheet,
  ...sheets,
  ...spending,
  ...trust,
  ...views,
  ...walls,
  ...within,
}
