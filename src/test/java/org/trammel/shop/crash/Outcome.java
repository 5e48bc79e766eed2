package org.trammel.shop.crash;

import java.util.List;

/**
 * What a run came to.
 *
 * @param sends requests that left a client, repeats included
 * @param resent acts that had no answer and were sent again
 * @param savedUnanswered of these, the ones that were in the log before the kill: sent twice, done once
 * @param lost acknowledged acts that the log or their effect does not know
 * @param twice acts that stand in the log or in their effect more than once
 * @param torn what is half there: a record without its effect, the reverse, a state that its history does not lead to
 * @param refusals acts the service refused, which it would not if it knew everything it acknowledged
 * @param faults answers of the service that something went wrong in it
 * @param verified what {@code --verify} said, with the code it ended with
 */
record Outcome(
        int kills,
        int killsWhileStarting,
        long sends,
        long acts,
        long acknowledged,
        long resent,
        long savedUnanswered,
        List<String> lost,
        List<String> twice,
        List<String> torn,
        List<String> refusals,
        List<String> faults,
        int verifyCode,
        String verified,
        double secondsToReadyMedian,
        double secondsToReadyMost) {

    /** One line of figures. */
    String line() {
        return kills + " kills (" + killsWhileStarting + " while starting), " + acts + " acts in " + sends
                + " requests, " + acknowledged + " acknowledged, " + resent + " sent again (" + savedUnanswered
                + " of them had been saved), lost " + lost.size() + ", twice " + twice.size() + ", torn " + torn.size()
                + ", refused " + refusals.size() + ", faults " + faults.size() + "; verify ended with " + verifyCode
                + "; ready again in " + secondsToReadyMedian + " s (median), " + secondsToReadyMost + " s (most)";
    }
}
