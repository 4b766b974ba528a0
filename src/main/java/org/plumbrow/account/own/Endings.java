package org.plumbrow.account.own;

import java.util.UUID;
import org.plumbrow.account.person.Devices;
import org.plumbrow.account.person.Opened;
import org.plumbrow.account.person.SecurityLog;
import org.plumbrow.web.Access;
import org.plumbrow.web.Actor;
import org.plumbrow.web.NotFound;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Ends what a person has open: one kept phone, everything else, or everything. */
@Service
@Transactional
class Endings {

    private final Access access;
    private final Devices devices;
    private final Opened opened;
    private final SecurityLog log;

    Endings(Access access, Devices devices, Opened opened, SecurityLog log) {
        this.access = access;
        this.devices = devices;
        this.opened = opened;
        this.log = log;
    }

    void ofPhone(UUID deviceId) {
        Actor actor = access.actor();
        if (!devices.end(deviceId, access.visitor().personId())) {
            throw new NotFound("a kept phone");
        }
        log.write("phone-ended", actor, "Ended a kept phone.");
    }

    void everywhere() {
        opened.endAll(access.visitor().personId());
        log.write("signed-out-everywhere", access.actor(), "Signed out everywhere.");
    }

    void ofAllOthers(Actor person, String keptSessionId) {
        opened.endOthers(access.visitor().personId(), keptSessionId);
        log.write("password-changed", person, "Changed the password; everything else of theirs was signed out.");
    }
}
