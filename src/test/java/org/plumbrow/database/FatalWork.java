package org.plumbrow.database;

import java.util.concurrent.CountDownLatch;
import org.springframework.stereotype.Component;

/** Background work in the middle of which its node is killed, unless it is the one that lives. */
@Component
class FatalWork implements BackgroundWork {

    static final String KIND = "fatal-work";
    static final String VICTIM = "plumbrow.test.victim";

    @Override
    public String kind() {
        return KIND;
    }

    @Override
    public String perform(RunProgress progress) {
        progress.step(1, 2, "Halfway");
        if (Boolean.getBoolean(VICTIM)) {
            try {
                new CountDownLatch(1).await();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
        return "Done by the one that lives.";
    }
}
