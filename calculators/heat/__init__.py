"""Settings and heat: what a pulse melts, what it warms, and how a shop's own test spots make the model true."""
