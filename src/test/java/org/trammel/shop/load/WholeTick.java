package org.trammel.shop.load;

import java.util.UUID;
import org.trammel.shop.outside.Tablet;

/** A tick as a tablet sends it: signed on, with its page token and act id, over a connection that stays open. */
final class WholeTick implements Clients.Deed {

    private final Tablet tablet;
    private final int port;
    private final Work.Waiting waiting;
    private Work work;

    WholeTick(Tablet tablet, int port, Work.Waiting waiting) {
        this.tablet = tablet;
        this.port = port;
        this.waiting = waiting;
        this.work = waiting.take();
    }

    @Override
    public void once() throws Exception {
        if (work.done()) {
            work = waiting.take();
        }
        String body = "{\"actId\":\"" + UUID.randomUUID() + "\",\"steps\":["
                + work.next().step() + "]}";
        Tablet.Answer answer = tablet.post(port, "/api/v1/ticks", body);
        if (!answer.done()) {
            throw new IllegalStateException("A tick was answered " + answer.status() + " " + answer.body());
        }
    }
}
