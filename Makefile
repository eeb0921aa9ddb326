# Quarterday. `make help` says what there is.
.DEFAULT_GOAL := help
VENV := .venv
BIN := $(VENV)/bin
PYTHON ?= python3

.PHONY: help demo test lint types bench mutants hostile lock clean

help: ## say what there is
	@grep -hE '^[a-z-]+:.*## ' $(MAKEFILE_LIST) | sed -E 's/^([a-z-]+):.*## (.*)/  make \1\t\2/' | expand -t 16

$(VENV)/run.done: requirements/run.txt pyproject.toml
	@test -x $(BIN)/python || $(PYTHON) -m venv $(VENV)
	$(BIN)/pip install --quiet --disable-pip-version-check --require-hashes --only-binary :all: -r requirements/run.txt
	$(BIN)/pip install --quiet --disable-pip-version-check --no-deps --no-build-isolation --no-index -e .
	@touch $@

$(VENV)/dev.done: requirements/dev.txt $(VENV)/run.done
	$(BIN)/pip install --quiet --disable-pip-version-check --require-hashes --only-binary :all: -r requirements/dev.txt
	@touch $@

demo: $(VENV)/run.done ## set up, load the demo book, review it, build its packages
	$(BIN)/quarterday demo

test: $(VENV)/dev.done ## set up, then lint, types, layers and every test, on SQLite and PostgreSQL
	BIN=$(BIN) sh tests/run.sh

lint: $(VENV)/dev.done ## ruff and the layer contract
	$(BIN)/ruff check . && $(BIN)/ruff format --check . && $(BIN)/lint-imports

types: $(VENV)/dev.done ## mypy, strict
	$(BIN)/mypy

bench: $(VENV)/dev.done ## measure speed and memory, side by side, as ratios
	$(BIN)/python -m tests.bench

mutants: $(VENV)/dev.done ## make the core wrong on purpose and count what the tests notice (hours)
	for name in settling values premium; do $(BIN)/python -m tests.mutation $$name || exit 1; done

hostile: $(VENV)/dev.done ## read ten thousand spoiled inputs of each format (hours)
	$(BIN)/python -m tests.hostile

lock: ## renew requirements/*.txt from pyproject.toml (needs uv)
	uv pip compile --quiet --generate-hashes --no-header --no-emit-index-url --no-emit-find-links --no-annotate --universal --python-version 3.11 pyproject.toml requirements/build.in -o requirements/run.txt
	uv pip compile --quiet --generate-hashes --no-header --no-emit-index-url --no-emit-find-links --no-annotate --universal --python-version 3.11 pyproject.toml requirements/build.in --group dev -o requirements/dev.txt

clean: ## remove what was set up and built
	rm -rf $(VENV) demo build dist
