package org.trammel.shop;

import org.springframework.test.context.TestContext;
import org.springframework.test.context.TestExecutionListener;

/** Sets the clock back before each test, so that none depends on the order they run in. */
class TestClockReset implements TestExecutionListener {

    @Override
    public void beforeTestMethod(TestContext context) {
        context.getApplicationContext()
                .getBeanProvider(TestClock.class)
                .ifAvailable(clock -> clock.setTo(TestClock.START));
    }
}
