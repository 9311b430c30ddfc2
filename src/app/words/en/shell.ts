import app from './app.json'
import drawings from './drawings.json'
import front from './front.json'
import keeping from './keeping.json'
import settings from './settings.json'
import unit from './unit.json'

/** What the front page says: in the first load. */
export const shell = {
  ...app,
  ...drawings,
  ...front,
  ...keeping,
  ...settings,
  ...unit,
}
