/** What a page of Stopgap may load and do, in every host: its own files, and nothing from anywhere else. */
export const contentSecurityPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self' data:",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ')

/** Headers of every answer a host gives to the page. */
export const pageHeaders: Readonly<Record<string, string>> = {
  'content-security-policy': contentSecurityPolicy,
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'cache-control': 'no-store',
}

/** The header in which the page of the browser host shows its secret. */
export const pageSecretHeader = 'x-stopgap-page'

/** The header in which a page says which of the windows it is: a name it makes when it is loaded. */
export const windowNameHeader = 'x-stopgap-window'
