package org.plumbrow.database.server;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.database.StartUpLine;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Says at the start where the data are kept and how to begin anew. */
@Component
@Order(Ordered.LOWEST_PRECEDENCE)
class WhereTheDataAre implements StartUpLine {

    private final ObjectProvider<LocalPostgres> localServer;
    private final JdbcConnectionDetails connection;

    WhereTheDataAre(ObjectProvider<LocalPostgres> localServer, JdbcConnectionDetails connection) {
        this.localServer = localServer;
        this.connection = connection;
    }

    @Override
    public List<String> lines() {
        @Nullable LocalPostgres server = localServer.getIfAvailable();
        return server == null
                ? List.of("Its data are in " + withoutOptions(connection.getJdbcUrl()) + ".")
                : List.of(
                        "Its data are in " + server.dataFolder() + ".",
                        "To begin anew, stop it and delete that folder. To stop it, press Ctrl-C.");
    }

    /** Options may hold a password. */
    static String withoutOptions(String url) {
        int question = url.indexOf('?');
        return question < 0 ? url : url.substring(0, question);
    }
}
