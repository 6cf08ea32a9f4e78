import type { Page } from '@playwright/test'

/** What can be used and does not lie within the width of the window, or of a part that scrolls sideways by itself; none is right. */
export const cutOff = (window: Page): Promise<string[]> =>
  window.evaluate(() => {
    const scrolls = (element: Element): boolean => {
      for (let each = element.parentElement; each !== null; each = each.parentElement)
        if (['auto', 'scroll'].includes(getComputedStyle(each).overflowX) && each.scrollWidth > each.clientWidth)
          return true
      return false
    }
    const beyond = document.documentElement.scrollWidth - innerWidth
    const cut = [...document.querySelectorAll('button, input, select, textarea, summary, h2, h3, p, th')]
      .filter(
        element =>
          element.checkVisibility({ visibilityProperty: true }) &&
          element.closest('.spoken, dialog, [popover]') === null,
      )
      .filter(element => {
        const { left, right, width } = element.getBoundingClientRect()
        return width > 1 && (left < -1 || right > innerWidth + 1) && !scrolls(element)
      })
      .map(element => element.textContent?.trim() || element.getAttribute('aria-label') || element.outerHTML)
    return beyond > 0 ? [...cut, `the page is ${beyond} px wider than the window`] : cut
  })
