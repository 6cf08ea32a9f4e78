/** Numbers in one block. */
const BLOCK = 65_536

/** A list of numbers that grows without being copied: 8 bytes a number, and as much again while it is joined. */
export class Blocks {
  length = 0
  private blocks: Float64Array[] = []

  push(value: number): void {
    const place = this.length % BLOCK
    if (place === 0) this.blocks.push(new Float64Array(BLOCK))
    this.blocks[this.blocks.length - 1]![place] = value
    this.length += 1
  }

  /** All of them in one; the list is empty afterwards. */
  joined(): Float64Array {
    const all = new Float64Array(this.length)
    for (const [i, block] of this.blocks.entries())
      all.set(block.subarray(0, Math.min(BLOCK, this.length - i * BLOCK)), i * BLOCK)
    this.blocks = []
    this.length = 0
    return all
  }
}
