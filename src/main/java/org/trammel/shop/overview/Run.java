package org.trammel.shop.overview;

import java.util.List;

/**
 * The run of the shop.
 *
 * @param atWork frames released and not finished
 * @param limit most frames the shop wants at work at once
 * @param loads what stands at each station
 */
record Run(List<RunLine> lines, List<Load> loads, int atWork, int limit) {

    /**
     * What stands at a station.
     *
     * @param standing frames and parts that wait or are worked on there
     * @param limit most that should
     */
    record Load(String code, String name, int standing, int limit) {

        public boolean over() {
            return standing > limit;
        }
    }

    /** Whether one more frame released would be more than the shop wants. */
    public boolean full() {
        return atWork >= limit;
    }

    public List<RunLine> late() {
        return lines.stream().filter(RunLine::late).toList();
    }

    public long held() {
        return lines.stream().filter(RunLine::held).count();
    }
}
