package org.trammel.shop;

import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.TestContext;
import org.springframework.test.context.TestExecutionListener;

/**
 * Sets the clock of tests back before each of them, and with it what was guessed from the address and the devices all tests share: a delay
 * that one test earned would else never pass for the next.
 */
class TestClockReset implements TestExecutionListener {

    @Override
    public void beforeTestMethod(TestContext context) {
        ApplicationContext beans = context.getApplicationContext();
        beans.getBeanProvider(TestClock.class).ifAvailable(clock -> {
            clock.setTo(TestClock.START);
            beans.getBean(JdbcClient.class)
                    .sql("delete from guess_count where subject like 'address:%' or subject like 'device:%'")
                    .update();
        });
    }
}
