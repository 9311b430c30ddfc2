import { useMemo } from 'react'
import { settingOut, type SettingOut } from '../../../core/geometry/setting-out.ts'
import type { WorkedOut } from '../../../core/work-out.ts'

/** How this kiln is pegged out: worked out where it is asked for and not with every plan. */
export function useSettingOut({ geometry, site, plan }: WorkedOut): SettingOut {
  const { declinationDeg } = plan.place
  return useMemo(() => settingOut(geometry, site.facing, declinationDeg), [geometry, site.facing, declinationDeg])
}
