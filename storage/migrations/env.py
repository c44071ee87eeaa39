"""Alembic's environment: it runs on the connection that `storage.database.migrate` hands it."""

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
