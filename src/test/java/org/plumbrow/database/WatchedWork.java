package org.plumbrow.database;

import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.springframework.stereotype.Component;

/** Background work whose behaviour a test gives by the subject; static, so that every node of this JVM does the same. */
@Component
class WatchedWork implements BackgroundWork {

    static final String KIND = "watched-work";
    private static final Map<UUID, Function<RunProgress, String>> BEHAVIOUR = new ConcurrentHashMap<>();

    /** @return a new subject on which the work behaves so */
    static UUID behaving(Function<RunProgress, String> behaviour) {
        UUID subject = Ids.next();
        BEHAVIOUR.put(subject, behaviour);
        return subject;
    }

    @Override
    public String kind() {
        return KIND;
    }

    @Override
    public String perform(RunProgress progress) {
        return BEHAVIOUR
                .getOrDefault(progress.subjectId(), nothing -> "There was nothing to do.")
                .apply(progress);
    }
}
