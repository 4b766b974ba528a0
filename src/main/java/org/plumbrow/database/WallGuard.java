package org.plumbrow.database;

import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Looks at each start whether the wall between branches stands: a mighty role walks through it and nobody notices. */
@Component
class WallGuard implements ApplicationRunner {

    private static final Logger LOG = LoggerFactory.getLogger(WallGuard.class);

    private final JdbcClient jdbc;

    WallGuard(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public void run(ApplicationArguments arguments) {
        warning().ifPresent(LOG::error);
    }

    /** @return what is wrong with the role we connect as, and what to do; nothing if the wall holds it */
    Optional<String> warning() {
        return jdbc.sql("""
                        select rolname from pg_roles
                        where rolname = current_user and (rolsuper or rolbypassrls)
                        """).query(String.class).optional().map("""
                        The database role "%s" is a superuser or bypasses row-level security: THE WALL BETWEEN BRANCHES IS \
                        OPEN. Connect as an ordinary role that owns its database: create role plumbrow login \
                        password '…'; create database plumbrow owner plumbrow;"""::formatted);
    }
}
