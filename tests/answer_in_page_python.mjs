// node answer_in_page_python.mjs FOLDER < requests.json > answers.json
// The page's own Python and archives (site/vendor/python), under Node: a list of requests in, their answers out.
import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";

const folder = resolve(process.argv[2]);
const { loadPyodide } = await import(pathToFileURL(join(folder, "pyodide.mjs")).href);
const python = await loadPyodide({ indexURL: folder, stdLibURL: join(folder, "stdlib.zip") });
python.FS.writeFile("/app.zip", readFileSync(join(folder, "app.zip")));
const door = python.runPython(
  "import sys; sys.path.append('/app.zip'); from calculators.run import run_json; run_json",
);
const requests = JSON.parse(readFileSync(0, "utf8"));
const about = python.runPython("import sys, pint; [sys.version.split()[0], pint.__version__]").toJs();
process.stdout.write(JSON.stringify({ about, answers: requests.map((request) => door(request)) }));
