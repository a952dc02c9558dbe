"""Builds, serves and checks the site. Start with ``python3 -m build_scripts --help``."""
