"""What to add, what it weighs, whether it holds."""
