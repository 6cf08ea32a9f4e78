/** Messages of a server-sent event stream (HTML standard, section 9.2), one line of JSON data each. */
export async function* eventsIn(body: ReadableStream<Uint8Array>): AsyncGenerator<{ name: string; payload: unknown }> {
  const reader = body.pipeThrough(new TextDecoderStream() as TransformStream<Uint8Array, string>).getReader()
  let rest = ''
  for (;;) {
    const { done, value } = await reader.read()
    if (done) return
    const blocks = (rest + value).split('\n\n')
    rest = blocks.pop() ?? ''
    for (const block of blocks) {
      const name = /^event: (.*)$/m.exec(block)?.[1]
      const data = /^data: (.*)$/m.exec(block)?.[1]
      if (name !== undefined && data !== undefined) yield { name, payload: JSON.parse(data) }
    }
  }
}
