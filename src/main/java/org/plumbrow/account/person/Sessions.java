package org.plumbrow.account.person;

import java.util.UUID;
import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.stereotype.Component;

/** The web sessions of a person, on whatever node they were begun: found by the person's id, which is their principal. */
@Component
class Sessions {

    private final FindByIndexNameSessionRepository<?> sessions;

    Sessions(FindByIndexNameSessionRepository<?> sessions) {
        this.sessions = sessions;
    }

    /** Ends every session of the person. @return how many there were */
    int endAll(UUID personId) {
        var ids = sessions.findByPrincipalName(personId.toString()).keySet();
        ids.forEach(sessions::deleteById);
        return ids.size();
    }

    /** Ends every session of the person but the one that asks. */
    int endOthers(UUID personId, String keptSessionId) {
        var ids = sessions.findByPrincipalName(personId.toString()).keySet().stream()
                .filter(id -> !id.equals(keptSessionId))
                .toList();
        ids.forEach(sessions::deleteById);
        return ids.size();
    }
}
