/** Expected calibration error: stated probabilities in 20 equal bins, each bin's mean against its
 *  share of right ones, weighted by the number in the bin. */
export class Calibration {
  private readonly count = new Float64Array(20);
  private readonly stated = new Float64Array(20);
  private readonly right = new Float64Array(20);

  add(probability: number, isRight: boolean): void {
    const bin = Math.min(19, Math.floor(probability * 20));
    this.count[bin]!++;
    this.stated[bin]! += probability;
    if (isRight) this.right[bin]!++;
  }

  error(): number {
    let sum = 0;
    let total = 0;
    for (let i = 0; i < 20; i++) {
      sum += Math.abs(this.stated[i]! - this.right[i]!);
      total += this.count[i]!;
    }
    return total > 0 ? sum / total : 0;
  }

  rows(): { stated: number; right: number; count: number }[] {
    return [...this.count].flatMap((count, i) =>
      count > 0 ? [{ count, stated: this.stated[i]! / count, right: this.right[i]! / count }] : [],
    );
  }
}
