"""One table of typed columns as a file: a sheet of a workbook, CSV, or Parquet."""
