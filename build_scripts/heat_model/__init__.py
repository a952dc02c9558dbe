"""The numerical model behind settings and heat: solver, grid study, table, benchmark. Each script can be run again."""
