/** What runs in the page that is measured: each is sent there by itself, and may use nothing around it. */

declare global {
  interface Window {
    /** Hears how many ms lie between what was done and the first picture that shows what came of it. */
    tellShown: (milliseconds: number) => void
    /** The same for a page from its beginning; settled once it is drawn. */
    drawnAfter: Promise<number>
  }
}

/** Notes when the engagement line that a key press moved is on screen. What is posted in a frame is taken up once that frame is painted. */
export function watchKeys(): void {
  let pressed = 0
  const line = () => document.querySelector('[data-line="engagement"]')?.getAttribute('d')
  let before = line()
  const press = ({ timeStamp }: KeyboardEvent) => {
    pressed = timeStamp
    before = line()
  }
  addEventListener('keydown', press, true)
  new MutationObserver(() => {
    if (line() === before || pressed === 0) return
    const since = pressed
    pressed = 0
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel()
      port1.onmessage = () => window.tellShown(performance.now() - since)
      port2.postMessage(null)
    })
  }).observe(document, { subtree: true, childList: true, attributeFilter: ['d'] })
}

/** Notes when the first picture with what is waited for is on screen. */
export function watchStart(waitFor: string): void {
  window.drawnAfter = new Promise(resolve => {
    const look = () => {
      if (document.querySelector(waitFor) === null) return
      watch.disconnect()
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel()
        port1.onmessage = () => resolve(performance.now())
        port2.postMessage(null)
      })
    }
    const watch = new MutationObserver(look)
    watch.observe(document, { subtree: true, childList: true })
  })
}

/** Notes when the first ride asked for is on screen, from the key that opens the page of rides. */
export function watchRide(): void {
  let pressed = 0
  addEventListener(
    'click',
    ({ timeStamp }) => {
      pressed ||= timeStamp
    },
    true,
  )
  const watch = new MutationObserver(() => {
    if (pressed === 0 || document.querySelector('[role="slider"][aria-valuetext*="second"]') === null) return
    watch.disconnect()
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel()
      port1.onmessage = () => window.tellShown(performance.now() - pressed)
      port2.postMessage(null)
    })
  })
  watch.observe(document, { subtree: true, childList: true, attributes: true })
}
