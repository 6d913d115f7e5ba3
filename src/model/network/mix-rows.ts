/** Sizes of a product of rows with weights. */
export interface MixShape {
  rows: number;
  inputs: number;
  outputs: number;
  /** Numbers from the start of one row of input to the next; rows may overlap. */
  rowStep: number;
}

/** `out[r][o] = bias[o] + Σ weights[o][i]·data[r·rowStep + i]`, two outputs of four rows at a time. */
export function mixRows(
  weights: Float32Array,
  bias: Float32Array,
  data: Float32Array,
  out: Float32Array,
  { rows, inputs, outputs, rowStep }: MixShape,
): void {
  let r = 0;
  for (; r + 4 <= rows; r += 4) {
    const d0 = r * rowStep;
    const d1 = d0 + rowStep;
    const d2 = d1 + rowStep;
    const d3 = d2 + rowStep;
    const at = r * outputs;
    let o = 0;
    for (; o + 2 <= outputs; o += 2) {
      const w0 = o * inputs;
      const w1 = w0 + inputs;
      let a0 = bias[o]!;
      let a1 = a0;
      let a2 = a0;
      let a3 = a0;
      let b0 = bias[o + 1]!;
      let b1 = b0;
      let b2 = b0;
      let b3 = b0;
      for (let i = 0; i < inputs; i++) {
        const a = weights[w0 + i]!;
        const b = weights[w1 + i]!;
        const x0 = data[d0 + i]!;
        const x1 = data[d1 + i]!;
        const x2 = data[d2 + i]!;
        const x3 = data[d3 + i]!;
        a0 += a * x0;
        a1 += a * x1;
        a2 += a * x2;
        a3 += a * x3;
        b0 += b * x0;
        b1 += b * x1;
        b2 += b * x2;
        b3 += b * x3;
      }
      out[at + o] = a0;
      out[at + o + 1] = b0;
      out[at + outputs + o] = a1;
      out[at + outputs + o + 1] = b1;
      out[at + 2 * outputs + o] = a2;
      out[at + 2 * outputs + o + 1] = b2;
      out[at + 3 * outputs + o] = a3;
      out[at + 3 * outputs + o + 1] = b3;
    }
    for (; o < outputs; o++)
      for (let k = 0; k < 4; k++)
        out[at + k * outputs + o] = dot(
          weights,
          o * inputs,
          data,
          d0 + k * rowStep,
          inputs,
          bias[o]!,
        );
  }
  for (; r < rows; r++)
    for (let o = 0; o < outputs; o++)
      out[r * outputs + o] = dot(weights, o * inputs, data, r * rowStep, inputs, bias[o]!);
}

function dot(
  weights: Float32Array,
  w: number,
  data: Float32Array,
  d: number,
  count: number,
  start: number,
): number {
  let sum = start;
  for (let i = 0; i < count; i++) sum += weights[w + i]! * data[d + i]!;
  return sum;
}
