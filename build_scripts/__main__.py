"""The one command: ``python3 -m build_scripts serve | build | check | test``.

Only the standard library is imported here and in ``bootstrap``: on a fresh clone nothing else is there yet.
"""

from __future__ import annotations

import argparse
import sys

from build_scripts import bootstrap


def main() -> int:
    """Read the command line, make the tools ready, do the work; return the exit code."""
    parser = argparse.ArgumentParser(prog="python3 -m build_scripts", description=__doc__)
    commands = parser.add_subparsers(dest="command", required=True)
    serve = commands.add_parser("serve", help="build the site and serve it on this machine and the shop's network")
    serve.add_argument("--port", type=int, default=8000)
    commands.add_parser("build", help="build the site into site/")
    commands.add_parser("check", help="lint, format and types only")
    test = commands.add_parser("test", help="check, build and run every test")
    test.add_argument("pytest_args", nargs="*", help="passed to pytest, after --")
    options = parser.parse_args()

    try:
        bootstrap.make_ready(sys.argv[1:])
    except bootstrap.NotReadyError as reason:
        print(f"build_scripts: {reason}", file=sys.stderr)
        return 1

    # From here on the locked tools are there: this is the Python of .venv.
    from build_scripts import checks, site
    from build_scripts import serve as server

    try:
        if options.command == "serve":
            site.build()
            server.run(options.port)
        elif options.command == "build":
            site.build()
        elif options.command == "check":
            checks.lint_and_types()
        else:
            return checks.everything(options.pytest_args)
    except site.BuildError as reason:
        print(f"build_scripts: {reason}", file=sys.stderr)
        return 1
    return 0


if __name__ == "__main__":
    sys.exit(main())
