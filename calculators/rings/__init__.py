"""Sizing rings."""
