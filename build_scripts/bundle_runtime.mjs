// node bundle_runtime.mjs PYODIDE_FOLDER COMPILER.py SOURCE.zip MADE.zip
// Lets the page's own Python compile its archive: only the very release that reads .pyc files can write them.
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

const [runtime, compiler, source, made] = process.argv.slice(2);
const { loadPyodide } = await import(pathToFileURL(join(runtime, "pyodide.mjs")).href);
// A fixed hash seed keeps the order inside compiled sets the same in every build.
const python = await loadPyodide({ env: { PYTHONHASHSEED: "0" } });
python.FS.writeFile("/source.zip", readFileSync(source));
python.runPython(readFileSync(compiler, "utf8"));
python.runPython("from pathlib import Path\nPath('/made.zip').write_bytes(compiled(Path('/source.zip').read_bytes()))");
writeFileSync(made, python.FS.readFile("/made.zip"));
