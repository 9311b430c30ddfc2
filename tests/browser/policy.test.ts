import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { BrowserContext, Page } from 'playwright-core'
import { tellFault } from '../faults.ts'
import { buildOf, complaints, phone, waitForOffline } from './browser.ts'
import { browser, serveApp, url } from './served.ts'
import { RestOfTheWorld } from './server.ts'

let world: RestOfTheWorld
let context: BrowserContext
let page: Page

serveApp('each')
beforeEach(async () => {
  world = new RestOfTheWorld()
  context = await phone(browser, { proxy: { server: await world.open(), bypass: 'localhost' } })
  page = await context.newPage()
  await page.goto(url)
  await waitForOffline(page)
  await buildOf(page)
})
afterEach(async () => {
  await context.close()
  await world.close()
})

/** What can be tried from within the page, by its name here; the code of each is in `attempt`. */
const TRIES: readonly (readonly [string, readonly string[]])[] = [
  ['eval', ['script-src', 'require-trusted-types-for']],
  ['new Function', ['script-src', 'require-trusted-types-for']],
  ['text as a timer', ['script-src', 'require-trusted-types-for']],
  ['inline script', ['script-src-elem', 'require-trusted-types-for']],
  ['foreign script', ['script-src-elem', 'require-trusted-types-for']],
  ['script of a parsed document', ['script-src-elem', 'require-trusted-types-for']],
  ['preloading of a foreign module', ['script-src-elem']],
  ['inline handler', ['script-src-attr', 'require-trusted-types-for']],
  ['javascript: address', ['script-src-elem']],
  ['markup from a string', ['require-trusted-types-for']],
  ['a policy of its own for trusted types', ['trusted-types']],
  ['foreign fetch', ['connect-src']],
  ['foreign XMLHttpRequest', ['connect-src']],
  ['foreign WebSocket', ['connect-src']],
  ['foreign event stream', ['connect-src']],
  ['foreign beacon', ['connect-src']],
  ['foreign worker', ['worker-src', 'require-trusted-types-for']],
  ['worker from text', ['worker-src', 'require-trusted-types-for']],
  ['foreign frame', ['frame-src']],
  ['frame with markup', ['require-trusted-types-for']],
  ['form that sends elsewhere', ['form-action']],
  ['foreign image', ['img-src']],
  ['foreign sound', ['media-src']],
  ['foreign style sheet', ['style-src-elem']],
  ['inline style sheet', ['style-src-elem']],
  ['foreign font', ['font-src']],
  ['plug-in', ['object-src', 'require-trusted-types-for']],
  ['another base for addresses', ['base-uri']],
]

/** Runs in the page: tries one thing, and gives the rules of the policy that were broken by it. */
async function attempt(name: string): Promise<{ readonly rules: string[]; readonly ran: boolean }> {
  const rules: string[] = []
  const heed = (event: SecurityPolicyViolationEvent) => rules.push(event.effectiveDirective)
  document.addEventListener('securitypolicyviolation', heed)
  const foreign = 'http://elsewhere.invalid/'
  const put = (tag: string, attributes: Readonly<Record<string, string>>, text = '') => {
    const element = document.createElement(tag)
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value)
    if (text !== '') element.append(text)
    document.body.append(element)
    return element
  }
  const global = globalThis as unknown as Record<string, (...parts: unknown[]) => unknown> & {
    ran?: boolean
    trustedTypes: { createPolicy: (name: string, rules: object) => unknown }
  }
  const tries: Readonly<Record<string, () => unknown>> = {
    eval: () => global['eval']?.('globalThis.ran = true'),
    'new Function': () => (Reflect.construct(Function, ['globalThis.ran = true']) as () => void)(),
    'text as a timer': () => Reflect.apply(setTimeout, window, ['globalThis.ran = true', 0]) as unknown,
    'inline script': () => put('script', {}, 'globalThis.ran = true'),
    'foreign script': () => put('script', { src: `${foreign}a.js` }),
    'script of a parsed document': () => {
      const range = document.createRange()
      document.body.append(range.createContextualFragment('<script>globalThis.ran = true</script>'))
    },
    'preloading of a foreign module': () => {
      const link = put('link', { rel: 'modulepreload', href: `${foreign}a.js` })
      return link
    },
    'inline handler': () => {
      put('button', { onclick: 'globalThis.ran = true' }).click()
    },
    'javascript: address': () => {
      put('a', { href: 'javascript:globalThis.ran = true' }).click()
    },
    'markup from a string': () => {
      document.body.insertAdjacentHTML('beforeend', '<img src=x onerror="globalThis.ran = true">')
    },
    'a policy of its own for trusted types': () =>
      global.trustedTypes.createPolicy('anything', { createHTML: (text: string) => text }),
    'foreign fetch': () => fetch(foreign),
    'foreign XMLHttpRequest': () => {
      const request = new XMLHttpRequest()
      request.open('POST', foreign)
      request.send('x')
    },
    'foreign WebSocket': () => new WebSocket('ws://elsewhere.invalid/'),
    'foreign event stream': () => new EventSource(foreign),
    'foreign beacon': () => navigator.sendBeacon(foreign, 'x'),
    'foreign worker': () => new Worker(`${foreign}a.js`),
    'worker from text': () => new Worker(URL.createObjectURL(new Blob(['globalThis.ran = true']))),
    'foreign frame': () => put('iframe', { src: foreign }),
    'frame with markup': () => put('iframe', { srcdoc: '<script>parent.ran = true</script>' }),
    'form that sends elsewhere': () => {
      ;(put('form', { action: foreign, method: 'post' }) as HTMLFormElement).submit()
    },
    'foreign image': () => put('img', { src: `${foreign}a.png` }),
    'foreign sound': () => put('audio', { src: `${foreign}a.mp3`, preload: 'auto' }),
    'foreign style sheet': () => put('link', { rel: 'stylesheet', href: `${foreign}a.css` }),
    'inline style sheet': () => put('style', {}, 'body { visibility: hidden }'),
    'foreign font': () => new FontFace('elsewhere', `url(${foreign}a.woff2)`).load(),
    'plug-in': () => put('object', { data: `${foreign}a.swf` }),
    'another base for addresses': () =>
      document.head.append(Object.assign(document.createElement('base'), { href: foreign })),
  }
  const one = tries[name]
  if (one === undefined) throw new Error(name)
  // What a debugger calls may use eval whatever the policy says: so it is tried from a task of the page's own.
  await new Promise((resolve) => setTimeout(resolve))
  try {
    await one()
  } catch {
    // Refused, as it should be: the list of rules says which one did it.
  }
  await new Promise((resolve) => setTimeout(resolve, 150))
  document.removeEventListener('securitypolicyviolation', heed)
  return { rules, ran: global.ran === true }
}

describe('the page’s policy', () => {
  it('lets nothing out by itself', async () => {
    const asked: string[] = []
    context.on('request', (request) => asked.push(request.url()))
    await page.reload()
    await buildOf(page)
    expect(complaints(context)).toEqual([])
    expect(asked.length).toBeGreaterThan(0)
    expect(asked.filter((address) => !address.startsWith(`${url}/`) && !/^(data|blob):/.test(address))).toEqual([])
    expect(world.requests).toEqual([])

    // The watch is awake: a page that does go elsewhere is seen.
    await page.goto('http://elsewhere.invalid/').catch(() => undefined)
    expect(world.requests).toContain('http://elsewhere.invalid/')
  })

  it('refuses every way in for code and every way out for data, each by its rule', async () => {
    for (const [name, wanted] of TRIES) {
      const { rules, ran } = await page.evaluate(attempt, name)
      expect({ name, ran, refused: rules.some((rule) => wanted.includes(rule)), rules }).toMatchObject({
        ran: false,
        refused: true,
      })
    }
    expect(await page.evaluate(() => getComputedStyle(document.body).visibility)).toBe('visible')
    expect(page.url().startsWith(url)).toBe(true)
    expect(world.requests).toEqual([])
    tellFault('code or data let through by the page’s policy', TRIES.length)
  })
})
