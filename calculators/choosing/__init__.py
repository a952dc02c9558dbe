"""Choosing: which joint, which fault."""
