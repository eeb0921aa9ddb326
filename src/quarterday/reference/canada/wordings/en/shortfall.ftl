shortfall-behind = Automatic increases added { $increases }; building costs rose { $index }. The book is { $gap } behind, { $share } of what its buildings cost.
shortfall-ahead = Automatic increases added { $increases }; building costs rose { $index }. The book is { $gap } ahead, { $share } of what its buildings cost.
shortfall-none = No building of the book has both a valuation and a known automatic increase.
shortfall-alternative = Automatic increases since the valuations against the rise of building costs.
shortfall-row = { $province }: increases { $increases }, costs { $index }, gap { $gap }.
shortfall-buildings = { $n ->
    [one] { $n } building
   *[other] { $n } buildings
}
shortfall-key-increases = Automatic increases since the valuations
shortfall-key-index = Rise of building costs since the valuations
shortfall-all = All
shortfall-head-province = Province
shortfall-head-buildings = Behind
shortfall-head-increases = Increases
shortfall-head-index = Costs
shortfall-head-share = Lag
shortfall-head-gap = Gap
shortfall-head-short = Short
shortfall-note = Behind: buildings whose increases lag, of all compared. Gap: valuations grown by the index, less grown by the increases, at each renewal. Short: what total losses would lack, building by building.
shortfall-left-out = { $n ->
    [one] One insured building was left out: it has no usable valuation or no known increase.
   *[other] { $n } insured buildings were left out: they have no usable valuation or no known increase.
}
shortfall-no-renewal = { $n ->
    [one] One file was left out: it gives no renewal date.
   *[other] { $n } files were left out: they give no renewal date.
}
shortfall-written = The chart is in { $path }.
values-release-used = Building costs: index for { $place }, published on { $day }, up to { $last } ({ $base } = 100).
