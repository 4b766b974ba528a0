package org.plumbrow.database;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.mock.env.MockEnvironment;

class StartUpMessageTest {

    private final MockEnvironment settings = new MockEnvironment().withProperty("plumbrow.version", "1.2");

    @Test
    void theConsoleSaysWhereToGoAndWhatTheRoomsHaveToSay() {
        assertThat(message(() -> List.of("Sign in as ines@qv.example", "Password: plum"))
                        .text("8080"))
                .isEqualTo("""
                    Plumbrow 1.2 is here: http://localhost:8080/
                    Sign in as ines@qv.example
                    Password: plum""".indent(4).stripTrailing());
    }

    @Test
    void theAddressIsTheOneThatIsListenedOn() {
        settings.setProperty("server.address", "0.0.0.0");
        assertThat(message().text("9000")).contains("http://localhost:9000/");
        settings.setProperty("server.address", "192.0.2.7");
        settings.setProperty("server.ssl.bundle", "house");
        settings.setProperty("server.servlet.context-path", "/plumbrow");
        assertThat(message().text("8443")).contains("https://192.0.2.7:8443/plumbrow/");
    }

    private StartUpMessage message(StartUpLine... lines) {
        return new StartUpMessage(settings, new ObjectProvider<>() {
            @Override
            public Stream<StartUpLine> orderedStream() {
                return Stream.of(lines);
            }
        });
    }
}
