"""Alembic's environment: it runs on the connection that `storage.database.migrate` hands it.

A change of the tables is a new file ``versions/v<number>_<what>.py``, written
by hand beside the change in `storage.tables`, with `storage.database.NEWEST`
raised to its number and a book of that version put in ``tests/storage/old_books``.
Migrations that have been published are never edited.
"""

from alembic import context

from storage.tables import METADATA

context.configure(
    connection=context.config.attributes["connection"],
    target_metadata=METADATA,
    render_as_batch=True,
    transactional_ddl=True,
)
with context.begin_transaction():
    context.run_migrations()
