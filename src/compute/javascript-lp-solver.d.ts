// The package ships types, but as those of a CommonJS module, and Node loads its ES module: there the solver is the default export itself.
declare module 'javascript-lp-solver' {
  type Row = Readonly<Record<string, number>>
  interface Program {
    /** The row of each variable that is made least or most. */
    readonly optimize: string
    readonly opType: 'max' | 'min'
    readonly constraints: Readonly<Record<string, { readonly min: number } | { readonly max: number } | { readonly equal: number }>>
    /** Variables are at least 0; each names its coefficient in the rows it stands in. */
    readonly variables: Readonly<Record<string, Row>>
  }
  /** Values of the variables that aren't 0, by name, rounded to eight places, and `result`, the optimum. */
  type Solved = Readonly<Record<string, unknown>> & { readonly feasible: boolean; readonly result: number }
  const solver: { readonly Solve: (program: Program) => Solved }
  export default solver
}
