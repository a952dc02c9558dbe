"""The arithmetic and the data of the handbook: pint and the standard library only."""
