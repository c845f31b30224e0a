/**
 * Sums of a least-squares problem as they gather, and their solution by Cholesky's method (Golub and
 * Van Loan, Matrix Computations, algorithm 4.2.1).
 */
export class NormalEquations {
  readonly #size: number;
  readonly #matrix: Float64Array;
  readonly #right: Float64Array;

  constructor(size: number) {
    this.#size = size;
    this.#matrix = new Float64Array(size * size);
    this.#right = new Float64Array(size);
  }

  /** One equation: how the measured value changes with each unknown, and how far it is off. */
  add(slopes: ArrayLike<number>, off: number): void {
    const size = this.#size;
    for (let row = 0; row < size; row += 1) {
      const slope = slopes[row] ?? 0;
      this.#right[row] = (this.#right[row] ?? 0) + slope * off;
      for (let col = 0; col < size; col += 1)
        this.#matrix[row * size + col] = (this.#matrix[row * size + col] ?? 0) + slope * (slopes[col] ?? 0);
    }
  }

  /** The change of the unknowns that makes the squares least; undefined where they are not determined. */
  solution(): Float64Array | undefined {
    const factor = this.#factor();
    return factor && this.#substitute(factor, this.#right);
  }

  #factor(): Float64Array | undefined {
    const size = this.#size;
    const factor = new Float64Array(size * size);
    for (let row = 0; row < size; row += 1) {
      for (let col = 0; col <= row; col += 1) {
        let sum = this.#matrix[row * size + col] ?? 0;
        for (let k = 0; k < col; k += 1) sum -= (factor[row * size + k] ?? 0) * (factor[col * size + k] ?? 0);
        if (row !== col) factor[row * size + col] = sum / (factor[col * size + col] ?? 1);
        else if (sum > 0) factor[row * size + row] = Math.sqrt(sum);
        else return undefined;
      }
    }
    return factor;
  }

  #substitute(factor: Float64Array, right: Float64Array): Float64Array {
    const size = this.#size;
    const values = Float64Array.from(right);
    for (let row = 0; row < size; row += 1) {
      let sum = values[row] ?? 0;
      for (let k = 0; k < row; k += 1) sum -= (factor[row * size + k] ?? 0) * (values[k] ?? 0);
      values[row] = sum / (factor[row * size + row] ?? 1);
    }
    for (let row = size - 1; row >= 0; row -= 1) {
      let sum = values[row] ?? 0;
      for (let k = row + 1; k < size; k += 1) sum -= (factor[k * size + row] ?? 0) * (values[k] ?? 0);
      values[row] = sum / (factor[row * size + row] ?? 1);
    }
    return values;
  }
}
