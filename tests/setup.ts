import '@testing-library/jest-dom/vitest'
import { cleanup } from '@testing-library/react'
import { afterEach } from 'vitest'

// Test files share one page (isolate: false), so each test clears what it put there.
afterEach(() => {
  cleanup()
  document.body.replaceChildren()
})

// jsdom lays nothing out, so that nothing can scroll.
Object.assign(Element.prototype, { scrollIntoView: () => {} })
