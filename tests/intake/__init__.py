"""Tests of intake, and the workbooks they are made with."""
