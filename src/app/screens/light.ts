/** How bright the screen is: as the phone, or one of ours. `sun` is black on white with heavier lines, for reading outdoors. */
export const LIGHTS = ['phone', 'light', 'dark', 'sun'] as const
export type Light = (typeof LIGHTS)[number]

const KEPT_AS = 'kilnwright.light'
const isLight = (text: string | null): text is Light => LIGHTS.some((light) => light === text)

/** The light chosen on this phone; where it cannot be kept (a private window) it lasts until the page goes. */
export function keptLight(): Light {
  try {
    const kept = localStorage.getItem(KEPT_AS)
    return isLight(kept) ? kept : 'phone'
  } catch {
    return 'phone'
  }
}

export function setLight(light: Light): void {
  showLight(light)
  try {
    localStorage.setItem(KEPT_AS, light)
  } catch {
    // Nothing is lost but the choice of light.
  }
}

export function showLight(light: Light): void {
  if (light === 'phone') delete document.documentElement.dataset['theme']
  else document.documentElement.dataset['theme'] = light
}
