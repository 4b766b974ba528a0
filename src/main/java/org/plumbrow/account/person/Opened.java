package org.plumbrow.account.person;

import java.util.UUID;
import org.springframework.stereotype.Component;

/** Everything that a person has open, on whatever node and phone. */
@Component
public class Opened {

    private final Sessions sessions;
    private final Devices devices;

    Opened(Sessions sessions, Devices devices) {
        this.sessions = sessions;
        this.devices = devices;
    }

    public void endAll(UUID personId) {
        devices.endAll(personId);
        sessions.endAll(personId);
    }

    /** All but the session that asks. */
    public void endOthers(UUID personId, String keptSessionId) {
        devices.endAll(personId);
        sessions.endOthers(personId, keptSessionId);
    }
}
