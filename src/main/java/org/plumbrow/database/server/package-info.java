/**
 * The default server: a real PostgreSQL that comes as a library and keeps its data in a folder beside the program.
 * <p>Start at {@code LocalPostgres}. Rules: one folder, one instance; nothing committed is lost whatever ends the
 * process; the server never runs as root and the application never connects as superuser. Steps aside where
 * {@code spring.datasource.url} names another server.
 */
@NullMarked
package org.plumbrow.database.server;

import org.jspecify.annotations.NullMarked;
