package org.plumbrow.browser;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import java.util.concurrent.atomic.AtomicInteger;

/** Signal that comes and goes, and what is lost on the way. */
final class Signal {

    private Signal() {}

    /** The page hears that there is signal again. By what it sends then it may come anew while it is told. */
    static void isBack(Page page) {
        try {
            page.evaluate("() => dispatchEvent(new Event('online'))");
        } catch (PlaywrightException onItsWay) {
            // It had heard of it by itself, and has sent what waited.
        }
    }

    /** What is sent first reaches the server, and its answer is lost. @return how often something was sent */
    static AtomicInteger losesTheFirstAnswer(BrowserContext phone) {
        AtomicInteger tries = new AtomicInteger();
        phone.route("**/sending", route -> {
            if (tries.getAndIncrement() == 0) {
                route.fetch();
                route.abort();
            } else {
                route.resume();
            }
        });
        return tries;
    }
}
