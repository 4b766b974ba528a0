package org.plumbrow.database;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Component;

/** Tells the person at the console, once all is up, where to go and what else the rooms have to say. */
@Component
class StartUpMessage {

    private static final Logger LOG = LoggerFactory.getLogger(StartUpMessage.class);

    private final Environment settings;
    private final ObjectProvider<StartUpLine> rooms;

    StartUpMessage(Environment settings, ObjectProvider<StartUpLine> rooms) {
        this.settings = settings;
        this.rooms = rooms;
    }

    @EventListener(ApplicationReadyEvent.class)
    void say() {
        @Nullable String port = settings.getProperty("local.server.port");
        if (port != null) {
            LOG.info("Up and running\n\n{}\n", text(port));
        }
    }

    String text(String port) {
        Stream<String> first =
                Stream.of("Plumbrow " + settings.getProperty("plumbrow.version", "") + " is here: " + address(port));
        Stream<String> others = rooms.orderedStream().map(StartUpLine::lines).flatMap(List::stream);
        return Stream.concat(first, others).map(line -> "    " + line).collect(Collectors.joining("\n"));
    }

    private String address(String port) {
        boolean encrypted = settings.containsProperty("server.ssl.bundle")
                || settings.containsProperty("server.ssl.key-store")
                || settings.containsProperty("server.ssl.certificate");
        String host = settings.getProperty("server.address", "localhost");
        String path = settings.getProperty("server.servlet.context-path", "");
        return (encrypted ? "https" : "http") + "://" + (host.equals("0.0.0.0") ? "localhost" : host) + ":" + port
                + path + "/";
    }
}
