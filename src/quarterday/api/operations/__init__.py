"""The operations, one module a thing of the trade."""

from quarterday.api.operations import (
    acts,
    catalogues,
    file,
    forms,
    lists,
    loading,
    papers,
    review,
    terms,
)

ROUTERS = (
    lists.router,
    catalogues.router,
    file.router,
    review.router,
    terms.router,
    acts.router,
    papers.router,
    forms.router,
    loading.router,
)
