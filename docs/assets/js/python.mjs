// Starts Python and gives back the one function that answers requests. Knows the runtime, but neither
// page nor worker, so that the tests run the very same start under Node.

/**
 * @param {string} runtime  address of the folder with the runtime, ending in a slash
 * @param {Promise<Uint8Array>} calc  the calculators' bytecode as a stored zip
 * @returns {Promise<(request: string) => string>}  JSON in, JSON out
 */
export async function startPython(runtime, calc) {
  const { loadPyodide } = await import(`${runtime}pyodide.mjs`);
  const python = await loadPyodide({ indexURL: runtime });
  python.FS.writeFile("/lib/calc.zip", await calc);
  python.runPython("import sys; sys.path.append('/lib/calc.zip')");
  return python.pyimport("calc.page.live").answer;
}
