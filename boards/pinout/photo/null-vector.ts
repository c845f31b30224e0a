/** Sweeps after which the columns are orthogonal to the last digit; eight are enough for nine columns. */
const SWEEP_LIMIT = 60;
/** Two columns whose cosine is below this are orthogonal as far as the numbers go. */
const ORTHOGONAL = 1e-16;

/**
 * The unit vector v for which |A·v| is least: the right singular vector of the smallest singular value,
 * by one-sided Jacobi rotations (Hestenes 1958; Golub and Van Loan, Matrix Computations, section 8.6.3).
 * It works on A itself and not on AᵀA, so that small singular values keep their digits.
 *
 * @param matrix rows × cols values, row by row; not changed
 */
export function nullVector(matrix: Float64Array, cols: number): Float64Array {
  const rows = matrix.length / cols;
  const columns = Array.from({ length: cols }, (_, col) =>
    Float64Array.from({ length: rows }, (__, row) => matrix[row * cols + col] ?? 0),
  );
  const turned = Array.from({ length: cols }, (_, col) =>
    Float64Array.from({ length: cols }, (__, row) => (row === col ? 1 : 0)),
  );
  for (let sweep = 0; sweep < SWEEP_LIMIT; sweep += 1) {
    if (!sweepOnce(columns, turned)) break;
  }
  let least = 0;
  const sizes = columns.map((column) => dot(column, column));
  sizes.forEach((size, col) => {
    if (size < (sizes[least] ?? 0)) least = col;
  });
  return turned[least] ?? new Float64Array(cols);
}

/** Makes every pair of columns orthogonal once; false when all of them were already. */
function sweepOnce(columns: readonly Float64Array[], turned: readonly Float64Array[]): boolean {
  let rotated = false;
  for (const [p, first] of columns.entries()) {
    for (let q = p + 1; q < columns.length; q += 1) {
      const second = columns[q];
      const [v, w] = [turned[p], turned[q]];
      if (second === undefined || v === undefined || w === undefined) continue;
      const alpha = dot(first, first);
      const beta = dot(second, second);
      const gamma = dot(first, second);
      if (Math.abs(gamma) <= ORTHOGONAL * Math.sqrt(alpha * beta)) continue;
      rotated = true;
      const zeta = (beta - alpha) / (2 * gamma);
      const tangent = (zeta >= 0 ? 1 : -1) / (Math.abs(zeta) + Math.sqrt(1 + zeta * zeta));
      const cosine = 1 / Math.sqrt(1 + tangent * tangent);
      rotate(first, second, cosine, cosine * tangent);
      rotate(v, w, cosine, cosine * tangent);
    }
  }
  return rotated;
}

function rotate(first: Float64Array, second: Float64Array, cosine: number, sine: number): void {
  for (let row = 0; row < first.length; row += 1) {
    const [a, b] = [first[row] ?? 0, second[row] ?? 0];
    first[row] = cosine * a - sine * b;
    second[row] = sine * a + cosine * b;
  }
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let row = 0; row < a.length; row += 1) sum += (a[row] ?? 0) * (b[row] ?? 0);
  return sum;
}
