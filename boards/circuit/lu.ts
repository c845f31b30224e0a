/**
 * Solves A·x = b in place for a dense matrix stored row by row, by Gaussian elimination with
 * partial pivoting (Golub and Van Loan, Matrix Computations, algorithm 3.4.1).
 *
 * @param matrix n × n values; destroyed
 * @param right n values; holds x afterwards
 * @returns -1 when solved, else the column that has no pivot
 */
export function solveDense(matrix: Float64Array, right: Float64Array, n: number): number {
  for (let k = 0; k < n; k += 1) {
    let pivot = k;
    let largest = Math.abs(matrix[k * n + k] ?? 0);
    for (let row = k + 1; row < n; row += 1) {
      const size = Math.abs(matrix[row * n + k] ?? 0);
      if (size > largest) {
        largest = size;
        pivot = row;
      }
    }
    if (!(largest > 0)) return k;
    if (pivot !== k) exchangeRows(matrix, right, n, k, pivot);
    eliminateBelow(matrix, right, n, k);
  }
  substituteBack(matrix, right, n);
  return -1;
}

function exchangeRows(matrix: Float64Array, right: Float64Array, n: number, a: number, b: number): void {
  for (let col = 0; col < n; col += 1) {
    const kept = matrix[a * n + col] ?? 0;
    matrix[a * n + col] = matrix[b * n + col] ?? 0;
    matrix[b * n + col] = kept;
  }
  const kept = right[a] ?? 0;
  right[a] = right[b] ?? 0;
  right[b] = kept;
}

function eliminateBelow(matrix: Float64Array, right: Float64Array, n: number, k: number): void {
  const pivot = matrix[k * n + k] ?? 1;
  for (let row = k + 1; row < n; row += 1) {
    const below = matrix[row * n + k] ?? 0;
    if (below === 0) continue;
    const factor = below / pivot;
    for (let col = k + 1; col < n; col += 1) {
      matrix[row * n + col] = (matrix[row * n + col] ?? 0) - factor * (matrix[k * n + col] ?? 0);
    }
    right[row] = (right[row] ?? 0) - factor * (right[k] ?? 0);
  }
}

function substituteBack(matrix: Float64Array, right: Float64Array, n: number): void {
  for (let row = n - 1; row >= 0; row -= 1) {
    let sum = right[row] ?? 0;
    for (let col = row + 1; col < n; col += 1) sum -= (matrix[row * n + col] ?? 0) * (right[col] ?? 0);
    right[row] = sum / (matrix[row * n + row] ?? 1);
  }
}
