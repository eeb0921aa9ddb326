"""From a workbook or a folder of CSV files to drafts: parse, map, plan, preview."""
