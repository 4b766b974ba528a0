package org.plumbrow;

import org.springframework.test.context.TestContext;
import org.springframework.test.context.TestExecutionListener;

/** Each test begins at the same instant, whatever the one before did to the clock. */
class TestClockReset implements TestExecutionListener {

    @Override
    public void beforeTestMethod(TestContext test) {
        test.getApplicationContext().getBean(TestClock.class).standAt(TestClock.START);
    }
}
