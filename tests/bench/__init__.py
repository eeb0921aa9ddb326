"""Speed and memory, measured side by side in one run and told as ratios. Never a test."""
