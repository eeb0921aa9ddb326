"""``python -m quarterday.cli`` is the program ``quarterday``."""

from quarterday.cli.main import main

main()
