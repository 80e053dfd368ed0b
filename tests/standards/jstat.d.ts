/** The part of jstat that the tests use; the package has no types. */
declare module 'jstat' {
  const jstat: { readonly normal: { readonly cdf: (x: number, mean: number, sigma: number) => number } };
  export default jstat;
}
